package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.view.Strip;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A strip to scale: target band, interval, parts and reference; says the same in words to people who hear the screen. */
public final class StripCanvas extends Canvas {

    private final Kit kit;
    private Strip strip;
    private Ink ink = Ink.QUIET;

    /** An empty strip. */
    public StripCanvas(Composite parent, Kit kit) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.kit = kit;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "Strip");
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addPaintListener(event -> {
            if (strip != null) {
                StripPainter.paint(event.gc, getClientArea(), strip, ink, kit);
            }
        });
    }

    /**
     * Shows a strip.
     *
     * @param shown  what to draw; null for nothing
     * @param colour the verdict's colour
     * @param words  the same in words: property, trial, value with interval, verdict
     */
    public void show(Strip shown, Ink colour, String words) {
        this.strip = shown;
        this.ink = colour;
        Kit.name(this, words);
        setToolTipText(words);
        redraw();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? kit.grid().steps(45) : wHint, hHint == SWT.DEFAULT ? kit.grid().steps(6) : hHint);
    }
}
