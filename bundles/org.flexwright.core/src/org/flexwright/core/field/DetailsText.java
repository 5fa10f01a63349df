package org.flexwright.core.field;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xml.type.AnyType;

/** A plugin's details in words, for where there is no form. */
public final class DetailsText {

    private DetailsText() {
    }

    /** What was entered: {@code Plies: 2; Distance to edge: 13 mm}; empty when nothing was, or the plugin is absent. */
    public static String of(EObject details) {
        if (details == null || details instanceof AnyType) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (FieldDescriptor field : FieldDescriptors.ofClass(details.eClass())) {
            EStructuralFeature feature = details.eClass().getEStructuralFeature(field.name());
            if (details.eIsSet(feature)) {
                String value = FieldText.show(field, details.eGet(feature));
                if (!value.isBlank()) {
                    words.add(field.label() + ": " + value);
                }
            }
        }
        return String.join("; ", words);
    }
}
