package org.flexwright.core.verdict;

import static org.flexwright.core.verdict.Bench.FORCE;
import static org.flexwright.core.verdict.Bench.HARDNESS;
import static org.flexwright.core.verdict.Bench.INVERTED;
import static org.flexwright.core.verdict.Bench.nominal;
import static org.flexwright.core.verdict.Bench.part;
import static org.flexwright.core.verdict.Bench.parts;
import static org.flexwright.core.verdict.Bench.read;
import static org.flexwright.core.verdict.Bench.reading;
import static org.flexwright.core.verdict.Bench.target;
import static org.flexwright.core.verdict.Bench.yes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictsTest {

    private static Judgement judge(Target target, PropertyDef property, Trial trial) {
        return Verdicts.judge(target, property, PartValues.of(trial, target.getKey(), property));
    }

    private static Judgement hardness(double... values) {
        return judge(nominal(42, 3), HARDNESS, parts(HARDNESS, values));
    }

    @Test
    void theFourCasesOfTheRule() {
        assertEquals(Verdict.IN, hardness(41, 42, 43).verdict());
        assertEquals(Verdict.CANNOT_TELL, hardness(45, 46, 47).verdict());
        assertEquals(Verdict.ABOVE, hardness(50, 51, 52).verdict());
        assertEquals(Verdict.BELOW, hardness(32, 33, 34).verdict());
        Trial one = Bench.trial();
        read(part(one, "1"), HARDNESS, 41, 42, 43, 42, 42);
        Judgement single = judge(nominal(42, 3), HARDNESS, one);
        assertEquals(Verdict.CANNOT_TELL, single.verdict());
        assertEquals(1, single.n());
        assertEquals(OptionalInt.of(2), single.moreParts());
        assertTrue(single.reason().text().contains("make 2 more"), single.reason().text());
    }

    @Test
    void theIntervalIsStudentsOverParts() {
        // t(0.975; 2) = 4.302653 (any table of Student's t), s = 1, n = 3: half width 2.484138.
        Judgement in = hardness(41, 42, 43);
        assertEquals(42 - 2.484138, in.interval().low(), 1e-5);
        assertEquals(42 + 2.484138, in.interval().high(), 1e-5);
        assertEquals("All of the 95 % interval 40 … 44 Shore A of 3 parts lies inside the target (42 ± 3 Shore A).", in.reason().text());
    }

    @Test
    void moreReadingsOnAPartAreNotMoreParts() {
        Trial trial = Bench.trial();
        for (int i = 0; i < 3; i++) {
            read(part(trial, "p" + i), HARDNESS, 44 + i, 45 + i, 46 + i, 45 + i);
        }
        Judgement judged = judge(nominal(42, 3), HARDNESS, trial);
        assertEquals(3, judged.n());
        assertEquals(hardness(45, 46, 47).interval(), judged.interval());
    }

    @Test
    void tooFewPartsStillShowTheDifference() {
        Judgement two = hardness(50, 52);
        assertEquals(Verdict.CANNOT_TELL, two.verdict());
        assertEquals(9, two.difference(), 1e-12);
        assertEquals("Two parts say too little about the spread: their mean lies 9 Shore A above the middle of the target; make 1 more.", two.reason().text());
        assertNull(hardness(50).interval());
    }

    @Test
    void howManyMorePartsWouldSettleItIsSaid() {
        // Mean 44, s = 1, edge at 45: t(0.975; n-1)/sqrt(n) < 1 first at n = 7 (2.4469/2.6458 = 0.925); at 6 it is 2.5706/2.4495 = 1.049.
        Judgement judged = hardness(43, 44, 45);
        assertEquals(Verdict.CANNOT_TELL, judged.verdict());
        assertEquals(OptionalInt.of(4), judged.moreParts());
        assertTrue(judged.reason().text().contains("about 4 more parts"), judged.reason().text());
        assertEquals(OptionalInt.empty(), hardness(44, 45, 46).moreParts(), "a mean on the edge is never settled by more parts");
    }

    @ParameterizedTest
    @CsvSource({"PIECE", "SPOT", "SUPPORT", "DWELL"})
    void anotherConditionIsNotComparable(Condition condition) {
        Consumer<PropertyKey> change = switch (condition) {
            case PIECE -> k -> k.setPieceKind(PieceKind.WITNESS_BUTTON);
            case SPOT -> k -> k.setSpot("crown");
            case SUPPORT -> k -> k.setSupport("foam");
            case DWELL -> k -> k.setDwell(15.0);
        };
        Target target = nominal(42, 3);
        Trial trial = parts(HARDNESS, 41, 42, 43);
        trial.getParts().forEach(p -> change.accept(p.getMeasurements().get(0).getKey()));
        Judgement judged = judge(target, HARDNESS, trial);
        assertEquals(Verdict.NOT_COMPARABLE, judged.verdict());
        assertNull(judged.mean());
        assertEquals(1, PartValues.differences(target.getKey(), trial.getParts().get(0).getMeasurements().get(0).getKey(), HARDNESS).size());
        PropertyDef lenient = new PropertyDef(HARDNESS.id(), "Hardness", QuantityKind.SHORE_A, false, Set.of(), "", Source.commonPractice());
        assertEquals(Verdict.IN, judge(target, lenient, trial).verdict());
    }

    @Test
    void whatIsNotComparableIsLeftAsideBesideWhatIs() {
        Trial trial = parts(HARDNESS, 41, 42, 43, 90);
        trial.getParts().get(3).getMeasurements().get(0).getKey().setSpot("crown");
        Judgement judged = judge(nominal(42, 3), HARDNESS, trial);
        assertEquals(Verdict.IN, judged.verdict());
        assertEquals(3, judged.n());
        assertEquals("1 parts were read under other conditions and are left aside.", judged.notes().get(0).text());
    }

    @Test
    void writingAndCaseOfASpotDoNotMatter() {
        Target target = nominal(42, 3);
        target.getKey().setSpot("Flange ");
        Trial trial = parts(HARDNESS, 41, 42, 43);
        trial.getParts().forEach(p -> p.getMeasurements().get(0).getKey().setSpot("flange"));
        assertEquals(Verdict.IN, judge(target, HARDNESS, trial).verdict());
    }

    @Test
    void aKnownSpreadIsUsedAndNamed() {
        Target target = nominal(42, 3);
        List<PartValue> two = PartValues.of(parts(HARDNESS, 42, 43), target.getKey(), HARDNESS);
        // z = 1.96 for a spread that is exactly known: 42.5 +- 1.386.
        Judgement judged = Verdicts.judge(target, HARDNESS, two, new KnownSpread(1, Double.POSITIVE_INFINITY, "trials T02 to T06"));
        assertEquals(Verdict.IN, judged.verdict());
        assertEquals(42.5 + 1.959964 / Math.sqrt(2), judged.interval().high(), 1e-5);
        assertTrue(judged.notes().get(0).text().contains("trials T02 to T06"));
    }

    @Test
    void partsThatSpreadMoreThanIsKnownAreJudgedByThemselves() {
        Target target = nominal(42, 3);
        List<PartValue> wild = PartValues.of(parts(HARDNESS, 38, 42, 46), target.getKey(), HARDNESS);
        Judgement judged = Verdicts.judge(target, HARDNESS, wild, new KnownSpread(0.5, 20, "trial T02"));
        assertEquals(Verdict.CANNOT_TELL, judged.verdict());
        assertTrue(judged.notes().get(0).text().contains("spread more than trial T02"), judged.notes().toString());
    }

    @Test
    void theSpreadOfEarlierTrialsIsPooled() {
        List<PartValue> a = PartValues.of(parts(HARDNESS, 40, 42), nominal(42, 3).getKey(), HARDNESS);
        List<PartValue> b = PartValues.of(parts(HARDNESS, 50, 50, 53), nominal(42, 3).getKey(), HARDNESS);
        KnownSpread pooled = PartValues.pooledSpread(List.of(a, b), "T01 and T02");
        assertEquals(3, pooled.df());
        assertEquals(Math.sqrt((2 + 6) / 3.0), pooled.sd(), 1e-12);
        assertNull(PartValues.pooledSpread(List.of(a.subList(0, 1)), "T01"));
    }

    @Test
    void readingsAlikeDoNotMakeABandNarrowerThanTheGauge() {
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setResolution(6.0);
        Trial trial = parts(HARDNESS, 42, 42, 42);
        // no gauge named: the step is the last digit written, 1/sqrt(12) * 4.302653/sqrt(3)
        assertEquals(0.717109, judge(nominal(42, 3), HARDNESS, trial).interval().halfWidth(), 1e-5);
        trial.getParts().forEach(p -> p.getMeasurements().get(0).setInstrument(gauge));
        Judgement judged = judge(nominal(42, 3), HARDNESS, trial);
        // 6/sqrt(12) * 4.302653/sqrt(3)
        assertEquals(4.302653, judged.interval().halfWidth(), 1e-5);
        assertEquals(Verdict.CANNOT_TELL, judged.verdict());
    }

    @Test
    void theGaugesOwnErrorIsNotedUnlessTheReferenceWasReadWithIt() {
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("Durometer 1");
        gauge.setAccuracy(1.0);
        Target target = nominal(42, 3);
        Trial trial = parts(HARDNESS, 41, 42, 43);
        trial.getParts().forEach(p -> p.getMeasurements().get(0).setInstrument(gauge));
        List<PartValue> values = PartValues.of(trial, target.getKey(), HARDNESS);
        Judgement judged = Verdicts.judge(target, HARDNESS, values);
        assertEquals(Verdict.IN, judged.verdict());
        assertTrue(judged.notes().get(0).text().startsWith("The gauge Durometer 1 may be off by 1 Shore A"), judged.notes().toString());
        assertEquals(List.of(), Verdicts.judge(target, HARDNESS, values, null, values).notes());
    }

    @Test
    void readingsLeftOutWithAReasonDoNotCount() {
        Trial trial = Bench.trial();
        Measurement measurement = read(part(trial, "1"), HARDNESS, 42, 90);
        assertEquals(66, PartValues.of(trial, nominal(42, 3).getKey(), HARDNESS).get(0).value());
        measurement.getReadings().get(1).setLeftOut("slipped off the edge");
        assertEquals(42, PartValues.of(trial, nominal(42, 3).getKey(), HARDNESS).get(0).value());
        measurement.setKnowledge(Knowledge.ESTIMATED);
        assertEquals(Verdict.NOT_MEASURED, judge(nominal(42, 3), HARDNESS, trial).verdict());
    }

    @Test
    void failedPartsAreAbsentFromMeans() {
        Trial trial = parts(HARDNESS, 41, 42, 43, 90);
        trial.getParts().get(3).setFailed(true);
        part(trial, "5").setFailed(true);
        Judgement judged = judge(nominal(42, 3), HARDNESS, trial);
        assertEquals(Verdict.IN, judged.verdict());
        assertEquals(3, judged.n());
        assertEquals(2, judged.failed());
        assertEquals("Part 4 failed: its 90 Shore A is absent from the mean.", judged.notes().get(0).text());
        Trial torn = Bench.trial();
        part(torn, "1").setFailed(true);
        assertEquals(Verdict.FAILED_PART, judge(nominal(42, 3), HARDNESS, torn).verdict());
        assertEquals(Verdict.NOT_MEASURED, judge(nominal(42, 3), HARDNESS, Bench.trial()).verdict());
    }

    @Test
    void rejectLimitsFlagSingleParts() {
        Target target = nominal(42, 30);
        target.setRejectAbove(50.0);
        target.setRejectBelow(30.0);
        Judgement judged = judge(target, HARDNESS, parts(HARDNESS, 41, 42, 51, 29));
        assertEquals(List.of("3", "4"), judged.rejected());
        assertEquals("Part 3 with 51 Shore A is above the reject limit 50 Shore A.", judged.notes().get(0).text());
    }

    @Test
    void oneSidedTargetsAndMissingLimits() {
        Target least = target(FORCE, TargetRule.AT_LEAST);
        assertTrue(judge(least, FORCE, parts(FORCE, 1, 1.1, 1.2)).reason().text().contains("no limits"));
        least.setLow(0.5);
        assertEquals(Verdict.IN, judge(least, FORCE, parts(FORCE, 1, 1.1, 1.2)).verdict());
        assertEquals(0.6, judge(least, FORCE, parts(FORCE, 1, 1.1, 1.2)).difference(), 1e-12);
        Target most = target(FORCE, TargetRule.AT_MOST);
        most.setHigh(0.5);
        assertEquals(Verdict.ABOVE, judge(most, FORCE, parts(FORCE, 1, 1.1, 1.2)).verdict());
        Target wrongWay = target(FORCE, TargetRule.BETWEEN);
        wrongWay.setLow(2.0);
        wrongWay.setHigh(1.0);
        assertEquals(Verdict.CANNOT_TELL, judge(wrongWay, FORCE, parts(FORCE, 1, 1.1, 1.2)).verdict());
        assertEquals(Verdict.CANNOT_TELL, judge(target(FORCE, TargetRule.NEVER), FORCE, parts(FORCE, 1, 1.1, 1.2)).verdict());
        assertEquals("at least 0.5 N", Limits.text(least, FORCE));
        assertEquals("42 ± 3 Shore A", Limits.text(nominal(42, 3), HARDNESS));
    }

    private static Trial bounds(Censoring censoring, double... values) {
        Trial trial = parts(FORCE, values);
        trial.getParts().forEach(p -> p.getMeasurements().get(0).getReadings().get(0).setCensoring(censoring));
        return trial;
    }

    @Test
    void boundsCountOnlyWhenAllLieOnOneSide() {
        Target target = target(FORCE, TargetRule.AT_LEAST);
        target.setLow(10.0);
        assertEquals(Verdict.IN, judge(target, FORCE, bounds(Censoring.MORE_THAN, 12, 12, 12)).verdict());
        assertEquals(Verdict.BELOW, judge(target, FORCE, bounds(Censoring.LESS_THAN, 9, 8, 7)).verdict());
        Judgement apart = judge(target, FORCE, bounds(Censoring.MORE_THAN, 12, 12, 9));
        assertEquals(Verdict.CANNOT_TELL, apart.verdict());
        assertNull(apart.mean());
        Judgement few = judge(target, FORCE, bounds(Censoring.MORE_THAN, 12, 12));
        assertEquals(Verdict.CANNOT_TELL, few.verdict());
        assertEquals(OptionalInt.of(1), few.moreParts());
    }

    @Test
    void theMedianOfAPartKeepsItsBounds() {
        Trial trial = Bench.trial();
        Measurement measurement = read(part(trial, "1"), FORCE, 10, 11);
        measurement.getReadings().add(reading(12, Censoring.MORE_THAN));
        PartValue value = PartValues.of(trial, Bench.key(FORCE), FORCE).get(0);
        assertFalse(value.censored());
        assertEquals(11, value.value());
        measurement.getReadings().add(reading(12, Censoring.MORE_THAN));
        value = PartValues.of(trial, Bench.key(FORCE), FORCE).get(0);
        assertTrue(value.censored());
        assertEquals(11.5, value.low());
        assertEquals(Double.POSITIVE_INFINITY, value.high());
    }

    private static Judgement inverted(TargetRule rule, Double allowed, boolean... parts) {
        Trial trial = Bench.trial();
        for (boolean value : parts) {
            yes(part(trial, String.valueOf(trial.getParts().size() + 1)), value);
        }
        Target target = target(INVERTED, rule);
        target.setAllowedShare(allowed);
        return judge(target, INVERTED, trial);
    }

    @Test
    void countsGoByClopperAndPearson() {
        // 4 of 5: 28.4 to 99.5 % (Clopper and Pearson 1934; beta quantiles 0.025 of (4, 2) and 0.975 of (5, 1)).
        Judgement four = inverted(TargetRule.ALWAYS, null, true, true, true, true, false);
        assertEquals(28.36, four.interval().low(), 0.01);
        assertEquals(99.49, four.interval().high(), 0.01);
        assertEquals(Verdict.BELOW, four.verdict());
        assertEquals("1 of 5 did not; between 1 and 72 % is to be expected.", four.reason().text());
    }

    @Test
    void neverAndAlways() {
        Judgement none = inverted(TargetRule.NEVER, null, false, false, false, false, false);
        assertEquals(Verdict.IN, none.verdict());
        assertEquals("None of 5 did; up to 52 % is not excluded.", none.reason().text());
        assertEquals(Verdict.CANNOT_TELL, inverted(TargetRule.NEVER, null, false, false).verdict());
        assertEquals(OptionalInt.of(1), inverted(TargetRule.NEVER, null, false, false).moreParts());
        assertEquals(Verdict.ABOVE, inverted(TargetRule.NEVER, null, false, false, false, false, true).verdict());
        assertEquals(Verdict.IN, inverted(TargetRule.ALWAYS, null, true, true, true).verdict());
        assertEquals(Verdict.BELOW, inverted(TargetRule.ALWAYS, null, true, false, true).verdict());
    }

    @Test
    void anAllowedShareMustHoldTheWholeInterval() {
        Judgement some = inverted(TargetRule.NEVER, 60.0, false, false, false, false, false);
        assertEquals(Verdict.IN, some.verdict());
        Judgement tight = inverted(TargetRule.NEVER, 10.0, false, false, false, false, false);
        assertEquals(Verdict.CANNOT_TELL, tight.verdict());
        // 1 - 0.025^(1/n) <= 0.10 first at n = 36: 1 - 0.025^(1/36) = 0.0974, at 35 it is 0.1000...
        assertEquals(some.n() + tight.moreParts().getAsInt(), smallestWithoutExceptions(0.10));
        assertEquals(Verdict.ABOVE, inverted(TargetRule.NEVER, 10.0, true, true, true, true, true).verdict());
        assertEquals(Verdict.BELOW, inverted(TargetRule.ALWAYS, 10.0, false, false, false, false, false).verdict());
    }

    private static int smallestWithoutExceptions(double allowed) {
        int n = 1;
        while (1 - Math.pow(0.025, 1.0 / n) > allowed) {
            n++;
        }
        return n;
    }

    @Test
    void aFailedPartCountsAsNo() {
        Trial trial = Bench.trial();
        for (int i = 0; i < 4; i++) {
            yes(part(trial, "p" + i), true);
        }
        part(trial, "torn").setFailed(true);
        Judgement always = judge(target(INVERTED, TargetRule.ALWAYS), INVERTED, trial);
        assertEquals(5, always.n());
        assertEquals(Verdict.BELOW, always.verdict());
        Judgement never = judge(target(INVERTED, TargetRule.NEVER), INVERTED, trial);
        assertEquals(4, never.n());
    }

    @Test
    void onePressThatStaysInIsOnePartThatDid() {
        Trial trial = Bench.trial();
        yes(part(trial, "1"), false, false, true);
        yes(part(trial, "2"), false, false, false);
        yes(part(trial, "3"), false, false, false);
        assertEquals(Verdict.ABOVE, judge(target(INVERTED, TargetRule.NEVER), INVERTED, trial).verdict());
    }

    @Test
    void verdictsReadWithoutColour() {
        assertEquals("● in", Verdict.IN.text());
        assertEquals("✕ failed part", Verdict.FAILED_PART.text());
        assertEquals("≠ not comparable", Verdict.NOT_COMPARABLE.text());
    }
}
