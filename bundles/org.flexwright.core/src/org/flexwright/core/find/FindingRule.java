package org.flexwright.core.find;

import java.util.function.Consumer;

/**
 * A pure function on a project that nobody else is changing. Register it as an OSGi service. It only reads; it never sets a feature.
 */
public interface FindingRule {
    /** Stable id, {@code capability.name}. */
    String id();

    /** What it looks for, a few words. */
    String title();

    /** How often it is called. */
    default Scope scope() {
        return Scope.TRIAL;
    }

    /** Looks and reports. {@code context.trial()} is set when the scope is a trial. */
    void check(RuleContext context, Consumer<Finding> out);

    /** What a rule is called for. */
    enum Scope {
        /** Once for the project. */
        PROJECT,
        /** Once for each trial. */
        TRIAL
    }
}
