package org.flexwright.core.session;

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
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Change.Slot;
import org.flexwright.core.session.Change.Values;
import org.flexwright.core.session.ModelIndex.Place;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/**
 * Turns a change into what the journal keeps. Objects are named by their address before the change; what a feature contains afterwards
 * is a list of places in its former content ({@code 3} or {@code 0-4}), objects from elsewhere ({@code @address}) and new ones
 * ({@code +0}, the first of the fragment).
 */
final class ChangeText {
    /** Key of the reason why a line cannot be carried out now: it changes details whose plugin is not here. */
    static final String ABSENT = "journal.absent";

    private final Packages packages;
    private final ModelIndex index;
    private final EObject root;
    private final Change change;
    private final Map<EObject, Place> places = new IdentityHashMap<>();
    private final Set<EObject> arriving = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<EObject> fresh = new ArrayList<>();

    private ChangeText(Packages packages, ModelIndex index, EObject root, Change change) {
        this.packages = packages;
        this.index = index;
        this.root = root;
        this.change = change;
        change.slots().forEach((slot, v) -> {
            if (slot.contains()) {
                List<?> old = Change.list(v.before());
                for (int i = 0; i < old.size(); i++) {
                    places.put((EObject) old.get(i), new Place(slot.owner(), slot.feature(), slot.feature().isMany() ? i : -1));
                }
            }
        });
        arriving.addAll(change.arriving());
    }

    /** What the journal keeps of a change: members {@code d} and, when there are new objects, {@code x}. */
    static JsonObject of(Packages packages, ModelIndex index, EObject root, Change change) {
        return new ChangeText(packages, index, root, change).write();
    }

    private JsonObject write() {
        JsonArray entries = new JsonArray();
        change.slots().forEach((slot, v) -> {
            if (isOld(slot.owner())) {
                entries.add(entry(slot, v));
            }
        });
        JsonObject o = new JsonObject();
        o.add("d", entries);
        if (!fresh.isEmpty()) {
            fresh.forEach(this::checkFresh);
            o.addProperty("x", ModelWriter.fragment(packages, fresh));
        }
        return o;
    }

    private JsonObject entry(Slot slot, Values v) {
        JsonObject e = new JsonObject();
        e.addProperty("o", address(slot.owner()));
        e.addProperty("f", slot.feature().getName());
        if (slot.contains()) {
            e.add("c", content(v));
        } else if (slot.feature() instanceof EReference) {
            JsonArray ids = new JsonArray();
            Change.list(v.after()).forEach(t -> ids.add(target((EObject) t)));
            e.add("r", ids);
        } else if (slot.feature().isMany()) {
            JsonArray values = new JsonArray();
            Change.list(v.after()).forEach(x -> values.add(literal(slot, x)));
            e.add("vs", values);
        } else if (v.after() != null) {
            e.addProperty("v", literal(slot, v.after()));
        }
        return e;
    }

    private static String literal(Slot slot, Object value) {
        return EcoreUtil.convertToString(((EAttribute) slot.feature()).getEAttributeType(), value);
    }

    private JsonArray content(Values v) {
        List<?> old = Change.list(v.before());
        Map<EObject, Integer> at = new IdentityHashMap<>();
        for (int i = 0; i < old.size(); i++) {
            at.put((EObject) old.get(i), i);
        }
        JsonArray parts = new JsonArray();
        List<?> present = Change.list(v.after());
        for (int i = 0; i < present.size(); i++) {
            EObject o = (EObject) present.get(i);
            Integer from = at.get(o);
            if (from == null) {
                parts.add(isOld(o) ? "@" + address(o) : "+" + number(o));
                continue;
            }
            int to = from;
            while (i + 1 < present.size() && to + 1 < old.size() && present.get(i + 1) == old.get(to + 1)) {
                to++;
                i++;
            }
            parts.add(from == to ? from.toString() : from + "-" + to);
        }
        return parts;
    }

    private int number(EObject o) {
        fresh.add(o);
        return fresh.size() - 1;
    }

    private String target(EObject o) {
        String id = ModelIndex.id(o);
        if (id == null) {
            throw new IllegalArgumentException("Only an object with an id can be referred to, not a " + o.eClass().getName() + ".");
        }
        return id;
    }

    private String address(EObject o) {
        return index.address(o, x -> places.containsKey(x) ? places.get(x) : Place.of(x));
    }

    /** True when the object was in the project before the change. */
    private boolean isOld(EObject o) {
        if (o == root) {
            return true;
        }
        Place p = places.get(o);
        if (p != null) {
            return isOld(p.owner());
        }
        return !arriving.contains(o) && o.eContainer() != null && isOld(o.eContainer());
    }

