package org.flexwright.moulding;

import java.util.Optional;

import org.flexwright.core.flow.RoundChannel;
import org.flexwright.moulding.data.Filling;

/**
 * What a filling step says about the flow through its gate.
 *
 * @param flow     the thickening flow
 * @param pressure what drives it, as planned or used, kPa
 * @param growth   how many times as thick the mix is at the end of its working time
 */
record GateFill(ThickeningFlow flow, Entered pressure, double growth) {

    /** Empty while a value is missing or not above 0. */
    static Optional<GateFill> of(Filling d) {
        Entered pressure = Entered.of("Pressure", d.getPlannedPressure(), d.getActualPressure());
        double growth = d.getWorkingGrowth() == null ? ThickeningFlow.DOUBLING : d.getWorkingGrowth();
        if (pressure == null || !(growth > 1)
                || !allPositive(pressure.value(), d.getWorkingMinutes(), d.getViscosity(), d.getGateRadius(), d.getGateLength())) {
            return Optional.empty();
        }
        RoundChannel gate = new RoundChannel(d.getGateRadius() / 1e3, d.getGateLength() / 1e3);
        double timeConstant = ThickeningFlow.timeConstant(60 * d.getWorkingMinutes(), growth);
        return Optional.of(new GateFill(ThickeningFlow.through(gate, d.getViscosity(), timeConstant, 1e3 * pressure.value()), pressure, growth));
    }

    private static boolean allPositive(Double... values) {
        for (Double value : values) {
            if (value == null || !(value > 0)) {
                return false;
            }
        }
        return true;
    }
}
