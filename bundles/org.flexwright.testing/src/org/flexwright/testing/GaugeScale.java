package org.flexwright.testing;

import org.flexwright.core.Source;

/**
 * A durometer scale: spring, indentor and travel. The reading H runs from 0 (indentor fully out) to 100 (flush with the foot); the
 * spring force in N is linear in H, the indentation in mm is travel x (1 - H/100). Scales never convert into each other silently.
 *
 * <p>Spring and travel: ASTM D2240 (from memory; the preload 56 gf of type A was seen); ISO AO from the same sheet of notes.
 */
public enum GaugeScale {
    /** Truncated cone 35 degrees, tip 0.79 mm. */
    A("A", 0.550, 0.075, 2.50, 1.0),
    /** Cone 30 degrees, tip radius 0.10 mm. */
    D("D", 0, 0.4445, 2.50, 5.0),
    /** Ball of radius 1.20 mm, soft spring; called OO too. */
    SHORE_00("00", 0.203, 0.00908, 2.50, Double.NaN),
    /** Ball of radius 6.35 mm, spring of type 00. */
    SHORE_000("000", 0.203, 0.00908, 2.50, Double.NaN),
    /** Ball of radius 2.5 mm, spring of type A; ISO. */
    AO("AO", 0.550, 0.075, 2.50, 1.0),
    /** Small cone of 30 degrees for thin pieces; ISO calls it AM, ASTM M. */
    AM("AM", 0.324, 0.0044, 1.25, 0.25);

    /** Where spring and travel come from. */
    public static final Source SPRING_SOURCE = Source.fromMemory("ASTM D2240, springs and indentors; preload of type A seen in a copy");

    private static final double NEWTON_PER_GRAM_FORCE = 9.80665e-3;
    private static final double INCH_TRAVEL = 2.54;

    private final String symbol;
    private final double forceAtZero;
    private final double forcePerPoint;
    private final double travel;
    private final double contactMass;

    GaugeScale(String symbol, double forceAtZero, double forcePerPoint, double travel, double contactMass) {
        this.symbol = symbol;
        this.forceAtZero = forceAtZero;
        this.forcePerPoint = forcePerPoint;
        this.travel = travel;
        this.contactMass = contactMass;
    }

    /** As printed before or after a reading: {@code A}, {@code 00}. */
    public String symbol() {
        return symbol;
    }

    @Override
    public String toString() {
        return symbol;
    }

    /** Spring force in N at a reading of 0 to 100. */
    public double springForce(double reading) {
        return forceAtZero + forcePerPoint * reading;
    }

    /** Spring force in grams-force at reading zero. */
    public double preloadGramForce() {
        return forceAtZero / NEWTON_PER_GRAM_FORCE;
    }

    /** Indentation in mm at a reading of 0 to 100. */
    public double indentation(double reading) {
        return travel * (1 - reading / 100);
    }

    /** Travel of the indentor in mm for one point. */
    public double millimetresPerPoint() {
        return travel / 100;
    }

    /** Travel for one point of an instrument built in inches (0.1 in for the whole scale), in mm. */
    public static double millimetresPerPointOfInchInstrument() {
        return INCH_TRAVEL / 100;
    }

    /** Contact mass on a stand in kg; NaN when no figure is at hand (from memory). */
    public double contactMass() {
        return contactMass;
    }

    /**
     * Relative change of the apparent stiffness force/indentation for one point, 1/point; readings above 0 and below 100. It follows
     * from spring and travel alone.
     */
    public double relativeStiffnessPerPoint(double reading) {
        return forcePerPoint / springForce(reading) + 1 / (100 - reading);
    }
}
