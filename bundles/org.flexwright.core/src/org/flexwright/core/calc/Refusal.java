package org.flexwright.core.calc;

import java.util.Objects;

/**
 * Why there is no result.
 *
 * @param input  name of the input that stands in the way; empty when none in particular
 * @param why    one sentence: what and where
 * @param remedy one sentence: what would help
 */
public record Refusal(String input, String why, String remedy) {
    public Refusal {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(remedy, "remedy");
    }
}
