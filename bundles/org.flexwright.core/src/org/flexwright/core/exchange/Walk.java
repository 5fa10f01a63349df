package org.flexwright.core.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.session.UnknownText;

/** Goes through all objects of a project in the order of its file. */
final class Walk {
    private final Consumer<Row> work;
    /** What a class contains in rows of their own; asked for every object, worked out once a class. */
    private final Map<EClass, EReference[]> contained = new HashMap<>();

    private Walk(Consumer<Row> work) {
        this.work = work;
    }

    /**
     * An object that has a row of its own.
     *
     * @param object the object
     * @param owner  address of what contains it, empty for the project
     * @param in     the feature that contains it, null for the project
     * @param place  its place there from 1, 0 in a feature for one
     */
    record Row(EObject object, String owner, EReference in, int place) {
        String address() {
            String id = id(object);
            return in == null ? "/" : id != null ? id : (owner.equals("/") ? "" : owner) + "/" + in.getName() + (place == 0 ? "" : "." + (place - 1));
        }
    }

    static String id(EObject object) {
        EStructuralFeature a = object.eClass().getEIDAttribute();
        return a == null ? null : (String) object.eGet(a);
    }

    /** All rows; what stands in its owner's row has none. */
    static void each(EObject root, Consumer<Row> work) {
        new Walk(work).each(new Row(root, "", null, 0));
    }

    private static EReference[] containments(EClass c) {
        return c.getEAllContainments().stream().filter(r -> !Tables.inOwnersRow(r) && Tables.kept(r)).toArray(EReference[]::new);
    }

    private void each(Row row) {
        work.accept(row);
        if (UnknownText.isUnknown(row.object())) {
            return;
        }
        String address = null;
        for (EReference r : contained.computeIfAbsent(row.object().eClass(), Walk::containments)) {
            Object value = row.object().eGet(r);
            if (value == null || value instanceof List<?> l && l.isEmpty()) {
                continue;
            }
            address = address == null ? row.address() : address;
            if (value instanceof List<?> many) {
                int place = 0;
                for (Object child : many) {
                    each(new Row((EObject) child, address, r, ++place));
                }
            } else {
                each(new Row((EObject) value, address, r, 0));
            }
        }
    }
}
