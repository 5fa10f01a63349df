package org.flexwright.materials.calc;

import org.flexwright.core.find.Sentence;

/** Every sentence of this package; the words stand in {@code messages.properties}. */
enum Say implements Sentence {
    MODULUS_END, MODULUS_END_REMEDY, MODULUS_WINDOW, MODULUS_OUTSIDE, MODULUS_LEFT_OUT, MODULUS_TIME, MODULUS_BALL, MODULUS_BALL_END, MODULUS_BALL_END_REMEDY, MODULUS_UNKNOWN,
    BLOCK_TABLE, BLOCK_TABLE_REMEDY, BLOCK_FILLED, BLOCK_THIN,
    IRHD_SCALE, IRHD_SCALE_REMEDY,
    TABLE_EMPTY, TABLE_EMPTY_REMEDY, TABLE_LIMITS, TABLE_LIMITS_REMEDY, TABLE_USUAL
}
