package org.flexwright.core.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Change.Slot;
import org.flexwright.core.session.Change.Values;
import org.flexwright.model.Project;

/** Carries an edit out and remembers what each touched feature held before. */
final class Recorder implements Edit {
    private final Project project;
    private final ModelIndex index;
    private final Instant now;
    private final String who;
    private final Map<Slot, Object> before = new LinkedHashMap<>();
    private final References references = new References();
    private boolean open = true;

    Recorder(Project project, ModelIndex index, Instant now, String who) {
        this.project = project;
        this.index = index;
        this.now = now;
        this.who = who;
    }

    @Override
    public Project project() {
        return project;
    }

    @Override
    public Instant now() {
        return now;
    }

    @Override
    public String who() {
        return who;
    }

    @Override
    public String newId() {
        return Ids.fresh();
    }

    @Override
    public void set(EObject owner, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            setAll(owner, feature, value == null ? List.of() : (List<?>) value);
            return;
        }
        Slot slot = slot(owner, feature);
        check(feature, value);
        Object old = owner.eGet(feature, false);
        if (Change.same(old, value)) {
            return;
        }
        if (slot.contains()) {
            if (old != null) {
                remove((EObject) old);
            }
            if (value != null) {
                admit((EObject) value);
            }
        }
        touch(slot);
        Change.put(slot, value);
    }

    private void setAll(EObject owner, EStructuralFeature feature, List<?> values) {
        Slot slot = slot(owner, feature);
        values.forEach(v -> check(feature, v));
        if (slot.contains()) {
            List<Object> old = new ArrayList<>(Change.list(owner.eGet(feature, false)));
            Set<Object> stay = identities(values);
            Set<Object> were = identities(old);
            for (Object o : old) {
                if (!stay.contains(o)) {
                    remove((EObject) o);
                }
            }
            for (Object o : values) {
                if (!were.contains(o)) {
                    admit((EObject) o);
                }
            }
        }
        touch(slot);
        Change.put(slot, values);
    }

    private static Set<Object> identities(List<?> values) {
        Set<Object> set = Collections.newSetFromMap(new IdentityHashMap<>());
        set.addAll(values);
        return set;
    }

    @Override
    public void add(EObject owner, EStructuralFeature feature, Object value) {
        many(feature);
        add(owner, feature, values(owner, feature).size(), value);
    }

    @Override
    public void add(EObject owner, EStructuralFeature feature, int at, Object value) {
        Slot slot = slot(owner, many(feature));
        check(feature, value);
        if (value == null) {
            throw new IllegalArgumentException("There is nothing to add to " + feature.getName() + ".");
        }
        if (slot.contains()) {
            admit((EObject) value);
        }
        touch(slot);
        values(owner, feature).add(at, value);
    }

    @Override
    public void remove(EObject child) {
        EObject owner = child.eContainer();
        if (owner == null) {
            throw new IllegalArgumentException("A " + child.eClass().getName() + " that is nowhere cannot be removed.");
        }
        EObject top = EcoreUtil.getRootContainer(owner);
        if (top != project) {
            unset(child, top);
        }
        unset(child, project);
        EStructuralFeature feature = child.eContainingFeature();
        touch(slot(owner, feature));
        if (feature.isMany()) {
            values(owner, feature).remove(child);
        } else {
            owner.eUnset(feature);
        }
    }

    private void unset(EObject child, EObject root) {
        for (Slot slot : references.into(root, child)) {
            touch(slot);
            if (slot.feature().isMany()) {
                values(slot.owner(), slot.feature()).removeIf(o -> child == o || EcoreUtil.isAncestor(child, (EObject) o));
            } else {
                slot.owner().eUnset(slot.feature());
            }
        }
    }

    @Override
    public void remove(EObject owner, EStructuralFeature feature, Object value) {
        Slot slot = slot(owner, many(feature));
        if (!values(owner, feature).contains(value)) {
            throw new IllegalArgumentException("That value is not in " + feature.getName() + ".");
        }
        if (slot.contains()) {
            remove((EObject) value);
            return;
        }
        touch(slot);
        values(owner, feature).remove(value);
    }

    @Override
    public void move(EObject owner, EStructuralFeature feature, Object value, int at) {
        Slot slot = slot(owner, many(feature));
        List<Object> list = values(owner, feature);
        int from = list.indexOf(value);
        if (from < 0) {
            throw new IllegalArgumentException("That value is not in " + feature.getName() + ".");
        }
        touch(slot);
        ((org.eclipse.emf.common.util.EList<Object>) list).move(at, from);
    }

    private Slot slot(EObject owner, EStructuralFeature feature) {
        if (!open) {
            throw new IllegalStateException("The edit has ended.");
        }
        if (feature == null || owner.eClass().getFeatureID(feature) < 0) {
            throw new IllegalArgumentException("A " + owner.eClass().getName() + " has no such feature.");
        }
        if (!feature.isChangeable() || feature instanceof EReference r && r.getEOpposite() != null) {
            throw new IllegalArgumentException("The feature " + feature.getName() + " cannot be edited.");
        }
        return new Slot(owner, feature);
    }

    private static EStructuralFeature many(EStructuralFeature feature) {
        if (!feature.isMany()) {
            throw new IllegalArgumentException("The feature " + feature.getName() + " has one value, not many.");
        }
        return feature;
    }

    private static void check(EStructuralFeature feature, Object value) {
        if (value instanceof Double d && !Double.isFinite(d)) {
            throw new IllegalArgumentException("The feature " + feature.getName() + " takes a number, not " + value + ".");
        }
        if (value instanceof String s) {
            int bad = XmlText.firstForbidden(s);
            if (bad >= 0) {
                throw new XmlText.ForbiddenCharacterException(s, bad);
            }
        }
        if (value != null && !feature.getEType().isInstance(value)) {
            throw new IllegalArgumentException("The feature " + feature.getName() + " does not take a " + value.getClass().getSimpleName() + ".");
        }
    }

    private void admit(EObject value) {
        if (value.eContainer() != null || value == project) {
            throw new IllegalArgumentException("A " + value.eClass().getName() + " that is somewhere already must be removed there first.");
        }
    }

    private void touch(Slot slot) {
        // an empty feature is remembered as null, which is why absence must be asked for
        if (!before.containsKey(slot)) {
            before.put(slot, Change.get(slot));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Object> values(EObject owner, EStructuralFeature feature) {
        return (List<Object>) owner.eGet(feature, false);
    }

    /** Gives new objects their ids; refuses an id that is in use. */
    void name() {
        for (EObject root : change("", null).arriving()) {
            ModelIndex.each(root, o -> {
                EAttribute a = o.eClass().getEIDAttribute();
                if (a == null || a.getEAttributeType().getInstanceClass() != String.class) {
                    return;
                }
                String id = (String) o.eGet(a);
                if (id == null) {
                    o.eSet(a, Ids.fresh());
                } else if (index.byId(id) != null && index.byId(id) != o) {
                    throw new IllegalArgumentException("The id " + id + " is in use.");
                }
            });
        }
    }

    /** What was changed so far. */
    Change change(String name, Object mergeKey) {
        Map<Slot, Values> slots = new LinkedHashMap<>();
        before.forEach((slot, old) -> {
            Object present = Change.get(slot);
            if (!Change.same(old, present)) {
                slots.put(slot, new Values(old, present));
            }
        });
        return new Change(name, mergeKey, slots);
    }

    /** Puts everything back. */
    void rollBack() {
        open = false;
        before.forEach(Change::put);
    }

    void end() {
        open = false;
    }
}
