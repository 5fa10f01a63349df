package org.flexwright.workbench.kit;

import java.util.function.DoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A strip to scale: target band, interval, parts and reference; says the same in words to people who hear the screen. */
public final class Strip extends Canvas {

    private final Kit kit;
    private StripData data;

    /** An empty strip. */
    public Strip(Composite parent, Kit kit) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.kit = kit;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "strip");
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addPaintListener(event -> {
            if (data != null) {
                StripPainter.paint(event.gc, getClientArea(), data, kit);
            }
        });
    }

    /**
     * Shows data.
     *
     * @param shown  what to draw
     * @param about  what it is about: property and trial
     * @param number prints a number with its unit, for the words
     */
    public void show(StripData shown, String about, DoubleFunction<String> number) {
        this.data = shown;
        Kit.name(this, about + ": " + shown.words(number));
        setToolTipText(shown.words(number));
        redraw();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? kit.grid().steps(45) : wHint, hHint == SWT.DEFAULT ? kit.grid().steps(6) : hHint);
    }
}
