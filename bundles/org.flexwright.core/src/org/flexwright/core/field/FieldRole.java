package org.flexwright.core.field;

/** Whether a feature of a step says what was meant or what happened. */
public enum FieldRole {
    /** Neither: plain data. */
    NONE,
    /** What is meant. */
    PLANNED,
    /** What happened. */
    ACTUAL
}
