package org.flexwright.core.gauge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.numerics.Interval;

/**
 * The result of a gauge study. Standard deviations and intervals (95 %) in the property's canonical unit.
 *
 * @param table      the readings it rests on
 * @param property   what was read
 * @param components in the order they are shown: what makes up the gauge, the gauge in all, the pieces, everything
 * @param errorDf    degrees of freedom behind the repeatability
 * @param step       one step of the gauge, as entered or else as the readings are written; 0 when unknown
 * @param notes      what else to know
 */
public record GaugeResult(GaugeTable table, PropertyDef property, List<Component> components, int errorDf, double step, List<Message> notes) implements GaugeOutcome {
    /** Where the analysis comes from. */
    public static final Source SOURCE = Source.published("crossed analysis of variance, AIAG MSA, 4th ed. 2010");
    /** Where the intervals come from. */
    public static final Source INTERVALS = Source.fromMemory("chi-square and modified large-sample intervals, Burdick, Borror and Montgomery 2005; coverage checked by simulation");
    private static final double CATEGORIES_FACTOR = 1.41;
    private static final double SPREADS = 6;

    public GaugeResult {
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(property, "property");
        components = List.copyOf(components);
        notes = List.copyOf(notes);
    }

    /** What a spread comes from. */
    public enum Kind {
        /** The same person reads the same piece again. */
        REPEATABILITY,
        /** Persons read differently in the mean. */
        PERSONS,
        /** Persons differ on some pieces and not on others. */
        PERSONS_BY_PIECE,
        /** All of the above: the gauge in the hands that hold it. */
        GAUGE,
        /** The pieces differ. */
        PIECES,
        /** Everything. */
        TOTAL;

        /** The kind in words. */
        public String word() {
            return Message.of(GaugeResult.class, "kind." + name().toLowerCase(java.util.Locale.ROOT)).text();
        }
    }

    /**
     * One component.
     *
     * @param kind     what it is
     * @param sd       its standard deviation, 0 when the estimate of its variance is below 0
     * @param interval interval of the standard deviation, 95 %; null when there is none
     */
    public record Component(Kind kind, double sd, Interval interval) {
        public Component {
            Objects.requireNonNull(kind, "kind");
        }
    }

    /** A component; empty when the study cannot tell of it. */
    public Optional<Component> component(Kind kind) {
        return components.stream().filter(c -> c.kind() == kind).findFirst();
    }

    private double sd(Kind kind) {
        return component(kind).map(Component::sd).orElse(0.0);
    }

    /** True when one person made all readings: what other hands add is not known. */
    public boolean onePerson() {
        return table.persons().size() == 1;
    }

    /** A component's share of all variance in per cent; empty when nothing varies. */
    public OptionalDouble sharePercent(Kind kind) {
        double total = sd(Kind.TOTAL);
        return total == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * sd(kind) * sd(kind) / (total * total));
    }

    /** The gauge's share of the standard deviation in per cent; empty when nothing varies. */
    public OptionalDouble studyPercent() {
        double total = sd(Kind.TOTAL);
        return total == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * sd(Kind.GAUGE) / total);
    }

    /** Six standard deviations of the gauge as per cent of the width of the target; empty when none was entered. */
    public OptionalDouble tolerancePercent() {
        Double width = table.study().getTolerance();
        return width == null || !(width > 0) ? OptionalDouble.empty() : OptionalDouble.of(100 * SPREADS * sd(Kind.GAUGE) / width);
    }

    /** How many kinds of piece the gauge can tell apart: floor of 1.41 pieces over gauge; empty when the gauge shows no spread. */
    public OptionalInt kinds() {
        double gauge = sd(Kind.GAUGE);
        return gauge == 0 ? OptionalInt.empty() : OptionalInt.of((int) Math.floor(CATEGORIES_FACTOR * sd(Kind.PIECES) / gauge));
    }

    /** What may be taken as the gauge's own spread for one reading by one person: the repeatability, never less than one step hides. */
    public double ownSpread() {
        return Math.max(sd(Kind.REPEATABILITY), step / Math.sqrt(12));
    }
}
