package org.flexwright.workbench.kit;

import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.view.Bars;
import org.flexwright.core.view.Bars.Bar;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** Bars from zero with their words: label at the left, amount with band below the bar; says the same to people who hear the screen. */
public final class BarsPane extends Canvas {

    private static final int LABEL_SHARE = 3;
    private static final double ROW = 2.9;

    private final Kit kit;
    private Bars bars;

    /** An empty pane. */
    public BarsPane(Composite parent, Kit kit) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.kit = kit;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "Bars");
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addPaintListener(event -> {
            if (bars != null) {
                paint(event.gc, getClientArea());
            }
        });
    }

    /** Shows these; null for none. */
    public void show(Bars shown) {
        bars = shown;
        Kit.name(this, shown == null ? "Bars" : shown.title() + ": " + shown.bars().stream().map(bar -> bar.label() + " " + bar.words()).collect(Collectors.joining("; ")));
        requestLayout();
        redraw();
    }

    private int row() {
        return (int) Math.round(kit.type().lineHeight(Role.BODY) * ROW);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = bars == null ? 0 : bars.bars().size() * row();
        return new Point(wHint == SWT.DEFAULT ? kit.type().chars(Role.BODY, 60) : wHint, hHint == SWT.DEFAULT ? Math.max(1, height) : hHint);
    }

    private void paint(GC gc, Rectangle area) {
        gc.setAntialias(SWT.ON);
        gc.setFont(kit.type().font(Role.BODY));
        int widest = bars.bars().stream().mapToInt(bar -> gc.textExtent(bar.label()).x).max().orElse(0);
        int left = Math.min(widest, area.width / LABEL_SHARE) + kit.grid().gap();
        int width = Math.max(1, area.width - left - kit.grid().gap());
        for (int i = 0; i < bars.bars().size(); i++) {
            paint(gc, bars.bars().get(i), i * row(), left, width);
        }
        gc.setForeground(kit.color(Ink.QUIET));
        gc.setLineWidth(1);
        gc.drawLine(left, 0, left, bars.bars().size() * row() - kit.grid().steps(1));
    }

    private void paint(GC gc, Bar bar, int top, int left, int width) {
        int line = kit.type().lineHeight(Role.BODY);
        int thick = line * 3 / 4;
        int middle = top + line / 2;
        gc.setForeground(kit.color(Ink.INK));
        gc.setFont(kit.type().font(bar.sum() ? Role.STRONG : Role.BODY));
        gc.drawText(bar.label(), 0, top, true);
        gc.setFont(kit.type().font(Role.BODY));
        int x = left + at(bar.value(), width);
        gc.setBackground(kit.color(bar.sum() ? Ink.INK : Ink.SERIES_1));
        gc.fillRectangle(left, middle - thick / 2, Math.max(1, x - left), thick);
        if (bar.hasInterval()) {
            interval(gc, bar, middle, left, width);
        }
        gc.setForeground(kit.color(Ink.INK));
        gc.drawText(bar.words(), left + kit.grid().steps(1), top + line + 1, true);
    }

    /** A line with an end, or with an arrow where it goes on beyond the scale; on its own ground so that it is seen on the bar. */
    private void interval(GC gc, Bar bar, int middle, int left, int width) {
        int unit = kit.grid().steps(1);
        int low = left + at(bar.low(), width);
        int high = left + at(bar.high(), width);
        boolean cut = bar.high() > bars.end();
        gc.setForeground(kit.color(Ink.PAPER));
        gc.setLineWidth(5);
        gc.drawLine(low, middle, high, middle);
        gc.setForeground(kit.color(Ink.OUT));
        gc.setBackground(kit.color(Ink.OUT));
        gc.setLineWidth(2);
        gc.drawLine(low, middle, high, middle);
        gc.drawLine(low, middle - unit, low, middle + unit);
        if (cut) {
            gc.fillPolygon(new int[] {high + unit, middle, high - unit, middle - unit, high - unit, middle + unit});
        } else {
            gc.drawLine(high, middle - unit, high, middle + unit);
        }
    }

    private int at(double value, int width) {
        return (int) Math.round(Math.min(1, value / bars.end()) * (width - kit.grid().steps(2)));
    }
}
