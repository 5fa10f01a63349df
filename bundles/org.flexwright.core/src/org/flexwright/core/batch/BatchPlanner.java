package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.PotPlan;
import org.flexwright.core.process.PotRequest;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.ProcessKind.EstimateLine;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Moulds;
import org.flexwright.model.Mould;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Plans so many of a recipe; changes nothing. It knows no capability: step kinds and routes answer through their own seams. */
public final class BatchPlanner {
    /** Parts that may be asked for. */
    public static final int MOST = 10_000;

    private final Project project;
    private final Recipe recipe;
    private final BatchWish wish;
    private final Registries kinds;
    private final List<Remark> remarks = new ArrayList<>();

    private BatchPlanner(Project project, Recipe recipe, BatchWish wish, Registries kinds) {
        this.project = project;
        this.recipe = recipe;
        this.wish = wish;
        this.kinds = kinds;
    }

    /** The plan, or why there is none. */
    public static Outcome<BatchPlan> plan(Project project, Recipe recipe, BatchWish wish, Registries kinds) {
        return new BatchPlanner(project, recipe, wish, kinds).plan();
    }

    private Outcome<BatchPlan> plan() {
        if (wish.wanted() < 1 || wish.wanted() > MOST || wish.spares() != null && (wish.spares() < 0 || wish.spares() > MOST)) {
            return refused("wanted", "plan.wanted", MOST);
        }
        if (recipe.getPlan() == null || recipe.getPlan().getSteps().isEmpty()) {
            return refused("recipe", "plan.empty", recipe.getCode());
        }
        Optional<Step> absent = recipe.getPlan().getSteps().stream().filter(step -> step.getDetails() instanceof AnyType).findFirst();
        if (absent.isPresent()) {
            return refused("recipe", "plan.absent", recipe.getCode(), absent.get().getTitle());
        }
        Spares spares = Spares.of(project, recipe, wish.wanted());
        int parts = wish.wanted() + (wish.spares() == null ? spares.number() : wish.spares());
        List<Mould> moulds = moulds();
        Trial plan = sketch(moulds);
        int potStep = -1;
        PotPlan pots = null;
        for (int i = 0; i < plan.getSteps().size() && pots == null; i++) {
            Step step = plan.getSteps().get(i);
            int place = i;
            pots = kinds.findStepKind(step.getKind()).flatMap(kind -> kind.pots(step, plan, request(plan, place, parts, moulds))).orElse(null);
            potStep = pots == null ? -1 : i;
        }
        return switch (pots) {
            case null -> runs(plan, spares, parts, moulds);
            case PotPlan.Refused no -> Outcome.refused(no.input(), no.why(), no.remedy());
            case PotPlan.Split split -> done(plan, spares, split, moulds, potStep);
        };
    }

    private <R extends Record> Outcome<R> refused(String input, String key, Object... args) {
        return Outcome.refused(input, Message.of(BatchPlanner.class, key, args), Message.of(BatchPlanner.class, key + ".remedy", args));
    }

    /** The moulds asked for, else the one of today that bears the code of the recipe's. */
    private List<Mould> moulds() {
        if (!wish.moulds().isEmpty() || recipe.getMould() == null) {
            return wish.moulds();
        }
        return project.getMoulds().stream().filter(mould -> Objects.equals(mould.getCode(), recipe.getMould().getCode())).limit(1).toList();
    }

    /** The plan as a trial that belongs to no project, in its mould, in the sessions it was made in: their balances are those at hand. */
    private Trial sketch(List<Mould> moulds) {
        Trial plan = EcoreUtil.copy(recipe.getPlan());
        plan.setMould(moulds.isEmpty() ? recipe.getMould() : moulds.getFirst());
        Trial made = recipe.getAsMade();
        if (made != null && made.getSteps().size() == plan.getSteps().size()) {
            IntStream.range(0, plan.getSteps().size()).forEach(i -> plan.getSteps().get(i).setSession(made.getSteps().get(i).getSession()));
        }
        return plan;
    }

    private PotRequest request(Trial plan, int potStep, int parts, List<Mould> moulds) {
        int fill = fillStep(plan, potStep);
        double before = IntStream.range(potStep + 1, Math.max(fill, potStep + 1)).mapToObj(plan.getSteps()::get).map(step -> time(step, plan)).flatMap(Optional::stream)
                .mapToDouble(time -> time.hands().high() + time.alone()).sum();
        Double minutes = fill < 0 ? null : time(plan.getSteps().get(fill), plan).map(time -> time.hands().high()).orElse(null);
        return new PotRequest(parts, recipeParts(), cavities(moulds), WorkingTimes.stated(plan, kinds).orElse(null), WorkingTimes.roomC(plan), before, minutes);
    }

    private Optional<StepTime> time(Step step, Trial plan) {
        return kinds.findStepKind(step.getKind()).flatMap(kind -> kind.time(step, plan));
    }

    private int fillStep(Trial plan, int after) {
        return IntStream.range(after + 1, plan.getSteps().size()).filter(i -> kinds.findStepKind(plan.getSteps().get(i).getKind()).map(StepKind::fillsMould).orElse(false))
                .findFirst().orElse(-1);
    }

