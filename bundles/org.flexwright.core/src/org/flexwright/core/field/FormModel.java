package org.flexwright.core.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.SessionListener;
import org.flexwright.model.Origin;

/**
 * A form without widgets. Each field is scratch, or stands for a feature of the model: then an accepted text is written through the
 * session, typing in one field being one step to undo, and a change from elsewhere comes back as text. A text that is not accepted
 * stays as typed with one sentence why; the model keeps its value. All calls on the model thread.
 */
public final class FormModel implements AutoCloseable {
    private final Map<String, Slot> slots = new LinkedHashMap<>();
    private final List<FormListener> listeners = new ArrayList<>();
    private final ProjectSession session;
    private final SessionListener follower = this::followed;

    private FormModel(ProjectSession session, List<FieldDescriptor> fields) {
        this.session = session;
        fields.forEach(f -> slots.put(f.name(), new Slot(f)));
        if (session != null) {
            session.addListener(follower);
        }
    }

    /** A form of scratch fields, filled with their defaults. */
    public static FormModel scratch(List<FieldDescriptor> fields) {
        return withDefaults(new FormModel(null, fields));
    }

    /** A form of scratch fields some of which may be bound by {@link #bind}. */
    public static FormModel scratch(ProjectSession session, List<FieldDescriptor> fields) {
        return withDefaults(new FormModel(session, fields));
    }

    private static FormModel withDefaults(FormModel form) {
        form.slots.values().forEach(s -> s.take(s.field.def()));
        return form;
    }

    /** A form of all fields of an object of the project. Close it when it is no longer shown. */
    public static FormModel bound(ProjectSession session, EObject object) {
        return bound(session, object, FieldDescriptors.ofClass(object.eClass()));
    }

    /** A form of some fields of an object, each named like a feature of it. Close it when it is no longer shown. */
    public static FormModel bound(ProjectSession session, EObject object, List<FieldDescriptor> fields) {
        FormModel form = new FormModel(session, fields);
        for (FieldDescriptor field : fields) {
            form.put(new Slot(field, object, object.eClass().getEStructuralFeature(field.name()), field));
        }
        return form;
    }

    private void put(Slot slot) {
        Objects.requireNonNull(slot.feature, () -> slot.field.name() + " is no feature");
        slot.refresh();
        slots.put(slot.field.name(), slot);
    }

    /**
     * Lets a scratch field stand for a feature, whose value it takes; the feature's unit may be another one of the kind.
     *
     * @param own the feature's own description
     */
    public void bind(String name, EObject owner, EStructuralFeature feature, FieldDescriptor own) {
        FieldDescriptor field = slot(name).field;
        if (session == null) {
            throw new IllegalStateException("A form without a session cannot bind " + name + ".");
        }
        put(new Slot(field, owner, feature, own));
        fire(name);
    }

    /** Makes a bound field scratch again; it keeps its text. */
    public void release(String name) {
        Slot old = slot(name);
        Slot free = new Slot(old.field);
        free.take(old.text);
        slots.put(name, free);
        fire(name);
    }

    private Slot slot(String name) {
        Slot slot = slots.get(name);
        if (slot == null) {
            throw new IllegalArgumentException("The form has no field " + name + ".");
        }
        return slot;
    }

    /** The fields in order. */
    public List<FieldDescriptor> fields() {
        return slots.values().stream().map(s -> s.field).toList();
    }

    /** One field. Throws IllegalArgumentException when there is none of that name. */
    public FieldDescriptor field(String name) {
        return slot(name).field;
    }

    /** True when the field stands for a feature of the model. */
    public boolean isBound(String name) {
        return slot(name).bound();
    }

    /** The object a bound field belongs to; null for scratch. */
    public EObject owner(String name) {
        return slot(name).owner;
    }

    /** The feature a bound field stands for; null for scratch. */
    public EStructuralFeature feature(String name) {
        return slot(name).feature;
    }

    /** The text as it stands in the field. */
    public String text(String name) {
        return slot(name).text;
    }

