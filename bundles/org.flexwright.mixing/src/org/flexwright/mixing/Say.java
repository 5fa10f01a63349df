package org.flexwright.mixing;

import java.util.Locale;

import org.flexwright.core.Message;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    ADVICE_DENSITY, ADVICE_RATIO, ADVICE_WEIGH, ADVICE_ADD, ADVICE_DONE, ADVICE_ADD_OR_LEAVE, ADVICE_NOTHING,
    RATIO_OFF, RATIO_OFF_REMEDY, PLAN_RATIO, PLAN_RATIO_REMEDY, DENSITY_MISSING, DENSITY_MISSING_REMEDY,
    FILLER_BASIS, FILLER_BASIS_REMEDY, FILLER_GRAMS, FILLER_GRAMS_REMEDY,
    CUP_FULL, CUP_OVER, CUP_REMEDY, CUP_UNKNOWN, CUP_UNKNOWN_REMEDY,
    TIME_RULE, TIME_RULE_REMEDY, TIME_LEFT, TIME_LEFT_REMEDY,
    SCRAPED, SCRAPED_REMEDY,
    PROMPT_HEAT, PROMPT_HEAT_CONTROL, PROMPT_DUST, PROMPT_DUST_CONTROL, PROMPT_VACUUM, PROMPT_VACUUM_CONTROL;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    Message with(Object... args) {
        return Message.of(Say.class, key(), args);
    }
}
