package org.flexwright.core.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.gauge.GaugeResult.Component;
import org.flexwright.core.gauge.GaugeResult.Kind;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.model.Censoring;
import org.flexwright.model.GaugeStudy;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.OneWayAnova;
import org.flexwright.numerics.VarianceIntervals;
import org.flexwright.numerics.VarianceIntervals.Term;

/**
 * Analyses a gauge study. Several persons: every person must have read every piece equally often, at least twice; uneven readings are
 * refused with what is missing. One person: repeatability alone, and pieces may be read unequally often.
 */
public final class GaugeAnalysis {
    private static final double LEVEL = Verdicts.LEVEL;
    /** Fewer persons than this say little of persons. */
    private static final int FEW_PERSONS = 5;
    /** Below this the share of pieces in the spread is hardly known. */
    private static final int FEW_PIECES = 5;
    private static final int MOST_NAMED = 4;

    private final GaugeTable table;
    private final PropertyDef property;
    private final String code;

    private GaugeAnalysis(GaugeStudy study, PropertyDef property) {
        this.table = GaugeTable.of(study);
        this.property = property;
        this.code = study.getCode() == null || study.getCode().isBlank() ? say("study").text() : study.getCode();
    }

    /** The outcome; {@code property} is what the study's readings are of. */
    public static GaugeOutcome of(GaugeStudy study, PropertyDef property) {
        return new GaugeAnalysis(study, property).outcome();
    }

    private GaugeOutcome outcome() {
        Optional<Message> wrong = wrong();
        if (wrong.isPresent()) {
            return new GaugeOutcome.Refused(wrong.get());
        }
        double[] all = table.pieces().stream().flatMap(p -> table.persons().stream().map(w -> table.numbers(p, w))).flatMapToDouble(Arrays::stream).toArray();
        double stated = table.study().getInstrument() == null ? 0
                : GaugeAmounts.canonical(table.study().getInstrument(), table.study().getInstrument().getResolution(), property);
        double step = stated > 0 ? stated : GaugeAmounts.writtenStep(all);
        if (Arrays.stream(all).allMatch(v -> v == all[0])) {
            return refused("identical", code, number(all[0]), step > 0 ? number(step) : say("unknownStep").text());
        }
        return table.persons().size() == 1 ? onePerson(step) : crossed(step);
    }

    private Optional<Message> wrong() {
        if (property.yesNo()) {
            return Optional.of(say("yesNo", property.title()));
        }
        if (table.count() == 0) {
            return Optional.of(say("empty", code));
        }
        if (table.pieces().size() < 2) {
            return Optional.of(say("onePiece", code, table.pieces().isEmpty() ? "" : table.pieces().get(0)));
        }
        List<String> bounds = new ArrayList<>();
        List<String> uneven = new ArrayList<>();
        int repeats = usual();
        for (String piece : table.pieces()) {
            for (String who : table.persons()) {
                if (table.counting(piece, who).stream().anyMatch(r -> r.getCensoring() != Censoring.NONE)) {
                    bounds.add(where(piece, who));
                }
                int n = table.counting(piece, who).size();
                if (n != repeats) {
                    uneven.add(say("has", where(piece, who), String.valueOf(n)).text());
                }
            }
        }
        if (!bounds.isEmpty()) {
            return Optional.of(say("bound", code, named(bounds)));
        }
        if (table.repeats() < 2) {
            return Optional.of(say("noRepeats", code));
        }
        if (table.persons().size() > 1) {
            if (uneven.isEmpty() && repeats < 2) {
                return Optional.of(say("noRepeats", code));
            }
            return uneven.isEmpty() ? Optional.empty() : Optional.of(say("uneven", code, named(uneven), String.valueOf(repeats)));
        }
        List<String> unread = table.pieces().stream().filter(p -> table.counting(p, table.persons().get(0)).isEmpty()).toList();
        return unread.isEmpty() ? Optional.empty() : Optional.of(say("unread", code, named(unread)));
    }

    /** How many readings most cells have; of equals the larger number. */
    private int usual() {
        Map<Integer, Long> counts = table.pieces().stream().flatMap(p -> table.persons().stream().map(w -> table.counting(p, w).size())).collect(Collectors.groupingBy(n -> n, Collectors
                .counting()));
        return counts.entrySet().stream().max(Map.Entry.<Integer, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey).orElse(0);
    }

    private static String where(String piece, String who) {
        return who.isEmpty() ? piece : say("by", piece, who).text();
    }

    private static String named(List<String> all) {
        return all.size() <= MOST_NAMED ? String.join(", ", all)
                : say("more", String.join(", ", all.subList(0, MOST_NAMED)), String.valueOf(all.size() - MOST_NAMED)).text();
    }

