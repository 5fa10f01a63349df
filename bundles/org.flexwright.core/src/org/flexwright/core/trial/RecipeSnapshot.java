package org.flexwright.core.trial;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.naming.Names;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Attachment;
import org.flexwright.model.Identified;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Mould;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Trial;

/**
 * Everything that a recipe refers to, copied into it: what was needed, the reference part, what was weighed and read, the materials with their values and the lots that went in, sessions, gauges, blends,
 * the mould and the entries of its photos. A frozen recipe then depends on nothing that may still change.
 */
final class RecipeSnapshot {
    private final EcoreUtil.Copier copier = new EcoreUtil.Copier();
    private final Set<EObject> kept = new LinkedHashSet<>();
    private final Set<Lot> lots = new LinkedHashSet<>();

    private RecipeSnapshot() {
    }

    /** Fills a recipe that is in no project yet and has its plan. */
    static void take(Recipe recipe, Trial from, Project project) {
        new RecipeSnapshot().fill(recipe, from, project);
    }

    private void fill(Recipe recipe, Trial from, Project project) {
        gather(from);
        project.getReferenceParts().forEach(this::gather);
        List<Acknowledgement> ticks = project.getAcknowledgements().stream().filter(tick -> from.getSteps().contains(tick.getStep())).toList();
        ticks.forEach(this::gather);
        kept.forEach(copier::copy);
        ticks.forEach(tick -> recipe.getAcknowledgements().add((Acknowledgement) copier.copy(tick)));
        recipe.setAsMade((Trial) copier.copy(from));
        project.getReferenceParts().forEach(part -> recipe.getReferences().add((ReferencePart) copier.copy(part)));
        need(recipe, project);
        against(recipe, from, project);
        copier.copyReferences();
        recipe.getAsMade().setBasedOn(null);
        for (EObject original : kept) {
            place(recipe, original);
        }
        recipe.getAsMade().setMould(recipe.getMould());
        recipe.getPlan().setMould(recipe.getMould());
        redirect(recipe.getPlan());
        forgetIds(recipe);
    }

    private static void need(Recipe recipe, Project project) {
        recipe.setTitle(project.getTitle());
        recipe.setJob(project.getJob());
        recipe.setInvented(project.isInvented());
        recipe.getNeeds().addAll(EcoreUtil.copyAll(project.getNeeds()));
    }

    /** What was gone against in this trial; the copies get other identifiers, so what it is about stands in words. */
    private static void against(Recipe recipe, Trial from, Project project) {
        for (StopOverride override : project.getOverrides()) {
            about(from, override.getSubject()).ifPresent(subject -> {
                StopOverride copy = EcoreUtil.copy(override);
                copy.setNote(Names.path(subject));
                recipe.getOverrides().add(copy);
            });
        }
    }

    private static Optional<EObject> about(Trial trial, String id) {
        if (id == null || id.equals(trial.getId())) {
            return id == null ? Optional.empty() : Optional.of(trial);
        }
        for (Iterator<EObject> all = EcoreUtil.getAllContents(trial, false); all.hasNext();) {
            if (all.next() instanceof Identified thing && id.equals(thing.getId())) {
                return Optional.of(thing);
            }
        }
        return Optional.empty();
    }

    /** What is referred to from inside, and from inside that in turn. */
    private void gather(EObject root) {
        follow(root);
        for (Iterator<EObject> all = EcoreUtil.getAllContents(root, false); all.hasNext();) {
            follow(all.next());
        }
    }

    private void follow(EObject object) {
        for (EObject target : object.eCrossReferences()) {
            EObject whole = target instanceof Lot lot && lots.add(lot) ? lot.eContainer() : target;
            if (belongs(whole) && kept.add(whole) && !(whole instanceof MaterialGrade) && !(whole instanceof Mould)) {
                gather(whole);
            }
        }
    }

    private static boolean belongs(EObject object) {
        return object instanceof MaterialGrade || object instanceof Session || object instanceof Instrument || object instanceof Premix || object instanceof Attachment
                || object instanceof Mould;
    }

    private void place(Recipe recipe, EObject original) {
        switch (copier.get(original)) {
            case MaterialGrade grade -> {
                ((MaterialGrade) original).getLots().stream().filter(lot -> !lots.contains(lot)).forEach(lot -> EcoreUtil.remove(copier.get(lot)));
                recipe.getMaterials().add(grade);
            }
            case Session session -> {
                session.setControlPiece(null);
                recipe.getSessions().add(session);
            }
            case Instrument instrument -> recipe.getInstruments().add(instrument);
            case Premix premix -> recipe.getPremixes().add(premix);
            case Attachment attachment -> recipe.getAttachments().add(attachment);
            case Mould mould -> {
                mould.setCastsBefore(Moulds.casts((Mould) original));
                mould.getCasts().clear();
                recipe.setMould(mould);
            }
            default -> throw new IllegalStateException(original.eClass().getName());
        }
    }

    /** The plan speaks of the copies too. */
    private void redirect(EObject root) {
        for (Iterator<EObject> all = EcoreUtil.getAllContents(root, false); all.hasNext();) {
            EObject object = all.next();
            for (EReference reference : object.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isContainer() && reference.isChangeable() && !reference.isMany()
                        && object.eGet(reference, false) instanceof EObject target && copier.containsKey(target)) {
                    object.eSet(reference, copier.get(target));
                }
            }
        }
    }

    /** Copies get identifiers of their own when they are put into the project. */
    static void forgetIds(EObject root) {
        forgetId(root);
        root.eAllContents().forEachRemaining(RecipeSnapshot::forgetId);
    }

    private static void forgetId(EObject object) {
        EAttribute id = object.eClass().getEIDAttribute();
        if (id != null && id.isChangeable()) {
            object.eUnset(id);
        }
    }
}
