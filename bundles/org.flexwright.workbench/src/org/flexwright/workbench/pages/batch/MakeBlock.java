package org.flexwright.workbench.pages.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.Figures;
import org.flexwright.core.batch.BatchPlan;
import org.flexwright.core.batch.BatchPlanner;
import org.flexwright.core.batch.BatchRun;
import org.flexwright.core.batch.BatchWish;
import org.flexwright.core.batch.Batches;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Batch;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;

/** Making so many of a recipe: says what it takes before anything is made. */
public final class MakeBlock {
    private static final String USUAL = "10";

    private final PageContext context;
    private final Kit kit;
    private final Recipe recipe;
    private final Doing doing;
    private final Runnable grown;
    private final Text parts;
    private final Text spares;
    private final Text start;
    private final Text rejects;
    private final Composite result;

    /** Below one another on a page; {@code grown} is called when it takes another height. */
    public MakeBlock(Composite parent, PageContext context, Recipe recipe, Doing doing, Runnable grown) {
        this.context = context;
        this.kit = context.kit();
        this.recipe = recipe;
        this.doing = doing;
        this.grown = grown;
        Block block = new Block(parent, kit, "Make so many", 1, Spacing.FIELDS);
        Composite line = kit.pane(block.body(), 4, Spacing.FIELDS);
        parts = ask(line, "Good parts wanted", 6, USUAL);
        spares = ask(line, "Spares", 6, "");
        spares.setMessage("propose");
        start = ask(line, "From day", 12, LocalDate.now().toString());
        rejects = ask(line, "Stop at rejects", 6, "");
        kit.action(line, "&Plan it", this::plan);
        result = kit.pane(block.body(), 1, Spacing.GROUPS);
        result.setLayoutData(Grid.wide());
    }

    private Text ask(Composite line, String words, int chars, String typed) {
        kit.text(line, words).setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        Text text = kit.field(line, words, SWT.SINGLE);
        kit.chars(text, chars);
        text.setText(typed);
        text.addListener(SWT.DefaultSelection, event -> plan());
        return text;
    }

    private Object read(Text text, EAttribute feature) {
        if (text.getText().isBlank()) {
            return null;
        }
        return switch (FieldDescriptors.of(feature).read(text.getText())) {
            case FieldInput.Rejected no -> throw new org.flexwright.core.trial.PlanException(org.flexwright.core.Message.of(MakeBlock.class, "typed", no.sentence()));
            case FieldInput.Read yes -> yes.value();
        };
    }

    private BatchWish wish() {
        Integer wanted = (Integer) read(parts, ModelPackage.Literals.BATCH__WANTED);
        LocalDate day = (LocalDate) read(start, ModelPackage.Literals.BATCH__NEEDED_BY);
        ZoneId zone = ZoneId.systemDefault();
        Instant from = day == null || day.equals(LocalDate.now(zone)) ? Instant.now() : day.atStartOfDay(zone).toInstant();
        return BatchWish.of(wanted == null ? 0 : wanted, from, zone).withSpares((Integer) read(spares, ModelPackage.Literals.BATCH__SPARES)).withAgreed((Integer) read(rejects,
                ModelPackage.Literals.BATCH__REJECT_LIMIT), null);
    }

    private void plan() {
        doing.run(() -> {
            BatchWish wish = wish();
            for (var child : result.getChildren()) {
                child.dispose();
            }
            switch (BatchPlanner.plan(context.session().project(), recipe, wish, context.registries())) {
                case Outcome.Refused<BatchPlan> no -> {
                    new Prose(result, kit, no.why().text(), Ink.STOP, Role.STRONG).setLayoutData(Grid.wide());
                    Prose.text(result, kit, no.remedy().text()).setLayoutData(Grid.wide());
                }
                case Outcome.Done<BatchPlan> done -> show(done.results());
            }
        });
        grown.run();
    }

