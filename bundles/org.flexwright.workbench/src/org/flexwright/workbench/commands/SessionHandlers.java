package org.flexwright.workbench.commands;

import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.ActiveShellExpression;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Undo, redo and save through the project's session, wherever in the window the focus is. */
public final class SessionHandlers {

    private SessionHandlers() {
    }

    /** Installs them in a window. */
    public static void install(IWorkbenchWindow window, ProjectService projects) {
        IHandlerService handlers = window.getService(IHandlerService.class);
        ActiveShellExpression here = new ActiveShellExpression(window.getShell());
        SessionHandler undo = new SessionHandler(projects, ProjectSession::canUndo, ProjectSession::undo,
                session -> "&Undo" + of(session.undoName()), "&Undo");
        SessionHandler redo = new SessionHandler(projects, ProjectSession::canRedo, ProjectSession::redo,
                session -> "&Redo" + of(session.redoName()), "&Redo");
        SessionHandler save = new SessionHandler(projects, session -> session.dirty() && !session.readOnly(),
                session -> projects.save(e -> Trouble.tell(window.getShell(), "Not saved", e.getMessage())), session -> "&Save", "&Save");
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, undo, here);
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, redo, here);
        handlers.activateHandler(IWorkbenchCommandConstants.FILE_SAVE, save, here);
        handlers.activateHandler(IWorkbenchCommandConstants.FILE_NEW, new NewProjectHandler(), here);
        projects.addListener(new ProjectListener() {
            @Override
            public void opened() {
                refresh();
            }

            @Override
            public void closed() {
                refresh();
            }

            @Override
            public void changed(Set<EObject> touched) {
                refresh();
            }

            @Override
            public void saved() {
                refresh();
            }

            private void refresh() {
                undo.refresh();
                redo.refresh();
                save.refresh();
                ICommandService commands = window.getService(ICommandService.class);
                commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
                commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
            }
        });
        undo.refresh();
        redo.refresh();
        save.refresh();
    }

    private static String of(String step) {
        return step.isEmpty() ? "" : ": " + step.replace("&", "&&");
    }

    /** A handler that works on the session. */
    private static final class SessionHandler extends AbstractHandler implements IElementUpdater {
        private final ProjectService projects;
        private final Predicate<ProjectSession> possible;
        private final Consumer<ProjectSession> work;
        private final Function<ProjectSession, String> words;
        private final String without;

        SessionHandler(ProjectService projects, Predicate<ProjectSession> possible, Consumer<ProjectSession> work,
                Function<ProjectSession, String> words, String without) {
            this.projects = projects;
            this.possible = possible;
            this.work = work;
            this.words = words;
            this.without = without;
        }

        void refresh() {
            setBaseEnabled(projects.session().filter(possible).isPresent());
        }

        @Override
        public Object execute(ExecutionEvent event) {
            projects.session().filter(possible).ifPresent(work);
            return null;
        }

        @Override
        public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
            element.setText(projects.session().map(words).orElse(without));
        }
    }
}
