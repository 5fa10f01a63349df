package org.flexwright.curing;

import org.flexwright.core.find.Sentence;

/** Every sentence of this package; the words stand in {@code messages.properties}. */
enum Say implements Sentence {
    READ_EARLY, READ_EARLY_REMEDY, DEMOULD_EARLY, DEMOULD_EARLY_REMEDY, DEMOULD_SOFT, DEMOULD_SOFT_REMEDY,
    CURE_SHORT, CURE_SHORT_REMEDY, CURE_PLAN, CURE_ACTUAL,
    GATE_LEFTOVER, GATE_LEFTOVER_YES, GATE_LEFTOVER_NO, GATE_LEFTOVER_UNKNOWN, MARK_CURED, MARK_DEMOULD, MARK_PLAN, MARK_AGE,
    PROMPT_HEAT, PROMPT_HEAT_CONTROL, PROMPT_LAMP, PROMPT_LAMP_CONTROL
}
