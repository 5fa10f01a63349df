package org.flexwright.core.exchange;

/**
 * How tables are taken.
 *
 * @param remove  what is in a class's table no more goes out of the project; else it stays
 * @param decimal how a number with a comma that could mean either is meant
 * @param bounds  refuse numbers beyond what their field allows
 */
public record ImportOptions(boolean remove, Decimal decimal, boolean bounds) {
    /** What a comma in a number is. */
    public enum Decimal {
        /** Not said: taken only when the column leaves no doubt. */
        ASK,
        /** The decimal sign; a number with a point is refused. */
        COMMA,
        /** No decimal sign: a number with a comma is refused. */
        POINT
    }

    /** Nothing goes out, doubtful commas are asked about, bounds hold. */
    public static final ImportOptions PLAIN = new ImportOptions(false, Decimal.ASK, true);
}
