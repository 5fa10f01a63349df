package org.flexwright.curing;

import java.util.Locale;

import org.flexwright.core.Message;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    READ_EARLY, READ_EARLY_REMEDY, DEMOULD_EARLY, DEMOULD_EARLY_REMEDY, DEMOULD_SOFT, DEMOULD_SOFT_REMEDY,
    CURE_SHORT, CURE_SHORT_REMEDY, CURE_PLAN, CURE_ACTUAL,
    PROMPT_HEAT, PROMPT_HEAT_CONTROL, PROMPT_LAMP, PROMPT_LAMP_CONTROL;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    Message with(Object... args) {
        return Message.of(Say.class, key(), args);
    }
}
