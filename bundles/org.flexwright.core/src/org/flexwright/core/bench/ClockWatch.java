package org.flexwright.core.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Watches the computer's clock against the counter of the running program while a bench view is open, to say when it was put forward or
 * back, or the computer slept. The time since contact goes by the wall clock either way.
 */
public final class ClockWatch {
    /** Smaller differences are corrections of the clock by the network; common practice, no source. */
    private static final Duration NOTICED = Duration.ofSeconds(2);

    private final Clock clock;
    private final LongSupplier nanos;
    private Instant wall;
    private long counter;

    /** Watches a clock against {@link System#nanoTime()}. */
    public ClockWatch(Clock clock) {
        this(clock, System::nanoTime);
    }

    /** Watches a clock against a counter of nanoseconds. */
    public ClockWatch(Clock clock, LongSupplier nanos) {
        this.clock = clock;
        this.nanos = nanos;
        this.wall = clock.instant();
        this.counter = nanos.getAsLong();
    }

    /** What happened to the clock since it was last looked at, one sentence; empty when it ran on. */
    public Optional<String> look() {
        Instant now = clock.instant();
        long count = nanos.getAsLong();
        Duration jump = Duration.between(wall, now).minus(Duration.ofNanos(count - counter));
        wall = now;
        counter = count;
        if (jump.abs().compareTo(NOTICED) <= 0) {
            return Optional.empty();
        }
        String length = BenchClock.length(jump);
        return Optional.of(jump.isNegative() ? Say.WATCH_BACK.text(length) : Say.WATCH_FORWARD.text(length));
    }
}
