package org.flexwright.core.recording;

import java.util.Objects;

/**
 * A place on a recording.
 *
 * @param name     id within the recording kind, such as {@code peak} or {@code impact-1}; a {@code RecordingMark} of that name moves it
 * @param title    words for people
 * @param position along the axis of the plots
 * @param movable  whether a person may set it elsewhere
 * @param byHand   whether one did
 */
public record FoundMark(String name, String title, double position, boolean movable, boolean byHand) {
    public FoundMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
    }
}
