package org.flexwright.core.batch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The order of work against the clock: one person, so that no two things that need hands overlap.
 *
 * @param items in the order of their start
 */
public record Schedule(List<Item> items) {

    /** What a stretch of the schedule is. */
    public enum Kind {
        /** Somebody works at it. */
        HANDS,
        /** It cures, dries or runs by itself. */
        ALONE
    }

    /**
     * One stretch.
     *
     * @param run   number of the pot or run, from 1
     * @param step  place of the step in the plan, from 0; -1 when it stands for the whole run
     * @param title what is done
     * @param start when it begins
     * @param end   when it ends, not before its start
     * @param kind  with hands or alone
     */
    public record Item(int run, int step, String title, Instant start, Instant end, Kind kind) {
    }

    public Schedule {
        items = items.stream().sorted(java.util.Comparator.comparing(Item::start).thenComparing(Item::run)).toList();
    }

    /** When the first thing begins; null when there is nothing to do. */
    public Instant begin() {
        return items.isEmpty() ? null : items.getFirst().start();
    }

    /** When everything is done; null when there is nothing to do. */
    public Instant ready() {
        return items.stream().map(Item::end).max(Instant::compareTo).orElse(null);
    }

    /** Time with hands on it. */
    public Duration hands() {
        return items.stream().filter(item -> item.kind() == Kind.HANDS).map(item -> Duration.between(item.start(), item.end())).reduce(Duration.ZERO, Duration::plus);
    }
}
