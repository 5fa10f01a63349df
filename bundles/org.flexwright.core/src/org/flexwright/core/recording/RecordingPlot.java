package org.flexwright.core.recording;

import org.flexwright.core.view.PlotModel;

/** Something a recording can be drawn as. It is drawn anew for each stretch of its axis, thinned to what can be seen without losing a peak. */
public interface RecordingPlot {
    /** Stable id within the recording kind. */
    String id();

    /** Words for the tab or the heading. */
    String title();

    /** True when the positions of the recording's marks lie on its horizontal axis. */
    boolean marksAcross();

    /** Everything, in about so many points across (at least 2). */
    PlotModel whole(int points);

    /** A stretch of the horizontal axis, {@code from < to}, in about so many points across. */
    PlotModel part(double from, double to, int points);
}
