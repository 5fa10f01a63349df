package org.flexwright.materials.calc;

import java.util.Locale;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    MODULUS_END, MODULUS_END_REMEDY, MODULUS_WINDOW, MODULUS_OUTSIDE, MODULUS_LEFT_OUT, MODULUS_TIME, MODULUS_BALL, MODULUS_BALL_END, MODULUS_BALL_END_REMEDY, MODULUS_UNKNOWN,
    BLOCK_TABLE, BLOCK_TABLE_REMEDY, BLOCK_FILLED, BLOCK_THIN,
    IRHD_SCALE, IRHD_SCALE_REMEDY,
    TABLE_EMPTY, TABLE_EMPTY_REMEDY, TABLE_LIMITS, TABLE_LIMITS_REMEDY, TABLE_USUAL;

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
}
