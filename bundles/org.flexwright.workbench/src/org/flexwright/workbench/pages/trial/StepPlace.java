package org.flexwright.workbench.pages.trial;

import java.util.Optional;

import org.flexwright.core.process.StepKind;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Doing;

/**
 * What the parts of a step's form work with.
 *
 * @param page  the page they are on
 * @param step  the step
 * @param doing makes edits and says what cannot be done
 */
record StepPlace(PageContext page, Step step, Doing doing) {

    Kit kit() {
        return page.kit();
    }

    Trial trial() {
        return (Trial) step.eContainer();
    }

    /** The step's kind; empty when its plugin is absent. */
    Optional<StepKind> kind() {
        return page.registries().findStepKind(step.getKind());
    }

    boolean writable() {
        return !page.session().readOnly();
    }
}
