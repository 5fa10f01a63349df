package org.flexwright.workbench.trial;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Estimates;
import org.flexwright.workbench.project.ProjectService;

/** The one page of the new trial. */
final class NewTrialPage extends WizardPage {

    private final Kit kit;
    private final Registries registries;
    private final List<ProcessKind> routes;
    private final List<Trial> before;
    private Combo start;
    private Prose summary;
    private Text title;
    private Text idea;

    NewTrialPage(Kit kit, ProjectService projects) {
        super("trial");
        this.kit = kit;
        this.registries = projects.registries();
        this.routes = registries.processKinds();
        this.before = projects.session().map(session -> List.copyOf(session.project().getTrials())).orElse(List.of());
        setTitle("What shall be tried?");
        setDescription("One change a trial tells most.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = kit.pane(parent, 2, Spacing.PANEL, Ink.PANEL);
        kit.text(page, "Start from").setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        start = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
        kit.dress(start, null, null, Role.BODY);
        Kit.name(start, "Start from");
        routes.forEach(route -> start.add("Route: " + route.title()));
        before.forEach(trial -> start.add("As " + Names.of(trial)));
        start.setLayoutData(Grid.wide());
        start.addListener(SWT.Selection, event -> check());
        kit.text(page, "");
        summary = Prose.quiet(page, kit, " ");
        GridData room = Grid.wide();
        room.heightHint = kit.type().lineHeight(Role.BODY) * 6;
        summary.setLayoutData(room);
        title = line(page, "Title", SWT.SINGLE, 1);
        idea = line(page, "What is changed, what is expected", SWT.MULTI | SWT.WRAP | SWT.V_SCROLL, 4);
        title.addListener(SWT.Modify, event -> check());
        if (start.getItemCount() > 0) {
            start.select(before.isEmpty() ? 0 : start.getItemCount() - 1);
        }
        setControl(page);
        check();
        setErrorMessage(null);
        title.setFocus();
    }

    private Text line(Composite page, String words, int style, int lines) {
        kit.text(page, words).setLayoutData(new GridData(SWT.BEGINNING, lines > 1 ? SWT.BEGINNING : SWT.CENTER, false, false));
        Text text = kit.field(page, words, style);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, lines > 1);
        text.setLayoutData(data);
        kit.chars(text, 52);
        if (lines > 1) {
            data.heightHint = kit.type().lineHeight(Role.BODY) * lines;
            text.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        }
        return text;
    }

    private void check() {
        int at = start.getSelectionIndex();
        summary.setWords(at < 0 ? "No route is installed." : at < routes.size() ? routeWords(routes.get(at))
                : "Every step is planned as in " + before.get(at - routes.size()).getCode() + " and waits to be confirmed.");
        summary.layout();
        String trouble = at < 0 ? "There is no route to start from; a plugin brings one." : title().isEmpty() ? "The trial needs a title." : null;
        setErrorMessage(at < 0 ? trouble : null);
        setPageComplete(trouble == null);
    }

    /** What the route is good at, and what its usual plan takes. */
    private String routeWords(ProcessKind route) {
        String estimate = route.estimate(Trials.sketch(route, registries::findStepKind)).stream().map(Estimates::words).collect(Collectors.joining("; "));
        return route.summary() + (estimate.isEmpty() ? "" : "\nUsually: " + estimate + ".");
    }

    /** The route to start from; null when an earlier trial was chosen. */
    ProcessKind route() {
        int at = start.getSelectionIndex();
        return at < routes.size() ? routes.get(at) : null;
    }

    /** The earlier trial to start from, or null. */
    Trial after() {
        int at = start.getSelectionIndex();
        return at < routes.size() ? null : before.get(at - routes.size());
    }

    String title() {
        return title.getText().strip();
    }

    String idea() {
        return idea.getText().strip();
    }
}
