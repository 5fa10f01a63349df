package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.view.TimeLine;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * The marks of a cup along one line of time, with the band in which the working time ends: hatched, so that it is seen without colour. A mark is a
 * triangle, a passed one a check; the next one has its words, the others as room allows.
 */
final class MarksBar extends BenchPart {

    /**
     * A moment on the line, in minutes from first contact.
     *
     * @param label  a word or two
     * @param low    earliest
     * @param likely most likely
     * @param high   latest
     * @param done   true when it is behind
     * @param ends   true when being late there spoils the work: the end of working time
     */
    record Moment(String label, double low, double likely, double high, boolean done, boolean ends) {
    }

    private static final double BEYOND = 1.12;

    private List<Moment> moments = List.of();
    private Double now;
    private double from;
    private double to = 1;

    MarksBar(Composite parent, BenchLook look) {
        super(parent, look, Ink.PAPER, Size.TEXT, "Marks", SWT.NO_FOCUS);
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    /**
     * Shows marks.
     *
     * @param shown   the marks
     * @param minutes time since contact; null before it
     * @param heard   the same in words
     */
    void show(List<Moment> shown, Double minutes, String heard) {
        moments = List.copyOf(shown);
        now = minutes;
        Kit.name(this, heard);
        scale();
        redraw();
    }

    /** From contact to a little beyond what comes next: a demould at 16 hours must not press the first ten minutes into a corner. */
    private void scale() {
        double at = now == null ? 0 : now;
        double next = moments.stream().filter(m -> !m.done && m.high > at).mapToDouble(Moment::high).min().orElse(at);
        double ends = moments.stream().filter(m -> m.ends && !m.done).mapToDouble(Moment::high).max().orElse(0);
        double far = Math.max(Math.max(next, ends), at);
        for (Moment m : moments) { // the next one or two that are not far beyond
            if (m.high > far && m.high < far * 1.6) {
                far = m.high;
            }
        }
        from = 0;
        to = Math.max(1, far * BEYOND);
    }

    private int x(double minutes) {
        int side = look().px(12);
        return side + (int) Math.round((getSize().x - 2 * side) * (Math.clamp(minutes, from, to) - from) / (to - from));
    }

    @Override
    List<Shown> shown() {
        List<Shown> shown = new ArrayList<>();
        placed().forEach(label -> shown.add(new Shown(label.words, Size.TEXT, label.ink, Ink.PAPER)));
        return shown;
    }

    @Override
    boolean whole() {
        return placed().stream().allMatch(label -> label.x >= 0 && label.x + label.width <= getSize().x) && getSize().y >= height();
    }

    private int height() {
        return look().px(34) + look().line(Size.TEXT);
    }

    private record Label(String words, int x, int width, Ink ink) {
    }

    /** Words below the line: the end of working time first, then what comes next, then the rest where room is left. */
    private List<Label> placed() {
        double at = now == null ? 0 : now;
        List<Moment> order = new ArrayList<>(moments.stream().filter(m -> m.low <= to).toList());
        order.sort(Comparator.comparing((Moment m) -> !m.ends).thenComparing(m -> m.done || m.high < at).thenComparing(Moment::likely));
        List<Label> placed = new ArrayList<>();
        for (Moment m : order) {
            String words = m.label + " " + TimeLine.clock(m.low) + (m.high > m.low ? "\u2013" + TimeLine.clock(m.high) : "");
            int width = extent(words, Size.TEXT, 0).x;
            int middle = (x(m.low) + x(m.high)) / 2;
            int x = Math.clamp(middle - width / 2, 0, Math.max(0, getSize().x - width));
            boolean free = width <= getSize().x && placed.stream().noneMatch(other -> x < other.x + other.width + look().px(14) && other.x < x + width + look().px(14));
            if (free) {
                placed.add(new Label(words, x, width, m.done ? Ink.QUIET : Ink.INK));
            }
        }
        return placed;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? look().px(400) : wHint, height());
    }

    @Override
    void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int top = look().px(12);
        int thick = look().px(14);
        Rectangle bar = new Rectangle(x(from), top, x(to) - x(from), thick);
        gc.setBackground(look().color(Ink.LINE));
        gc.fillRectangle(bar);
        if (now != null) {
            gc.setBackground(look().color(Ink.QUIET));
            gc.fillRectangle(bar.x, bar.y, x(now) - bar.x, bar.height);
        }
        for (Moment m : moments) {
            if (m.ends && m.low <= to) {
                band(gc, m, bar);
            }
        }
        for (Moment m : moments) {
            if (!m.ends && m.likely <= to) {
                mark(gc, m, bar);
            }
        }
        if (now != null) {
            hand(gc, bar);
        }
        gc.setFont(look().font(Size.TEXT));
        for (Label label : placed()) {
            gc.setForeground(look().color(label.ink));
            gc.drawText(label.words, label.x, look().px(34), true);
        }
    }

    private void band(GC gc, Moment m, Rectangle bar) {
        int x1 = x(m.low);
        int x2 = Math.max(x1 + look().px(4), x(m.high));
        int y = bar.y - look().px(6);
        int height = bar.height + look().px(12);
        gc.setBackground(look().color(Ink.BAND));
        gc.fillRectangle(x1, y, x2 - x1, height);
        gc.setClipping(x1, y, x2 - x1, height);
        gc.setForeground(look().color(Ink.OUT));
        gc.setLineWidth(look().px(3));
        for (int x = x1 - height; x < x2; x += look().px(10)) {
            gc.drawLine(x, y + height, x + height, y);
        }
        gc.setClipping((Rectangle) null);
        gc.drawRectangle(x1, y, x2 - x1, height);
    }

    private void mark(GC gc, Moment m, Rectangle bar) {
        int x = x(m.likely);
        int r = look().px(9);
        int below = bar.y + bar.height;
        gc.setLineWidth(look().px(4));
        if (m.done) {
            gc.setForeground(look().color(Ink.IN));
            gc.drawPolyline(new int[] {x - r, below - r, x - r / 4, below, x + r, below - r * 2});
        } else {
            gc.setBackground(look().color(Ink.ACCENT));
            gc.fillPolygon(new int[] {x, below - r, x - r, below + r, x + r, below + r});
        }
    }

    private void hand(GC gc, Rectangle bar) {
        int x = x(now);
        int r = look().px(8);
        gc.setBackground(look().color(Ink.INK));
        gc.fillPolygon(new int[] {x, bar.y + r, x - r, bar.y - r - look().px(2), x + r, bar.y - r - look().px(2)});
        gc.fillRectangle(x - look().px(1), bar.y, look().px(3), bar.height);
    }
}
