package org.flexwright.core.batch;

import java.util.Objects;

import org.flexwright.model.Lot;

/**
 * Grams taken out of a lot for one material of one pot.
 *
 * @param run   number of the pot or run, from 1
 * @param step  place of the step in the plan, from 0
 * @param use   place of the material in the step, from 0
 * @param lot   the lot
 * @param grams above 0
 */
public record LotPick(int run, int step, int use, Lot lot, double grams) {
    public LotPick {
        Objects.requireNonNull(lot, "lot");
    }
}
