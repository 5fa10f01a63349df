package org.flexwright.workbench;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.WordRow;

/** The four stages as words at the top of the window. */
public final class StageBar extends WorkbenchWindowControlContribution {

    @Override
    protected Control createControl(Composite parent) {
        IWorkbenchWindow window = getWorkbenchWindow();
        WordRow row = new WordRow(parent, window.getService(Kit.class), "Stages", Ink.PANEL);
        for (Stage stage : Stage.values()) {
            row.add(stage.name(), stage.word(), stage.hint() + " (Ctrl+" + (stage.ordinal() + 1) + ")");
        }
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
        return row;
    }

    private static void show(WordRow row, IPerspectiveDescriptor perspective) {
        if (!row.isDisposed() && perspective != null) {
            row.select(Stage.of(perspective.getId()).map(Stage::name).orElse(null));
        }
    }
}
