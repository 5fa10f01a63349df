package org.flexwright.workbench.pages.ageing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.Message;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.AgeingState;
import org.flexwright.core.ageing.Drift;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.ChartFiles;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Properties;

/** An ageing plan: what age did to each piece, when it is read, and what it is about. */
final class AgeingPage extends BlockPage {
    private static final int MOST = 12;
    private static final List<FieldDescriptor> PLAN = Stream.of(ModelPackage.Literals.AGEING_PLAN__TITLE, ModelPackage.Literals.AGEING_PLAN__FROM,
            ModelPackage.Literals.AGEING_PLAN__REMIND).map(FieldDescriptors::of).toList();
    private static final List<FieldDescriptor> POINT = Stream.of(ModelPackage.Literals.AGEING_POINT__DAYS, ModelPackage.Literals.AGEING_POINT__WINDOW,
            ModelPackage.Literals.AGEING_POINT__SKIPPED).map(FieldDescriptors::of).toList();

    private final AgeingPlan plan;
    private final FindingStrips findings;
    private final FormModel planModel;
    private final Prose said;
    private final Prose remarks;
    private final ChartPane chart;
    private final Listing<List<String>> values;
    private final Listing<AgeingPoint> points;
    private final Block pointBlock;
    private final Block valueBlock;
    private final Composite files;
    private final PickBox<PropertyKey> what;
    private final PickBox<Trial> whose;
    private final Prose pieces;
    private Map<AgeingPoint, List<AgeingCheck>> checks = Map.of();
    private FormModel pointModel;
    private AgeingPoint chosen;

    AgeingPage(Composite parent, PageContext context) {
        super(parent, context);
        plan = (AgeingPlan) context.subject();
        findings = new FindingStrips(body(), context);
        Block drift = new Block(body(), kit(), "What age did", 1, Spacing.FIELDS);
        said = new Prose(drift.body(), kit(), " ", Ink.INK, Role.STRONG);
        said.setLayoutData(Grid.wide());
        chart = new ChartPane(drift.body(), kit());
        GridData room = Grid.wide();
        room.heightHint = kit().grid().steps(80);
        chart.setLayoutData(room);
        remarks = Prose.quiet(drift.body(), kit(), " ");
        remarks.setLayoutData(Grid.wide());
        files = Flow.pane(drift.body(), kit(), Ink.PAPER);
        files.setLayoutData(Grid.wide());
        ChartFiles.actions(files, kit(), context, chart, context::status);
        Block when = new Block(body(), kit(), "When it is read", 1, Spacing.FIELDS);
        if (writable()) {
            when.action("&Add an age", this::addAge);
            when.action("&Take it out", this::removeAge);
        }
        points = new Listing<>(when.body(), kit(), "Ages of the plan", MOST, List.of(Column.text("Age", 8, p -> p.getDays() == null ? "" : AgeSpan.textOfDays(p.getDays())),
                Column.text("Give or take", 10, p -> p.getDays() == null ? "" : AgeSpan.textOfDays(AgeingPlans.give(p))), Column.text("First due", 16, this::due), Column.text(
                        "How it stands", 40, this::state)));
        points.control().setLayoutData(Grid.wide());
        points.whenChosen(this::choose);
        pointBlock = new Block(body(), kit(), "Age", 1, Spacing.FIELDS);
        valueBlock = new Block(body(), kit(), "Every value", 1, Spacing.FIELDS);
        values = new Listing<>(valueBlock.body(), kit(), "Values by piece and age", MOST, List.of(Column.text("Piece", 12, row -> row.get(0)), Column.number("Age, d", 8, row -> row.get(
                1)), Column.text("Value", 20, row -> row.get(2)), Column.number("Readings", 8, row -> row.get(3)), Column.text("Session", 10, row -> row.get(4))));
        values.control().setLayoutData(Grid.wide());
        Block about = new Block(body(), kit(), "What is followed", 1, Spacing.FIELDS);
        planModel = FormModel.bound(context.session(), plan, PLAN);
        new FormPane(about.body(), kit(), Bindings.of(planModel, !writable())).setLayoutData(Grid.wide());
        Composite pick = Flow.pane(about.body(), kit(), Ink.PAPER);
        pick.setLayoutData(Grid.wide());
        kit().text(pick, "Read");
        what = new PickBox<>(pick, kit(), "What is read again and again", "not said yet", key -> Properties.words(key, context.registries().properties()));
        what.whenChosen(key -> {
            if (key != null) {
                doing().edit("say what is followed", edit -> AgeingPlans.read(edit, plan, key));
            }
        });
        kit().text(pick, "on the parts of");
        whose = new PickBox<>(pick, kit(), "Trial whose parts are followed", "not said yet", Names::of);
        whose.whenChosen(trial -> {
            if (trial != null) {
                doing().edit("say which parts are followed", edit -> AgeingPlans.pieces(edit, plan, trial.getParts().stream().filter(p -> plan.getKey() == null || plan.getKey()
                        .getPieceKind() == null || p.getPieceKind() == plan.getKey().getPieceKind()).toList()));
            }
        });
        what.control().setEnabled(writable());
        whose.control().setEnabled(writable());
        pieces = Prose.quiet(about.body(), kit(), " ");
        pieces.setLayoutData(Grid.wide());
        body().addDisposeListener(event -> {
            planModel.close();
            close();
        });
        show();
        findings.show();
        choose(null);
    }

