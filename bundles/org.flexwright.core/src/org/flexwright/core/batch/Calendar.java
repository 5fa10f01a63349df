package org.flexwright.core.batch;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;

/** One person's time: what is taken, and where the next stretch of work fits, within the hours of the day. A stretch longer than a day begins when the day begins. */
final class Calendar {
    private final ZoneId zone;
    private final LocalTime opens;
    private final LocalTime closes;
    private final TreeMap<Instant, Instant> taken = new TreeMap<>();

    Calendar(ZoneId zone, LocalTime opens, LocalTime closes) {
        this.zone = zone;
        this.opens = opens;
        this.closes = closes;
    }

    /** Takes the first stretch of that length that begins at that moment or later; says when it begins. */
    Instant take(Instant earliest, Duration length) {
        Instant start = fitting(earliest, length);
        if (!length.isZero()) {
            taken.put(start, start.plus(length));
        }
        return start;
    }

    private Instant fitting(Instant earliest, Duration length) {
        Instant at = earliest;
        while (true) {
            Instant open = inHours(at, length);
            Instant free = free(open, length);
            if (free.equals(open)) {
                return open;
            }
            at = free;
        }
    }

    /** The first moment not before that one at which the stretch stays within the hours of a day. */
    private Instant inHours(Instant at, Duration length) {
        LocalDate day = at.atZone(zone).toLocalDate();
        Instant from = day.atTime(opens).atZone(zone).toInstant();
        Instant until = day.atTime(closes).atZone(zone).toInstant();
        if (at.isBefore(from) || at.equals(from)) {
            return from;
        }
        boolean fits = !at.plus(length).isAfter(until);
        return fits ? at : day.plusDays(1).atTime(opens).atZone(zone).toInstant();
    }

    /** The moment itself when nothing is in the way, else the end of what is. */
    private Instant free(Instant at, Duration length) {
        if (length.isZero()) {
            return at;
        }
        Map.Entry<Instant, Instant> before = taken.floorEntry(at);
        if (before != null && before.getValue().isAfter(at)) {
            return before.getValue();
        }
        Map.Entry<Instant, Instant> next = taken.higherEntry(at);
        return next != null && next.getKey().isBefore(at.plus(length)) ? next.getValue() : at;
    }
}
