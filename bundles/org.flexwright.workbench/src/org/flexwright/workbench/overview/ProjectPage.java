package org.flexwright.workbench.overview;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.session.MissingPlugin;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.model.Project;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;

/** The job in words, the needs, what comes next, and what there is to say about the opened file. */
final class ProjectPage implements EditorPage {

    private final PageContext context;
    private final Kit kit;
    private final Project project;
    private final ScrollPane page;
    private final Composite next;
    private final NeedList needs;
    private final FindingStrips findings;
    private NextStep shown;

    ProjectPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        this.project = (Project) context.subject();
        page = new ScrollPane(parent, kit, 1, Spacing.PAGE);
        notices();
        next = kit.pane(page.body(), 2, Spacing.PANEL, Ink.PANEL);
        next.setLayoutData(Grid.wide());
        job();
        needs = new NeedList(page.body(), context);
        findings = new FindingStrips(page.body(), context, f -> f.subject().equals(project.getId()));
        findings.show();
        showNext();
        page.reflow();
    }

    private void notices() {
        ProjectSession session = context.session();
        if (project.isInvented()) {
            notice("Everything in this project is invented, to look around and to try things in.", Ink.ACCENT);
        }
        if (session.readOnly()) {
            notice("Read-only: " + session.readOnlyReason(), Ink.CAUTION);
        }
        for (Message message : session.notices()) {
            notice(message.text(), Ink.CAUTION);
        }
        for (MissingPlugin missing : session.missingPlugins()) {
            String who = missing.plugin().isEmpty() ? "a plugin this program does not have (" + missing.nsURI() + ")"
                    : "the plugin " + missing.plugin() + " " + missing.version();
            notice("Some steps or readings were written by " + who + ". They are kept as they are and cannot be shown in full.", Ink.CAUTION);
        }
    }

    private void notice(String sentence, Ink ink) {
        new Prose(page.body(), kit, sentence, ink, Role.STRONG).setLayoutData(Grid.wide());
    }

    private void job() {
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(ModelPackage.Literals.PROJECT).stream()
                .filter(f -> f.name().equals("title") || f.name().equals("job")).toList();
        FormModel form = FormModel.bound(context.session(), project, fields);
        FormPane pane = new FormPane(page.body(), kit, Bindings.of(form, context.session().readOnly()));
        pane.setLayoutData(Grid.wide());
        pane.addDisposeListener(event -> form.close());
    }

    private void showNext() {
        NextStep step = NextStep.of(project, context.registries().properties(), Instant.now());
        if (Objects.equals(step, shown)) {
            return;
        }
        shown = step;
        for (Control old : next.getChildren()) {
            old.dispose();
        }
        Composite words = kit.pane(next, 1, Spacing.TIGHT, Ink.PANEL);
        words.setLayoutData(Grid.wide());
        kit.label(words, "Next", Ink.QUIET, Role.BODY);
        Prose.text(words, kit, step.sentence()).setLayoutData(Grid.wide());
        kit.action(next, step.action(), () -> NextSteps.take(step, context, needs)).setLayoutData(new GridData(GridData.HORIZONTAL_ALIGN_END));
        page.reflow();
    }

    @Override
    public Control control() {
        return page;
    }

    @Override
    public void changed(Set<EObject> touched) {
        needs.show();
        showNext();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        if (object instanceof Need need) {
            needs.reveal(need);
        }
    }
}
