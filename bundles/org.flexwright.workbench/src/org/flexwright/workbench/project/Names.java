package org.flexwright.workbench.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Specimen;
import org.flexwright.model.TargetSheet;

/** Short names of things, for trees, tabs and tables. */
public final class Names {

    private static final List<String> LEADING = List.of("code", "title", "name", "text", "caption", "fileName", "property");

    private Names() {
    }

    /** The thing's code and title, or what else tells it from its neighbours; never empty. */
    public static String of(EObject object) {
        if (object instanceof Project project) {
            return filled(project.getTitle()) ? project.getTitle() : "Project without a title";
        }
        if (object instanceof TargetSheet sheet) {
            return "Version " + sheet.getVersion() + (sheet.getFrozenAt() == null ? "" : ", frozen");
        }
        if (object instanceof ReferencePart part) {
            return filled(part.getName()) ? part.getName() : filled(part.getCode()) ? part.getCode() : "Reference part";
        }
        if (object instanceof MaterialUse use) {
            return use.getGrade() == null ? "Material not chosen" : of(use.getGrade());
        }
        if (object instanceof Measurement measurement && measurement.eContainer() instanceof Specimen piece) {
            return "Reading of " + of(piece);
        }
        List<String> words = new ArrayList<>();
        for (String feature : LEADING) {
            String value = text(object, feature);
            if (filled(value) && words.size() < 2 && !words.contains(value)) {
                words.add(value);
            }
        }
        if (words.isEmpty() && filled(text(object, "kind"))) {
            words.add(text(object, "kind"));
        }
        return words.isEmpty() ? kind(object) + " without a name" : String.join("  ", words);
    }

    /** The thing's code alone where it has one, else {@link #of}: for a tab. */
    public static String tab(EObject object) {
        String code = text(object, "code");
        if (filled(code)) {
            return code;
        }
        if (object instanceof TargetSheet sheet) {
            return "Targets v" + sheet.getVersion();
        }
        String name = of(object);
        return name.length() <= 28 ? name : name.substring(0, 27).strip() + "…";
    }

    /** Where a thing is, for a table: the thing of the project it belongs to, then its own name. */
    public static String where(EObject object) {
        EObject top = object;
        while (top.eContainer() != null && !(top.eContainer() instanceof Project)) {
            top = top.eContainer();
        }
        return top == object ? tab(object) : tab(top) + "  " + of(object);
    }

    /** What kind of thing it is, in words. */
    public static String kind(EObject object) {
        if (object.eClass().getEPackage() == ModelPackage.eINSTANCE && object.eClass() == ModelPackage.Literals.MATERIAL_GRADE) {
            return "Material";
        }
        String spaced = object.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }

    private static String text(EObject object, String feature) {
        EStructuralFeature known = object.eClass().getEStructuralFeature(feature);
        return known != null && !known.isMany() && object.eGet(known) instanceof String words ? words.strip() : "";
    }

    private static boolean filled(String words) {
        return words != null && !words.isBlank();
    }
}
