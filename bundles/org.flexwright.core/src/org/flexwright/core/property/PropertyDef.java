package org.flexwright.core.property;

import java.util.Objects;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.numerics.Interval;
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
 * @param possible   what a reading can be at all, in the canonical unit; ends may be infinite
 */
public record PropertyDef(String id, String title, QuantityKind kind, boolean yesNo, Set<Condition> comparedBy, String help, Source source, Interval possible) {
    private static final Interval DUROMETER = new Interval(0, 100);
    private static final Interval FROM_ZERO = new Interval(0, Double.POSITIVE_INFINITY);
    private static final Interval ANY = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** A condition that may decide whether two values can be compared. */
    public enum Condition {
        PIECE, SPOT, SUPPORT, DWELL
    }

    public PropertyDef {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(possible, "possible");
        comparedBy = Set.copyOf(comparedBy);
    }

    /** With what its kind of quantity can be: a durometer reads from 0 to 100, a mass, a length or a time is never negative. */
    public PropertyDef(String id, String title, QuantityKind kind, boolean yesNo, Set<Condition> comparedBy, String help, Source source) {
        this(id, title, kind, yesNo, comparedBy, help, source, possible(kind));
    }

    /** The same with other ends of what a reading can be, in the canonical unit. */
    public PropertyDef within(double low, double high) {
        return new PropertyDef(id, title, kind, yesNo, comparedBy, help, source, new Interval(low, high));
    }

    private static Interval possible(QuantityKind kind) {
        return switch (kind) {
            case MASS, LENGTH, AREA, VOLUME, DENSITY, DURATION, COUNT -> FROM_ZERO;
            default -> kind.shore() ? DUROMETER : ANY;
        };
    }
}
