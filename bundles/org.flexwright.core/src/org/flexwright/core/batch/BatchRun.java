package org.flexwright.core.batch;

import java.time.Instant;
import java.util.List;

import org.flexwright.core.process.PotPlan;
import org.flexwright.model.Mould;

/**
 * One pot, or one run of a route without pots, as it is planned.
 *
 * @param number from 1
 * @param parts  parts it gives
 * @param grams  of each material of each step, in their order; NaN where none is planned
 * @param pot    what the weighing step says of it; null for a route without pots
 * @param mould  the mould it goes into; null when none is known
 * @param begin  when it begins
 * @param contact when A and B meet; null for a route without pots
 * @param filled when the mould is full; null for a route without pots
 * @param free   when the mould, or the machine, is free again
 */
public record BatchRun(int number, int parts, List<List<Double>> grams, PotPlan.Pot pot, Mould mould, Instant begin, Instant contact, Instant filled, Instant free) {
    public BatchRun {
        grams = grams.stream().map(List::copyOf).toList();
    }

    /** Grams of all materials. */
    public double mass() {
        return grams.stream().flatMap(List::stream).filter(g -> !g.isNaN()).mapToDouble(Double::doubleValue).sum();
    }
}
