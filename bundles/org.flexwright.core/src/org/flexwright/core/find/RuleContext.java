package org.flexwright.core.find;

import java.time.Instant;

import org.flexwright.core.process.StepKinds;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;

/**
 * What a rule may look at.
 *
 * @param project    the project, not to be changed
 * @param trial      the trial at hand, or null for project rules
 * @param properties the known properties
 * @param kinds      the known step kinds
 * @param now        the moment of the check
 */
public record RuleContext(Project project, Trial trial, PropertyCatalogue properties, StepKinds kinds, Instant now) {

    /** What a rule may look at that asks no step kind. */
    public RuleContext(Project project, Trial trial, PropertyCatalogue properties, Instant now) {
        this(project, trial, properties, StepKinds.NONE, now);
    }
}
