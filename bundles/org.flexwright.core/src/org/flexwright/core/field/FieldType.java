package org.flexwright.core.field;

/** What kind of value a field takes. */
public enum FieldType {
    /** A number with a unit; value {@code Double} in the field's unit. */
    QUANTITY,
    /** A whole number; value {@code Integer}. */
    INTEGER,
    /** Words; value {@code String}. */
    TEXT,
    /** One of a few; value {@link Choice#value()}. */
    CHOICE,
    /** Yes or no; value {@code Boolean}. */
    FLAG,
    /** Several values of one kind, separated by semicolons; value {@code List}; the only column describes an element. */
    LIST,
    /** Rows of described cells; value {@code List<Map<String, Object>>}, cell values by column name. */
    TABLE,
    /** A calendar day, ISO 8601; value {@code LocalDate}. */
    DATE,
    /** A moment, ISO 8601; value {@code Instant}. */
    INSTANT,
    /** Path of a file; value {@code String}. */
    FILE
}
