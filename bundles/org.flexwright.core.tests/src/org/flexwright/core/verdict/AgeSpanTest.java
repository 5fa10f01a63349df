package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.flexwright.model.Part;
import org.flexwright.model.TargetRule;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** Readings of very different age make no common value, and the verdict says which age it used. */
class AgeSpanTest {
    private static final double DAY = 24;

    private static void read(Part part, double days, double... values) {
        Bench.read(part, Bench.FORCE, values).setDelayHours(days * DAY);
    }

    private static List<PartValue> values(Trial trial) {
        return PartValues.of(trial, Bench.key(Bench.FORCE), Bench.FORCE);
    }

    @Test
    void usualAgesStayApartAndNeighbouringDaysTogether() {
        assertEquals(List.of("24 h", "7 d", "30 d", "365 d"), AgeSpan.groups(List.of(DAY * 365, DAY * 7, DAY, DAY * 30)).stream().map(AgeSpan::text).toList());
        assertEquals(1, AgeSpan.groups(List.of(DAY * 3, DAY * 4, DAY * 8.9)).size());
        assertEquals(1, AgeSpan.groups(List.of(0.0, 0.5, 2.9)).size(), "fresh is fresh");
    }

    /** Every age lies in exactly one span, no span is wider than the factor, and the order typed does not matter. */
    @Test
    void spansCoverAllAgesAndAreNeverTooWide() {
        Random random = new Random(5);
        for (int round = 0; round < 300; round++) {
            List<Double> ages = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(12); i++) {
                ages.add(Math.exp(random.nextDouble() * 12 - 1));
            }
            List<AgeSpan> spans = AgeSpan.groups(ages);
            for (double age : ages) {
                assertEquals(1, spans.stream().filter(s -> s.contains(age)).count());
            }
            assertTrue(spans.stream().allMatch(s -> s.near(s)));
            java.util.Collections.shuffle(ages, random);
            assertEquals(spans, AgeSpan.groups(ages));
        }
    }

    @Test
    void anOldReadingDoesNotChangeTheValueOfThreeFreshPartsAndIsNamed() {
        Trial trial = Bench.trial();
        for (int i = 1; i <= 3; i++) {
            read(Bench.part(trial, "P" + i), 3, 0.80 + i * 0.01);
        }
        read(trial.getParts().getFirst(), 365, 2.0);
        List<PartValue> values = values(trial);
        assertEquals(0.81, values.getFirst().value(), 1e-12);
        var target = Bench.target(Bench.FORCE, TargetRule.BETWEEN);
        target.setLow(0.7);
        target.setHigh(0.95);
        Judgement judgement = Verdicts.judge(target, Bench.FORCE, values);
        assertEquals(Verdict.IN, judgement.verdict());
        assertTrue(judgement.notes().stream().anyMatch(m -> m.text().equals("Read at an age of 3 d; readings of the same parts at 365 d are left aside.")), judgement
                .notes().toString());
    }

    @Test
    void onceAllPartsWereReadAgainTheirLatestAgeCounts() {
        Trial trial = Bench.trial();
        for (int i = 1; i <= 3; i++) {
            Part part = Bench.part(trial, "P" + i);
            read(part, 3, 0.8);
            read(part, 30, 0.9);
        }
        assertTrue(values(trial).stream().allMatch(v -> v.value() == 0.9 && v.readings() == 1));
    }

    @Test
    void partsReadAtDifferentAgesAloneAreJudgedButItIsSaid() {
        Trial trial = Bench.trial();
        read(Bench.part(trial, "P1"), 1, 0.8);
        read(Bench.part(trial, "P2"), 30, 0.9);
        read(Bench.part(trial, "P3"), 30, 0.9);
        Judgement judgement = Verdicts.judge(target(), Bench.FORCE, values(trial));
        assertTrue(judgement.notes().stream().anyMatch(m -> m.text().startsWith("The parts were not equally old")), judgement.notes().toString());
    }

    @Test
    void readingsOfUnknownAgeCountAndAreCounted() {
        Trial trial = Bench.trial();
        Part part = Bench.part(trial, "P1");
        read(part, 3, 0.8);
        Bench.read(part, Bench.FORCE, 0.9);
        assertEquals(0.85, values(trial).getFirst().value(), 1e-12);
        assertEquals(1, values(trial).getFirst().age().unknown());
    }

    private static org.flexwright.model.Target target() {
        var target = Bench.target(Bench.FORCE, TargetRule.AT_LEAST);
        target.setLow(0.1);
        return target;
    }
}
