package org.flexwright.core.process;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Finds the steps of one kind in a trial together with their details. */
public final class Steps {
    private Steps() {
    }

    /**
     * A step with details of a known type.
     *
     * @param step    the step
     * @param details what it contains
     */
    public record Detailed<D extends EObject>(Step step, D details) {
    }

    /** The steps of that kind in order; steps without details, or with details of another type, are left out. */
    public static <D extends EObject> List<Detailed<D>> of(Trial trial, String kind, Class<D> type) {
        List<Detailed<D>> found = new ArrayList<>();
        for (Step step : trial.getSteps()) {
            if (kind.equals(step.getKind()) && type.isInstance(step.getDetails())) {
                found.add(new Detailed<>(step, type.cast(step.getDetails())));
            }
        }
        return List.copyOf(found);
    }
}
