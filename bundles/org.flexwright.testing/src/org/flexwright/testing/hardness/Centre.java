package org.flexwright.testing.hardness;

/** The one number a standard makes of several readings. */
public enum Centre {
    MEDIAN, MEAN
}
