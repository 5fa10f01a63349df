package org.flexwright.workbench;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.StatusWords;

import jakarta.annotation.PostConstruct;

/**
 * The foot of the window: what is being done, which project, and whether and why it cannot be changed. The platform's own status line has
 * a fixed height, which larger text does not fit; the application model puts this one there instead (application.e4xmi).
 */
public final class StatusBar {

    private Label doing;
    private Label project;
    private ProjectService projects;

    /** Makes the line; called by the platform. */
    @PostConstruct
    public void create(Composite parent) {
        Kit kit = PlatformUI.getWorkbench().getService(Kit.class);
        Composite bar = kit.pane(parent, 2, new Spacing(3, 1, 4, 0), Ink.PANEL);
        doing = label(kit, bar, "Status");
        doing.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        project = label(kit, bar, "Project");
        project.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        bar.getDisplay().asyncExec(() -> Windows.of(bar).ifPresent(this::connect)); // the bar is made before its window is known
    }

    private static Label label(Kit kit, Composite bar, String name) {
        Label label = new Label(bar, SWT.NONE);
        kit.dress(label, Ink.QUIET, null, Role.BODY);
        Kit.name(label, name);
        return label;
    }

    private void connect(IWorkbenchWindow window) {
        projects = window.getService(ProjectService.class);
        StatusWords words = window.getService(StatusWords.class);
        ProjectListener watcher = new Watcher();
        Runnable listener = () -> put(doing, words.words());
        projects.addListener(watcher);
        words.addListener(listener);
        project.addDisposeListener(event -> {
            projects.removeListener(watcher);
            words.removeListener(listener);
        });
        write();
    }

    private void write() {
        put(project, projects.session().map(StatusBar::words).orElse("No project is open"));
    }

    private static void put(Label label, String words) {
        String plain = Kit.plain(words);
        if (!label.isDisposed() && !plain.equals(label.getText())) {
            label.setText(plain);
            label.requestLayout();
        }
    }

    private static String words(ProjectSession session) {
        String folder = session.folder().getFileName().toString();
        if (session.readOnly()) {
            return folder + "  ·  read-only: " + session.readOnlyReason();
        }
        return folder + (session.dirty() ? "  ·  edits kept, not saved yet" : "  ·  saved");
    }

    private final class Watcher implements ProjectListener {
        @Override
        public void opened() {
            write();
        }

        @Override
        public void closed() {
            write();
        }

        @Override
        public void changed(Set<EObject> touched) {
            write();
        }

        @Override
        public void saved() {
            write();
        }
    }
}
