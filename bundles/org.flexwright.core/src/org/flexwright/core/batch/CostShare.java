package org.flexwright.core.batch;

import java.util.Objects;

import org.flexwright.core.Estimate;

/**
 * One share of a cost.
 *
 * @param id    stable word: material, loss, cups, mould, work, rejects
 * @param label what it is
 * @param eur   EUR with its source; null when it cannot be said
 * @param why   what it rests on, or what is missing for it, in a sentence
 */
public record CostShare(String id, String label, Estimate eur, String why) {
    public CostShare {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(why, "why");
    }
}
