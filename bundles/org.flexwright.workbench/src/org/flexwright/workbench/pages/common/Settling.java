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
            later(kit, root);
        });
        root.addListener(SWT.Paint, event -> {
            if (Boolean.TRUE.equals(root.getData(DUE))) {
                root.setData(DUE, false);
                later(kit, root);
            }
        });
    }

    /** Lays out once more when the system is idle, and when it has drawn: after controls were made. */
    public static void later(Kit kit, Composite root) {
        root.getDisplay().asyncExec(() -> lay(root));
        root.getDisplay().timerExec(SETTLED, () -> {
            kit.settled();
            lay(root);
        });
    }

    private static void lay(Composite root) {
        if (!root.isDisposed()) {
            below(root);
        }
    }

    private static void below(Control control) {
        if (control instanceof ScrollPane pane) {
            pane.reflow();
        } else if (control instanceof Composite composite) {
            composite.layout(true, false);
            for (Control child : composite.getChildren()) {
                below(child);
            }
        }
    }
}
