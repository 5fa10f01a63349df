package org.flexwright.workbench.pages.recording;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Type.Role;

/** What is looked at beside what is said of it; below one another where there is no room for both. */
final class Halves extends Layout {

    private static final int NARROW = 96;
    private static final int LEAST = 44;
    private static final int MOST = 84;
    private static final double SHARE = 0.38;
    private static final double UPPER = 0.7;

    private final Kit kit;
    private final Control main;
    private final Control side;

    Halves(Kit kit, Control main, Control side) {
        this.kit = kit;
        this.main = main;
        this.side = side;
    }

    @Override
    protected Point computeSize(Composite composite, int wHint, int hHint, boolean flushCache) {
        int width = wHint == SWT.DEFAULT ? kit.type().chars(Role.BODY, NARROW) : wHint;
        return new Point(width, hHint == SWT.DEFAULT ? kit.type().lineHeight(Role.BODY) * 20 : hHint);
    }

    @Override
    protected void layout(Composite composite, boolean flushCache) {
        Rectangle area = composite.getClientArea();
        if (area.width < kit.type().chars(Role.BODY, NARROW)) {
            int upper = (int) (area.height * UPPER);
            main.setBounds(area.x, area.y, area.width, upper);
            side.setBounds(area.x, area.y + upper, area.width, area.height - upper);
        } else {
            int wide = Math.clamp((int) (area.width * SHARE), kit.type().chars(Role.BODY, LEAST), kit.type().chars(Role.BODY, MOST));
            main.setBounds(area.x, area.y, area.width - wide, area.height);
            side.setBounds(area.x + area.width - wide, area.y, wide, area.height);
        }
    }
}
