package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.field.Provenances;
import org.flexwright.core.verdict.PartBudget.Kind;
import org.flexwright.core.view.Bars;
import org.flexwright.core.view.Budgets;
import org.flexwright.core.view.Lanes;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.numerics.MedianSpread;
import org.junit.jupiter.api.Test;

class PartBudgetTest {

    /** The sheet's five readings 61 60.5 62 61 60, step 0.5, gauge ± 1: its budget of the mean is 0.68130; a median scatters more. */
    @Test
    void fiveReadingsOfADurometer() {
        PartBudget budget = budget(gauge(0.5, 1.0, null), 61, 60.5, 62, 61, 60);
        double readings = 0.74162 * MedianSpread.factor(5) / Math.sqrt(5);
        assertEquals(readings, standard(budget, Kind.READINGS), 1e-5);
        assertEquals(0.5 / Math.sqrt(12), standard(budget, Kind.STEP), 1e-12);
        assertEquals(1 / Math.sqrt(3), standard(budget, Kind.GAUGE), 1e-12);
        assertEquals(Math.sqrt(readings * readings + 0.25 / 12 + 1 / 3.0), budget.combined().orElseThrow().standard(), 1e-5);
        assertTrue(budget.combined().orElseThrow().standard() > 0.68130);
        assertTrue(budget.combined().orElseThrow().effectiveDf() > 4, "most of it is a stated limit");
        assertEquals("61.0 ± 1.4 Shore A", budget.text());
        Bars bars = Budgets.bars(budget);
        assertEquals(4, bars.bars().size());
        assertTrue(bars.bars().getLast().sum());
        List<String> said = Budgets.sentences(budget);
        assertTrue(said.get(0).contains("Gauge, about 70 %"), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.contains("drift is not in here")), said.toString());
    }

    @Test
    void oneReadingTakesTheSpreadTheGaugeIsKnownFor() {
        PartBudget bare = budget(gauge(0.5, null, null), 61);
        assertTrue(bare.contributions().stream().noneMatch(c -> c.kind() == Kind.READINGS));
        assertTrue(bare.expanded().isEmpty(), "one reading shows no band while its scatter is unknown");
        assertTrue(Budgets.sentences(bare).stream().anyMatch(s -> s.contains("One reading")));
        PartBudget known = budget(gauge(0.5, null, 0.8), 61);
        assertEquals(0.8, standard(known, Kind.READINGS), 1e-12);
        assertTrue(known.contributions().get(0).how().text().contains("hand gauge"));
    }

    /** Five readings far apart contradict the gauge: they count themselves. */
    @Test
    void readingsThatScatterMoreThanTheGaugeCountThemselves() {
        PartBudget quiet = budget(gauge(0.5, null, 0.8), 61, 61, 61.5);
        assertEquals(0.8 * MedianSpread.factor(3) / Math.sqrt(3), standard(quiet, Kind.READINGS), 1e-9);
        PartBudget wild = budget(gauge(0.5, null, 0.8), 55, 61, 67);
        assertEquals(6 * MedianSpread.factor(3) / Math.sqrt(3), standard(wild, Kind.READINGS), 1e-9);
    }

    @Test
    void identicalReadingsAreNotExact() {
        PartBudget budget = budget(null, 61, 61, 61);
        assertEquals(0, standard(budget, Kind.READINGS));
        assertEquals(1 / Math.sqrt(12), standard(budget, Kind.STEP), 1e-12, "whole points were written");
        assertTrue(budget.expanded().orElseThrow() > 0.5);
    }

    /** A result of a recording is no surer for having been read several times; what gauge and step say already counts once. */
    @Test
    void theBandOfAResultIsInTheBudget() {
        Trial trial = Bench.trial();
        Measurement measurement = Bench.read(Bench.part(trial, "P1"), Bench.HARDNESS, 61, 61.5, 62);
        var from = ModelFactory.eINSTANCE.createProvenance();
        from.setFeature(Provenances.path(measurement.getReadings().get(1), ModelPackage.Literals.READING__VALUE));
        from.setUncertainty(4.0);
        measurement.getProvenance().add(from);
        PartBudget bare = PartBudget.of(PartValues.of(trial, measurement.getKey(), Bench.HARDNESS).get(0), Bench.HARDNESS).orElseThrow();
        double all = Math.hypot(standard(bare, Kind.RESULT), standard(bare, Kind.STEP));
        assertEquals(2, all, 1e-12, "half of the band");
        assertTrue(bare.expanded().orElseThrow() > 4 * 0.98);
        measurement.setInstrument(gauge(0.5, 1.0, null));
        PartBudget named = PartBudget.of(PartValues.of(trial, measurement.getKey(), Bench.HARDNESS).get(0), Bench.HARDNESS).orElseThrow();
        assertEquals(bare.combined().orElseThrow().standard(), named.combined().orElseThrow().standard(), 1e-12, "the gauge is in the band of the result");
        from.setUncertainty(0.5);
        PartBudget narrow = PartBudget.of(PartValues.of(trial, measurement.getKey(), Bench.HARDNESS).get(0), Bench.HARDNESS).orElseThrow();
        assertTrue(narrow.contributions().stream().noneMatch(c -> c.kind() == Kind.RESULT), "the gauge says more");
    }

    @Test
    void aBoundHasNoBudget() {
        Trial trial = Bench.trial();
        Bench.read(Bench.part(trial, "P1"), Bench.HARDNESS).getReadings().add(Bench.reading(12, Censoring.MORE_THAN));
        PartValue value = PartValues.of(trial, Bench.key(Bench.HARDNESS), Bench.HARDNESS).get(0);
        assertTrue(PartBudget.of(value, Bench.HARDNESS).isEmpty());
    }

    @Test
    void lanesShowEveryReadingTheMeanAndTheReference() {
        Trial trial = Bench.trial();
        Bench.read(Bench.part(trial, "P1"), Bench.HARDNESS, 41, 42, 43);
        Bench.read(Bench.part(trial, "P2"), Bench.HARDNESS, 44, 44, 45);
        Trial other = Bench.trial();
        Bench.read(Bench.part(other, "R0"), Bench.HARDNESS, 42, 42.5);
        var target = Bench.nominal(42, 3);
        List<PartValue> parts = PartValues.of(trial, target.getKey(), Bench.HARDNESS);
        List<PartValue> reference = PartValues.of(other, target.getKey(), Bench.HARDNESS);
        Lanes lanes = Lanes.of(target, Bench.HARDNESS, parts, Verdicts.judge(target, Bench.HARDNESS, parts), reference).orElseThrow();
        assertEquals(List.of("R0", "P1", "P2", "Mean"), lanes.lanes().stream().map(Lanes.Lane::label).toList());
        assertEquals(3, lanes.lanes().get(1).readings().size());
        assertEquals(39, lanes.band().low());
        assertTrue(lanes.scale().low() <= 39 && lanes.scale().high() >= 45);
        assertTrue(Lanes.of(target, Bench.HARDNESS, List.of(), Verdicts.judge(target, Bench.HARDNESS, List.of()), List.of()).isEmpty());
    }

    private static double standard(PartBudget budget, Kind kind) {
        return budget.contributions().stream().filter(c -> c.kind() == kind).findFirst().orElseThrow().standard();
    }

    private static PartBudget budget(Instrument gauge, double... readings) {
        Trial trial = Bench.trial();
        Measurement measurement = Bench.read(Bench.part(trial, "P1"), Bench.HARDNESS, readings);
        measurement.setInstrument(gauge);
        return PartBudget.of(PartValues.of(trial, measurement.getKey(), Bench.HARDNESS).get(0), Bench.HARDNESS).orElseThrow();
    }

    private static Instrument gauge(Double step, Double accuracy, Double spread) {
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("hand gauge");
        gauge.setResolution(step);
        gauge.setAccuracy(accuracy);
        gauge.setSpread(spread);
        return gauge;
    }
}
