package org.flexwright.core.trial;

import java.util.Optional;

import org.flexwright.core.session.Edit;
import org.flexwright.model.Entry;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Provenance;

/** Where single numbers of an entry came from. A number without a record was typed. */
public final class Provenances {
    /** What stands before the name of a feature of a step's or measurement's details. */
    public static final String DETAILS = "details.";

    private Provenances() {
    }

    /** The record for a feature of the entry, or for {@code details.<name>}. */
    public static Optional<Provenance> of(Entry entry, String feature) {
        return entry.getProvenance().stream().filter(p -> feature.equals(p.getFeature())).findFirst();
    }

    /** Replaces the record for a feature of an entry that is in the project. */
    public static void note(Edit edit, Entry entry, String feature, Origin origin, String source, String typedAs) {
        of(entry, feature).ifPresent(old -> edit.remove(entry, ModelPackage.Literals.ENTRY__PROVENANCE, old));
        edit.add(entry, ModelPackage.Literals.ENTRY__PROVENANCE, create(edit, feature, origin, source, typedAs));
    }

    /** A new record, to be put into an entry that is being made. */
    static Provenance create(Edit edit, String feature, Origin origin, String source, String typedAs) {
        Provenance provenance = ModelFactory.eINSTANCE.createProvenance();
        provenance.setFeature(feature);
        provenance.setOrigin(origin);
        provenance.setSource(source);
        provenance.setTypedAs(typedAs);
        provenance.setBy(edit.who());
        provenance.setAt(edit.now());
        return provenance;
    }
}
