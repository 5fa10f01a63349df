package org.flexwright.testing.hardness;

import java.util.Objects;

import org.flexwright.core.Source;

/**
 * One figure of a standard's protocol with its own origin.
 *
 * @param value  the figure, in the unit the protocol names for it
 * @param source standard and clause where the clause was confirmed, else the words "clause not confirmed"
 */
public record Requirement(double value, Source source) {
    public Requirement {
        Objects.requireNonNull(source, "source");
    }
}
