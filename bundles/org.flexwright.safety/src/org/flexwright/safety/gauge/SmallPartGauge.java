package org.flexwright.safety.gauge;

import org.flexwright.core.Source;

/**
 * The truncated cylinder of 16 CFR 1501.4: inner diameter 1.25 in, depth 1 in on one side to 2.25 in on the other. Lengths in mm. A part
 * that does not fit proves nothing about choking: soft parts can be squeezed smaller.
 */
public final class SmallPartGauge {
    private static final double INCH = 25.4;
    /** Inner diameter. */
    public static final double DIAMETER = 1.25 * INCH;
    /** Depth on the shallow side. */
    public static final double SHALLOW = 1.0 * INCH;
    /** Depth on the deep side. */
    public static final double DEEP = 2.25 * INCH;
    /** Hole of the small-ball test, 16 CFR 1117.2. */
    public static final double BALL_HOLE = 1.75 * INCH;
    /** Where the sizes come from; the slope of the floor follows from them. */
    public static final Source SOURCE = Source.published("16 CFR 1501.4 and 1117.2; the slope of the floor is from memory");

    /** What the drawing of the gauge says about a part. */
    public enum Fit {
        /** It goes in wholly in at least one orientation. */
        FITS,
        /** It goes in wholly in no orientation. */
        DOES_NOT_FIT,
        /** The sizes alone do not decide; a real gauge does. */
        CANNOT_TELL
    }

    private SmallPartGauge() {
    }

    /** Inner volume in cm3. */
    public static double volume() {
        return Math.PI / 4 * DIAMETER * DIAMETER * (SHALLOW + DEEP) / 2 / 1000;
    }

    /** Longest thin straight item that goes in. */
    public static double longestRod() {
        return Math.hypot(DIAMETER, DEEP);
    }

    /** Rise of the floor across the diameter over the diameter. */
    public static double floorSlope() {
        return (DEEP - SHALLOW) / DIAMETER;
    }

    /** Whether an upright rod of a diameter and length goes in on the deep side. */
    public static boolean uprightRodFits(double diameter, double length) {
        return diameter <= DIAMETER && length <= DEEP - diameter * floorSlope();
    }

    /**
     * A compact part by the three edges of its box and, when known, its own volume in cm3 (null otherwise). Only the part's box and volume
     * are known, so the answer may be that they do not decide.
     */
    public static Fit box(double longest, double middle, double shortest, Double ownVolume) {
        if (uprightRodFits(Math.hypot(middle, shortest), longest)) {
            return Fit.FITS;
        }
        boolean tooBig = ownVolume != null && ownVolume > volume();
        return longest > longestRod() || tooBig ? Fit.DOES_NOT_FIT : Fit.CANNOT_TELL;
    }

    /** A ball: it goes in when its diameter is not larger than the gauge's. */
    public static Fit ball(double diameter) {
        return diameter <= DIAMETER ? Fit.FITS : Fit.DOES_NOT_FIT;
    }

    /** Whether a ball drops through the hole of the small-ball test by its own weight. */
    public static boolean ballDrops(double diameter) {
        return diameter < BALL_HOLE;
    }
}
