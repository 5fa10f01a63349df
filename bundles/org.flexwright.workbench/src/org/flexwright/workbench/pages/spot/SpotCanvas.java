package org.flexwright.workbench.pages.spot;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.SpotPlace;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * The photo or sketch with its spots. A click on free ground adds a spot, a drag moves one; with keys: Page Up and Down choose, arrows move,
 * Insert adds, Delete takes off.
 */
final class SpotCanvas extends Canvas {
    private static final double STEP = 0.01;
    private static final double LEAP = 0.05;
    private static final int LINES = 20;
    private static final int LEGEND_LINES = 3;

    /** What a person does to the spots. All calls on the screen's thread. */
    interface Hand {
        void choose(SpotPlace place);

        void add(double across, double down);

        void move(SpotPlace place, double across, double down);

        void remove(SpotPlace place);
    }

    private final Kit kit;
    private final Hand hand;
    private final boolean writable;
    private SpotSketch sketch = SpotSketch.all().getFirst();
    private Image photo;
    private List<SpotView.Dot> dots = List.of();
    private SpotView view;
    private SpotPlace chosen;
    private SpotPlace held;
    private double heldAcross;
    private double heldDown;

    SpotCanvas(Composite parent, Kit kit, boolean writable, Hand hand) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.kit = kit;
        this.hand = hand;
        this.writable = writable;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::drag);
        addListener(SWT.MouseUp, this::up);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS || event.detail == SWT.TRAVERSE_ESCAPE);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Dispose, event -> picture(null));
    }

    /** The outline under the spots. */
    void sketch(SpotSketch outline) {
        sketch = outline;
        redraw();
    }

    /** The photo under the spots; null: the sketch. */
    void picture(ImageData data) {
        if (photo != null) {
            photo.dispose();
            photo = null;
        }
        if (data != null) {
            photo = new Image(getDisplay(), data);
        }
        if (!isDisposed()) {
            redraw();
        }
    }

    /**
     * The spots.
     *
     * @param shown   what is drawn into them; null when nothing was read
     * @param all     the spots when there is no view
     * @param current the chosen one, or null
     */
    void show(SpotView shown, List<SpotView.Dot> all, SpotPlace current) {
        view = shown;
        dots = all;
        chosen = current;
        String words = dots.stream().map(SpotView.Dot::words).collect(Collectors.joining("; "));
        Kit.name(this, "Spot map" + (shown == null ? "" : " of " + shown.title()) + (words.isEmpty() ? ", no spots yet" : ": " + words));
        redraw();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int line = kit.type().lineHeight(Role.BODY);
        return new Point(wHint == SWT.DEFAULT ? kit.type().chars(Role.BODY, 60) : wHint, hHint == SWT.DEFAULT ? LINES * line : hHint);
    }

    /** Where the picture is drawn. */
    private Rectangle room() {
        Rectangle area = getClientArea();
        int edge = radius();
        int width = Math.max(1, area.width - 2 * edge);
        int height = Math.max(1, area.height - 2 * edge - LEGEND_LINES * kit.type().lineHeight(Role.BODY));
        double aspect = photo == null ? sketch.aspect() : (double) photo.getBounds().width / photo.getBounds().height;
        int wide = (int) Math.min(width, height * aspect);
        int high = (int) Math.min(height, wide / aspect);
        return new Rectangle(edge, edge, Math.max(1, wide), Math.max(1, high));
    }

    private int radius() {
        return kit.type().lineHeight(Role.BODY);
    }

    private Point at(SpotPlace place, Rectangle room) {
        double across = place == held ? heldAcross : share(place.getAcross());
        double down = place == held ? heldDown : share(place.getDown());
        return new Point((int) Math.round(room.x + across * room.width), (int) Math.round(room.y + down * room.height));
    }

    private static double share(Double value) {
        return value == null ? 0.5 : value;
    }

    private void paint(GC gc) {
        Rectangle room = room();
        gc.setAntialias(SWT.ON);
        if (photo == null) {
            gc.setForeground(kit.color(Ink.QUIET));
            gc.setLineWidth(1);
            for (List<double[]> line : sketch.lines()) {
                int[] points = new int[2 * line.size()];
                for (int i = 0; i < line.size(); i++) {
                    points[2 * i] = (int) Math.round(room.x + line.get(i)[0] * room.width);
                    points[2 * i + 1] = (int) Math.round(room.y + line.get(i)[1] * room.height);
                }
                gc.drawPolyline(points);
            }
        } else {
            Rectangle size = photo.getBounds();
            gc.drawImage(photo, 0, 0, size.width, size.height, room.x, room.y, room.width, room.height);
        }
        dots.forEach(dot -> name(gc, dot, at(dot.place(), room)));
        dots.forEach(dot -> dot(gc, dot, at(dot.place(), room)));
        if (view != null && !Double.isNaN(view.low())) {
            legend(gc, room);
        }
        if (isFocusControl()) {
            Rectangle area = getClientArea();
            gc.setForeground(kit.color(Ink.ACCENT));
            gc.setLineWidth(2);
            gc.drawRectangle(1, 1, area.width - 2, area.height - 2);
        }
    }

    private void dot(GC gc, SpotView.Dot dot, Point at) {
        int r = radius();
        gc.setBackground(dot.read() ? kit.palette().shade(dot.step()) : kit.color(Ink.PAPER));
        gc.fillOval(at.x - r, at.y - r, 2 * r, 2 * r);
        boolean current = dot.place() == chosen;
        gc.setForeground(kit.color(current ? Ink.ACCENT : Ink.QUIET));
        gc.setLineWidth(current ? 3 : 1);
        gc.setLineStyle(dot.read() ? SWT.LINE_SOLID : SWT.LINE_DASH);
        gc.drawOval(at.x - r, at.y - r, 2 * r, 2 * r);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        gc.setFont(kit.type().font(Role.STRONG));
        gc.setForeground(kit.color(dot.read() ? Palette.onShade(dot.step()) : Ink.INK));
        Point figure = gc.textExtent(dot.figure());
        gc.drawText(dot.figure(), at.x - figure.x / 2, at.y - figure.y / 2, true);
    }

    /** Names lie under all dots, so that none hides a value. */
    private void name(GC gc, SpotView.Dot dot, Point at) {
        gc.setFont(kit.type().font(Role.BODY));
        String name = dot.place().getSpot() == null ? "" : dot.place().getSpot();
        Point words = gc.textExtent(name);
        int x = Math.clamp(at.x - words.x / 2, 0, Math.max(0, getClientArea().width - words.x));
        gc.setBackground(kit.color(Ink.PAPER));
        gc.setForeground(kit.color(Ink.INK));
        gc.drawText(name, x, at.y + radius() + 2, false);
    }

    private void legend(GC gc, Rectangle room) {
        int line = kit.type().lineHeight(Role.BODY);
        int top = Math.min(room.y + room.height + radius() + line, getClientArea().height - 2 * line - 2);
        int wide = Math.min(kit.type().chars(Role.BODY, 8), Math.max(1, room.width / Palette.SHADES));
        gc.setFont(kit.type().font(Role.BODY));
        gc.setLineWidth(1);
        for (int step = 0; step < Palette.SHADES; step++) {
            gc.setBackground(kit.palette().shade(step));
            gc.fillRectangle(room.x + step * wide, top, wide, line * 2 / 3);
            gc.setForeground(kit.color(Ink.QUIET));
            gc.drawRectangle(room.x + step * wide, top, wide, line * 2 / 3);
        }
        gc.setForeground(kit.color(Ink.INK));
        for (int step = 0; step <= Palette.SHADES; step++) {
            String words = FieldText.rounded(view.from(step), (view.high() - view.low()) / Palette.SHADES);
            gc.drawText(words, Math.max(0, room.x + step * wide - gc.textExtent(words).x / 2), top + line * 2 / 3 + 2, true);
        }
        gc.drawText(view.property().kind().unit().display(), room.x + Palette.SHADES * wide + kit.grid().gap(), top - line / 6, true);
    }

    private SpotPlace hit(Event event) {
        Rectangle room = room();
        for (SpotView.Dot dot : dots.reversed()) {
            Point at = at(dot.place(), room);
            if (Math.hypot(event.x - at.x, event.y - at.y) <= radius()) {
                return dot.place();
            }
        }
        return null;
    }

    private void down(Event event) {
        setFocus();
        if (event.button != 1) {
            return;
        }
        SpotPlace place = hit(event);
        Rectangle room = room();
        if (place != null) {
            hand.choose(place);
            held = writable ? place : null;
            heldAcross = share(place.getAcross());
            heldDown = share(place.getDown());
        } else if (writable && room.contains(event.x, event.y)) {
            hand.add(thousandths(event.x - room.x, room.width), thousandths(event.y - room.y, room.height));
        }
    }

    /** A mouse tells no more than a thousandth of the picture. */
    private static double thousandths(int way, int size) {
        return Math.round(1000.0 * way / size) / 1000.0;
    }

    private void drag(Event event) {
        if (held != null) {
            Rectangle room = room();
            heldAcross = Math.clamp(thousandths(event.x - room.x, room.width), 0, 1);
            heldDown = Math.clamp(thousandths(event.y - room.y, room.height), 0, 1);
            redraw();
            return;
        }
        SpotPlace over = hit(event);
        setToolTipText(over == null ? null : dots.stream().filter(dot -> dot.place() == over).findFirst().map(SpotView.Dot::words).orElse(null));
    }

    private void up(Event event) {
        SpotPlace place = held;
        held = null;
        if (place != null && (Math.abs(heldAcross - share(place.getAcross())) > STEP / 2 || Math.abs(heldDown - share(place.getDown())) > STEP / 2)) {
            hand.move(place, heldAcross, heldDown);
        }
        redraw();
    }

    private void key(Event event) {
        double step = (event.stateMask & SWT.SHIFT) != 0 ? LEAP : STEP;
        switch (event.keyCode) {
            case SWT.PAGE_DOWN -> next(1);
            case SWT.PAGE_UP -> next(-1);
            case SWT.ARROW_LEFT -> nudge(-step, 0);
            case SWT.ARROW_RIGHT -> nudge(step, 0);
            case SWT.ARROW_UP -> nudge(0, -step);
            case SWT.ARROW_DOWN -> nudge(0, step);
            case SWT.INSERT -> {
                if (writable) {
                    hand.add(0.5, 0.5);
                }
            }
            case SWT.DEL -> {
                if (writable && chosen != null) {
                    hand.remove(chosen);
                }
            }
            default -> {
                // every other key is none of ours
            }
        }
    }

    private void next(int by) {
        if (!dots.isEmpty()) {
            List<SpotPlace> places = dots.stream().map(SpotView.Dot::place).toList();
            hand.choose(places.get(Math.floorMod(places.indexOf(chosen) + (chosen == null && by < 0 ? 0 : by), places.size())));
        }
    }

    private void nudge(double across, double down) {
        if (writable && chosen != null) {
            hand.move(chosen, share(chosen.getAcross()) + across, share(chosen.getDown()) + down);
        }
    }
}
