package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Instrument;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.MedianSpread;
import org.flexwright.numerics.Uncertainty;

/**
 * How sure the value of one part is, and what makes it unsure: scatter of its readings, step of the gauge, the gauge's own error, what
 * came with a result of a recording or calculation, drift that the control piece showed (JCGM 100:2008). It is about this part alone: how parts differ is another question.
 *
 * @param part          the part, its value the median of its readings in the property's canonical unit
 * @param property      what was read
 * @param contributions what is known to make it unsure
 * @param unknown       what is not known and therefore not in it, a sentence each
 */
public record PartBudget(PartValue part, PropertyDef property, List<Contribution> contributions, List<Message> unknown) {
    /** Where the way of adding comes from. */
    public static final Source SOURCE = Source.published("JCGM 100:2008 (GUM), standard uncertainties added by squares, t at the effective degrees of freedom");

    /** Bands of results are about 95 %, two standard uncertainties. */
    private static final double COVERAGE = 2;

    public PartBudget {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(property, "property");
        contributions = List.copyOf(contributions);
        unknown = List.copyOf(unknown);
    }

    /** What a contribution is. */
    public enum Kind {
        /** Readings on one piece scatter. */
        READINGS,
        /** One step of the display. */
        STEP,
        /** The gauge may be off. */
        GAUGE,
        /** What a recording or a calculation said of its result, beyond step and gauge. */
        RESULT,
        /** The control piece was off that day. */
        CONTROL;

        /** In words. */
        public String word() {
            return Case.words("budget." + name().toLowerCase(Locale.ROOT));
        }
    }

    /**
     * One contribution.
     *
     * @param kind     what it is
     * @param standard its standard uncertainty in the property's canonical unit, from 0 up
     * @param df       its degrees of freedom; infinite for a stated limit
     * @param how      how it was got, in words
     * @param source   what that rests on
     */
    public record Contribution(Kind kind, double standard, double df, Message how, Source source) {
    }

    /** The budget of a part; empty when it was not read, read as bounds, or is a yes or no. */
    public static Optional<PartBudget> of(PartValue part, PropertyDef property) {
        if (property.yesNo() || !part.hasNumber() || part.censored()) {
            return Optional.empty();
        }
        List<Contribution> known = new ArrayList<>();
        List<Message> unknown = new ArrayList<>();
        readings(part, property, known, unknown);
        step(part, property, known, unknown);
        gauge(part, property, known, unknown);
        result(part, property, known);
        control(part, property, known, unknown);
        return Optional.of(new PartBudget(part, property, known, unknown));
    }

    private static void readings(PartValue part, PropertyDef property, List<Contribution> known, List<Message> unknown) {
        double[] numbers = part.numbers();
        int n = Math.max(1, part.readings());
        Optional<ReadingScatter> gauge = ReadingScatter.known(List.of(part), property);
        if (numbers.length < 2 && gauge.isEmpty()) {
            unknown.add(Case.message("budget.oneReading"));
            return;
        }
        double own = numbers.length < 2 ? Double.NaN : Descriptive.standardDeviation(numbers).orElseThrow();
        double ownDf = numbers.length - 1.0;
        boolean byGauge = gauge.isPresent() && (Double.isNaN(own) || gauge.get().df() > ownDf && !MeanVerdict.contradicts(own, ownDf, gauge.get().sd(), gauge.get().df()));
        double sd = byGauge ? gauge.get().sd() : own;
        double factor = MedianSpread.factor(n);
        String from = byGauge ? gauge.get().from() : Case.words("budget.ownReadings");
        known.add(new Contribution(Kind.READINGS, sd * factor / Math.sqrt(n), byGauge ? gauge.get().df() : ownDf, n < 3 ? Case.message("budget.how.readings", spread(property, sd), from, String
                .valueOf(n)) : Case.message("budget.how.median", spread(property, sd), from, String.valueOf(n), FieldText.fixed(factor, 2)), byGauge ? Source.ownRecord(from)
                        : Source.derived("scatter of the median of normal readings, s times " + FieldText.fixed(factor, 2) + " / √n")));
    }

    private static void step(PartValue part, PropertyDef property, List<Contribution> known, List<Message> unknown) {
        double stated = part.instruments().stream().mapToDouble(g -> GaugeAmounts.canonical(g, g.getResolution(), property)).max().orElse(0);
        double step = stated > 0 ? stated : GaugeAmounts.writtenStep(part.numbers().length == 0 ? new double[] { part.value() } : part.numbers());
        if (step > 0) {
            known.add(new Contribution(Kind.STEP, Uncertainty.resolution(step), Double.POSITIVE_INFINITY, Case.message(stated > 0 ? "budget.how.step" : "budget.how.written", number(property, step)),
                    SOURCE));
        }
        if (part.instruments().isEmpty()) {
            unknown.add(Case.message("budget.noGauge"));
        }
    }

