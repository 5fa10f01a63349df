package org.flexwright.curing;

import org.flexwright.model.Step;

/** What a step is called in a sentence. */
final class StepNames {

    private StepNames() {
    }

    static String of(Step step) {
        return step.getTitle() == null || step.getTitle().isBlank() ? step.getKind() : step.getTitle();
    }
}
