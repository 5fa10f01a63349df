package org.flexwright.moulding;

import java.util.Optional;

import org.flexwright.core.flow.RoundChannel;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.moulding.data.Filling;

/**
 * What a filling step says about the flow through its gate.
 *
 * @param flow     the thickening flow
 * @param pressure what drives it, as planned or used, kPa
 * @param growth   how many times as thick the mix is at the end of its working time
 */
record GateFill(ThickeningFlow flow, Entered pressure, double growth) {

    /** Empty while a value is missing or not above 0; {@code working} is the trial's working time, null when there is none. */
    static Optional<GateFill> of(Filling d, WorkingTime working) {
        Entered pressure = Entered.of("Pressure", d.getPlannedPressure(), d.getActualPressure());
        double growth = growth(d, working);
        if (pressure == null || working == null || !(growth > 1)
                || !allPositive(pressure.value(), d.getViscosity(), d.getGateRadius(), d.getGateLength())) {
            return Optional.empty();
        }
        RoundChannel gate = new RoundChannel(d.getGateRadius() / 1e3, d.getGateLength() / 1e3);
        double timeConstant = ThickeningFlow.timeConstant(60 * working.minutes().likely(), growth);
        return Optional.of(new GateFill(ThickeningFlow.through(gate, d.getViscosity(), timeConstant, 1e3 * pressure.value()), pressure, growth));
    }

    private static double growth(Filling d, WorkingTime working) {
        if (working != null && working.factor() != null) {
            return working.factor();
        }
        return d.getWorkingGrowth() == null ? ThickeningFlow.DOUBLING : d.getWorkingGrowth();
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
