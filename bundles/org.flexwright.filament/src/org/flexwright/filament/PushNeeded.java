package org.flexwright.filament;

import java.util.OptionalDouble;

import org.flexwright.core.flow.PowerLaw;
import org.flexwright.filament.data.Printing;

/** Push on the strand that a print needs. */
final class PushNeeded {
    private PushNeeded() {
    }

    /** In N: as measured, else from melt, nozzle land and speed; empty when neither can be said. The cone before the land is not counted. */
    static OptionalDouble of(Printing d) {
        if (d.getPushForce() != null) {
            return OptionalDouble.of(d.getPushForce());
        }
        Entered speed = Entered.of("Speed", d.getPlannedSpeed(), d.getActualSpeed());
        if (speed == null || !allPositive(speed.value(), d.getConsistency(), d.getFlowIndex(), d.getNozzleDiameter(), d.getNozzleLength(),
                d.getLineWidth(), d.getLayerHeight(), d.getStrandDiameter())) {
            return OptionalDouble.empty();
        }
        double flow = new Bead(d.getLineWidth(), d.getLayerHeight()).rectangle() * speed.value();
        double pressure = Nozzle.landPressure(new PowerLaw(d.getConsistency(), d.getFlowIndex()), d.getNozzleDiameter(), d.getNozzleLength(), flow);
        return OptionalDouble.of(new Strand(d.getStrandDiameter()).push(pressure));
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
