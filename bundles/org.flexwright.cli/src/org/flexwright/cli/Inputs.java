package org.flexwright.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.naming.Nearest;

/** Typed options read by the same descriptors as the forms and put into a model object that is about to be added or edited. */
final class Inputs {
    /** Days that lie ahead by nature. */
    private static final Set<String> MAY_LIE_AHEAD = Set.of("expires", "plannedStart");

    private final Map<String, String> typed = new LinkedHashMap<>();
    private final Map<EStructuralFeature, String> texts = new LinkedHashMap<>();

    /** One option; nothing when it was not given. */
    Inputs put(String feature, String text) {
        if (text != null) {
            typed.put(feature, text);
        }
        return this;
    }

    /** Exactly what was typed for a feature that was read. */
    String typed(EStructuralFeature feature) {
        return texts.get(feature);
    }

    boolean isEmpty() {
        return typed.isEmpty();
    }

    /**
     * Reads all options against the features of an object; a field answers to its name and to the words beside it. Throws UsageException with
     * one sentence on the first that is not accepted.
     */
    Map<EStructuralFeature, Object> read(EObject object, Clock clock) {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            FieldDescriptor field = field(FieldDescriptors.ofClass(object.eClass()), name);
            EAttribute attribute = (EAttribute) object.eClass().getEStructuralFeature(field.name());
            if (texts.put(attribute, text) != null) {
                throw new UsageException("\"" + field.label() + "\" is given twice.");
            }
            switch (FieldDescriptors.of(attribute).read(text)) {
                case FieldInput.Rejected rejected -> throw new UsageException(rejected.sentence());
                case FieldInput.Read read -> values.put(attribute, notAhead(field, read.value(), text, clock));
            }
        });
        return values;
    }

    private static FieldDescriptor field(List<FieldDescriptor> fields, String name) {
        String wanted = name.strip();
        List<FieldDescriptor> found = fields.stream().filter(f -> f.name().equalsIgnoreCase(wanted)).toList();
        if (found.isEmpty()) {
            found = fields.stream().filter(f -> f.label().equalsIgnoreCase(wanted)).toList();
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        if (!found.isEmpty()) {
            throw new UsageException("More than one field is called \"" + wanted + "\": say which of " + names(found) + ".");
        }
        List<String> near = Nearest.of(wanted, fields.stream().flatMap(f -> Stream.of(f.name(), f.label())).toList());
        List<FieldDescriptor> meant = fields.stream().filter(f -> near.contains(f.name()) || near.contains(f.label())).toList();
        throw new UsageException("There is no field \"" + name + "\" here" + (meant.isEmpty() ? "; there are " + names(fields) + "."
                : ": did you mean " + names(meant) + "?"));
    }

    /** Names with the words beside them; planned and as made are told apart where the words are the same. */
    static String names(List<FieldDescriptor> fields) {
        return String.join(", ", fields.stream().map(f -> f.name() + " (" + f.label() + (fields.stream().filter(g -> g.label().equals(f.label())).count() > 1
                ? f.role() == FieldRole.ACTUAL ? ", as made" : ", planned" : "") + ")").toList());
    }

    /** Fills an object that is not in a project yet. */
    void fill(EObject object, Clock clock) {
        read(object, clock).forEach(object::eSet);
    }

    private static Object notAhead(FieldDescriptor field, Object value, String text, Clock clock) {
        boolean ahead = value instanceof Instant instant && instant.isAfter(clock.instant())
                || value instanceof LocalDate day && day.isAfter(LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()));
        if (ahead && !MAY_LIE_AHEAD.contains(field.name())) {
            throw new UsageException(field.label() + " " + text + " lies in the future: give a moment up to now.");
        }
        return value;
    }
}
