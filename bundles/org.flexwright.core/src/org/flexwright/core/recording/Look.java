package org.flexwright.core.recording;

import java.util.List;

import org.flexwright.core.find.Remark;

/**
 * What a recording kind makes of a recording.
 *
 * @param plots   in the order of their tabs; the first is what one looks at
 * @param marks   along the axis
 * @param results figures; a figure that cannot be had is left out and a remark says why
 * @param remarks what belongs to it
 */
public record Look(List<RecordingPlot> plots, List<FoundMark> marks, List<RecordingResult> results, List<Remark> remarks) {
    public Look {
        plots = List.copyOf(plots);
        marks = List.copyOf(marks);
        results = List.copyOf(results);
        remarks = List.copyOf(remarks);
    }
}
