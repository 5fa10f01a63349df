package org.flexwright.filament;

import org.flexwright.core.flow.PowerLaw;
import org.flexwright.core.flow.RoundChannel;

/** Pressure of a power-law melt in a nozzle. Lengths in mm, flow in mm3/s, pressure in MPa. */
final class Nozzle {
    private Nozzle() {
    }

    /** Over the narrow cylindrical land. */
    static double landPressure(PowerLaw melt, double diameter, double length, double flow) {
        return new RoundChannel(diameter / 2e3, length / 1e3).pressureDrop(melt, flow / 1e9) / 1e6;
    }

    /** Over a cone from a large to a small radius, taken as a row of short tubes (lubrication); the radii must differ. */
    static double conePressure(PowerLaw melt, double smallRadius, double largeRadius, double length, double flow) {
        double n = melt.index();
        double slope = (largeRadius - smallRadius) / length;
        double rate = Math.pow((3 * n + 1) / n * (flow / 1e9) / Math.PI, n);
        double ends = Math.pow(smallRadius / 1e3, -3 * n) - Math.pow(largeRadius / 1e3, -3 * n);
        return 2 * melt.consistency() / (3 * n * slope) * rate * ends / 1e6;
    }
}