    private GaugeOutcome onePerson(double step) {
        String who = table.persons().get(0);
        double[][] groups = table.pieces().stream().map(p -> table.numbers(p, who)).toArray(double[][]::new);
        int n = Arrays.stream(groups).mapToInt(g -> g.length).sum();
        int dfWithin = n - groups.length;
        Optional<OneWayAnova> anova = OneWayAnova.of(groups);
        double within = anova.map(OneWayAnova::msWithin).orElse(0.0);
        double between = anova.map(OneWayAnova::msBetween).orElseGet(() -> meanSquare(groups, n));
        double squares = Arrays.stream(groups).mapToDouble(g -> (double) g.length * g.length).sum();
        double each = (n - squares / n) / (groups.length - 1);
        double pieces = Math.max(0, (between - within) / each);
        Interval repeatability = VarianceIntervals.sum(LEVEL, new Term(1, within, dfWithin));
        List<Component> components = List.of(component(Kind.REPEATABILITY, within, repeatability), component(Kind.GAUGE, within, repeatability),
                component(Kind.PIECES, pieces, VarianceIntervals.difference(LEVEL, new Term(1 / each, between, groups.length - 1.0), new Term(1 / each, within, dfWithin))),
                component(Kind.TOTAL, within + pieces, null));
        List<Message> notes = new ArrayList<>();
        notes.add(say("note.onePerson"));
        if (Arrays.stream(groups).mapToInt(g -> g.length).distinct().count() > 1) {
            notes.add(say("note.unequal"));
        }
        return result(components, dfWithin, step, notes);
    }

    /** Mean square between groups that have no spread within. */
    private static double meanSquare(double[][] groups, int n) {
        double mean = Arrays.stream(groups).flatMapToDouble(Arrays::stream).sum() / n;
        return Arrays.stream(groups).mapToDouble(g -> g.length * (g[0] - mean) * (g[0] - mean)).sum() / (groups.length - 1);
    }

    private GaugeOutcome crossed(double step) {
        double[][][] readings = table.pieces().stream().map(p -> table.persons().stream().map(w -> table.numbers(p, w)).toArray(double[][]::new)).toArray(double[][][]::new);
        org.flexwright.numerics.GaugeStudy study = org.flexwright.numerics.GaugeStudy.of(readings).orElseThrow();
        List<Component> components = new ArrayList<>();
        components.add(component(Kind.REPEATABILITY, study.repeatability(), study.repeatabilityInterval(LEVEL)));
        components.add(component(Kind.PERSONS, study.operatorVariance(), study.operatorInterval(LEVEL).orElse(null)));
        if (!study.pooled()) {
            components.add(component(Kind.PERSONS_BY_PIECE, study.interaction(), study.interactionInterval(LEVEL).orElse(null)));
        }
        components.add(component(Kind.GAUGE, study.gauge(), study.gaugeInterval(LEVEL)));
        components.add(component(Kind.PIECES, study.part(), study.partInterval(LEVEL)));
        components.add(component(Kind.TOTAL, study.total(), null));
        List<Message> notes = new ArrayList<>();
        study.interactionP().ifPresent(p -> notes.add(say(study.pooled() ? "note.pooled" : "note.interaction", p < 0.001 ? "< 0.001" : FieldText.fixed(p, p < 0.01 ? 3 : 2))));
        if (table.persons().size() < FEW_PERSONS) {
            notes.add(say("note.fewPersons", String.valueOf(table.persons().size())));
        }
        return result(components, study.errorDf(), step, notes);
    }

    private static Component component(Kind kind, double variance, Interval interval) {
        return new Component(kind, Math.sqrt(variance), interval == null ? null : new Interval(Math.sqrt(interval.low()), Math.sqrt(interval.high())));
    }

    private GaugeResult result(List<Component> components, int df, double step, List<Message> notes) {
        if (table.pieces().size() < FEW_PIECES) {
            notes.add(say("note.fewPieces", String.valueOf(table.pieces().size())));
        }
        GaugeResult result = new GaugeResult(table, property, components, df, step, notes);
        if (result.component(Kind.REPEATABILITY).orElseThrow().sd() < result.ownSpread()) {
            notes.add(say("note.step", number(step)));
        }
        return new GaugeResult(table, property, components, df, step, notes);
    }

    private String number(double value) {
        return FieldText.number(value, property.kind(), "");
    }

    private static GaugeOutcome refused(String key, Object... args) {
        return new GaugeOutcome.Refused(say(key, args));
    }

    static Message say(String key, Object... args) {
        return Message.of(GaugeAnalysis.class, key, args);
    }
}
