package org.flexwright.core.process;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * One kind of thing done at the bench. Register it as an OSGi service; form, command line, bench card and report part come for free.
 */
public interface StepKind {
    /** Stable id, {@code capability.name}, e.g. {@code mixing.weigh}. */
    String id();

    /** A verb or two: what is done. */
    String title();

    /** One or two sentences for the person who plans it. */
    String summary();

    /**
     * Class of the details, from the plugin's own package; null when the core step says it all. Features are described by annotations
     * {@code urn:flexwright:field} (label, kind, unit, min, max, help, role = planned or actual, of = name of the planned feature an
     * actual one belongs to, limit = own limit in per cent or unit).
     */
    EClass details();

    /** Hazard prompts for what is really in this step, beyond what the materials themselves call for. */
    default List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of();
    }

    /** What the step says about itself right now, from its planned and actual values; empty when it has nothing to say. */
    default List<StepAdvice> advice(Step step, Trial trial) {
        return List.of();
    }
}
