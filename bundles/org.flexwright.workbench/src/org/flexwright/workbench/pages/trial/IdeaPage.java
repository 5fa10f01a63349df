package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Bindings;
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
import org.flexwright.workbench.pages.common.Estimates;

/** What is tried and why; what is usually varied on the route, what differs from the trial it is based on, what it will take. */
final class IdeaPage extends BlockPage {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.TRIAL__CODE, ModelPackage.Literals.TRIAL__TITLE,
            ModelPackage.Literals.TRIAL__IDEA, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final Trial trial;
    private final FormPane form;
    private final FindingStrips findings;
    private final Composite unconfirmed;
    private final FactorBlock factors;
    private final Block route;
    private final Block against;
    private List<Object> shown = List.of();

    IdeaPage(Composite parent, PageContext context) {
        super(parent, context);
        trial = (Trial) context.subject();
        Block idea = new Block(body(), kit(), "Idea", 1, Spacing.FIELDS);
        if (writable()) {
            idea.action("Cop&y this trial", this::copy).setToolTipText("A new trial with the same plan; its steps wait to be confirmed");
        }
        FormModel model = FormModel.bound(context.session(), trial, FIELDS);
        form = new FormPane(idea.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        unconfirmed = kit().pane(body(), 2, new Spacing(3, 2, 4, 0), Ink.PANEL);
        unconfirmed.setLayoutData(Grid.wide());
        Prose.text(unconfirmed, kit(), "Planned values were copied and not all of them are confirmed yet.").setLayoutData(Grid.wide());
        kit().action(unconfirmed, "&Confirm every step as planned", this::confirm);
        factors = new FactorBlock(body(), context, trial);
        against = new Block(body(), kit(), "What differs", 3, new Spacing(0, 0, 4, 1));
        route = new Block(body(), kit(), "Route", 3, new Spacing(0, 0, 4, 1));
        findings = new FindingStrips(body(), context);
        show();
        findings.show();
        settle();
    }

    private void copy() {
        Trial[] made = new Trial[1];
        if (doing().edit("copy " + trial.getCode(), edit -> made[0] = Trials.copy(edit, trial, null, null))) {
            context().open(made[0]);
        }
    }

    private void confirm() {
        doing().edit("confirm " + trial.getCode() + " as planned", edit -> trial.getSteps().stream().filter(step -> step.isUnconfirmed())
                .forEach(step -> Trials.confirmAsPlanned(edit, step)));
    }

    private void show() {
        boolean open = writable() && trial.getSteps().stream().anyMatch(step -> step.isUnconfirmed());
        ((GridData) unconfirmed.getLayoutData()).exclude = !open;
        unconfirmed.setVisible(open);
        factors.show();
        ProcessKind kind = trial.getRoute() == null ? null : context().registries().findProcessKind(trial.getRoute()).orElse(null);
        List<ProcessKind.EstimateLine> estimate = kind == null ? List.of() : kind.estimate(trial);
        List<PlanDifference> differences = trial.getBasedOn() == null ? List.of() : PlanDifference.of(trial, trial.getBasedOn(), context().registries());
        List<Object> now = List.of(Objects.requireNonNullElse(kind, ""), estimate, differences, Objects.requireNonNullElse(trial.getBasedOn(), ""),
                Objects.requireNonNullElse(trial.getRoute(), ""));
        if (!now.equals(shown)) {
            shown = now;
            showRoute(kind, estimate);
            showAgainst(differences);
        }
    }

    private void showRoute(ProcessKind kind, List<ProcessKind.EstimateLine> estimate) {
        Composite body = route.emptied();
        route.setTitle(kind == null ? "Route" : "Route: " + kind.title());
        if (kind == null) {
            Prose.quiet(body, kit(), trial.getRoute() == null ? "No route was chosen." : "The plugin of the route " + trial.getRoute()
                    + " is not here; its steps are kept as they are.").setLayoutData(Grid.wide(3));
            return;
        }
        Prose.quiet(body, kit(), kind.summary()).setLayoutData(Grid.wide(3));
        for (ProcessKind.EstimateLine line : estimate) {
            kit().text(body, line.label());
            kit().label(body, Estimates.band(line), Ink.INK, Role.STRONG);
            Prose.quiet(body, kit(), "calculated; rests on: " + line.value().source().display()).setLayoutData(Grid.wide());
        }
    }

    private void showAgainst(List<PlanDifference> differences) {
        Trial base = trial.getBasedOn();
        against.setShown(base != null);
        if (base == null) {
            return;
        }
        Composite body = against.emptied();
        against.setTitle("What differs from " + Names.of(base));
        if (differences.isEmpty()) {
            Prose.quiet(body, kit(), "Nothing in the plan: every planned value is as in " + base.getCode() + ".").setLayoutData(Grid.wide(3));
        }
        if (!differences.isEmpty()) {
            kit().quiet(body, "");
            kit().quiet(body, base.getCode());
            kit().quiet(body, trial.getCode());
        }
        for (PlanDifference difference : differences) {
            kit().text(body, difference.step() + ": " + difference.label());
            kit().quiet(body, difference.before());
            kit().label(body, difference.now(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        }
        kit().action(body, "Open " + base.getCode(), () -> context().open(base)).setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 3, 1));
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        if (object == trial) {
            form.reveal(feature);
        }
    }

    @Override
    public void setFocus() {
        form.control(trial.getTitle() == null || trial.getTitle().isBlank() ? "title" : "idea").ifPresent(Composite::setFocus);
    }
}
