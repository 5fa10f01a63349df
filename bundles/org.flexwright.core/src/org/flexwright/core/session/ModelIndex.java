package org.flexwright.core.session;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Objects of a project by their address: {@code id}, or the id of what contains an object without one and the way from there. */
final class ModelIndex {
    private final EObject root;
    private final Map<String, EObject> ids;

    ModelIndex(EObject root, Map<String, EObject> ids) {
        this.root = root;
        this.ids = new HashMap<>(ids);
    }

    static String id(EObject object) {
        EAttribute a = object.eClass().getEIDAttribute();
        Object id = a == null ? null : object.eGet(a);
        return id == null ? null : id.toString();
    }

    EObject byId(String id) {
        return ids.get(id);
    }

    boolean holds(EObject object) {
        return object == root || EcoreUtil.isAncestor(root, object);
    }

    void add(EObject subtree) {
        each(subtree, o -> {
            String id = id(o);
            if (id != null) {
                ids.put(id, o);
            }
        });
    }

    void remove(EObject subtree) {
        each(subtree, o -> {
            String id = id(o);
            if (id != null) {
                ids.remove(id, o);
            }
        });
    }

    static void each(EObject subtree, java.util.function.Consumer<EObject> work) {
        work.accept(subtree);
        for (Iterator<EObject> i = EcoreUtil.getAllProperContents(subtree, false); i.hasNext();) {
            work.accept(i.next());
        }
    }

    /** Address of an object of the project as it stands now. */
    String address(EObject object) {
        return address(object, Place::of);
    }

    /** Address of an object when places are as {@code places} says. */
    String address(EObject object, java.util.function.Function<EObject, Place> places) {
        String id = id(object);
        if (id != null && object != root) {
            return id;
        }
        if (object == root) {
            return "/";
        }
        Place p = places.apply(object);
        String parent = address(p.owner, places);
        return (parent.equals("/") ? "" : parent) + "/" + p.feature.getName() + (p.index < 0 ? "" : "." + p.index);
    }

    /** The object at an address, or null. */
    EObject find(String address) {
        String[] parts = address.split("/");
        EObject o = parts.length == 0 || parts[0].isEmpty() ? root : ids.get(parts[0]);
        for (int i = 1; i < parts.length && o != null; i++) {
            o = step(o, parts[i]);
        }
        return o;
    }

    private static EObject step(EObject owner, String part) {
        int dot = part.lastIndexOf('.');
        EStructuralFeature f = owner.eClass().getEStructuralFeature(dot < 0 ? part : part.substring(0, dot));
        if (!(f instanceof EReference r) || !r.isContainment() || f.isMany() == dot < 0) {
            return null;
        }
        if (dot < 0) {
            return (EObject) owner.eGet(f);
        }
        List<?> list = (List<?>) owner.eGet(f);
        int index;
        try {
            index = Integer.parseInt(part.substring(dot + 1));
        } catch (NumberFormatException noIndex) {
            return null;
        }
        return index < 0 || index >= list.size() ? null : (EObject) list.get(index);
    }

    /** Where an object stands: in which feature of which object, at which index (-1 in a feature with one value). */
    record Place(EObject owner, EStructuralFeature feature, int index) {
        static Place of(EObject object) {
            EObject owner = object.eContainer();
            if (owner == null) {
                throw new IllegalArgumentException("A " + object.eClass().getName() + " that is not in the project has no address.");
            }
            EStructuralFeature f = object.eContainingFeature();
            return new Place(owner, f, f.isMany() ? ((List<?>) owner.eGet(f)).indexOf(object) : -1);
        }
    }
}
