package org.flexwright.core.process;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.find.Remark;
import org.flexwright.core.view.PlotModel;

/**
 * Something a step can be drawn as, such as stiffness over the amount of filler.
 *
 * @param id      stable id within the step kind
 * @param plot    what is drawn; null when nothing can be drawn, and the remarks say why
 * @param remarks what belongs to it: limits, where the figures come from, what is missing
 */
public record StepPlot(String id, PlotModel plot, List<Remark> remarks) {
    public StepPlot {
        Objects.requireNonNull(id, "id");
        remarks = List.copyOf(remarks);
    }
}
