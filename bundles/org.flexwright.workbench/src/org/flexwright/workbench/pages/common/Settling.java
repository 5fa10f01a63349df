package org.flexwright.workbench.pages.common;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.ScrollPane;

/**
 * Lays a page out once more after the system has taken in its fonts: until it is idle, GTK tells the heights of fields in the font they
 * had before.
 */
public final class Settling {

    private static final String DUE = "org.flexwright.settling";
    /** After this long, milliseconds, the system has drawn once and knows the new sizes. */
    private static final int SETTLED = 80;

    private Settling() {
    }

    /**
     * Keeps a page settled from now on: after it was dressed again, and when it comes into sight having been dressed out of sight.
     *
     * @param first runs before each layout
     */
    public static void keep(Kit kit, Composite root, Runnable first) {
        kit.whenDressed(root, () -> {
            first.run();
            root.setData(DUE, !root.isVisible());
            later(root);
        });
        root.addListener(SWT.Paint, event -> {
            if (Boolean.TRUE.equals(root.getData(DUE))) {
                root.setData(DUE, false);
                later(root);
            }
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
