package org.flexwright.core.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Finds who refers to objects that are about to go. */
final class References {
    private final Map<EClass, List<EReference>> references = new HashMap<>();

    /** Features outside the subtree that hold a reference into it. */
    Collection<Change.Slot> into(EObject root, EObject subtree) {
        Set<EObject> going = Collections.newSetFromMap(new IdentityHashMap<>());
        boolean[] named = new boolean[1];
        ModelIndex.each(subtree, o -> {
            going.add(o);
            named[0] |= o.eClass().getEIDAttribute() != null;
        });
        Set<Change.Slot> found = new LinkedHashSet<>();
        // only what has an id can be referred to, so most removals need no search
        if (named[0]) {
            search(root, going, found);
        }
        return found;
    }

    private void search(EObject object, Set<EObject> going, Set<Change.Slot> found) {
        if (going.contains(object)) {
            return;
        }
        for (EReference r : references.computeIfAbsent(object.eClass(), References::crossReferences)) {
            if (object.eIsSet(r) && Change.list(object.eGet(r, false)).stream().anyMatch(going::contains)) {
                found.add(new Change.Slot(object, r));
            }
        }
        for (EObject child : object.eContents()) {
            search(child, going, found);
        }
    }

    /** Refuses a change after which something in the project refers to an object outside it. */
    static void check(Change change, EObject root) {
        change.slots().keySet().forEach(slot -> {
            if (!slot.contains() && slot.feature() instanceof EReference r && inside(root, slot.owner())) {
                check(root, slot.owner(), r);
            }
        });
        for (EObject arriving : change.arriving()) {
            if (inside(root, arriving)) {
                ModelIndex.each(arriving, o -> crossReferences(o.eClass()).forEach(r -> check(root, o, r)));
            }
        }
    }

    private static void check(EObject root, EObject owner, EReference r) {
        for (Object target : Change.list(owner.eGet(r, false))) {
            if (!inside(root, (EObject) target)) {
                throw new IllegalArgumentException("The feature " + r.getName() + " of a " + owner.eClass().getName()
                        + " can only refer to what is in the project.");
            }
        }
    }

    private static boolean inside(EObject root, EObject object) {
        return object == root || EcoreUtil.isAncestor(root, object);
    }

    private static List<EReference> crossReferences(EClass eClass) {
        List<EReference> list = new ArrayList<>();
        for (EReference r : eClass.getEAllReferences()) {
            if (!r.isContainment() && !r.isContainer() && !r.isDerived() && !r.isTransient() && !r.isVolatile()) {
                list.add(r);
            }
        }
        return List.copyOf(list);
    }
}
