package org.flexwright.core.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

import org.flexwright.model.Mould;

/**
 * What is wished for.
 *
 * @param wanted      good parts wanted, at least 1
 * @param spares      parts on top against rejects, 0 or more; null when the program shall propose them
 * @param start       when work may begin
 * @param zone        of the clock on the wall
 * @param opens       from when somebody works
 * @param closes      until when; later than {@code opens}
 * @param moulds      moulds that are there; empty for the recipe's own, if it still is
 * @param rejectLimit rejects at which the batch stops to be looked at, 0 or more; null when none was agreed
 * @param neededBy    day, or null
 */
public record BatchWish(int wanted, Integer spares, Instant start, ZoneId zone, LocalTime opens, LocalTime closes, List<Mould> moulds, Integer rejectLimit, LocalDate neededBy) {
    private static final LocalTime OPENS = LocalTime.of(8, 0);
    private static final LocalTime CLOSES = LocalTime.of(18, 0);

    public BatchWish {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(zone, "zone");
        moulds = List.copyOf(moulds);
        if (!closes.isAfter(opens)) {
            throw new IllegalArgumentException("The day must end after it begins.");
        }
    }

    /** So many, in a working day from 8 to 18 o'clock (common practice, no source). */
    public static BatchWish of(int wanted, Instant start, ZoneId zone) {
        return new BatchWish(wanted, null, start, zone, OPENS, CLOSES, List.of(), null, null);
    }

    /** The same with another number of spares. */
    public BatchWish withSpares(Integer number) {
        return new BatchWish(wanted, number, start, zone, opens, closes, moulds, rejectLimit, neededBy);
    }

    /** The same with these moulds. */
    public BatchWish withMoulds(List<Mould> these) {
        return new BatchWish(wanted, spares, start, zone, opens, closes, these, rejectLimit, neededBy);
    }

    /** The same with a limit of rejects and the day it is needed by. */
    public BatchWish withAgreed(Integer rejects, LocalDate by) {
        return new BatchWish(wanted, spares, start, zone, opens, closes, moulds, rejects, by);
    }
}
