package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class WindowOpensTest {

    @Test
    void theWindowOpensWithTheProjectPerspective() {
        IWorkbenchWindow[] windows = PlatformUI.getWorkbench().getWorkbenchWindows();
        assertEquals(1, windows.length);
        assertTrue(windows[0].getShell().isVisible());
        assertEquals("Flexwright", windows[0].getShell().getText());
        assertEquals(Stage.PLAN.perspective(), windows[0].getActivePage().getPerspective().getId());
    }
}
