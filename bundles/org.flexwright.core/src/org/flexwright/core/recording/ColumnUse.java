package org.flexwright.core.recording;

import java.util.Objects;

import org.flexwright.model.ChannelRole;

/**
 * What one column of a table file means.
 *
 * @param role     its meaning; {@link ChannelRole#OTHER} for a column that is not read
 * @param column   counted from 1
 * @param name     its heading as it stands in the file; may be empty
 * @param unit     unit of its figures as the file or a person says it; null when nobody said it yet, empty for plain numbers
 * @param reversed whether the sign is to be turned round
 */
public record ColumnUse(ChannelRole role, int column, String name, String unit, boolean reversed) {
    public ColumnUse {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(name, "name");
        if (column < 1) {
            throw new IllegalArgumentException("Columns are counted from 1.");
        }
    }

    /** With another meaning. */
    public ColumnUse withRole(ChannelRole other) {
        return new ColumnUse(other, column, name, unit, reversed);
    }

    /** With another unit. */
    public ColumnUse withUnit(String other) {
        return new ColumnUse(role, column, name, other, reversed);
    }

    /** With its sign turned round, or not. */
    public ColumnUse withReversed(boolean turned) {
        return new ColumnUse(role, column, name, unit, turned);
    }
}
