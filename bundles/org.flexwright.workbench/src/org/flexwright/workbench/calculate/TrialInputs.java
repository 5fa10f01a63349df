package org.flexwright.workbench.calculate;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.calc.CalculationRuns.Binding;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Inputs taken from the steps of a trial: those that are called the same there and are of the same kind. One that is typed over is no longer taken. */
final class TrialInputs {

    private final FormModel form;
    private final Map<String, Taken> taken = new LinkedHashMap<>();

    private record Taken(Binding place, Object value, String words) {
    }

    TrialInputs(FormModel form) {
        this.form = form;
    }

    /** Takes what the trial has; tells how many inputs that were. */
    int take(Trial trial) {
        Map<String, Taken> found = new LinkedHashMap<>();
        for (FieldDescriptor input : form.fields()) {
            for (Step step : trial.getSteps()) {
                EObject details = step.getDetails();
                if (details != null && !(details instanceof AnyType) && !found.containsKey(input.name())) {
                    take(input, trial, step, details, found);
                }
            }
        }
        taken.clear();
        taken.putAll(found);
        found.keySet().forEach(input -> { // typed once more, so that the fields show where it came from
            String text = form.text(input);
            form.type(input, "");
            form.type(input, text);
        });
        return found.size();
    }

    private void take(FieldDescriptor input, Trial trial, Step step, EObject details, Map<String, Taken> found) {
        EStructuralFeature feature = details.eClass().getEStructuralFeature(input.name());
        if (!(feature instanceof EAttribute attribute) || attribute.isMany() || details.eGet(attribute) == null) {
            return;
        }
        FieldDescriptor own = FieldDescriptors.of(attribute);
        if (own.type() != input.type() || own.kind() != input.kind()) {
            return;
        }
        form.type(input.name(), own.print(details.eGet(attribute)));
        if (form.problem(input.name()).isEmpty()) {
            String title = step.getTitle() == null ? step.getKind() : step.getTitle();
            found.put(input.name(), new Taken(new Binding(details, attribute), form.value(input.name()), "from " + title + " of " + trial.getCode()));
        }
    }

    /** Types texts into inputs, as a person would. */
    void type(Map<String, String> texts) {
        texts.forEach(form::type);
    }

    private boolean stands(String input) {
        Taken one = taken.get(input);
        return one != null && form.problem(input).isEmpty() && Objects.equals(one.value, form.value(input));
    }

    /** Where an input was taken from, in words; empty when it was typed. */
    String origin(String input) {
        return stands(input) ? taken.get(input).words : "";
    }

    /** The places of all inputs that still are as they were taken. */
    Map<String, Binding> places() {
        Map<String, Binding> places = new LinkedHashMap<>();
        taken.forEach((input, one) -> {
            if (stands(input)) {
                places.put(input, one.place);
            }
        });
        return places;
    }
}
