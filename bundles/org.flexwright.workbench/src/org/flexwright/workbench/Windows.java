package org.flexwright.workbench;

import java.util.Optional;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Finds the window of a control that the application model made. */
final class Windows {

    private Windows() {
    }

    /** The window; empty when the control is gone or its window is not open yet. */
    static Optional<IWorkbenchWindow> of(Control control) {
        if (control.isDisposed()) {
            return Optional.empty();
        }
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            if (window.getShell() == control.getShell()) {
                return Optional.of(window);
            }
        }
        return Optional.empty();
    }
}
