package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;

/** Looks at the bench view as somebody two metres away: large enough, whole, readable, nothing over anything else, targets for a gloved finger. */
final class BenchLooker {

    private static final int LEAST_POINTS = 24;
    private static final double LEAST_MM = 15;
    private static final double MM_AN_INCH = 25.4;
    /** Text of this size counts as large; the stricter bound for small text is asked for all the same. */
    private static final double CONTRAST = 4.5;

    private BenchLooker() {
    }

    /** What there is to complain about; empty when nothing is. */
    static List<String> look(Shell shell, BenchLook look) {
        List<String> complaints = new ArrayList<>(Walker.look(shell));
        Ui.walk(shell, control -> {
            if (control instanceof BenchPart part) {
                part(part, look, complaints);
            }
            inside(control, complaints);
        });
        return complaints;
    }

    private static void part(BenchPart part, BenchLook look, List<String> complaints) {
        String name = part.getClass().getSimpleName() + " \"" + Kit.nameOf(part) + "\"";
        if (Kit.nameOf(part).isBlank()) {
            complaints.add(name + " has no name");
        }
        if (!part.whole()) {
            complaints.add(name + " is cut off in " + part.getSize());
        }
        for (BenchPart.Shown shown : part.shown()) {
            int points = look.font(shown.size()).getFontData()[0].getHeight();
            if (points < LEAST_POINTS) {
                complaints.add(name + " has text of " + points + " points");
            }
            double contrast = Palette.contrast(look.color(shown.text()).getRGB(), look.color(shown.ground()).getRGB());
            if (contrast < CONTRAST) {
                complaints.add(name + " has a contrast of " + contrast);
            }
        }
        double least = LEAST_MM / MM_AN_INCH * part.getDisplay().getDPI().x;
        Point size = part.getSize();
        if (part instanceof Tap && (size.x < least || size.y < least)) {
            complaints.add(name + " is " + size.x + " x " + size.y + " pixels; a gloved finger needs " + least);
        }
    }

    /** Nothing reaches out of its parent, and no two siblings lie over one another. */
    private static void inside(Control control, List<String> complaints) {
        if (!(control instanceof Composite parent) || parent.getLayout() instanceof org.eclipse.swt.custom.StackLayout) {
            return;
        }
        List<Control> visible = java.util.Arrays.stream(parent.getChildren()).filter(Control::isVisible).filter(c -> c.getSize().x > 0 && c.getSize().y > 0).toList();
        for (int i = 0; i < visible.size(); i++) {
            Rectangle one = visible.get(i).getBounds();
            Rectangle area = parent.getClientArea();
            if (one.x < 0 || one.y < 0 || one.x + one.width > area.width || one.y + one.height > area.height) {
                complaints.add(Kit.nameOf(visible.get(i)) + " reaches out of " + Kit.nameOf(parent) + ": " + one + " in " + area);
            }
            for (Control other : visible.subList(i + 1, visible.size())) {
                if (one.intersects(other.getBounds())) {
                    complaints.add(Kit.nameOf(visible.get(i)) + " lies over " + Kit.nameOf(other));
                }
            }
        }
    }
}
