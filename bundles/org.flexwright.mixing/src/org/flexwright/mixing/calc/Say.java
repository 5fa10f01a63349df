package org.flexwright.mixing.calc;

import java.util.Locale;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    BATCH_ALLOWANCE, BATCH_LOSS, BATCH_DENSITIES, BATCH_DENSITIES_REMEDY, BATCH_EMPTY, BATCH_EMPTY_REMEDY,
    WEIGHED_LIMIT, WEIGHED_INSIDE, WEIGHED_NEXT, WEIGHED_TWICE,
    DENSITY_MEAN, DENSITY_NONE, DENSITY_NONE_REMEDY,
    FILLER_ALL, FILLER_ALL_REMEDY, FILLER_OF_WHAT,
    NET_NEGATIVE, NET_NEGATIVE_REMEDY, NET_FEW_STEPS,
    SCALE_COARSE, SCALE_SMALL, SCALE_SMALL_REMEDY,
    INDEX_RANGE, INDEX_RANGE_REMEDY, INDEX_USUAL, INDEX_WATER, INDEX_NOTHING, INDEX_NOTHING_REMEDY,
    PREPOLYMER_EXCESS, PREPOLYMER_EXCESS_REMEDY,
    STIFFNESS_PACKED, STIFFNESS_PACKED_REMEDY, STIFFNESS_RANGE, STIFFNESS_DISAGREE,
    UNDERCURE_GEL, UNDERCURE_GEL_REMEDY, UNDERCURE_OTHER,
    TIME_EA, TIME_FAR, TIME_MASS, TIME_FOLD, TIME_FOLD_REMEDY,
    DEGAS_FULL, DEGAS_BOILS, DEGAS_CUP, DEGAS_CUP_REMEDY, DEGAS_VACUUM, DEGAS_VACUUM_REMEDY,
    FOAM_MUCH, FOAM_DISSOLVED;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    Message with(Object... args) {
        return Message.of(Say.class, key(), args);
    }

    Remark note(Source source, Object... args) {
        return new Remark(Severity.NOTE, with(args), source);
    }

    Remark caution(Source source, Object... args) {
        return new Remark(Severity.CAUTION, with(args), source);
    }

    Remark stop(Source source, Object... args) {
        return new Remark(Severity.STOP, with(args), source);
    }
}
