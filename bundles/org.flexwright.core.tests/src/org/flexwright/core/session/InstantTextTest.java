package org.flexwright.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The direct way must say exactly what {@link Instant} says. */
class InstantTextTest {
    @Test
    void printsAndParsesAsInstantDoes() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            long range = i % 2 == 0 ? 4_000_000_000L : 400_000_000_000L;
            Instant t = Instant.ofEpochSecond(random.nextLong(-range, range), i % 3 == 0 ? random.nextInt(1_000_000_000) : 0);
            assertEquals(t.toString(), InstantText.print(t));
            assertEquals(t, InstantText.parse(t.toString()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "2026-01-01", "2026-01-01T00:00:00", "2026-13-01T00:00:00Z", "2026-02-30T00:00:00Z", "2026-01-01T25:00:00Z",
            "2026-01-01T00:60:00Z", "2o26-01-01T00:00:00Z", "2026-01-01 00:00:00Z" })
    void refusesWhatInstantRefuses(String text) {
        assertThrows(DateTimeException.class, () -> Instant.parse(text));
        assertThrows(DateTimeException.class, () -> InstantText.parse(text));
    }
}
