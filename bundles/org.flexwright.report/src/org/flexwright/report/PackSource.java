package org.flexwright.report;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.model.Attachment;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Mould;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/**
 * What a pack is written from. For a recipe it is a small project made of the copies that the recipe keeps, so that nothing that was changed
 * later gets into it; for a trial it is the project as it stands.
 *
 * @param project what is read: targets, materials, sessions, trial
 * @param plan    what is to be done
 * @param made    what was done; the plan itself when nothing was kept
 * @param mould   the mould, or null
 * @param recipe  the recipe, or null for a trial
 * @param at      the moment it speaks of
 */
record PackSource(Project project, Trial plan, Trial made, Mould mould, Recipe recipe, Instant at) {

    static PackSource of(Trial trial, Instant now) {
        return new PackSource((Project) trial.eContainer(), trial, trial, trial.getMould(), null, now);
    }

    static PackSource of(Recipe recipe) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Project project = ModelFactory.eINSTANCE.createProject();
        project.setTitle(recipe.getTitle());
        project.setJob(recipe.getJob());
        project.setInvented(recipe.isInvented());
        project.getNeeds().addAll(copier.copyAll(recipe.getNeeds()));
        project.getReferenceParts().addAll(copier.copyAll(recipe.getReferences()));
        project.getGrades().addAll(copier.copyAll(recipe.getMaterials()));
        project.getInstruments().addAll(copier.copyAll(recipe.getInstruments()));
        project.getSessions().addAll(copier.copyAll(recipe.getSessions()));
        project.getPremixes().addAll(copier.copyAll(recipe.getPremixes()));
        project.getAttachments().addAll(copier.copyAll(recipe.getAttachments()));
        project.getAcknowledgements().addAll(copier.copyAll(recipe.getAcknowledgements()));
        project.getOverrides().addAll(copier.copyAll(recipe.getOverrides()));
        if (recipe.getTargets() != null) {
            project.getTargetSheets().add((TargetSheet) copier.copy(recipe.getTargets()));
        }
        Mould mould = recipe.getMould() == null ? null : (Mould) copier.copy(recipe.getMould());
        if (mould != null) {
            project.getMoulds().add(mould);
        }
        Trial plan = (Trial) copier.copy(recipe.getPlan());
        Trial made = recipe.getAsMade() == null ? plan : (Trial) copier.copy(recipe.getAsMade());
        project.getTrials().add(made);
        copier.copyReferences();
        return new PackSource(project, plan, made, mould, recipe, recipe.getFrozenAt() == null ? Instant.EPOCH : recipe.getFrozenAt());
    }

    /** Code of the recipe with its version, or of the trial. */
    String code() {
        return recipe == null ? String.valueOf(plan.getCode()) : recipe.getCode() + " v" + recipe.getVersion();
    }

    /** The sheet it is judged by; empty when there is none. */
    Optional<TargetSheet> sheet() {
        return Optional.ofNullable(TargetSheets.current(project));
    }

    /** The step as it was made, in the place of a planned one. */
    Optional<Step> made(Step planned) {
        int place = plan.getSteps().indexOf(planned);
        List<Step> steps = made.getSteps();
        if (place < steps.size() && String.valueOf(planned.getKind()).equals(steps.get(place).getKind())) {
            return Optional.of(steps.get(place));
        }
        return steps.stream().filter(s -> s.getKind() != null && s.getKind().equals(planned.getKind())).findFirst();
    }

    /** All files that belong to the trial, its steps, parts and notes, each once. */
    List<Attachment> attachments() {
        return attachments(made);
    }

    static List<Attachment> attachments(Trial trial) {
        return Stream.of(trial.getAttachments().stream(), trial.getSteps().stream().flatMap(s -> s.getAttachments().stream()), trial.getParts().stream().flatMap(p -> p
                .getPhotos().stream()), trial.getNotes().stream().flatMap(n -> Stream.ofNullable(n.getAttachment()))).flatMap(all -> all).distinct().toList();
    }
}
