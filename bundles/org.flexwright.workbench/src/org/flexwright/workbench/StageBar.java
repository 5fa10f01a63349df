package org.flexwright.workbench;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.WordRow;

/** The four stages as words at the top of the window. */
public final class StageBar extends WorkbenchWindowControlContribution {

    @Override
    protected Control createControl(Composite parent) {
        WordRow row = new WordRow(parent, PlatformUI.getWorkbench().getService(Kit.class), "Stages", Ink.PANEL);
        for (Stage stage : Stage.values()) {
            row.add(stage.name(), stage.word(), stage.hint() + " (Ctrl+" + (stage.ordinal() + 1) + ")");
        }
        row.getDisplay().asyncExec(() -> connect(row)); // the bar is made before its window is known
        return row;
    }

    private static void connect(WordRow row) {
        if (row.isDisposed()) {
            return;
        }
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            if (window.getShell() == row.getShell()) {
                connect(row, window);
            }
        }
    }

    private static void connect(WordRow row, IWorkbenchWindow window) {
        row.whenChosen(id -> Stages.go(window, Stage.valueOf(id)));
        PerspectiveAdapter watcher = new PerspectiveAdapter() {
            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                show(row, perspective);
            }
        };
        window.addPerspectiveListener(watcher);
        row.addDisposeListener(event -> window.removePerspectiveListener(watcher));
        if (window.getActivePage() != null) {
            show(row, window.getActivePage().getPerspective());
        }
    }

    private static void show(WordRow row, IPerspectiveDescriptor perspective) {
        if (!row.isDisposed() && perspective != null) {
            row.select(Stage.of(perspective.getId()).map(Stage::name).orElse(null));
        }
    }
}
