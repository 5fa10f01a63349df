package org.flexwright.core.recording;

import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.field.FieldText;
import org.flexwright.model.Recording;
import org.flexwright.quantity.QuantityFormat;

/**
 * A place on a recording.
 *
 * @param name     id within the recording kind, such as {@code peak} or {@code impact-1}; a {@code RecordingMark} of that name moves it
 * @param title    words for people
 * @param position along the axis of the plots
 * @param movable  whether a person may set it elsewhere
 * @param byHand   whether one did
 * @param leavable whether the results can do without it, so that a person may leave it out: one impact of several, not the only peak
 */
public record FoundMark(String name, String title, double position, boolean movable, boolean byHand, boolean leavable) {
    private static final double FAR = 10;
    private static final double THOUSAND = 1000;

    public FoundMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
    }

    /** A mark that the results need: it can be set elsewhere at most. */
    public FoundMark(String name, String title, double position, boolean movable, boolean byHand) {
        this(name, title, position, movable, byHand, false);
    }

    /** A mark that lies where it was found unless a person set it elsewhere by {@link Recordings#mark}. */
    public static FoundMark movable(Recording recording, String name, String title, double found) {
        Optional<Double> set = Recordings.place(recording, name);
        return new FoundMark(name, title, set.orElse(found), true, set.isPresent());
    }

    /** Its place in words, without unit: four digits, and a thousandth also far from the beginning, where an impact is known to a millisecond. */
    public String place() {
        return Math.abs(position) < FAR ? FieldText.digits(position) : QuantityFormat.plain(Math.rint(position * THOUSAND) / THOUSAND);
    }
}
