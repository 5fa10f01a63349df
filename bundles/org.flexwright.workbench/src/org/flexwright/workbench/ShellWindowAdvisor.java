package org.flexwright.workbench;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.flexwright.core.naming.Names;
import org.flexwright.workbench.commands.SessionHandlers;
import org.flexwright.workbench.find.Finder;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.settings.Themes;
import org.flexwright.workbench.start.StartEditor;

/** Sets up one window: its bars, its title, and what it opens with. */
final class ShellWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final String NAME = "Flexwright";
    private static final int WIDTH = 1360;
    private static final int HEIGHT = 900;
    private static final int FRAME = 28;

    private final StartArguments arguments;

    ShellWindowAdvisor(IWorkbenchWindowConfigurer configurer, StartArguments arguments) {
        super(configurer);
        this.arguments = arguments;
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        IWorkbench workbench = configurer.getWindow().getWorkbench();
        Themes.apply(workbench, workbench.getService(Settings.class).theme());
        configurer.setInitialSize(size(workbench.getDisplay().getPrimaryMonitor().getClientArea()));
        configurer.setShowMenuBar(true);
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(false);
        configurer.setShowProgressIndicator(false);
        configurer.setShowPerspectiveBar(false);
        configurer.setTitle(NAME);
    }

    /** As large as a small screen allows, its own frame included. */
    private static Point size(Rectangle screen) {
        return new Point(Math.min(WIDTH, screen.width), Math.min(HEIGHT, screen.height - FRAME));
    }

    @Override
    public void postWindowOpen() {
        IWorkbenchWindow window = getWindowConfigurer().getWindow();
        ProjectService projects = window.getService(ProjectService.class);
        SessionHandlers.install(window, projects);
        WindowIcon.put(window.getShell(), window.getService(Kit.class));
        window.getShell().getDisplay().asyncExec(() -> window.getService(Kit.class).redress(window.getShell()));
        projects.addListener(new Title(window, projects));
        if (window.getActivePage() != null) {
            window.getActivePage().closeAllEditors(false); // after a run that was broken off the tabs of that time come back, with nothing in them
        }
        window.getService(Finder.class); // from now on it reads every project that is opened
        if (arguments.open().isPresent()) {
            Trouble.guard(window.getShell(), "Not opened", () -> projects.open(arguments.open().get()));
        } else if (!arguments.trouble().isEmpty()) {
            Trouble.tell(window.getShell(), "Not understood", arguments.trouble());
        }
        if (projects.session().isEmpty()) {
            StartEditor.show(window);
        }
        window.getShell().getDisplay().asyncExec(() -> focus(window));
    }

    /** What was opened before the window was seen could not take the focus, and without a focus no key is heard. */
    private static void focus(IWorkbenchWindow window) {
        if (!window.getShell().isDisposed() && window.getShell().getDisplay().getFocusControl() == null && window.getActivePage() != null
                && window.getActivePage().getActivePart() != null) {
            window.getActivePage().getActivePart().setFocus();
        }
    }

    @Override
    public boolean preWindowShellClose() {
        getWindowConfigurer().getWindow().getService(ProjectService.class).close();
        return true;
    }

    /** Window title and start page follow the project. */
    private final class Title implements ProjectListener {
        private final IWorkbenchWindow window;
        private final ProjectService projects;

        Title(IWorkbenchWindow window, ProjectService projects) {
            this.window = window;
            this.projects = projects;
        }

        @Override
        public void opened() {
            write();
            StartEditor.hide(window);
            projects.session().ifPresent(session -> SubjectEditors.open(window, session.project()));
        }

        @Override
        public void closed() {
            write();
            if (!window.getWorkbench().isClosing()) {
                window.getShell().getDisplay().asyncExec(() -> {
                    if (projects.session().isEmpty() && !window.getShell().isDisposed()) {
                        StartEditor.show(window);
                    }
                });
            }
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
            getWindowConfigurer().setTitle(projects.session()
                    .map(session -> (session.dirty() ? "• " : "") + Names.of(session.project()) + " – " + NAME).orElse(NAME));
        }
    }
}