    private void close() {
        if (pointModel != null) {
            pointModel.close();
            pointModel = null;
        }
    }

    private Optional<PropertyDef> property() {
        return plan.getKey() == null || plan.getKey().getProperty() == null ? Optional.empty() : context().registries().findProperty(plan.getKey().getProperty());
    }

    private void show() {
        Optional<PropertyDef> property = property();
        checks = property.map(def -> AgeingPlans.checks(plan, def, Instant.now()).stream().collect(Collectors.groupingBy(AgeingCheck::point, LinkedHashMap::new, Collectors
                .toList()))).map(m -> (Map<AgeingPoint, List<AgeingCheck>>) m).orElse(Map.of());
        boolean known = property.isPresent() && !plan.getSpecimens().isEmpty();
        Grid.shown(chart, known);
        Grid.shown(remarks, known);
        Grid.shown(files, known);
        valueBlock.setShown(known);
        if (known) {
            Drift drift = Drift.of(plan, property.get());
            said.setWords(drift.sentence().text());
            remarks.setWords(String.join(" ", drift.remarks().stream().map(Message::text).toList()));
            chart.show(drift.plot());
            values.show(drift.table().rows());
        } else {
            said.setWords("Say below what is read and on which parts; what age does to them is drawn here.");
            remarks.setWords("");
            values.show(List.of());
        }
        List<AgeingPoint> all = new ArrayList<>(AgeingPlans.points(plan));
        plan.getPoints().stream().filter(p -> !all.contains(p)).forEach(all::add);
        points.show(all);
        List<PropertyKey> offers = new ArrayList<>(AgeingPlans.offers(context().session().project(), context().registries().properties()));
        PropertyKey own = plan.getKey() == null ? null : offers.stream().filter(k -> Properties.words(k, context().registries().properties()).equals(Properties.words(plan.getKey(),
                context().registries().properties()))).findFirst().orElse(plan.getKey());
        if (own == plan.getKey() && own != null) {
            offers.add(own);
        }
        what.show(offers, own);
        List<Trial> trials = context().session().project().getTrials().stream().filter(t -> !t.getParts().isEmpty()).toList();
        Trial of = plan.getSpecimens().isEmpty() || !(plan.getSpecimens().getFirst().eContainer() instanceof Trial trial) ? null : trial;
        whose.show(trials, of);
        pieces.setWords(plan.getSpecimens().isEmpty() ? "No piece yet." : plan.getSpecimens().stream().map(Names::piece).collect(Collectors.joining(", ")) + (plan.getFrom() == null
                ? "; age counts from when each was made." : "; age counts from " + Moments.minute(plan.getFrom()) + "."));
    }

    private String due(AgeingPoint point) {
        return checks.getOrDefault(point, List.of()).stream().map(AgeingCheck::due).filter(Objects::nonNull).min(Instant::compareTo).map(Moments::minute).orElse("");
    }

    private String state(AgeingPoint point) {
        Map<AgeingState, List<String>> pieces = AgeingCheck.byState(checks.getOrDefault(point, List.of()));
        String states = pieces.entrySet().stream().map(e -> pieces.size() == 1 ? e.getKey().word() : e.getKey().word() + ": " + String.join(", ", e.getValue())).collect(Collectors.joining("; "));
        return point.getSkipped() == null || point.getSkipped().isBlank() ? states : states + ", because " + point.getSkipped();
    }

    private void choose(AgeingPoint point) {
        if (point == chosen && pointModel != null) {
            return;
        }
        chosen = point;
        close();
        Composite body = pointBlock.emptied();
        pointBlock.setShown(point != null);
        if (point != null) {
            pointBlock.setTitle(point.getDays() == null ? "Age" : "Age " + AgeSpan.textOfDays(point.getDays()));
            pointModel = FormModel.bound(context().session(), point, POINT);
            new FormPane(body, kit(), Bindings.of(pointModel, !writable())).setLayoutData(Grid.wide());
        }
        points.choose(point);
        settle();
    }

    private void addAge() {
        AgeingPoint[] made = new AgeingPoint[1];
        if (doing().edit("add an age", edit -> made[0] = AgeingPlans.addAge(edit, plan))) {
            choose(made[0]);
        }
    }

    private void removeAge() {
        AgeingPoint gone = chosen;
        if (gone != null && doing().edit("take an age out", edit -> edit.remove(gone))) {
            choose(null);
        }
    }

    @Override
    protected void refresh() {
        if (chosen != null && !plan.getPoints().contains(chosen)) {
            choose(null);
        }
        show();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        if (object instanceof AgeingPoint point) {
            choose(point);
        }
    }
}
