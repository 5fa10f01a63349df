package org.flexwright.core.process;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * The grams that follow from the parts given to a step's materials.
 *
 * @param grams   of each use in order; NaN where none follow
 * @param problem one sentence why none follow; null when they do
 * @param source  what they rest on
 */
public record GramsOfParts(List<Double> grams, Message problem, Source source) {
    public GramsOfParts {
        grams = List.copyOf(grams);
        Objects.requireNonNull(source, "source");
    }
}
