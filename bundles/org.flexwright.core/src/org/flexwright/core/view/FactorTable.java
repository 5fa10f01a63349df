package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.RoleWords;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * Planned factors of trials of one route: those of the process kind, and which material was used in which role.
 *
 * @param byTrial values by trial, every trial with the same factors in the same order
 */
public record FactorTable(Map<Trial, List<Comparison.FactorValue>> byTrial) {
    private static final String NOTHING = "\u2013";

    /** The factors of such trials; without the process kind only the materials are known. */
    public static FactorTable of(Optional<ProcessKind> route, List<Trial> trials) {
        List<PartRole> roles = trials.stream().flatMap(t -> t.getSteps().stream()).flatMap(s -> s.getUses().stream()).map(MaterialUse::getRole).distinct().sorted().toList();
        Map<Trial, List<Comparison.FactorValue>> byTrial = new LinkedHashMap<>();
        for (Trial trial : trials) {
            List<Comparison.FactorValue> values = new ArrayList<>();
            route.ifPresent(r -> r.factors().forEach(f -> values.add(new Comparison.FactorValue(f.id(), f.label(), value(trial, f)))));
            roles.forEach(role -> values.add(new Comparison.FactorValue("material." + role.getLiteral(), RoleWords.of(role), materials(trial, role))));
            byTrial.put(trial, values);
        }
        return new FactorTable(byTrial);
    }

    /** A planned value in words; a dash when it was not entered. */
    static String value(Trial trial, ProcessKind.Factor factor) {
        for (Step step : trial.getSteps()) {
            EObject details = step.getDetails();
            if (factor.stepKind().equals(step.getKind()) && details != null
                    && details.eClass().getEStructuralFeature(factor.feature()) instanceof EAttribute attribute) {
                String text = FieldText.show(FieldDescriptors.of(attribute), details.eGet(attribute));
                return text.isEmpty() ? NOTHING : text;
            }
        }
        return NOTHING;
    }

    private static String materials(Trial trial, PartRole role) {
        String names = trial.getSteps().stream().flatMap(s -> Mixtures.materials(s).stream()).filter(u -> u.getRole() == role && u.getGrade() != null)
                .map(u -> u.getGrade().getName() == null ? u.getGrade().getCode() : u.getGrade().getName()).distinct().collect(Collectors.joining(", "));
        return names.isEmpty() ? NOTHING : names;
    }

    /** Factors with the same value in every trial; those nobody entered are left out. */
    public List<Comparison.FactorValue> unchanged() {
        return byTrial.values().stream().findFirst().orElse(List.of()).stream().filter(f -> same(f) && !f.value().equals(NOTHING)).toList();
    }

    /** Factors of a trial that differ somewhere among the trials. */
    public List<Comparison.FactorValue> differing(Trial trial) {
        return byTrial.get(trial).stream().filter(f -> !same(f)).toList();
    }

    private boolean same(Comparison.FactorValue factor) {
        return byTrial.values().stream().flatMap(List::stream).filter(f -> f.id().equals(factor.id())).map(Comparison.FactorValue::value).distinct().count() == 1;
    }
}
