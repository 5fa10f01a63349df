package org.flexwright.core.exchange;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;

/** What an import would do to a project as it stands now: a dry run. It is carried out as a whole or not at all, and undone as one step. */
public final class ImportPlan {
    /** Several values of one feature of one object. */
    record Slot(EObject owner, EStructuralFeature feature) {
    }

    private final List<ImportChange> changes;
    private final Map<ImportChange.Kind, Long> counts;
    private final List<ImportRefusal> refusals;
    private final long refused;
    private final List<Message> notes;
    private final List<EObject> removals;
    private final Map<Slot, Object> values;
    private final Consumer<Edit> work;

    ImportPlan(List<ImportChange> changes, Map<ImportChange.Kind, Long> counts, List<ImportRefusal> refusals, long refused, List<Message> notes,
            List<EObject> removals, Map<Slot, Object> values) {
        this.changes = List.copyOf(changes);
        this.counts = Map.copyOf(counts);
        this.refusals = List.copyOf(refusals);
        this.refused = refused;
        this.notes = List.copyOf(notes);
        this.removals = removals;
        this.values = values;
        this.work = edit -> { };
    }

    /** A plan that only adds, by functions of its own. */
    ImportPlan(List<ImportChange> additions, List<ImportRefusal> refusals, List<Message> notes, Consumer<Edit> work) {
        this.changes = additions.stream().limit(TableImport.LISTED).toList();
        this.counts = additions.isEmpty() ? Map.of() : Map.of(ImportChange.Kind.ADDED, (long) additions.size());
        this.refusals = refusals.stream().limit(TableImport.LISTED).toList();
        this.refused = refusals.size();
        this.notes = List.copyOf(notes);
        this.removals = List.of();
        this.values = Map.of();
        this.work = work;
    }

    /** What would change, the first {@value TableImport#LISTED} of it; {@link #count} tells how much there is. */
    public List<ImportChange> changes() {
        return changes;
    }

    /** How many changes of a kind there are. */
    public long count(ImportChange.Kind kind) {
        return counts.getOrDefault(kind, 0L);
    }

    /** How many changes there are. */
    public long count() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    /** What cannot be taken, the first {@value TableImport#LISTED} of it. When there is anything, nothing can be carried out. */
    public List<ImportRefusal> refusals() {
        return refusals;
    }

    /** How much cannot be taken. */
    public long refused() {
        return refused;
    }

    /** What was found out about the tables: encoding, separator, columns left aside. */
    public List<Message> notes() {
        return notes;
    }

    /** Carries it out in one edit. Throws {@link RefusedException} when something was refused. */
    public void apply(Edit edit) {
        requireWhole();
        for (EObject o : removals) {
            // what went with its owner is gone already
            if (o.eContainer() != null && org.eclipse.emf.ecore.util.EcoreUtil.getRootContainer(o) == edit.project()) {
                edit.remove(o);
            }
        }
        values.forEach((slot, value) -> edit.set(slot.owner, slot.feature, value));
        work.accept(edit);
    }

    /** Carries it out on a project that is not anybody's yet. */
    void applyDirectly() {
        requireWhole();
        values.forEach((slot, value) -> slot.owner.eSet(slot.feature, value));
    }

    private void requireWhole() {
        if (refused > 0) {
            throw new RefusedException(Message.of(ImportPlan.class, "import.refused", Long.toString(refused), refusals.getFirst().text()));
        }
    }
}
