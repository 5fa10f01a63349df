package org.flexwright.core.recording;

import java.util.Objects;

import org.flexwright.core.Source;

/**
 * A figure taken from a recording.
 *
 * @param id        stable id within the recording kind
 * @param title     words for people
 * @param property  id of the property it is a reading of, or null when it is none
 * @param value     in the unit
 * @param halfWidth half width of its band at about 95 %, in the unit; null when nothing is known of it
 * @param unit      symbol of the unit; empty for plain numbers
 * @param source    what it rests on
 */
public record RecordingResult(String id, String title, String property, double value, Double halfWidth, String unit, Source source) {
    public RecordingResult {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A result is a number.");
        }
    }
}
