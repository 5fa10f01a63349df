package org.flexwright.core.exchange;

/**
 * One thing an import would do.
 *
 * @param kind   what
 * @param table  table it comes from
 * @param row    its row, the header being 1; 0 for what is in no row
 * @param about  what it is about, in words
 * @param column the column for {@link Kind#CHANGED}, else empty
 * @param from   value before, empty for none
 * @param to     value afterwards, empty for none
 */
public record ImportChange(Kind kind, String table, long row, String about, String column, String from, String to) {
    /** What happens. */
    public enum Kind {
        ADDED, CHANGED, MOVED, REMOVED
    }
}
