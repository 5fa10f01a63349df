package org.flexwright.core.process;

import java.util.Objects;

/**
 * One line of a step card: what was meant beside what happened. Empty texts where nothing was entered.
 *
 * @param name       feature, or {@code uses/N}, {@code ratio}, {@code duration}
 * @param label      words before the line
 * @param planned    what was meant, with unit
 * @param actual     what happened, with unit
 * @param origin     where the actual value came from, in one word; empty when there is none
 * @param difference how far apart they are, "+8.0 %" or "+2 K"; empty when they cannot be compared
 * @param limit      own limit in words; empty when there is none
 * @param outside    true when the difference is outside the own limit
 */
public record CardLine(String name, String label, String planned, String actual, String origin, String difference, String limit, boolean outside) {
    public CardLine {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(planned, "planned");
        Objects.requireNonNull(actual, "actual");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(difference, "difference");
        Objects.requireNonNull(limit, "limit");
    }
}
