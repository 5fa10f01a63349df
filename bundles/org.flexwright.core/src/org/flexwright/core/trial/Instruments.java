package org.flexwright.core.trial;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

import org.flexwright.core.session.Edit;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;

/** Gauges: when they were checked against something known, and how long that holds. */
public final class Instruments {
    private Instruments() {
    }

    /** Notes a check. Throws PlanException when its day lies ahead or before the last one noted. */
    public static void check(Edit edit, Instrument instrument, LocalDate on, String note) {
        if (on.isAfter(day(edit.now()))) {
            throw PlanException.of("future.day", "Last checked", on.toString());
        }
        if (instrument.getCheckedOn() != null && on.isBefore(instrument.getCheckedOn())) {
            throw PlanException.of("check.before", on.toString(), instrument.getCheckedOn().toString());
        }
        edit.set(instrument, ModelPackage.Literals.INSTRUMENT__CHECKED_ON, on);
        if (note != null && !note.isBlank()) {
            edit.set(instrument, ModelPackage.Literals.INSTRUMENT__CHECK_NOTE, note.strip());
        }
    }

    /** The first day on which the last check no longer holds; empty when its check or how long it holds is not noted. */
    public static Optional<LocalDate> due(Instrument instrument) {
        return instrument.getCheckedOn() == null || instrument.getCheckEveryDays() == null ? Optional.empty()
                : Optional.of(instrument.getCheckedOn().plusDays((long) Math.floor(instrument.getCheckEveryDays())));
    }

    /** True when a check is due on that day: the last one no longer holds, or none is noted though there is to be one. */
    public static boolean overdue(Instrument instrument, LocalDate day) {
        return instrument.getCheckEveryDays() != null && (instrument.getCheckedOn() == null || day.isAfter(due(instrument).orElseThrow()));
    }

    /** The day of a moment where the program runs. */
    public static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneId.systemDefault());
    }
}
