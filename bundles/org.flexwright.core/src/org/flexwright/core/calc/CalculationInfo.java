package org.flexwright.core.calc;

import java.util.Objects;

import org.flexwright.core.Source;

/**
 * What a calculation is, for lists, forms and its manual page.
 *
 * @param id       stable id, {@code capability.name}, lower case, e.g. {@code mixing.batch}
 * @param title    a few words
 * @param version  raised when results change for the same inputs
 * @param summary  what it answers and how, two or three sentences, formula included
 * @param source   what the formula rests on
 * @param validity where it holds and where not
 */
public record CalculationInfo(String id, String title, int version, String summary, Source source, String validity) {
    public CalculationInfo {
        Objects.requireNonNull(source, "source");
        if (!id.matches("[a-z][a-z0-9-]*(\\.[a-z][a-z0-9-]*)+")) {
            throw new IllegalArgumentException("A calculation id looks like capability.name, got " + id + ".");
        }
    }
}