    /** Parts the recipe was made with; null when nobody noted any. */
    private Integer recipeParts() {
        if (recipe.getPlan().getPartsWanted() != null) {
            return recipe.getPlan().getPartsWanted();
        }
        Trial made = recipe.getAsMade() == null ? recipe.getFrom() : recipe.getAsMade();
        int count = made == null ? 0 : (int) made.getParts().stream().filter(part -> part.getPieceKind() == PieceKind.PART).count();
        return count == 0 ? null : Integer.valueOf(count);
    }

    private static Integer cavities(List<Mould> moulds) {
        return moulds.stream().map(Mould::getCavities).filter(Objects::nonNull).min(Integer::compare).orElse(null);
    }

    private Outcome<BatchPlan> done(Trial plan, Spares spares, PotPlan.Split split, List<Mould> moulds, int potStep) {
        remarks.addAll(split.remarks());
        List<RunDraft> drafts = IntStream.range(0, split.pots().size()).mapToObj(i -> new RunDraft(plan, i + 1, split.pots().get(i).parts(), split.recipeParts(), potStep,
                split.pots().get(i), kinds)).toList();
        int fill = fillStep(plan, potStep);
        if (moulds.isEmpty() && fill >= 0) {
            remark(Severity.NOTE, Source.commonPractice("one mould"), "plan.noMould");
        }
        Scheduler scheduler = new Scheduler(wish, kinds, potStep, fill);
        drafts.forEach(draft -> scheduler.add(draft, moulds));
        return Outcome.done(finished(spares, split.recipeParts(), true, split.why().text(), drafts, scheduler), remarks);
    }

    /** A route without pots: as many parts a run as the recipe made in one. */
    private Outcome<BatchPlan> runs(Trial plan, Spares spares, int parts, List<Mould> moulds) {
        Integer each = cavities(moulds) == null ? recipeParts() : cavities(moulds);
        if (each == null) {
            return refused("recipe", "plan.parts", recipe.getCode());
        }
        int recipeParts = recipeParts() == null ? each : recipeParts();
        int runs = (parts + each - 1) / each;
        List<RunDraft> drafts = IntStream.range(0, runs).mapToObj(i -> new RunDraft(plan, i + 1, parts / runs + (i < parts % runs ? 1 : 0), recipeParts, -1, null, kinds))
                .toList();
        ProcessKind route = plan.getRoute() == null ? null : kinds.findProcessKind(plan.getRoute()).orElse(null);
        Scheduler scheduler = new Scheduler(wish, kinds, -1, -1);
        for (RunDraft draft : drafts) {
            List<EstimateLine> lines = route == null ? List.of() : route.estimate(draft.trial);
            if (lines.stream().anyMatch(line -> line.meaning() == EstimateLine.Meaning.ELAPSED)) {
                scheduler.add(draft, lines, route.title());
            } else {
                scheduler.add(draft, moulds);
            }
        }
        return Outcome.done(finished(spares, recipeParts, false, Message.of(BatchPlanner.class, "plan.runs", each).text(), drafts, scheduler), remarks);
    }

    private BatchPlan finished(Spares spares, int recipeParts, boolean ofPots, String why, List<RunDraft> drafts, Scheduler scheduler) {
        List<BatchRun> runs = IntStream.range(0, drafts.size()).mapToObj(i -> drafts.get(i).run(scheduler.times().get(i).mould(), scheduler.times().get(i))).toList();
        int parts = runs.stream().mapToInt(BatchRun::parts).sum();
        List<MaterialNeed> needs = new LotChooser(project, recipe, wish).choose(runs);
        Schedule schedule = scheduler.schedule();
        moulds(runs);
        if (wish.neededBy() != null && schedule.ready() != null && schedule.ready().atZone(wish.zone()).toLocalDate().isAfter(wish.neededBy())) {
            remark(Severity.CAUTION, Source.derived("the order of work"), "plan.late", wish.neededBy(), schedule.ready().atZone(wish.zone()).toLocalDate());
        }
        if (wish.rejectLimit() == null) {
            remark(Severity.NOTE, Source.commonPractice("agree on it before beginning"), "plan.noLimit");
        }
        CostSheet cost = PartCost.planned(project, runs, needs, scheduler.hands(), spares);
        return new BatchPlan(recipe, wish, spares, parts, recipeParts, runs, ofPots, why, schedule, scheduler.hands(), needs, cost, remarks);
    }

    /** A mould that comes to its limit on the way. */
    private void moulds(List<BatchRun> runs) {
        runs.stream().map(BatchRun::mould).filter(Objects::nonNull).distinct().forEach(mould -> {
            long casts = runs.stream().filter(run -> run.mould() == mould).count();
            Integer left = Moulds.left(mould);
            if (left != null && left < casts) {
                remark(Severity.CAUTION, Source.ownRecord("limit of the mould"), "plan.mould", mould.getCode(), Moulds.casts(mould), mould.getCastsLimit(), casts);
            }
        });
    }

    private void remark(Severity severity, Source source, String key, Object... args) {
        remarks.add(new Remark(severity, Message.of(BatchPlanner.class, key, args), source));
    }

    /** Minutes of an estimate in hours. */
    public static Estimate hours(Estimate minutes) {
        return minutes.times(1.0 / 60);
    }
}
