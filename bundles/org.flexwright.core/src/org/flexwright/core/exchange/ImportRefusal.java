package org.flexwright.core.exchange;

import org.flexwright.core.Message;

/**
 * Something in a table that cannot be taken.
 *
 * @param table  table
 * @param row    row, the header being 1; 0 for the table as a whole
 * @param column column, empty for the row as a whole
 * @param why    one sentence: what, and what is allowed
 */
public record ImportRefusal(String table, long row, String column, Message why) {
    /** The refusal with its place. */
    public String text() {
        String where = column.isEmpty() ? row == 0 ? Message.of(ImportRefusal.class, "where.table", table).text()
                : Message.of(ImportRefusal.class, "where.row", table, Long.toString(row)).text()
                : row == 0 ? Message.of(ImportRefusal.class, "where.column", table, column).text()
                        : Message.of(ImportRefusal.class, "where.cell", table, Long.toString(row), column).text();
        return where + ": " + why.text();
    }
}
