package org.flexwright.testing.hardness;

/** What a standard asks before it says how long to dwell and how often to read. */
public enum RubberKind {
    /** Cross-linked: cast polyurethane, silicone, natural rubber, printed photopolymer. */
    VULCANISED,
    /** Melts again: soft filament. */
    THERMOPLASTIC,
    /** Nobody knows; treated as vulcanised, and read more often. */
    UNKNOWN
}
