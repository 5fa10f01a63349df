package org.flexwright.core.bench;

import java.util.List;

import org.flexwright.core.bench.GatePoint.State;
import org.flexwright.model.Decision;
import org.flexwright.model.Step;

/**
 * What must be so before a step that cannot be taken back, and what was decided.
 *
 * @param asked every point with the step that knows about it; that step is null for what holds for the whole trial
 * @param last  the last decision at this gate; null when none was made
 */
public record BenchGate(List<Asked> asked, Decision last) {

    /**
     * One point.
     *
     * @param step  the step whose kind asks; null when the trial as a whole does
     * @param point the point
     */
    public record Asked(Step step, GatePoint point) {
    }

    public BenchGate {
        asked = List.copyOf(asked);
    }

    /** The points. */
    public List<GatePoint> points() {
        return asked.stream().map(Asked::point).toList();
    }

    /** Points that are not met, unknown ones among them. */
    public List<GatePoint> against() {
        return points().stream().filter(p -> p.state() != State.MET).toList();
    }

    /** True when nothing stands against going on. */
    public boolean met() {
        return against().isEmpty();
    }
}
