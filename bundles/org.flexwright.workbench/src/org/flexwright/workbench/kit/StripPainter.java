package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.flexwright.core.view.Strip;
import org.flexwright.core.view.Strip.Dot;
import org.flexwright.workbench.kit.Palette.Ink;

/** Draws a strip anywhere: in its own canvas or in the cell of a table. */
public final class StripPainter {

    private final GC gc;
    private final Kit kit;
    private final Strip strip;
    private final Ink ink;
    private final int unit;
    private final int left;
    private final int width;
    private final int top;
    private final int height;
    private final int middle;

    private StripPainter(GC gc, Rectangle area, Strip strip, Ink ink, Kit kit) {
        this.gc = gc;
        this.kit = kit;
        this.strip = strip;
        this.ink = ink;
        this.unit = kit.grid().steps(1);
        this.left = area.x + unit + 2;
        this.width = area.width - 2 * (unit + 2);
        this.top = area.y + 1;
        this.height = area.height - 2;
        this.middle = area.y + area.height / 2;
    }

    /**
     * Draws: target band as a block, interval as a line with the mean as a tick, each part as a dot, the reference as a diamond.
     *
     * @param area where, in points; at least 60 x 16
     * @param ink  colour of interval and dots: the verdict's
     */
    public static void paint(GC gc, Rectangle area, Strip strip, Ink ink, Kit kit) {
        gc.setAntialias(SWT.ON);
        StripPainter painter = new StripPainter(gc, area, strip, ink, kit);
        painter.band();
        painter.interval();
        strip.dots().forEach(painter::dot);
        painter.reference();
    }

    private void band() {
        int x1 = at(strip.bandLow());
        int x2 = at(strip.bandHigh());
        gc.setBackground(kit.color(Ink.BAND));
        gc.fillRectangle(x1, top, Math.max(2, x2 - x1), height);
        gc.setForeground(kit.color(Ink.LINE));
        gc.setLineWidth(1);
        gc.drawLine(left, middle, left + width, middle);
        gc.setForeground(kit.color(Ink.ACCENT));
        if (strip.bandLow() > strip.scale().low()) {
            gc.drawLine(x1, top, x1, top + height - 1);
        }
        if (strip.bandHigh() < strip.scale().high()) {
            gc.drawLine(x2, top, x2, top + height - 1);
        }
    }

    private void interval() {
        gc.setForeground(kit.color(ink));
        gc.setBackground(kit.color(ink));
        gc.setLineWidth(2);
        if (strip.low() != null && strip.high() != null) {
            int x1 = at(strip.low());
            int x2 = at(strip.high());
            gc.drawLine(x1, middle, x2, middle);
            end(x1, strip.lowCut(), -1);
            end(x2, strip.highCut(), 1);
        }
        if (strip.mean() != null) {
            int x = at(strip.mean());
            gc.drawLine(x, middle - unit * 2, x, middle + unit * 2);
        }
    }

    /** A bar where the interval ends, an arrow where it goes on beyond the scale. */
    private void end(int x, boolean cut, int way) {
        if (cut) {
            gc.fillPolygon(new int[] {x + way * unit, middle, x, middle - unit, x, middle + unit});
        } else {
            gc.drawLine(x, middle - unit, x, middle + unit);
        }
    }

    private void dot(Dot dot) {
        int x = at(dot.value());
        int r = Math.max(3, unit * 3 / 4);
        gc.setBackground(kit.color(ink));
        gc.setForeground(kit.color(ink));
        gc.setLineWidth(2);
        switch (dot.mark()) {
            case VALUE -> gc.fillOval(x - r, middle - r, 2 * r, 2 * r);
            case MORE_THAN -> gc.fillPolygon(new int[] {x - r, middle - r, x + r, middle, x - r, middle + r});
            case LESS_THAN -> gc.fillPolygon(new int[] {x + r, middle - r, x - r, middle, x + r, middle + r});
            case FAILED -> {
                gc.drawLine(x - r, middle - r, x + r, middle + r);
                gc.drawLine(x - r, middle + r, x + r, middle - r);
            }
        }
    }

    private void reference() {
        if (strip.reference() == null) {
            return;
        }
        int x = at(strip.reference());
        int r = unit + unit / 2;
        int[] corners = {x, middle - r, x + r, middle, x, middle + r, x - r, middle};
        gc.setBackground(kit.color(Ink.PAPER));
        gc.fillPolygon(corners);
        gc.setForeground(kit.color(Ink.INK));
        gc.setLineWidth(2);
        gc.drawPolygon(corners);
    }

    private int at(double value) {
        return left + (int) Math.round(strip.scale().at(value) * width);
    }
}
