package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.numerics.Interval;
import org.junit.jupiter.api.Test;

/** What must hold for any parts and any target. */
class VerdictPropertiesTest {
    private static final int CASES = 600;
    private final Random random = new Random(20250314);

    private List<PartValue> parts(int n, double centre, double spread) {
        List<PartValue> parts = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            parts.add(PartValue.of("p" + i, centre + spread * random.nextGaussian()));
        }
        return parts;
    }

    private Target target() {
        Target target = Bench.target(Bench.FORCE, new TargetRule[] {TargetRule.AT_LEAST, TargetRule.AT_MOST, TargetRule.BETWEEN, TargetRule.NOMINAL}[random.nextInt(4)]);
        target.setLow(random.nextGaussian() - 1);
        target.setHigh(target.getLow() + 4 * random.nextDouble());
        target.setNominal(random.nextGaussian());
        target.setTolerance(2 * random.nextDouble());
        return target;
    }

    private interface Check {
        void of(Target target, List<PartValue> parts, Judgement judged);
    }

    private void forAll(Check check) {
        Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
        for (int i = 0; i < CASES; i++) {
            Target target = target();
            List<PartValue> parts = parts(1 + random.nextInt(8), 2 * random.nextGaussian(), random.nextDouble());
            Judgement judged = Verdicts.judge(target, Bench.FORCE, parts);
            seen.merge(judged.verdict(), 1, Integer::sum);
            check.of(target, parts, judged);
        }
        // The check says something only when every verdict came up.
        for (Verdict verdict : List.of(Verdict.IN, Verdict.ABOVE, Verdict.BELOW, Verdict.CANNOT_TELL)) {
            assertTrue(seen.getOrDefault(verdict, 0) > CASES / 100, verdict + " " + seen);
        }
    }

    @Test
    void theVerdictIsWhatTheIntervalSays() {
        forAll((target, parts, judged) -> {
            Interval limits = Limits.of(target);
            switch (judged.verdict()) {
                case IN -> assertTrue(limits.contains(judged.interval()));
                case ABOVE -> assertTrue(judged.interval().low() > limits.high());
                case BELOW -> assertTrue(judged.interval().high() < limits.low());
                default -> assertTrue(judged.n() < 3 || !limits.contains(judged.interval()) && judged.interval().low() <= limits.high()
                        && judged.interval().high() >= limits.low());
            }
        });
    }

    @Test
    void fewerThanThreePartsAreNeverJudged() {
        forAll((target, parts, judged) -> {
            if (parts.size() < 3) {
                assertEquals(Verdict.CANNOT_TELL, judged.verdict());
                assertEquals(3 - parts.size(), judged.moreParts().getAsInt());
            }
        });
    }

    @Test
    void theOrderOfPartsDoesNotMatter() {
        forAll((target, parts, judged) -> {
            List<PartValue> shuffled = new ArrayList<>(parts);
            Collections.shuffle(shuffled, random);
            assertEquals(judged.verdict(), Verdicts.judge(target, Bench.FORCE, shuffled).verdict());
        });
    }

    @Test
    void aWiderTargetNeverTurnsInIntoOut() {
        forAll((target, parts, judged) -> {
            if (judged.verdict() == Verdict.IN) {
                target.setLow(target.getLow() - 1);
                target.setHigh(target.getHigh() + 1);
                target.setTolerance(target.getTolerance() + 1);
                assertEquals(Verdict.IN, Verdicts.judge(target, Bench.FORCE, parts).verdict());
            }
        });
    }

    @Test
    void movingTheLimitsFarAwayTurnsInIntoOut() {
        forAll((target, parts, judged) -> {
            if (judged.verdict() == Verdict.IN && target.getRule() == TargetRule.NOMINAL) {
                target.setNominal(target.getNominal() + 100);
                assertEquals(Verdict.BELOW, Verdicts.judge(target, Bench.FORCE, parts).verdict());
            }
        });
    }

    @Test
    void morePartsAtTheSameMeanAndSpreadSettleItAsPromised() {
        forAll((target, parts, judged) -> {
            if (parts.size() >= 3 && judged.moreParts().isPresent()) {
                int all = parts.size() + judged.moreParts().getAsInt();
                assertNotEquals(Verdict.CANNOT_TELL, again(target, parts, judged, all).verdict());
                if (all - 1 >= 3) {
                    assertEquals(Verdict.CANNOT_TELL, again(target, parts, judged, all - 1).verdict());
                }
            }
        });
    }

    /** Any n parts with the mean and spread seen. */
    private static Judgement again(Target target, List<PartValue> parts, Judgement judged, int n) {
        double mean = judged.mean();
        double sd = Math.sqrt(parts.stream().mapToDouble(p -> (p.value() - mean) * (p.value() - mean)).sum() / (parts.size() - 1));
        // n - 2 parts on the mean and two equally far on both sides have this mean and this spread.
        double off = sd * Math.sqrt((n - 1) / 2.0);
        List<PartValue> made = new ArrayList<>(List.of(PartValue.of("a", mean - off), PartValue.of("b", mean + off)));
        for (int i = 2; i < n; i++) {
            made.add(PartValue.of("m" + i, mean));
        }
        return Verdicts.judge(target, Bench.FORCE, made);
    }

    @Test
    void everyVerdictGivesItsReasonAndSettledOnesAskForNothing() {
        forAll((target, parts, judged) -> {
            assertFalse(judged.reason().text().isBlank());
            assertFalse(judged.reason().text().contains("{"), judged.reason().text());
            if (judged.verdict() != Verdict.CANNOT_TELL) {
                assertTrue(judged.moreParts().isEmpty());
            }
        });
    }

    @Test
    void theIntervalHoldsTheTrueMeanNineteenTimesInTwenty() {
        int hits = 0;
        int tries = 4000;
        for (int i = 0; i < tries; i++) {
            Interval interval = Verdicts.judge(Bench.nominal(42, 3), Bench.HARDNESS, parts(3, 42, 1)).interval();
            if (interval.contains(42)) {
                hits++;
            }
        }
        // Binomial spread of the share at 4000 tries is 0.34 %; four of them on either side.
        assertEquals(0.95, (double) hits / tries, 4 * 0.0034);
    }
}