    private static void gauge(PartValue part, PropertyDef property, List<Contribution> known, List<Message> unknown) {
        Optional<Instrument> worst = part.instruments().stream().max(Comparator.comparingDouble(g -> GaugeAmounts.canonical(g, g.getAccuracy(), property)));
        double accuracy = worst.map(g -> GaugeAmounts.canonical(g, g.getAccuracy(), property)).orElse(0.0);
        if (accuracy > 0) {
            String name = worst.get().getName() == null ? Case.words("gauge") : worst.get().getName();
            known.add(new Contribution(Kind.GAUGE, Uncertainty.rectangular(accuracy), Double.POSITIVE_INFINITY, Case.message("budget.how.gauge", name, number(property, accuracy)), SOURCE));
        } else {
            worst.ifPresent(g -> unknown.add(Case.message("budget.noAccuracy", g.getName() == null ? Case.words("gauge") : g.getName())));
        }
    }

    /** The widest band that came with a reading. What of it step and gauge say already is not counted twice. */
    private static void result(PartValue part, PropertyDef property, List<Contribution> known) {
        double half = part.bandFromResult();
        double there = known.stream().filter(c -> c.kind() == Kind.STEP || c.kind() == Kind.GAUGE).mapToDouble(c -> c.standard() * c.standard()).sum();
        double rest = half * half / (COVERAGE * COVERAGE) - there;
        if (rest > 0) {
            known.add(new Contribution(Kind.RESULT, Math.sqrt(rest), Double.POSITIVE_INFINITY, Case.message(there > 0 ? "budget.how.resultRest" : "budget.how.result", number(property, half)),
                    Source.ownRecord(Case.words("budget.result.from"))));
        }
    }

    private static void control(PartValue part, PropertyDef property, List<Contribution> known, List<Message> unknown) {
        Optional<ControlReading> worst = part.sessions().stream().map(s -> ControlReading.of(s, property)).flatMap(Optional::stream).max(Comparator.comparingDouble(c -> Math.abs(c
                .difference())));
        if (worst.isEmpty()) {
            unknown.add(Case.message("budget.noControl"));
            return;
        }
        double off = Math.abs(worst.get().difference());
        known.add(new Contribution(Kind.CONTROL, Uncertainty.rectangular(off), Double.POSITIVE_INFINITY, Case.message("budget.how.control", Objects.toString(worst.get().piece().getCode(), Case.words(
                "control.unnamed")), number(property, off)), Source.commonPractice("what a kept piece read off is taken as a limit")));
    }

    /** Standard uncertainty with its effective degrees of freedom; empty when nothing at all is known. */
    public Optional<Uncertainty> combined() {
        return contributions.isEmpty() ? Optional.empty()
                : Optional.of(Uncertainty.combine(contributions.stream().map(c -> Uncertainty.Contribution.of(c.kind().name(), c.standard(), c.df())).toList()));
    }

    /** Half width of the 95 % interval of this part's value, of what is known; empty while nobody knows how its readings scatter, or below one degree of freedom. */
    public Optional<Double> expanded() {
        boolean scatter = contributions.stream().anyMatch(c -> c.kind() == Kind.READINGS);
        return combined().filter(u -> scatter).filter(u -> u.effectiveDf() >= 1).map(u -> u.expanded(Verdicts.LEVEL));
    }

    /** The value with its half width, as a sentence writes it: {@code 61 ± 2 Shore A}. */
    public String text() {
        String unit = property.kind().unit().symbol();
        return expanded().map(half -> FieldText.band(part.value() - half, part.value(), part.value() + half, property.kind(), unit)).orElseGet(() -> FieldText.number(part.value(), property
                .kind(), unit));
    }

    /** The largest contribution; empty when nothing is known. */
    public Optional<Contribution> largest() {
        return contributions.stream().max(Comparator.comparingDouble(Contribution::standard));
    }

    /** A standard deviation of a few readings is known to two figures at the best. */
    private static String spread(PropertyDef property, double sd) {
        return sd > 0 ? (FieldText.rounded(sd, sd / 5) + " " + property.kind().unit().display()).strip() : number(property, 0);
    }

    private static String number(PropertyDef property, double value) {
        return FieldText.number(value, property.kind(), property.kind().unit().symbol());
    }
}
