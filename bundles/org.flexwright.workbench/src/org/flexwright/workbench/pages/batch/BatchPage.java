package org.flexwright.workbench.pages.batch;

import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.batch.BatchCard;
import org.flexwright.core.batch.BatchProgress;
import org.flexwright.core.batch.Batches;
import org.flexwright.core.batch.PartCheck;
import org.flexwright.core.batch.PartCost;
import org.flexwright.core.batch.StockLine;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.trial.Stock;
import org.flexwright.model.Batch;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;

/** A batch: its pots and what is next in each, the order of work, what is short, the checks, what it costs, and its cards. */
final class BatchPage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.BATCH__TITLE, ModelPackage.Literals.BATCH__WANTED, ModelPackage.Literals.BATCH__SPARES,
            ModelPackage.Literals.BATCH__NEEDED_BY, ModelPackage.Literals.BATCH__REJECT_LIMIT, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final Batch batch;
    private final Block head;
    private final Block pots;
    private final Prose rejects;
    private final Listing<BatchProgress.Row> rows;
    private final ScheduleStrip strip;
    private final Block materials;
    private final Block checks;
    private final Block cost;
    private final Block cards;

    BatchPage(Composite parent, PageContext context) {
        super(parent, context);
        batch = (Batch) context.subject();
        head = new Block(body(), kit(), "Batch " + batch.getCode(), 1, Spacing.FIELDS);
        if (batch.getRecipe() != null) {
            head.action("Open " + batch.getRecipe().getCode(), () -> context.open(batch.getRecipe()));
        }
        if (writable() && batch.getClosedAt() == null) {
            head.action("&Close the batch", this::close).setToolTipText("Its pots reserve nothing any more");
        }
        FormModel model = FormModel.bound(context.session(), batch, FIELDS);
        FormPane form = new FormPane(head.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        pots = new Block(body(), kit(), "Pots", 1, Spacing.FIELDS);
        rows = new Listing<>(pots.body(), kit(), "Pots", 12, List.of(Column.number("Pot", 4, row -> Integer.toString(row.number())), Column.text("Trial", 6, row -> row.pot()
                .getCode()), Column.text("Cup", 8, row -> Objects.toString(row.pot().getCupLabel(), "")), Column.text("State", 10, BatchProgress.Row::state), Column.text("Next", 18,
                        BatchProgress.Row::next), Column.number("Parts", 9, row -> row.made() + " of " + Objects.toString(row.wanted(), "?")), Column.number("Rejects", 8, row -> Integer
                                .toString(row.failed())), Column.text("Begins", 16, row -> Moments.minute(row.begin()))));
        rows.control().setLayoutData(Grid.wide());
        rows.whenOpened(row -> context.open(row.pot()));
        rejects = Prose.text(pots.body(), kit(), "");
        rejects.setLayoutData(Grid.wide());
        Block order = new Block(body(), kit(), "Order of work", 1, Spacing.FIELDS);
        strip = new ScheduleStrip(order.body(), kit());
        strip.setLayoutData(Grid.wide());
        Prose.quiet(order.body(), kit(), "Full blocks need hands, pale ones pass by themselves. Work is put between 8 and 18 o’clock (common practice, no source).").setLayoutData(Grid.wide());
        checks = new Block(body(), kit(), "First and last part", 1, Spacing.FIELDS);
        materials = new Block(body(), kit(), "Materials", 1, Spacing.FIELDS);
        cost = new Block(body(), kit(), "Cost", 3, Spacing.FIELDS);
        cards = new Block(body(), kit(), "Cards, one a pot", 2, new Spacing(0, 0, 4, 1));
        show();
        settle();
    }

    private void show() {
        BatchProgress progress = BatchProgress.of(batch, context().registries(), ZoneId.systemDefault());
        head.setTitle("Batch " + batch.getCode() + ": " + progress.good() + " good of " + Objects.toString(batch.getWanted(), "?") + " wanted" + (batch.getClosedAt() == null ? ""
                : ", closed " + Moments.day(batch.getClosedAt())));
        rows.show(progress.rows());
        rejects.setWords(progress.rejectSentence(), progress.stopped() ? Ink.STOP : Ink.INK);
        strip.show(progress.schedule(), "pot");
        checks();
        materials();
        boolean ahead = Batches.parts(batch).isEmpty() && batch.getRecipe() != null;
        cost.setTitle(ahead ? "Cost, as planned" : "Cost so far");
        CostBlock.fill(cost.emptied(), kit(), ahead ? PartCost.ahead(context().session().project(), batch, progress.hands()) : PartCost.made(context().session().project(), batch
                .getPots()));
        cards();
    }

    private void checks() {
        Composite body = checks.emptied();
        for (PartCheck check : PartCheck.of(context().session().project(), batch, context().registries().properties())) {
            String shape = switch (check.state()) {
                case OPEN -> "○ ";
                case INSIDE -> "● ";
                case OUTSIDE -> "✕ ";
            };
            new Prose(body, kit(), shape + check.sentence(), check.state() == PartCheck.State.OUTSIDE ? Ink.OUT : Ink.INK, Role.BODY).setLayoutData(Grid.wide());
        }
    }

    /** What the pots that are still to be made need, and what is wrong with it today. */
    private void materials() {
        Composite body = materials.emptied();
        List<MaterialUse> open = batch.getPots().stream().filter(pot -> pot.getState() == TrialState.PLANNED || pot.getState() == TrialState.MAKING).map(Trial::getSteps)
                .flatMap(List::stream).flatMap(step -> step.getUses().stream()).filter(use -> use.getPlanned() != null).toList();
        java.time.LocalDate day = (batch.getStartAt() == null ? java.time.Instant.now() : batch.getStartAt()).atZone(ZoneId.systemDefault()).toLocalDate();
        open.stream().map(MaterialUse::getGrade).filter(Objects::nonNull).distinct().forEach(grade -> {
            double grams = open.stream().filter(use -> use.getGrade() == grade).mapToDouble(MaterialUse::getPlanned).sum();
            List<Lot> lots = open.stream().filter(use -> use.getGrade() == grade).map(MaterialUse::getLot).filter(Objects::nonNull).distinct().toList();
            Prose.text(body, kit(), (grade.getName() == null ? grade.getCode() : grade.getName()) + ": " + FieldText.number(grams, QuantityKind.MASS, "g") + (lots.isEmpty() ? ""
                    : " out of " + String.join(", ", lots.stream().map(Lot::getCode).toList()))).setLayoutData(Grid.wide());
            lots.stream().filter(lot -> Stock.expired(lot, day)).forEach(lot -> new Prose(body, kit(), "Lot " + lot.getCode() + " expires on " + lot.getExpires() + ", before the batch begins.",
                    Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide()));
            StockLine.of(context().session().project(), grade, day).stream().filter(line -> line.expired() && !lots.contains(line.lot())).forEach(line -> Prose.quiet(body, kit(),
                    "Lot " + line.lot().getCode() + " is good until " + line.lot().getExpires() + " and is left aside from then on.").setLayoutData(Grid.wide()));
            double lotless = open.stream().filter(use -> use.getGrade() == grade && use.getLot() == null).mapToDouble(MaterialUse::getPlanned).sum();
            if (lotless > 0) {
                new Prose(body, kit(), FieldText.number(lotless, QuantityKind.MASS, "g") + " of it have no lot: buy some.", Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide());
            }
        });
        open.stream().map(MaterialUse::getPremix).filter(Objects::nonNull).distinct().forEach(premix -> {
            double grams = open.stream().filter(use -> use.getPremix() == premix).mapToDouble(MaterialUse::getPlanned).sum();
            OptionalDouble known = Stock.onHand(premix, context().session().project());
            double there = known.orElse(Double.NaN);
            new Prose(body, kit(), "Premix " + premix.getCode() + ": " + FieldText.number(grams, QuantityKind.MASS, "g") + (known.isEmpty() ? "; nobody said how much of it there is" : there < grams ? "; there are " + FieldText.number(Math.max(0,
                    there), QuantityKind.MASS, "g") + ": make more of it first" : ""), there >= grams ? Ink.INK : Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide());
        });
        if (open.isEmpty()) {
            Prose.quiet(body, kit(), "No pot is left to be made.").setLayoutData(Grid.wide());
        }
    }

    private void cards() {
        Composite body = cards.emptied();
        for (BatchCard card : BatchCard.of(batch, context().registries())) {
            new Prose(body, kit(), card.title(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide(2));
            Prose.quiet(body, kit(), card.facts().stream().map(BatchPage::withoutStop).collect(Collectors.joining("; ")) + ".").setLayoutData(Grid.wide(2));
            card.steps().stream().flatMap(step -> step.lines().stream()).filter(line -> line.name().startsWith("uses/")).forEach(line -> {
                kit().quiet(body, line.label());
                Prose.text(body, kit(), line.planned() + (line.actual().isEmpty() ? "" : ", weighed " + line.actual())).setLayoutData(Grid.wide());
            });
        }
    }

    private static String withoutStop(String fact) {
        return fact.endsWith(".") ? fact.substring(0, fact.length() - 1) : fact;
    }

    private void close() {
        doing().edit("close batch " + batch.getCode(), edit -> Batches.close(edit, batch));
    }

    @Override
    protected void refresh() {
        show();
    }
}
