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
import org.flexwright.core.view.Lanes;
import org.flexwright.core.view.Lanes.Kind;
import org.flexwright.core.view.Lanes.Lane;
import org.flexwright.core.view.Tick;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** Every reading behind a verdict on one scale: the target as a block behind all, a lane for the reference, for each part, for the mean. */
public final class LanesPane extends Canvas {

    private static final double ROW = 1.9;
    private static final int WORDS_SHARE = 3;
    private static final int LABEL_SHARE = 8;

    private final Kit kit;
    private Lanes lanes;
    private Ink verdict = Ink.QUIET;

    /** An empty pane. */
    public LanesPane(Composite parent, Kit kit) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.kit = kit;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "Readings on one scale");
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addPaintListener(event -> {
            if (lanes != null) {
                paint(event.gc, getClientArea());
            }
        });
    }

    /**
     * Shows these.
     *
     * @param shown  null for none
     * @param colour of the mean: the verdict's
     */
    public void show(Lanes shown, Ink colour) {
        lanes = shown;
        verdict = colour;
        Kit.name(this, shown == null ? "Readings on one scale" : shown.title() + ". " + shown.lanes().stream().map(lane -> lane.label() + ": " + lane.words()).collect(Collectors.joining(
                "; ")));
        requestLayout();
        redraw();
    }

    private int row() {
        return (int) Math.round(kit.type().lineHeight(Role.BODY) * ROW);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = lanes == null ? 1 : lanes.lanes().size() * row() + 3 * kit.type().lineHeight(Role.BODY);
        return new Point(wHint == SWT.DEFAULT ? kit.type().chars(Role.BODY, 70) : wHint, hHint == SWT.DEFAULT ? height : hHint);
    }

    private void paint(GC gc, Rectangle area) {
        gc.setAntialias(SWT.ON);
        gc.setFont(kit.type().font(Role.BODY));
        int gap = kit.grid().gap();
        int labels = Math.max(area.width / LABEL_SHARE / 2, lanes.lanes().stream().mapToInt(lane -> gc.textExtent(lane.label()).x).max().orElse(0)) + gap;
        int words = Math.min(area.width / WORDS_SHARE, lanes.lanes().stream().mapToInt(lane -> gc.textExtent(lane.words()).x).max().orElse(0)) + gap;
        int width = Math.max(1, area.width - labels - words - gap);
        int bottom = lanes.lanes().size() * row();
        if (lanes.band() != null) {
            int low = at(lanes.band().low(), labels, width);
            int high = at(lanes.band().high(), labels, width);
            gc.setBackground(kit.color(Ink.BAND));
            gc.fillRectangle(low, 0, Math.max(2, high - low), bottom);
        }
        axis(gc, labels, width, bottom);
        for (int i = 0; i < lanes.lanes().size(); i++) {
            paint(gc, lanes.lanes().get(i), i * row() + row() / 2, labels, width);
        }
    }

    private void axis(GC gc, int left, int width, int top) {
        gc.setForeground(kit.color(Ink.QUIET));
        gc.setLineWidth(1);
        gc.drawLine(left, top, left + width, top);
        for (Tick tick : lanes.axis().ticks()) {
            int x = at(tick.value(), left, width);
            gc.drawLine(x, top, x, top + kit.grid().steps(1));
            gc.drawText(tick.label(), x - gc.textExtent(tick.label()).x / 2, top + kit.grid().steps(1) + 1, true);
        }
        gc.drawText(lanes.axis().title(), left, top + kit.grid().steps(2) + kit.type().lineHeight(Role.BODY), true);
    }

    private void paint(GC gc, Lane lane, int middle, int left, int width) {
        int unit = kit.grid().steps(1);
        Ink ink = lane.kind() == Kind.MEAN ? verdict : lane.kind() == Kind.ASIDE ? Ink.QUIET : Ink.INK;
        int half = gc.getFontMetrics().getHeight() / 2;
        gc.setForeground(kit.color(ink));
        gc.drawText(lane.label(), 0, middle - half, true);
        gc.drawText(lane.words(), left + width + kit.grid().gap(), middle - half, true);
        gc.setForeground(kit.color(Ink.LINE));
        gc.setLineWidth(1);
        gc.drawLine(left, middle, left + width, middle);
        gc.setForeground(kit.color(ink));
        gc.setBackground(kit.color(ink));
        gc.setLineWidth(2);
        if (lane.interval() != null) {
            int low = at(lane.interval().low(), left, width);
            int high = at(lane.interval().high(), left, width);
            gc.drawLine(low, middle, high, middle);
            gc.drawLine(low, middle - unit, low, middle + unit);
            gc.drawLine(high, middle - unit, high, middle + unit);
        }
        gc.setLineWidth(1);
        for (double reading : lane.readings()) {
            int x = at(reading, left, width);
            gc.drawLine(x, middle - 2 * unit, x, middle + 2 * unit);
        }
        if (!Double.isNaN(lane.value())) {
            value(gc, lane, at(lane.value(), left, width), middle, unit);
        }
    }

    private void value(GC gc, Lane lane, int x, int middle, int unit) {
        int r = unit + unit / 4;
        switch (lane.kind()) {
            case REFERENCE -> {
                int[] corners = {x, middle - r - 1, x + r + 1, middle, x, middle + r + 1, x - r - 1, middle};
                gc.setBackground(kit.color(Ink.PAPER));
                gc.fillPolygon(corners);
                gc.setLineWidth(2);
                gc.drawPolygon(corners);
            }
            case MEAN -> {
                gc.setLineWidth(3);
                gc.drawLine(x, middle - 2 * unit, x, middle + 2 * unit);
            }
            case PART -> gc.fillOval(x - r, middle - r, 2 * r, 2 * r);
            case ASIDE -> {
                gc.setLineWidth(2);
                gc.drawLine(x - r, middle - r, x + r, middle + r);
                gc.drawLine(x - r, middle + r, x + r, middle - r);
            }
        }
    }

    private int at(double value, int left, int width) {
        return left + (int) Math.round(lanes.scale().at(value) * width);
    }
}
