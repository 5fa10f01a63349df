package org.flexwright.core.process;

import java.util.List;

import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * Hazard prompts for what is really in a step: its materials, lots and settings, whatever kind it is. Register it as an OSGi service.
 * Prompts that belong to one kind of step alone come from {@link StepKind#prompts}.
 */
public interface PromptSource {
    /** The prompts; the lots they speak of are those in {@code step.getUses()}. */
    List<HazardPrompt> prompts(Step step, Trial trial);
}
