package org.flexwright.workbench.testkit;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.kit.WordRow;

/** Looks at every visible control as a careful reader would: has it a name, is it cut off, can it be read? */
public final class Walker {

    /** Text smaller than 18 points needs this much: Web Content Accessibility Guidelines 2.1, 1.4.3 (W3C, 2018). */
    private static final double CONTRAST = 4.5;

    private final List<String> complaints = new ArrayList<>();

    private Walker() {
    }

    /** What there is to complain about below a control; empty when nothing is. */
    public static List<String> look(Control root) {
        Walker walker = new Walker();
        Ui.walk(root, walker::visit);
        return walker.complaints;
    }

    private void visit(Control control) {
        if (worked(control) && Kit.nameOf(control).isBlank()) {
            complain(control, "has no name");
        }
        if (control instanceof Label || control instanceof Button || control instanceof Combo || control instanceof Text) {
            visitWords(control);
        }
    }

    /** True for what a person works with and whose name does not stand on it. */
    private static boolean worked(Control control) {
        if (control instanceof Button && !Ui.words(control).isBlank() || control instanceof Text && (control.getStyle() & SWT.READ_ONLY) != 0) {
            return false;
        }
        return control instanceof Text || control instanceof Button || control instanceof Combo || control instanceof Table
                || control instanceof Tree || control instanceof Scale || control.getParent() instanceof WordRow;
    }

    private void visitWords(Control control) {
        if (!Ui.words(control).isBlank()) {
            cutOff(control);
            contrast(control);
        }
    }

    private void cutOff(Control control) {
        Point size = control.getSize();
        boolean wraps = (control.getStyle() & SWT.WRAP) != 0;
        boolean scrolls = control instanceof Text;
        Point wanted = control.computeSize(wraps ? size.x : SWT.DEFAULT, SWT.DEFAULT);
        if (!scrolls && size.x < wanted.x) {
            complain(control, "is " + size.x + " wide and needs " + wanted.x);
        }
        if ((control.getStyle() & SWT.MULTI) == 0 && size.y < wanted.y) {
            complain(control, "is " + size.y + " high and needs " + wanted.y);
        }
        Rectangle within = control.getBounds();
        for (Composite up = control.getParent(); up != null && !(up instanceof ScrolledComposite); up = up.getParent()) {
            Rectangle room = up.getClientArea();
            if (within.x < -1 || within.y < -1 || within.x + within.width > room.x + room.width + 1
                    || within.y + within.height > room.y + room.height + 1) {
                complain(control, "reaches out of " + up.getClass().getSimpleName() + " " + room + " with " + within);
                return;
            }
            Point at = up.getLocation();
            within.x += at.x;
            within.y += at.y;
            if (up instanceof Shell) {
                return;
            }
        }
    }

    private void contrast(Control control) {
        if (!control.isEnabled() || control instanceof Button button && (button.getStyle() & SWT.PUSH) != 0 || control instanceof Combo) {
            return; // drawn by the system in its own colours
        }
        RGB text = control.getForeground().getRGB();
        RGB ground = control.getBackground().getRGB();
        double contrast = Palette.contrast(text, ground);
        if (contrast < CONTRAST) {
            complain(control, "has a contrast of only " + Math.round(contrast * 10) / 10.0 + ", " + text + " on " + ground);
        }
    }

    private void complain(Control control, String what) {
        StringBuilder way = new StringBuilder(control.getClass().getSimpleName() + " \"" + Kit.nameOf(control) + "/" + Ui.words(control) + "\"");
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            way.append(" < ").append(up.getClass().getSimpleName());
        }
        complaints.add(what + ": " + way);
    }
}
