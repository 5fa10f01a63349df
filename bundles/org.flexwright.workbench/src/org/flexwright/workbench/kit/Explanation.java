package org.flexwright.workbench.kit;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A few words beside a control; they go with the next key or click, and never take the focus. */
final class Explanation {

    private static final int WIDTH = 52;
    private static final List<Integer> ENDS = List.of(SWT.KeyDown, SWT.MouseDown, SWT.FocusOut, SWT.Dispose);

    private Explanation() {
    }

    /** Shows a title and a sentence below a control. */
    static void show(Control beside, Kit kit, String title, String sentence) {
        Shell shell = new Shell(beside.getShell(), SWT.NO_TRIM | SWT.ON_TOP | SWT.TOOL | SWT.NO_FOCUS);
        shell.setText(title);
        shell.setLayout(new FillLayout());
        Composite edge = kit.pane(shell, 1, Spacing.NONE, Ink.ACCENT);
        Composite pane = kit.pane(edge, 1, new Spacing(3, 2, 0, 1), Ink.PANEL);
        GridData inner = Grid.fill();
        inner.horizontalIndent = 2;
        pane.setLayoutData(inner);
        kit.label(pane, title, Ink.INK, Role.STRONG);
        GridData wide = Grid.wide();
        wide.widthHint = kit.type().chars(Role.BODY, WIDTH);
        Prose.text(pane, kit, sentence).setLayoutData(wide);
        shell.pack();
        place(shell, beside);
        Listener gone = event -> shell.dispose();
        ENDS.forEach(type -> beside.addListener(type, gone));
        shell.addListener(SWT.Dispose, event -> {
            if (!beside.isDisposed()) {
                ENDS.forEach(type -> beside.removeListener(type, gone));
            }
        });
        shell.setVisible(true);
    }

    /** Below the control, or above it where the screen ends. */
    private static void place(Shell shell, Control beside) {
        Rectangle screen = beside.getMonitor().getClientArea();
        Point size = shell.getSize();
        Point below = beside.toDisplay(0, beside.getSize().y + 2);
        int x = Math.max(screen.x, Math.min(below.x, screen.x + screen.width - size.x));
        int y = below.y + size.y <= screen.y + screen.height ? below.y : beside.toDisplay(0, -size.y - 2).y;
        shell.setLocation(x, y);
    }
}