    private void checkFresh(EObject newRoot) {
        ModelIndex.each(newRoot, o -> {
            if (o != newRoot && places.containsKey(o) && isOld(o)) {
                throw new IllegalArgumentException("A " + o.eClass().getName() + " of the project cannot go into a new object in the same edit.");
            }
        });
    }

    /**
     * Carries out a change read back: containment first, so that what it refers to is there, then the rest. All of it or, when it throws,
     * nothing.
     *
     * @return namespaces of details whose package is not here
     */
    static Set<String> apply(Packages packages, ModelIndex index, JsonObject text) throws UnreadableException {
        ModelReader.Content fragment = text.has("x") ? ModelReader.fragment(packages, text.get("x").getAsString(), index::byId) : null;
        List<EObject> fresh = fragment == null ? List.of() : fragment.roots();
        Map<Slot, JsonObject> entries = new LinkedHashMap<>();
        for (var e : text.getAsJsonArray("d")) {
            JsonObject entry = e.getAsJsonObject();
            EObject owner = index.find(entry.get("o").getAsString());
            var feature = owner == null ? null : owner.eClass().getEStructuralFeature(entry.get("f").getAsString());
            if (owner != null && Packages.isStandIn(owner)) {
                throw new UnreadableException(StoreException.Kind.UNREADABLE, ABSENT, owner.eClass().getEPackage().getNsURI());
            }
            if (feature == null) {
                throw new UnreadableException(StoreException.Kind.UNREADABLE, "journal.address", entry.get("o").getAsString());
            }
            entries.put(new Slot(owner, feature), entry);
        }
        Map<Slot, Values> content = new LinkedHashMap<>();
        for (var e : entries.entrySet()) {
            if (e.getKey().contains()) {
                content.put(e.getKey(), contained(index, e.getKey(), e.getValue().getAsJsonArray("c"), fresh));
            }
        }
        Change first = new Change("", null, content);
        carryOut(first, index);
        boolean complete = false;
        try {
            Map<Slot, Values> rest = new LinkedHashMap<>();
            for (var e : entries.entrySet()) {
                if (!e.getKey().contains()) {
                    rest.put(e.getKey(), new Values(Change.get(e.getKey()), value(index, e.getKey(), e.getValue())));
                }
            }
            new Change("", null, rest).apply();
            complete = true;
        } finally {
            if (!complete) {
                carryOut(first.reversed(), index);
            }
        }
        return fragment == null ? Set.of() : fragment.missing();
    }

    private static void carryOut(Change change, ModelIndex index) {
        change.leaving().forEach(index::remove);
        change.apply();
        change.arriving().forEach(index::add);
    }

    private static Values contained(ModelIndex index, Slot slot, JsonArray parts, List<EObject> fresh) throws UnreadableException {
        Object before = Change.get(slot);
        List<?> old = Change.list(before);
        List<EObject> after = new ArrayList<>();
        for (var part : parts) {
            String s = part.getAsString();
            if (s.startsWith("+")) {
                after.add(fresh.get(Integer.parseInt(s.substring(1))));
            } else if (s.startsWith("@")) {
                after.add(index.find(s.substring(1)));
            } else {
                int dash = s.indexOf('-');
                int from = Integer.parseInt(dash < 0 ? s : s.substring(0, dash));
                int to = dash < 0 ? from : Integer.parseInt(s.substring(dash + 1));
                for (int i = from; i <= to; i++) {
                    after.add((EObject) old.get(i));
                }
            }
        }
        if (after.contains(null)) {
            throw new UnreadableException(StoreException.Kind.UNREADABLE, "journal.address", parts);
        }
        return new Values(before, slot.feature().isMany() ? List.copyOf(after) : after.isEmpty() ? null : after.getFirst());
    }

    private static Object value(ModelIndex index, Slot slot, JsonObject entry) throws UnreadableException {
        List<Object> values = new ArrayList<>();
        if (entry.has("r")) {
            for (var id : entry.getAsJsonArray("r")) {
                EObject target = index.byId(id.getAsString());
                if (target == null) {
                    throw new UnreadableException(StoreException.Kind.UNREADABLE, "journal.address", id.getAsString());
                }
                values.add(target);
            }
        } else if (entry.has("vs")) {
            entry.getAsJsonArray("vs").forEach(x -> values.add(parse(slot, x.getAsString())));
        } else if (entry.has("v")) {
            values.add(parse(slot, entry.get("v").getAsString()));
        }
        return slot.feature().isMany() ? List.copyOf(values) : values.isEmpty() ? null : values.getFirst();
    }

    private static Object parse(Slot slot, String literal) {
        return EcoreUtil.createFromString(((EAttribute) slot.feature()).getEAttributeType(), literal);
    }
}
