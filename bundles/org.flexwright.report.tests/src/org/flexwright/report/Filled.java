package org.flexwright.report;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.Identified;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;

/** A project with one of everything, every text of it hostile, made from the model itself: a new feature is in it without anybody thinking of it. */
final class Filled {
    /** Features that name something the program looks up; the texts of people are all others. */
    private static final Set<String> NAMES = Set.of("PropertyKey.property", "MaterialValue.property", "Attachment.path", "PluginUse.nsURI");

    /** Text by the feature it was put into, class and name. */
    final Map<String, String> texts = new LinkedHashMap<>();
    final Project project;
    private final List<EObject> all = new ArrayList<>();

    Filled() {
        project = (Project) make(ModelPackage.Literals.PROJECT);
        all.forEach(this::refer);
    }

    static String hostile(String where) {
        return "\"'><img src=x onerror=alert(1)>&amp;</td>" + where + "\u0001";
    }

    private EObject make(EClass type) {
        EObject object = EcoreUtil.create(type);
        all.add(object);
        int number = all.size();
        if (object instanceof Identified identified) {
            identified.setId("id" + number);
        }
        type.getEAllAttributes().forEach(attribute -> fill(object, attribute));
        if (object instanceof PropertyKey key) {
            key.setProperty("testing.mass");
        }
        for (EReference reference : type.getEAllContainments()) {
            for (EClass child : kinds(reference.getEReferenceType())) {
                put(object, reference, make(child));
            }
        }
        return object;
    }

    private static List<EClass> kinds(EClass type) {
        return type == org.eclipse.emf.ecore.EcorePackage.Literals.EOBJECT ? List.of() : type.isAbstract() ? List.of() : List.of(type);
    }

    private void fill(EObject object, EAttribute attribute) {
        String where = attribute.getEContainingClass().getName() + "." + attribute.getName();
        if (attribute.isID() || !attribute.isChangeable()) {
            return;
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == String.class) {
            String key = object.eClass().getName() + "." + attribute.getName();
            String text = NAMES.contains(where) ? "none.such" : hostile(key);
            if (!NAMES.contains(where)) {
                texts.put(key, text);
            }
            put(object, attribute, text);
        } else if (type == boolean.class || type == Boolean.class) {
            put(object, attribute, true);
        } else if (type == Double.class) {
            put(object, attribute, 1.5);
        } else if (type == Instant.class) {
            put(object, attribute, Instant.parse("2026-05-02T12:00:00Z"));
        } else if (type == LocalDate.class) {
            put(object, attribute, LocalDate.parse("2026-05-02"));
        }
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject object, org.eclipse.emf.ecore.EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            ((List<Object>) object.eGet(feature)).add(value);
        } else {
            object.eSet(feature, value);
        }
    }

    private void refer(EObject object) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer() && reference.isChangeable()) {
                all.stream().filter(o -> o != object && reference.getEReferenceType().isInstance(o)).findFirst().ifPresent(o -> put(object, reference, o));
            }
        }
    }

    static PropertyKey key(String property) {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(property);
        return key;
    }
}
