package org.flexwright.workbench.kit;

import java.util.Objects;

/**
 * A place along the horizontal axis of a chart.
 *
 * @param name     what it is told apart by
 * @param title    words at its head
 * @param position where, in the unit of the axis
 * @param movable  whether a person may set it elsewhere
 * @param byHand   whether one did; its words say so
 * @param counts   false when it was left out: it is drawn, but not as one that counts
 */
public record ChartMark(String name, String title, double position, boolean movable, boolean byHand, boolean counts) {
    public ChartMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
    }

    /** What stands at its head. */
    public String words() {
        return (counts ? title : title + " (left out)") + (byHand ? ", by hand" : "");
    }

    /** This mark elsewhere. */
    public ChartMark at(double other) {
        return new ChartMark(name, title, other, movable, byHand, counts);
    }
}
