package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.flexwright.workbench.kit.Palette.Ink;

/** Draws a strip anywhere: in its own canvas or in the cell of a table. */
public final class StripPainter {

    private StripPainter() {
    }

    /**
     * Draws: target band as a block, interval as a line with the mean as a tick, each part as a dot, the reference as a diamond.
     *
     * @param area where, in points; at least 40 x 16
     */
    public static void paint(GC gc, Rectangle area, StripData data, Kit kit) {
        gc.setAntialias(SWT.ON);
        int unit = kit.grid().steps(1);
        int left = area.x + unit + 1;
        int width = area.width - 2 * (unit + 1);
        int middle = area.y + area.height / 2;
        band(gc, area, data, kit, left, width);
        gc.setForeground(kit.color(Ink.LINE));
        gc.setLineWidth(1);
        gc.drawLine(left, middle, left + width, middle);
        gc.setForeground(kit.color(data.ink()));
        gc.setBackground(kit.color(data.ink()));
        if (data.low() != null && data.high() != null) {
            int x1 = at(data, data.low(), left, width);
            int x2 = at(data, data.high(), left, width);
            gc.setLineWidth(2);
            gc.drawLine(x1, middle, x2, middle);
            gc.drawLine(x1, middle - unit, x1, middle + unit);
            gc.drawLine(x2, middle - unit, x2, middle + unit);
        }
        if (data.mean() != null) {
            int x = at(data, data.mean(), left, width);
            gc.setLineWidth(2);
            gc.drawLine(x, middle - unit * 3 / 2, x, middle + unit * 3 / 2);
        }
        int dot = Math.max(5, unit + unit / 2);
        for (double part : data.parts()) {
            int x = at(data, part, left, width);
            gc.fillOval(x - dot / 2, middle - dot / 2, dot, dot);
        }
        if (data.reference() != null) {
            diamond(gc, at(data, data.reference(), left, width), middle, unit + unit / 2, kit);
        }
    }

    private static void band(GC gc, Rectangle area, StripData data, Kit kit, int left, int width) {
        if (!data.banded()) {
            return;
        }
        int x1 = data.bandLow() == null ? left : at(data, data.bandLow(), left, width);
        int x2 = data.bandHigh() == null ? left + width : at(data, data.bandHigh(), left, width);
        gc.setBackground(kit.color(Ink.BAND));
        gc.fillRectangle(x1, area.y + 1, Math.max(2, x2 - x1), area.height - 2);
        gc.setForeground(kit.color(Ink.ACCENT));
        gc.setLineWidth(1);
        if (data.bandLow() != null) {
            gc.drawLine(x1, area.y + 1, x1, area.y + area.height - 2);
        }
        if (data.bandHigh() != null) {
            gc.drawLine(x2, area.y + 1, x2, area.y + area.height - 2);
        }
    }

    private static void diamond(GC gc, int x, int y, int r, Kit kit) {
        int[] corners = {x, y - r, x + r, y, x, y + r, x - r, y};
        gc.setBackground(kit.color(Ink.PAPER));
        gc.fillPolygon(corners);
        gc.setForeground(kit.color(Ink.INK));
        gc.setLineWidth(2);
        gc.drawPolygon(corners);
    }

    private static int at(StripData data, double value, int left, int width) {
        return left + (int) Math.round(data.place(value) * width);
    }
}
