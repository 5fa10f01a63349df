package org.flexwright.core.property;

import java.util.List;
import java.util.Objects;

/**
 * What makers call a result: "snapped" is a snap ratio above 0. A search understands these words.
 *
 * @param words    the words for it, each one word in small letters
 * @param property id of the property it is read from
 * @param yes      of a yes/no property: the answer meant; ignored otherwise
 * @param low      of a number: the value lies above this, in the property's canonical unit
 * @param high     of a number: the value is at most this; a bound such as "more than 5000" lies within no finite limit
 */
public record ResultWord(List<String> words, String property, boolean yes, double low, double high) {
    public ResultWord {
        words = List.copyOf(words);
        Objects.requireNonNull(property, "property");
        if (words.isEmpty() || !(low < high)) {
            throw new IllegalArgumentException("A result needs words and a range that is not empty.");
        }
    }

    /** Words for the answer of a yes/no property. */
    public static ResultWord answer(String property, boolean yes, String... words) {
        return new ResultWord(List.of(words), property, yes, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** Words for a number above {@code low} and up to {@code high}. */
    public static ResultWord number(String property, double low, double high, String... words) {
        return new ResultWord(List.of(words), property, true, low, high);
    }
}