    private void show(BatchPlan plan) {
        Composite words = kit.pane(result, 1, Spacing.TIGHT);
        words.setLayoutData(Grid.wide());
        new Prose(words, kit, plan.parts() + " parts in " + plan.runs().size() + (plan.ofPots() ? " pots, " : " runs, ") + "ready " + Moments.minute(plan.schedule().ready()) + "; "
                + hours(plan) + " with hands on it", Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        Prose.quiet(words, kit, plan.why()).setLayoutData(Grid.wide());
        Prose.quiet(words, kit, plan.spares().why()).setLayoutData(Grid.wide());
        plan.remarks().forEach(remark -> new Prose(words, kit, remark.message().text() + "   [" + remark.source().display() + "]", remark.severity() == Severity.NOTE ? Ink.QUIET
                : Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide()));
        plan.needs().forEach(need -> {
            Prose.text(words, kit, need.name() + ": " + Figures.of(need.grams(), "g") + (need.lots().isEmpty() ? "" : " out of " + String.join(", ", need.lots().stream().map(lot -> lot
                    .getCode()).toList()))).setLayoutData(Grid.wide());
            need.sentences().forEach(sentence -> new Prose(words, kit, sentence, Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide()));
        });
        Listing<BatchRun> pots = new Listing<>(result, kit, "Planned pots", 12, List.of(Column.number(plan.ofPots() ? "Pot" : "Run", 4, run -> Integer.toString(run.number())), Column.number("Parts", 6, run -> Integer.toString(run.parts())), Column.number("Mixed, g", 9, run -> FieldText.digits(run.mass())), Column.number("Working time, min", 17,
                        run -> run.pot() == null || run.pot().workingTime() == null ? "" : FieldText.range(run.pot().workingTime().low(), run.pot().workingTime().high())), Column.text(
                                "A meets B", 16, run -> Moments.minute(run.contact())), Column.text("Mould full", 16, run -> Moments.minute(run.filled())), Column.text("Mould", 8,
                                        run -> run.mould() == null ? "" : Objects.toString(run.mould().getCode(), ""))));
        pots.control().setLayoutData(Grid.wide());
        pots.show(plan.runs());
        ScheduleStrip strip = new ScheduleStrip(result, kit);
        strip.setLayoutData(Grid.wide());
        strip.show(plan.schedule(), plan.ofPots() ? "pot" : "run");
        Composite cost = kit.pane(result, 3, Spacing.FIELDS);
        cost.setLayoutData(Grid.wide());
        CostBlock.fill(cost, kit, plan.cost());
        if (!context.session().readOnly()) {
            Composite actions = kit.pane(result, 2, Spacing.FIELDS);
            kit.action(actions, "&Make the batch", () -> make(plan));
            if (!plan.newLots().isEmpty()) {
                kit.action(actions, "Make the &bridge trial", () -> bridge(plan)).setToolTipText("Two parts with the new lot, to tell whether it is alike");
            }
        }
    }

    private static String hours(BatchPlan plan) {
        var hours = BatchPlanner.hours(plan.hands());
        return FieldText.band(hours.low(), hours.likely(), hours.high(), QuantityKind.DURATION, "h");
    }

    private void make(BatchPlan plan) {
        Batch[] made = new Batch[1];
        if (doing.edit("make " + plan.wish().wanted() + " of " + recipe.getCode(), edit -> made[0] = Batches.create(edit, plan, context.registries(), null, null))) {
            context.open(made[0]);
        }
    }

    private void bridge(BatchPlan plan) {
        BatchWish two = new BatchWish(2, 0, plan.wish().start(), plan.wish().zone(), plan.wish().opens(), plan.wish().closes(), plan.wish().moulds(), null, null);
        if (BatchPlanner.plan(context.session().project(), recipe, two, context.registries()) instanceof Outcome.Done<BatchPlan> done) {
            Trial[] made = new Trial[1];
            if (doing.edit("bridge trial", edit -> made[0] = Batches.bridge(edit, done.results(), plan, context.registries()).getFirst())) {
                context.open(made[0]);
            }
        }
    }
}
