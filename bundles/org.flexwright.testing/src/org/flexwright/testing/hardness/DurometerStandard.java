package org.flexwright.testing.hardness;

import static org.flexwright.testing.GaugeScale.A;
import static org.flexwright.testing.GaugeScale.AM;
import static org.flexwright.testing.GaugeScale.AO;
import static org.flexwright.testing.GaugeScale.D;

import java.util.EnumSet;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.testing.GaugeScale;

/**
 * The protocol of three durometer standards, each figure with its own origin. The texts were seen only in parts: whoever wants to
 * claim conformity needs the standard itself.
 */
public enum DurometerStandard {
    /** Vulcanised and thermoplastic rubber. */
    ISO_48_4("ISO 48-4:2018", EnumSet.of(A, D, AO, AM)) {
        @Override
        public Requirement minThickness(GaugeScale scale) {
            return scale == AM ? remembered(1.5) : seen(6);
        }

        @Override
        public Requirement minEdge(GaugeScale scale) {
            return remembered(scale == AM ? 4.5 : scale == AO ? 15 : 12);
        }

        @Override
        public Requirement minSpacing(GaugeScale scale) {
            return scale == AM ? remembered(0.8) : seen(6);
        }

        @Override
        public Requirement minReadings(RubberKind kind) {
            return clause(kind == RubberKind.UNKNOWN ? 5 : 3, "9.3");
        }

        @Override
        public Requirement dwell(RubberKind kind) {
            return clause(kind == RubberKind.THERMOPLASTIC ? 15 : 3, "9.2");
        }

        @Override
        public Requirement hoursAfterCure() {
            return clause(16, "8");
        }

        @Override
        public Centre centre() {
            return Centre.MEDIAN;
        }
    },
    /** Plastics and ebonite. */
    ISO_868("ISO 868:2003", EnumSet.of(A, D)) {
        @Override
        public Requirement minThickness(GaugeScale scale) {
            return remembered(4);
        }

        @Override
        public Requirement minEdge(GaugeScale scale) {
            return remembered(9);
        }

        @Override
        public Requirement minSpacing(GaugeScale scale) {
            return remembered(6);
        }

        @Override
        public Requirement minReadings(RubberKind kind) {
            return remembered(5);
        }

        @Override
        public Requirement dwell(RubberKind kind) {
            return remembered(15);
        }

        @Override
        public Requirement hoursAfterCure() {
            return borrowed(16, "cl. 8");
        }

        @Override
        public Centre centre() {
            return Centre.MEAN;
        }
    },
    /** Rubber property, durometer hardness. */
    ASTM_D2240("ASTM D2240", EnumSet.complementOf(EnumSet.of(AO))) {
        @Override
        public Requirement minThickness(GaugeScale scale) {
            return remembered(scale == AM ? 1.25 : 6.0);
        }

        @Override
        public Requirement minEdge(GaugeScale scale) {
            return scale == AM ? borrowed(4.5, "cl. not confirmed") : seen(12);
        }

        @Override
        public Requirement minSpacing(GaugeScale scale) {
            return scale == AM ? borrowed(0.8, "cl. not confirmed") : remembered(6.0);
        }

        @Override
        public Requirement minReadings(RubberKind kind) {
            return remembered(5);
        }

        @Override
        public Requirement dwell(RubberKind kind) {
            return remembered(1);
        }

        @Override
        public Requirement hoursAfterCure() {
            return remembered(16);
        }

        @Override
        public Centre centre() {
            return Centre.MEDIAN;
        }
    };

    private static final String NOT_CONFIRMED = ", clause not confirmed";

    private final String designation;
    private final Set<GaugeScale> scales;

    DurometerStandard(String designation, Set<GaugeScale> scales) {
        this.designation = designation;
        this.scales = scales;
    }

    /** Number and year as printed. */
    public String designation() {
        return designation;
    }

    @Override
    public String toString() {
        return designation;
    }

    /** Whether the standard has that scale. */
    public boolean covers(GaugeScale scale) {
        return scales.contains(scale);
    }

    /** Least thickness in mm. */
    public abstract Requirement minThickness(GaugeScale scale);

    /** Least distance to any edge in mm. */
    public abstract Requirement minEdge(GaugeScale scale);

    /** Least distance between two readings in mm. */
    public abstract Requirement minSpacing(GaugeScale scale);

    /** Least number of readings. */
    public abstract Requirement minReadings(RubberKind kind);

    /** Time from contact to reading in s. */
    public abstract Requirement dwell(RubberKind kind);

    /** Least time between the end of cure and the test in h. */
    public abstract Requirement hoursAfterCure();

    /** Median or mean of the readings. */
    public abstract Centre centre();

    /** The most plies that may make up the thickness; workshops keep to it under every standard. */
    public Requirement maxPlies() {
        return this == ISO_48_4 ? remembered(3) : new Requirement(3, Source.commonPractice("at most 3 smooth plies"));
    }

    Requirement clause(double value, String clause) {
        return new Requirement(value, Source.published(designation + ", cl. " + clause));
    }

    Requirement seen(double value) {
        return new Requirement(value, Source.published(designation + NOT_CONFIRMED));
    }

    Requirement remembered(double value) {
        return new Requirement(value, Source.fromMemory(designation + NOT_CONFIRMED));
    }

    /** Not in this standard as far as known; the rubber standard's figure is used and named. */
    Requirement borrowed(double value, String clause) {
        return new Requirement(value, Source.fromMemory("ISO 48-4:2018, " + clause + "; nothing at hand of " + designation));
    }
}
