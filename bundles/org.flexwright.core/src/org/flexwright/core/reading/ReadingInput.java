package org.flexwright.core.reading;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;

/** What came of a typed text: readings, or one sentence that says what is wrong and what is allowed. */
public sealed interface ReadingInput {

    /**
     * All of it was understood.
     *
     * @param readings one or more, in the order typed
     */
    record Understood(List<ParsedReading> readings) implements ReadingInput {
        public Understood {
            readings = List.copyOf(readings);
        }

        /** The dwell the readings were typed with, in seconds; null when none says so. They all say the same. */
        public Double dwell() {
            return readings.stream().map(ParsedReading::dwell).filter(Objects::nonNull).findFirst().orElse(null);
        }
    }

    /**
     * Something was not understood; nothing is kept.
     *
     * @param sentence what, where, what is allowed
     */
    record Rejected(Message sentence) implements ReadingInput {
    }
}
