package org.flexwright.core.property;

import java.util.Objects;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.quantity.QuantityKind;

/**
 * Something that can be measured or predicted.
 *
 * @param id         stable id, {@code capability.name}, e.g. {@code testing.shore-a}
 * @param title      a few words, as in a target sheet
 * @param kind       kind of quantity; values are kept in its canonical unit; ignored when {@code yesNo}
 * @param yesNo      true when a part either does it or not
 * @param comparedBy which conditions must agree for two values to be comparable
 * @param help       one line: how it is read
 * @param source     what the definition rests on
 */
public record PropertyDef(String id, String title, QuantityKind kind, boolean yesNo, Set<Condition> comparedBy, String help, Source source) {

    /** A condition that may decide whether two values can be compared. */
    public enum Condition {
        PIECE, SPOT, SUPPORT, DWELL
    }

    public PropertyDef {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(source, "source");
        comparedBy = Set.copyOf(comparedBy);
    }
}
