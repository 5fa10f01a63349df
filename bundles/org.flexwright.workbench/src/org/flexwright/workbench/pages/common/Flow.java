package org.flexwright.workbench.pages.common;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** Lays controls side by side and goes on in the next line where there is no more room; nothing is ever wider than the line. */
public final class Flow extends Layout {

    private static final String GROWS = "org.flexwright.grows";

    private static final int ENDLESS = 100_000;

    private final Kit kit;

    private Flow(Kit kit) {
        this.kit = kit;
    }

    /** A pane whose controls flow. */
    public static Composite pane(Composite parent, Kit kit, Ink ground) {
        Composite pane = kit.pane(parent, 1, Spacing.NONE, ground);
        pane.setLayout(new Flow(kit));
        return pane;
    }

    /** Lets a control take what is left of its line, from {@code chars} characters on. */
    public static <C extends Control> C grow(C control, int chars) {
        control.setData(GROWS, chars);
        return control;
    }

    private record Placed(Control control, int x, int y, int width, int height) {
    }

    private List<Placed> place(Composite composite, int width) {
        int gap = kit.grid().gap();
        List<Placed> all = new ArrayList<>();
        List<Control> line = new ArrayList<>();
        int used = 0;
        int y = 0;
        for (Control child : composite.getChildren()) {
            if (!child.getVisible()) {
                continue;
            }
            int wanted = Math.min(natural(child), width);
            if (!line.isEmpty() && used + gap + wanted > width) {
                y = finish(line, all, y, width, gap) + gap;
                line.clear();
                used = 0;
            }
            used += (line.isEmpty() ? 0 : gap) + wanted;
            line.add(child);
        }
        if (!line.isEmpty()) {
            finish(line, all, y, width, gap);
        }
        return all;
    }

    private int natural(Control child) {
        return child.getData(GROWS) instanceof Integer chars ? kit.type().chars(Role.BODY, chars)
                : child.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    /** Places a line; tells where it ends. */
    private int finish(List<Control> line, List<Placed> all, int y, int width, int gap) {
        int sum = (line.size() - 1) * gap;
        int growing = 0;
        for (Control child : line) {
            sum += Math.min(natural(child), width);
            growing += child.getData(GROWS) == null ? 0 : 1;
        }
        int more = growing == 0 || width >= ENDLESS ? 0 : Math.max(0, width - sum) / growing;
        int[] widths = new int[line.size()];
        int[] heights = new int[line.size()];
        int high = 0;
        for (int i = 0; i < widths.length; i++) {
            Control child = line.get(i);
            widths[i] = Math.min(natural(child), width) + (child.getData(GROWS) == null ? 0 : more);
            boolean wraps = (child.getStyle() & SWT.WRAP) != 0 || child instanceof Composite;
            heights[i] = child.computeSize(wraps ? widths[i] : SWT.DEFAULT, SWT.DEFAULT).y;
            high = Math.max(high, heights[i]);
        }
        int x = 0;
        for (int i = 0; i < widths.length; i++) {
            all.add(new Placed(line.get(i), x, y + (high - heights[i]) / 2, widths[i], heights[i]));
            x += widths[i] + gap;
        }
        return y + high;
    }

    @Override
    protected Point computeSize(Composite composite, int wHint, int hHint, boolean flushCache) {
        int width = wHint == SWT.DEFAULT ? ENDLESS : Math.max(1, wHint);
        int right = 0;
        int bottom = 0;
        for (Placed placed : place(composite, width)) {
            right = Math.max(right, placed.x() + placed.width());
            bottom = Math.max(bottom, placed.y() + placed.height());
        }
        return new Point(wHint == SWT.DEFAULT ? right : wHint, bottom);
    }

    @Override
    protected void layout(Composite composite, boolean flushCache) {
        Rectangle area = composite.getClientArea();
        for (Placed placed : place(composite, Math.max(1, area.width))) {
            placed.control().setBounds(area.x + placed.x(), area.y + placed.y(), placed.width(), placed.height());
        }
    }
}
