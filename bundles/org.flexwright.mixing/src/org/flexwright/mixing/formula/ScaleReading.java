package org.flexwright.mixing.formula;

/**
 * What the step of a balance does to a ratio. A net weighing is two readings, each anywhere within half a step: u = d/sqrt(6)
 * (rectangular, JCGM 100:2008 4.3.7).
 */
public final class ScaleReading {

    private static final double NET = 1 / Math.sqrt(6);

    private ScaleReading() {
    }

    /** Standard uncertainty of a net weighing in the unit of the step. */
    public static double ofNet(double step) {
        return step * NET;
    }

    /** Relative standard uncertainty of mB/mA; masses positive, in the unit of the step. */
    public static double ofRatio(double step, double massA, double massB) {
        double u = ofNet(step);
        return Math.hypot(u / massA, u / massB);
    }

    /** Largest relative error of mB/mA when both masses are off by one step in opposite senses; {@code massA} above the step. */
    public static double worstRatio(double step, double massA, double massB) {
        double tooMuchB = (massB + step) / (massA - step) / (massB / massA) - 1;
        double tooLittleB = 1 - (massB - step) / (massA + step) / (massB / massA);
        return Math.max(tooMuchB, tooLittleB);
    }

    /** Smallest mass whose own share of the uncertainty stays at {@code relative}. */
    public static double smallestMass(double step, double relative) {
        return ofNet(step) / relative;
    }
}
