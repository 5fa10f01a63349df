package org.flexwright.core.field;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Entry;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Provenance;

/**
 * Where single features' values came from. An entry keeps it for itself and for what it contains that is no entry, such as a plugin's
 * details: there the feature's name is preceded by the way to it, {@code details.exposure}, with the place in a list from 0,
 * {@code details.ramp.1.minutes}. A number without a record was typed.
 */
public final class Provenances {
    /** What stands before the name of a feature of a step's or measurement's details. */
    public static final String DETAILS = "details.";

    private Provenances() {
    }

    /** The entry that keeps it: the object itself or the nearest one that contains it; null outside any entry. */
    public static Entry keeper(EObject owner) {
        for (EObject at = owner; at != null; at = at.eContainer()) {
            if (at instanceof Entry entry) {
                return entry;
            }
        }
        return null;
    }

    /** The name under which the keeper keeps it. */
    public static String path(EObject owner, EStructuralFeature feature) {
        StringBuilder path = new StringBuilder(feature.getName());
        for (EObject at = owner; at != null && !(at instanceof Entry); at = at.eContainer()) {
            EStructuralFeature containing = at.eContainingFeature();
            if (containing == null) {
                return path.toString();
            }
            String place = containing.isMany() ? "." + ((List<?>) at.eContainer().eGet(containing)).indexOf(at) : "";
            path.insert(0, containing.getName() + place + ".");
        }
        return path.toString();
    }

    /** What is kept about a feature's value. */
    public static Optional<Provenance> of(EObject owner, EStructuralFeature feature) {
        Entry keeper = keeper(owner);
        if (keeper == null) {
            return Optional.empty();
        }
        String path = path(owner, feature);
        return keeper.getProvenance().stream().filter(p -> path.equals(p.getFeature())).findFirst();
    }

    /** The origin of a value; a number nobody said anything about was typed. */
    public static Origin origin(EObject owner, EStructuralFeature feature) {
        return of(owner, feature).map(Provenance::getOrigin).orElse(Origin.TYPED);
    }

    /** Keeps where a value came from, in place of what was kept before, and gives the record back; null outside any entry. */
    public static Provenance keep(Edit edit, EObject owner, EStructuralFeature feature, Origin origin, String source, String typedAs) {
        Entry keeper = keeper(owner);
        if (keeper == null) {
            return null;
        }
        forget(edit, owner, feature);
        Provenance provenance = create(edit, path(owner, feature), origin, source, typedAs);
        edit.add(keeper, ModelPackage.Literals.ENTRY__PROVENANCE, provenance);
        return provenance;
    }

    /** A new record under a name as {@link #path} makes it, to be put into an entry that is being made. Empty texts are left out. */
    public static Provenance create(Edit edit, String path, Origin origin, String source, String typedAs) {
        Provenance provenance = ModelFactory.eINSTANCE.createProvenance();
        provenance.setFeature(path);
        provenance.setOrigin(origin);
        provenance.setSource(source == null || source.isEmpty() ? null : source);
        provenance.setTypedAs(typedAs == null || typedAs.isEmpty() ? null : typedAs);
        provenance.setBy(edit.who().isEmpty() ? null : edit.who());
        provenance.setAt(edit.now());
        return provenance;
    }

    /** Forgets what was kept about a feature's value. */
    public static void forget(Edit edit, EObject owner, EStructuralFeature feature) {
        of(owner, feature).ifPresent(edit::remove);
    }

    /** The origin in one word, as shown beside a number. */
    public static String word(Origin origin) {
        return Message.of(Provenances.class, "origin." + origin.getName().toLowerCase(Locale.ROOT)).text();
    }
}
