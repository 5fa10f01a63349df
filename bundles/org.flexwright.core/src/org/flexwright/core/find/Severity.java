package org.flexwright.core.find;

/** How much a finding matters. */
public enum Severity {
    /** Good to know. */
    NOTE,
    /** Look before going on. */
    CAUTION,
    /** Do not go on without a written reason. */
    STOP
}