    /** The value read back with its unit; empty when nothing was entered or it was not accepted. */
    public String understood(String name) {
        return slot(name).understood;
    }

    /** The last accepted value; null when empty. */
    public Object value(String name) {
        return slot(name).value;
    }

    /** One sentence why the text was not accepted; empty when it was. */
    public String problem(String name) {
        return slot(name).problem;
    }

    /** All problems by field, in order. */
    public Map<String, String> problems() {
        Map<String, String> problems = new LinkedHashMap<>();
        slots.forEach((name, slot) -> {
            if (!slot.problem.isEmpty()) {
                problems.put(name, slot.problem);
            }
        });
        return problems;
    }

    /** All texts by field, as a calculation takes them. */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        slots.forEach((name, slot) -> typed.put(name, slot.text));
        return typed;
    }

    /** Where a bound field's value came from, in one word; empty for scratch and for nothing. */
    public String origin(String name) {
        Slot slot = slot(name);
        return !slot.bound() || slot.value == null ? "" : Provenances.word(Provenances.origin(slot.owner, slot.feature));
    }

    /** Takes what was typed. When a bound field accepts it, the model has it when this returns. */
    public void type(String name, String text) {
        Slot slot = slot(name);
        if (text.equals(slot.text)) {
            return;
        }
        if (slot.take(text) && slot.bound()) {
            write(slot, text);
        }
        fire(name);
    }

    private void write(Slot slot, String typed) {
        if (session.readOnly()) {
            slot.problem = session.readOnlyReason();
            return;
        }
        Object value = FeatureValues.toOwn(slot.own, slot.field, slot.value);
        if (Objects.equals(value, slot.seen)) {
            return;
        }
        slot.seen = value;
        String step = Message.of(FormModel.class, "edit", slot.field.label()).text();
        try {
            session.merge(step, new Key(slot.owner, slot.feature), edit -> write(edit, slot, value, typed));
        } finally {
            // When the write broke off, the model has its old value again.
            slot.seen = FeatureValues.get(slot.owner, slot.feature);
        }
    }

    private record Key(EObject owner, EStructuralFeature feature) {
    }

    private static void write(Edit edit, Slot slot, Object value, String typed) {
        edit.set(slot.owner, slot.feature, FeatureValues.toFeature(slot.feature, value));
        if (value == null) {
            Provenances.forget(edit, slot.owner, slot.feature);
        } else if (slot.field.type() == FieldType.QUANTITY || slot.field.type() == FieldType.INTEGER) {
            Origin origin = slot.own.role() == FieldRole.ACTUAL ? Origin.MEASURED : Origin.TYPED;
            Provenances.keep(edit, slot.owner, slot.feature, origin, "", typed);
        }
    }

    /** Lets the text become the accepted value read back, as when a field is left; a text that was not accepted stays. */
    public void settle(String name) {
        Slot slot = slot(name);
        if (slot.problem.isEmpty() && !slot.text.equals(slot.understood)) {
            slot.text = slot.understood;
            fire(name);
        }
    }

    /** Drops a text that was not accepted for the value there is. */
    public void revert(String name) {
        Slot slot = slot(name);
        if (slot.bound()) {
            slot.refresh();
        } else {
            slot.show(slot.value);
        }
        fire(name);
    }

    private void followed(Set<EObject> touched) {
        for (Slot slot : List.copyOf(slots.values())) {
            if (slot.bound() && !Objects.equals(FeatureValues.get(slot.owner, slot.feature), slot.seen)) {
                slot.refresh();
                fire(slot.field.name());
            }
        }
    }

    /** Adds a listener. */
    public void addListener(FormListener listener) {
        listeners.add(listener);
    }

    /** Takes a listener away. */
    public void removeListener(FormListener listener) {
        listeners.remove(listener);
    }

    private void fire(String name) {
        List.copyOf(listeners).forEach(l -> l.changed(name));
    }

    /** Stops following the session. */
    @Override
    public void close() {
        if (session != null) {
            session.removeListener(follower);
        }
    }
}
