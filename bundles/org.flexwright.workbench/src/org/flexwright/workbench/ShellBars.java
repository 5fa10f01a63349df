package org.flexwright.workbench;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;

/** The status line: which project, and whether and why it cannot be changed. Menus stand in plugin.xml. */
final class ShellBars extends ActionBarAdvisor {

    ShellBars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void fillCoolBar(ICoolBarManager coolBar) {
        coolBar.setLockLayout(true); // four words are nothing to drag about
    }

    @Override
    protected void fillStatusLine(IStatusLineManager statusLine) {
        statusLine.add(new ProjectLine(getActionBarConfigurer().getWindowConfigurer().getWindow()));
    }

    private static final class ProjectLine extends ContributionItem implements ProjectListener {
        private final IWorkbenchWindow window;
        private Label label;

        ProjectLine(IWorkbenchWindow window) {
            super("org.flexwright.workbench.status.project");
            this.window = window;
        }

        @Override
        public void fill(Composite parent) {
            Kit kit = window.getService(Kit.class);
            label = new Label(parent, SWT.RIGHT);
            kit.dress(label, Ink.QUIET, null, Role.BODY);
            ProjectService projects = window.getService(ProjectService.class);
            projects.addListener(this);
            label.addDisposeListener(event -> projects.removeListener(this));
            write();
        }

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

        private void write() {
            if (label == null || label.isDisposed()) {
                return;
            }
            String words = window.getService(ProjectService.class).session().map(ProjectLine::words).orElse("No project is open");
            if (!words.equals(label.getText())) {
                label.setText(Kit.plain(words) + "   "); // keeps off the window's edge
                Kit.name(label, words);
                label.getParent().layout();
            }
        }

        private static String words(ProjectSession session) {
            String folder = session.folder().getFileName().toString();
            if (session.readOnly()) {
                return folder + "  ·  read-only: " + session.readOnlyReason();
            }
            return folder + (session.dirty() ? "  ·  edits kept, not saved yet" : "  ·  saved");
        }
    }
}
