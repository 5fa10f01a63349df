package org.flexwright.materials.calc;

/** Scales a modulus can be told from. They never convert into each other. */
public enum HardnessScale {
    SHORE_A, SHORE_00
}
