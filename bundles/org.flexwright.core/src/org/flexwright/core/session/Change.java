package org.flexwright.core.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What one step changed, as the value of each feature before and after it. Holding whole values instead of a list of operations makes
 * undoing, joining two steps and writing the journal the same simple thing: nothing depends on the order of what happened between.
 */
final class Change {

    /** One feature of one object; objects are told apart by identity. */
    record Slot(EObject owner, EStructuralFeature feature) {
        boolean contains() {
            return feature instanceof EReference r && r.isContainment();
        }
    }

    /** Value before and after: a single value, or an unmodifiable list when the feature has many. */
    record Values(Object before, Object after) {
    }

    private final String name;
    private final Object mergeKey;
    private final Map<Slot, Values> slots;

    Change(String name, Object mergeKey, Map<Slot, Values> slots) {
        this.name = name;
        this.mergeKey = mergeKey;
        this.slots = Collections.unmodifiableMap(new LinkedHashMap<>(slots));
    }

    String name() {
        return name;
    }

    Object mergeKey() {
        return mergeKey;
    }

    Map<Slot, Values> slots() {
        return slots;
    }

    boolean isEmpty() {
        return slots.isEmpty();
    }

    /** This step and the next one as a single step. */
    Change joined(Change next) {
        Map<Slot, Values> both = new LinkedHashMap<>(slots);
        next.slots.forEach((slot, v) -> both.merge(slot, v, (first, second) -> new Values(first.before, second.after)));
        both.values().removeIf(v -> same(v.before, v.after));
        return new Change(next.name, mergeKey, both);
    }

    /** The same step the other way round. */
    Change reversed() {
        Map<Slot, Values> turned = new LinkedHashMap<>();
        slots.forEach((slot, v) -> turned.put(slot, new Values(v.after, v.before)));
        return new Change(name, mergeKey, turned);
    }

    /** Gives every feature its value after. */
    void apply() {
        slots.forEach((slot, v) -> put(slot, v.after));
    }

    /** Roots of what comes into the features with this step and was in none of them before. */
    List<EObject> arriving() {
        return difference(false);
    }

    /** Roots of what goes out of the features with this step and is in none of them afterwards. */
    List<EObject> leaving() {
        return difference(true);
    }

    private List<EObject> difference(boolean leaving) {
        Set<EObject> other = Collections.newSetFromMap(new IdentityHashMap<>());
        contained(v -> leaving ? v.after : v.before, other);
        Set<EObject> mine = new LinkedHashSet<>();
        contained(v -> leaving ? v.before : v.after, mine);
        return mine.stream().filter(o -> !other.contains(o)).toList();
    }

    private void contained(java.util.function.Function<Values, Object> side, Set<EObject> into) {
        slots.forEach((slot, v) -> {
            if (slot.contains()) {
                for (Object o : list(side.apply(v))) {
                    into.add((EObject) o);
                }
            }
        });
    }

    /** Objects with a changed feature, and the roots of what came or went. */
    Set<EObject> touched() {
        Set<EObject> all = new LinkedHashSet<>();
        slots.forEach((slot, v) -> all.add(slot.owner));
        all.addAll(arriving());
        all.addAll(leaving());
        return Collections.unmodifiableSet(all);
    }

    /** The present value of a feature, as kept in {@link Values}. */
    static Object get(Slot slot) {
        Object value = slot.owner.eGet(slot.feature, false);
        return slot.feature.isMany() ? List.copyOf((List<?>) value) : value;
    }

    @SuppressWarnings("unchecked")
    static void put(Slot slot, Object value) {
        if (slot.feature.isMany()) {
            ECollections.setEList((EList<Object>) slot.owner.eGet(slot.feature, false), new ArrayList<>((List<Object>) value));
        } else if (value == null) {
            slot.owner.eUnset(slot.feature);
        } else {
            slot.owner.eSet(slot.feature, value);
        }
    }

    /** A value as a list: its members, itself, or nothing. */
    static List<?> list(Object value) {
        return value instanceof List<?> l ? l : value == null ? List.of() : List.of(value);
    }

    /** True when two values are the same: equal plain values, the very same objects. */
    static boolean same(Object a, Object b) {
        if (a instanceof List<?> x && b instanceof List<?> y) {
            if (x.size() != y.size()) {
                return false;
            }
            for (int i = 0; i < x.size(); i++) {
                if (!same(x.get(i), y.get(i))) {
                    return false;
                }
            }
            return true;
        }
        return a instanceof EObject || b instanceof EObject ? a == b : Objects.equals(a, b);
    }
}
