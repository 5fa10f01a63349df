package org.flexwright.testing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.core.reading.HardnessText;
import org.flexwright.quantity.QuantityKind;

/**
 * A durometer scale: spring, indentor and travel. The reading H runs from 0 (indentor fully out) to 100 (flush with the foot); the
 * spring force in N is linear in H, the indentation in mm is travel x (1 - H/100). Scales never convert into each other silently.
 *
 * <p>Spring and travel: ASTM D2240 (from memory; the preload 56 gf of type A was seen); ISO AO from the same sheet of notes.
 */
public enum GaugeScale {
    /** Truncated cone 35 degrees, tip 0.79 mm. */
    A("A", QuantityKind.SHORE_A, Spring.OF_A, 2.50, 1.0),
    /** Cone 30 degrees, spring of type A. */
    B("B", QuantityKind.SHORE_B, Spring.OF_A, 2.50, Double.NaN),
    /** Truncated cone of type A, spring of type D. */
    C("C", QuantityKind.SHORE_C, Spring.OF_D, 2.50, Double.NaN),
    /** Cone 30 degrees, tip radius 0.10 mm. */
    D("D", QuantityKind.SHORE_D, Spring.OF_D, 2.50, 5.0),
    /** Ball of radius 1.20 mm, spring of type D. */
    DO("DO", QuantityKind.SHORE_DO, Spring.OF_D, 2.50, Double.NaN),
    /** Ball of radius 2.5 mm, spring of type A. */
    E("E", QuantityKind.SHORE_E, Spring.OF_A, 2.50, Double.NaN),
    /** Ball of radius 1.20 mm, spring of type A. */
    O("O", QuantityKind.SHORE_O, Spring.OF_A, 2.50, Double.NaN),
    /** Ball of radius 1.20 mm, soft spring; called OO too. */
    SHORE_00("00", QuantityKind.SHORE_00, Spring.OF_00, 2.50, Double.NaN),
    /** Ball of radius 6.35 mm, spring of type 00. */
    SHORE_000("000", QuantityKind.SHORE_000, Spring.OF_00, 2.50, Double.NaN),
    /** Ball of radius 2.5 mm, spring of type A; ISO. */
    AO("AO", QuantityKind.SHORE_AO, Spring.OF_A, 2.50, 1.0),
    /** Small cone of 30 degrees for thin pieces; ISO calls it AM, ASTM M. */
    AM("AM", QuantityKind.SHORE_AM, Spring.OF_M, 1.25, 0.25);

    /** A spring: force in N at zero and for each point. */
    private enum Spring {
        OF_A(0.550, 0.075), OF_D(0, 0.4445), OF_00(0.203, 0.00908), OF_M(0.324, 0.0044);

        private final double atZero;
        private final double perPoint;

        Spring(double atZero, double perPoint) {
            this.atZero = atZero;
            this.perPoint = perPoint;
        }
    }

    /** Where spring and travel come from. */
    public static final Source SPRING_SOURCE = Source.fromMemory("ASTM D2240, springs and indentors; preload of type A seen in a copy");

    private static final double NEWTON_PER_GRAM_FORCE = 9.80665e-3;
    private static final double INCH_TRAVEL = 2.54;

    private final String symbol;
    private final QuantityKind kind;
    private final Spring spring;
    private final double travel;
    private final double contactMass;

    GaugeScale(String symbol, QuantityKind kind, Spring spring, double travel, double contactMass) {
        this.symbol = symbol;
        this.kind = kind;
        this.spring = spring;
        this.travel = travel;
        this.contactMass = contactMass;
    }

    /** Kind of quantity of its readings. */
    public QuantityKind kind() {
        return kind;
    }

    /** Id of the property that is a hardness of the material on this scale. */
    public String materialProperty() {
        return "testing.shore-" + symbol.toLowerCase(Locale.ROOT);
    }

    /** Id of the property that this gauge reads on a thin or curved piece. */
    public String apparentProperty() {
        return this == A ? "testing.apparent-hardness" : "testing.apparent-hardness-" + symbol.toLowerCase(Locale.ROOT);
    }

    /** The scale a text names: {@code A}, {@code Shore A}, {@code OO}, {@code M}; empty when it names none. */
    public static Optional<GaugeScale> named(String text) {
        String word = text == null ? "" : text.strip().toUpperCase(Locale.ROOT).replaceFirst("^(SHORE|SH)\\s*", "");
        QuantityKind known = HardnessText.SCALES.get(word);
        return Arrays.stream(values()).filter(scale -> scale.kind == known).findFirst();
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
        return spring.atZero + spring.perPoint * reading;
    }

    /** Spring force in grams-force at reading zero. */
    public double preloadGramForce() {
        return spring.atZero / NEWTON_PER_GRAM_FORCE;
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
        return spring.perPoint / springForce(reading) + 1 / (100 - reading);
    }
}
