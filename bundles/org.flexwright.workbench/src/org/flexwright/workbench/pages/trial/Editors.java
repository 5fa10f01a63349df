package org.flexwright.workbench.pages.trial;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.pages.session.ReadingPageProvider;

/** From one editor to a place in another. */
final class Editors {

    private Editors() {
    }

    /** Goes to the entry of readings of a session, at a piece. */
    static void read(PageContext context, Session session, Specimen piece) {
        context.open(session);
        IWorkbenchWindow window = PlatformUI.isWorkbenchRunning() ? PlatformUI.getWorkbench().getActiveWorkbenchWindow() : null;
        IEditorPart opened = window == null ? null : window.getActivePage().getActiveEditor();
        if (opened instanceof SubjectEditor editor && editor.subject() == session) {
            editor.show(ReadingPageProvider.ID);
            editor.reveal(piece, "");
        }
    }
}
