package org.flexwright.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;

/** Typed options read by the same descriptors as the forms and put into a model object that is about to be added or edited. */
final class Inputs {
    /** Days that lie ahead by nature. */
    private static final Set<String> MAY_LIE_AHEAD = Set.of("expires", "plannedStart");

    private final Map<String, String> typed = new LinkedHashMap<>();

    /** One option; nothing when it was not given. */
    Inputs put(String feature, String text) {
        if (text != null) {
            typed.put(feature, text);
        }
        return this;
    }

    Map<String, String> typed() {
        return typed;
    }

    /** Reads all options against the features of an object. Throws UsageException with one sentence on the first that is not accepted. */
    Map<EStructuralFeature, Object> read(EObject object, Clock clock) {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            EStructuralFeature feature = object.eClass().getEStructuralFeature(name);
            if (!(feature instanceof EAttribute attribute)) {
                throw new UsageException("There is no field \"" + name + "\" here; there are " + String.join(", ", FieldDescriptors
                        .ofClass(object.eClass()).stream().map(FieldDescriptor::name).toList()) + ".");
            }
            FieldDescriptor field = FieldDescriptors.of(attribute);
            switch (field.read(text)) {
                case FieldInput.Rejected rejected -> throw new UsageException(rejected.sentence());
                case FieldInput.Read read -> values.put(feature, notAhead(field, read.value(), clock));
            }
        });
        return values;
    }

    /** Fills an object that is not in a project yet. */
    void fill(EObject object, Clock clock) {
        read(object, clock).forEach(object::eSet);
    }

    private static Object notAhead(FieldDescriptor field, Object value, Clock clock) {
        boolean ahead = value instanceof Instant instant && instant.isAfter(clock.instant())
                || value instanceof LocalDate day && day.isAfter(LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()));
        if (ahead && !MAY_LIE_AHEAD.contains(field.name())) {
            throw new UsageException(field.label() + " " + field.print(value) + " lies in the future: give a moment up to now.");
        }
        return value;
    }
}
