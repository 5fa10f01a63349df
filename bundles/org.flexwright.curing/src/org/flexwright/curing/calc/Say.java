package org.flexwright.curing.calc;

import java.util.Locale;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;

/** Every sentence of this package; the words stand in {@code messages.properties} under the name with points. */
enum Say {
    OWN_CONSTANTS, VITRIFIED,
    EA_ASSUMED, SCHEDULE_NONE, SCHEDULE_NONE_REMEDY, SCHEDULE_SHORT, SCHEDULE_LONG,
    RATE_STANDS, RATE_STANDS_REMEDY,
    GEL_SIDE, GEL_SIDE_REMEDY, GEL_NEVER, GEL_NEVER_REMEDY, GEL_LATER,
    ADIABATIC_HOT, CUP_STILL, CUP_STILL_REMEDY, CUP_HOT,
    VISCOSITY_GEL, VISCOSITY_GEL_REMEDY, VISCOSITY_FOLD, VISCOSITY_FOLD_REMEDY,
    WARM_NOTHING, WARM_NOTHING_REMEDY, WARM_OUTSIDE, WARM_OUTSIDE_REMEDY, WARM_DEMOULD,
    PART_OVERSHOOT, PART_LATE, HEAT_RUNAWAY, HEAT_NEAR,
    SHRINK_FIT;

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
