package org.flexwright.core.search;

import java.util.List;
import java.util.Map;

/**
 * What a search found and what was understood of it.
 *
 * @param query      as typed
 * @param understood each term in words, in the order typed
 * @param left       one sentence for each thing that was not understood, was left out, or is nowhere in the project; when nothing was found, what stood in the way
 * @param hits       the best hits, grouped by kind
 * @param counts     how many things were found of each kind, also those not among the hits
 * @param unread     how many things the index has still to read; while there are some, more may be found
 */
public record Answer(String query, List<String> understood, List<String> left, List<Hit> hits, Map<ThingKind, Integer> counts, int unread) {
    public Answer {
        understood = List.copyOf(understood);
        left = List.copyOf(left);
        hits = List.copyOf(hits);
        counts = Map.copyOf(counts);
    }

    /** How many things were found. */
    public int total() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** What was understood, in one line: {@code Snap ratio above 0 · 40 to 44 Shore A · made or dated in 2025}. */
    public String said() {
        return String.join(" · ", understood);
    }
}
