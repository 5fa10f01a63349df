package org.flexwright.core.recording;

import java.util.Objects;

import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityFormat;

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
    private static final double FAR = 10;
    private static final double THOUSAND = 1000;

    public FoundMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
    }

    /** Its place in words, without unit: four digits, and a thousandth also far from the beginning, where an impact is known to a millisecond. */
    public String place() {
        return Math.abs(position) < FAR ? FieldText.digits(position) : QuantityFormat.plain(Math.rint(position * THOUSAND) / THOUSAND);
    }
}
