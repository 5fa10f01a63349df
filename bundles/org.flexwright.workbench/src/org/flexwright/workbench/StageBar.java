package org.flexwright.workbench;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.PlatformUI;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.WordRow;

import jakarta.annotation.PostConstruct;

/** The four stages as words at the top of the window; the application model puts it there (application.e4xmi). */
public final class StageBar {

    /** Makes the words; called by the platform. */
    @PostConstruct
    public void create(Composite parent) {
        WordRow row = new WordRow(parent, PlatformUI.getWorkbench().getService(Kit.class), "Stages", Ink.PANEL);
        for (Stage stage : Stage.values()) {
            row.add(stage.name(), stage.word(), stage.hint() + " (Ctrl+" + (stage.ordinal() + 1) + ")");
        }
        row.getDisplay().asyncExec(() -> Windows.of(row).ifPresent(window -> connect(row, window))); // the bar is made before its window is known
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
