package org.flexwright.workbench.pages.common;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.ScrollPane;

/**
 * Lays a page out once more after the system has taken in its fonts: until it is idle, GTK tells the heights of fields in the font they
 * had before.
 */
public final class Settling {

    /** After this long, milliseconds, the system has drawn once and knows the new sizes. */
    private static final int SETTLED = 80;

    private Settling() {
    }

    /** Keeps a page settled from now on; {@code first} runs before each layout. */
    public static void keep(Kit kit, Composite root, Runnable first) {
        kit.whenDressed(root, () -> {
            first.run();
            later(root);
        });
    }

    /** Lays out once more when the system is idle: after controls were made. */
    public static void later(Composite root) {
        root.getDisplay().asyncExec(() -> lay(root));
        root.getDisplay().timerExec(SETTLED, () -> lay(root));
    }

    private static void lay(Composite root) {
        if (!root.isDisposed()) {
            root.layout(true, true);
            reflow(root);
        }
    }

    private static void reflow(Control below) {
        if (below instanceof ScrollPane pane) {
            pane.reflow();
        }
        if (below instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                reflow(child);
            }
        }
    }
}
