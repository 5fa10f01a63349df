package org.flexwright.mixing.formulation;

import org.flexwright.core.find.Sentence;

/** Every sentence of this package; the words stand in {@code messages.properties}. */
enum Say implements Sentence {
    WATER_ENTERED, DENSITY_ENTERED,
    NO_POLYMER, RATIO_ZERO, MIXED_COUNTING, OF_WHAT, NOTHING_TO_COUNT_ON, DENSITY, EQUIVALENT, EQUIVALENT_SHARE, ONE_SIDE, INDEX_RANGE, OVERFULL,
    PARTS_MISSING, NO_BATCH, BATCH_DENSITY,
    INDEX_MISSING, INDEX_ONE_SIDE
}
