package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Codes;
import org.flexwright.core.trial.MaterialUses;
import org.flexwright.core.trial.PlanException;
import org.flexwright.core.trial.Recipes;
import org.flexwright.model.Batch;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Batches: begun from a plan with one trial a pot, and closed. Its pots stay trials like any other. */
public final class Batches {
    private Batches() {
    }

    /** The next free code: B01, B02... */
    public static String nextCode(Project project) {
        return Codes.next("B", 2, project.getBatches().stream().map(Batch::getCode).toList());
    }

    /**
     * Makes the batch and one trial a pot, with its grams, lots, mould and the label of its cup. The steps count as confirmed: they are those of a frozen recipe.
     *
     * @param code  code of the batch, or null for the next free one
     * @param title its title, or null for one that says what it is
     */
    public static Batch create(Edit edit, BatchPlan plan, StepKinds kinds, String code, String title) {
        String free = nextCode(edit.project());
        String called = code == null || code.isBlank() ? free : code.strip();
        if (edit.project().getBatches().stream().anyMatch(batch -> called.equalsIgnoreCase(batch.getCode()))) {
            throw refused("taken", called, free);
        }
        Batch batch = ModelFactory.eINSTANCE.createBatch();
        batch.setCode(called);
        batch.setTitle(title == null || title.isBlank() ? say("title", plan.wish().wanted(), plan.recipe().getCode(), plan.recipe().getVersion()) : title.strip());
        batch.setRecipe(plan.recipe());
        batch.setWanted(plan.wish().wanted());
        batch.setSpares(plan.parts() - plan.wish().wanted());
        batch.setCreatedAt(edit.now());
        batch.setStartAt(plan.wish().start());
        batch.setNeededBy(plan.wish().neededBy());
        batch.setRejectLimit(plan.wish().rejectLimit());
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__BATCHES, batch);
        for (BatchRun run : plan.runs()) {
            Trial pot = pot(edit, plan, run, kinds, say(plan.ofPots() ? "pot" : "run", called, run.number(), plan.runs().size(), run.parts()));
            pot.setCupLabel(called + "-" + run.number());
            batch.getPots().add(pot);
        }
        return batch;
    }

    /** The trial of one pot. Everything is filled in while it is being made. */
    private static Trial pot(Edit edit, BatchPlan plan, BatchRun run, StepKinds kinds, String title) {
        Recipe recipe = plan.recipe();
        Trial trial = Recipes.edit(edit, recipe, null, title);
        RunDraft.forParts(trial, plan.recipeParts(), run.parts(), kinds);
        trial.setIdea(say("idea", recipe.getCode(), recipe.getVersion()));
        trial.setMould(run.mould() == null ? trial.getMould() : run.mould());
        for (int s = 0; s < trial.getSteps().size(); s++) {
            Step step = trial.getSteps().get(s);
            step.setUnconfirmed(false);
            step.setConfirmedBy(recipe.getFrozenBy());
            step.setConfirmedAt(recipe.getFrozenAt());
            List<MaterialUse> uses = List.copyOf(step.getUses());
            for (int u = 0; u < uses.size(); u++) {
                double grams = run.grams().get(s).get(u);
                if (!Double.isNaN(grams)) {
                    lots(edit, step, uses.get(u), grams, picks(plan, run, s, u));
                }
            }
        }
        return trial;
    }

    private static List<LotPick> picks(BatchPlan plan, BatchRun run, int step, int use) {
        return plan.needs().stream().flatMap(need -> need.picks().stream()).filter(pick -> pick.run() == run.number() && pick.step() == step && pick.use() == use).toList();
    }

    /** One use a lot; what no lot has stays planned without one. */
    private static void lots(Edit edit, Step step, MaterialUse use, double grams, List<LotPick> picks) {
        if (use.getPremix() != null) {
            use.setPlanned(MaterialUses.rounded(grams));
            return;
        }
        double picked = picks.stream().mapToDouble(LotPick::grams).sum();
        use.setLot(picks.isEmpty() ? null : picks.getFirst().lot());
        use.setPlanned(MaterialUses.rounded(picks.isEmpty() ? grams : picks.getFirst().grams()));
        List<MaterialUse> more = new ArrayList<>();
        picks.stream().skip(1).forEach(pick -> more.add(another(use, pick.grams(), pick)));
        if (!picks.isEmpty() && grams - picked > 1e-9) {
            more.add(another(use, grams - picked, null));
        }
        int at = step.getUses().indexOf(use) + 1;
        for (MaterialUse one : more) {
            edit.add(step, ModelPackage.Literals.STEP__USES, at++, one);
        }
    }

    private static MaterialUse another(MaterialUse use, double grams, LotPick pick) {
        MaterialUse another = ModelFactory.eINSTANCE.createMaterialUse();
        another.setRole(use.getRole());
        another.setGrade(use.getGrade());
        another.setLot(pick == null ? null : pick.lot());
        another.setPlanned(MaterialUses.rounded(grams));
        another.setMoisture(use.getMoisture());
        another.setDried(use.getDried());
        return another;
    }

    /**
     * The trials that tell whether another lot is alike: two parts with the lots of today, in one trial, or in two where one pot does not fill both.
     *
     * @param two a plan of two parts of the same recipe, without spares
     * @param of  the plan whose lots are new
     */
    public static List<Trial> bridge(Edit edit, BatchPlan two, BatchPlan of, StepKinds kinds) {
        if (of.newLots().isEmpty()) {
            throw refused("noBridge", of.recipe().getCode());
        }
        String lots = String.join(", ", of.newLots().stream().flatMap(need -> need.newLots().stream()).map(lot -> lot.getCode()).distinct().toList());
        List<Trial> trials = new ArrayList<>();
        for (BatchRun run : two.runs()) {
            Trial trial = pot(edit, two, run, kinds, two.runs().size() == 1 ? say("bridge", lots) : say("bridge.one", lots, run.number(), two.runs().size()));
            trial.setIdea(say("bridge.idea", of.recipe().getCode(), of.recipe().getVersion(), lots));
            trials.add(trial);
        }
        return trials;
    }

    /** Closes a batch: its pots reserve nothing any more. */
    public static void close(Edit edit, Batch batch) {
        if (batch.getClosedAt() != null) {
            throw refused("closed", batch.getCode());
        }
        edit.set(batch, ModelPackage.Literals.BATCH__CLOSED_AT, edit.now());
    }

    /** Rejects so far, those of given-up pots included. */
    public static int rejects(Batch batch) {
        return (int) parts(batch).stream().filter(Spares::rejected).count();
    }

    /** Parts that came out of its pots. */
    public static List<Part> parts(Batch batch) {
        return batch.getPots().stream().filter(Objects::nonNull).flatMap(pot -> pot.getParts().stream()).filter(part -> part.getPieceKind() == PieceKind.PART).toList();
    }

    private static PlanException refused(String key, Object... args) {
        return new PlanException(Message.of(Batches.class, "batch." + key, args));
    }

    private static String say(String key, Object... args) {
        return Message.of(Batches.class, "batch." + key, args).text();
    }
}
