package org.flexwright.core.rubber;

import org.flexwright.core.Source;
import org.flexwright.numerics.Normal;

/** Young's modulus in MPa from hardness in points Shore A. Three published formulas; they disagree, and that is the band. */
public enum HardnessModel {

    /** Gent 1958: the gauge as a flat punch. */
    GENT("Gent", 20, 80, Source.published("Gent 1958, IRI Trans. 34, 46")) {
        @Override
        public double modulus(double hardness) {
            double force = GRAM_FORCE * (PRELOAD + SPRING * hardness);
            double depth = TRAVEL * (1 - hardness / 100);
            return 3 * force / (8 * punchRadius() * depth);
        }
    },
    /** Qi, Joyce and Boyce 2003; logarithm to base ten. */
    QI("Qi, Joyce and Boyce", 20, 80, Source.published("Qi, Joyce and Boyce 2003, Rubber Chem. Technol. 76, 419")) {
        @Override
        public double modulus(double hardness) {
            return Math.pow(10, 0.0235 * hardness - 0.6403);
        }
    },
    /** The curve of ISO 48-2, Shore A taken as IRHD. */
    IRHD("IRHD curve", 30, 80, Source.fromMemory("ISO 48-2, curve of IRHD against modulus; Shore A taken as IRHD")) {
        @Override
        public double modulus(double hardness) {
            return Irhd.modulus(hardness);
        }
    };

    /** N to a gram-force, as rounded in the formula. */
    private static final double GRAM_FORCE = 0.00981;
    private static final double PRELOAD = 56;
    private static final double SPRING = 7.62336;
    private static final double TRAVEL = 2.54;
    private static final double PUNCH = 0.137505;

    private final String title;
    private final double low;
    private final double high;
    private final Source source;

    HardnessModel(String title, double low, double high, Source source) {
        this.title = title;
        this.low = low;
        this.high = high;
        this.source = source;
    }

    /** Modulus in MPa; hardness above 0 and below 100. */
    public abstract double modulus(double hardness);

    /** Authors. */
    public String title() {
        return title;
    }

    /** Lowest hardness its authors or its use cover. */
    public double low() {
        return low;
    }

    /** Highest hardness its authors or its use cover. */
    public double high() {
        return high;
    }

    /** Where it stands. */
    public Source source() {
        return source;
    }

    /** Whether a hardness is inside its own range. */
    public boolean covers(double hardness) {
        return hardness >= low && hardness <= high;
    }

    /** Radius in mm of the flat punch E = 3F/(8 a h) that Gent's formula amounts to. */
    public static double punchRadius() {
        return PUNCH * 30 / 8;
    }

    /** Relative change of Gent's modulus by one point of hardness. */
    public static double perPoint(double hardness) {
        return SPRING / (PRELOAD + SPRING * hardness) + 1 / (100 - hardness);
    }

    /** International rubber hardness degrees. */
    public static final class Irhd {
        private static final double MIDDLE = 0.364;
        private static final double STEEPEST = 57;
        private static final double SPREAD = 100 / (STEEPEST * Math.sqrt(2 * Math.PI));

        private Irhd() {
        }

        /** IRHD of a modulus in MPa. */
        public static double hardness(double modulus) {
            return 100 * Normal.cumulative((Math.log10(modulus) - MIDDLE) / SPREAD);
        }

        /** Modulus in MPa of an IRHD above 0 and below 100. */
        public static double modulus(double hardness) {
            return Math.pow(10, MIDDLE + SPREAD * Normal.quantile(hardness / 100));
        }

        /** Width of the curve in decades of modulus. */
        public static double spread() {
            return SPREAD;
        }

        /** Difference of depths in mm under both forces in N for a ball of that radius in mm. */
        public static double depth(double radius, double contact, double total, double modulus) {
            return 0.615 * Math.pow(radius, -0.48) * (Math.pow(total / modulus, 0.74) - Math.pow(contact / modulus, 0.74));
        }
    }
}
