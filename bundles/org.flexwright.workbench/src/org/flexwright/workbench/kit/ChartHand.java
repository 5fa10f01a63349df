package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** Mouse and keys on the plot of a chart: zoom, shift, marks. */
final class ChartHand {

    private static final double STEP = 1.25;
    private static final double SHIFT = 0.15;
    private static final int NEAR = 6;
    private static final int JUMP = 10;
    /** A pull over less than this, in points, along one axis leaves that axis as it is. */
    private static final int PULL = 12;

    private final ChartPane pane;
    private final Control area;
    private Point pressed;
    private Point now;
    private boolean shifting;
    private String held = "";

    ChartHand(ChartPane pane, Control area) {
        this.pane = pane;
        this.area = area;
        area.addListener(SWT.MouseVerticalWheel, this::wheel);
        area.addListener(SWT.MouseDown, this::down);
        area.addListener(SWT.MouseMove, this::move);
        area.addListener(SWT.MouseUp, this::up);
        area.addListener(SWT.MouseExit, event -> pane.pointed(null));
        area.addListener(SWT.MouseDoubleClick, event -> pane.whole());
        area.addListener(SWT.KeyDown, this::key);
        area.addListener(SWT.Traverse, event -> event.doit = switch (event.detail) {
            case SWT.TRAVERSE_ARROW_NEXT, SWT.TRAVERSE_ARROW_PREVIOUS, SWT.TRAVERSE_RETURN, SWT.TRAVERSE_ESCAPE, SWT.TRAVERSE_PAGE_NEXT, SWT.TRAVERSE_PAGE_PREVIOUS -> false;
            default -> true;
        });
        area.addListener(SWT.FocusIn, event -> area.redraw());
        area.addListener(SWT.FocusOut, event -> {
            pane.letGo();
            area.redraw();
        });
    }

    /** The rectangle that is being pulled up, or null. */
    Rectangle pulled() {
        if (pressed == null || now == null || shifting || !held.isEmpty()) {
            return null;
        }
        boolean across = Math.abs(now.x - pressed.x) >= PULL;
        boolean up = Math.abs(now.y - pressed.y) >= PULL;
        if (!across && !up) {
            return null;
        }
        Point size = area.getSize();
        int x = across ? Math.min(now.x, pressed.x) : 0;
        int y = up ? Math.min(now.y, pressed.y) : 0;
        return new Rectangle(x, y, across ? Math.abs(now.x - pressed.x) : size.x, up ? Math.abs(now.y - pressed.y) : size.y);
    }

    /** On a page that scrolls, the wheel is the page's until the plot has the focus. */
    private boolean wheelIsOurs() {
        for (Composite up = area.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane) {
                return area.isFocusControl();
            }
        }
        return true;
    }

    private void wheel(Event event) {
        if (!pane.explored() || !wheelIsOurs()) {
            return;
        }
        event.doit = false;
        double factor = Math.pow(STEP, Math.signum(event.count));
        if ((event.stateMask & SWT.MOD2) != 0) {
            pane.shift(-Math.signum(event.count) * SHIFT, 0);
        } else if ((event.stateMask & SWT.MOD1) != 0) {
            pane.zoomUp(factor, event.y);
        } else {
            pane.zoomAcross(factor, event.x);
        }
    }

    private void down(Event event) {
        if (!pane.explored()) {
            return;
        }
        area.setFocus();
        ChartMark mark = event.button == 1 ? pane.markNear(event.x, NEAR) : null;
        held = mark != null && mark.movable() ? mark.name() : "";
        pane.choose(mark == null ? "" : mark.name());
        shifting = event.button == 2 || (event.stateMask & SWT.MOD2) != 0;
        pressed = event.button == 1 || event.button == 2 ? new Point(event.x, event.y) : null;
        now = null;
    }

    private void move(Event event) {
        if (!pane.explored()) {
            return;
        }
        Point at = new Point(event.x, event.y);
        if (pressed == null) {
            ChartMark mark = pane.markNear(event.x, NEAR);
            area.setCursor(mark != null && mark.movable() ? area.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE) : null);
            pane.pointed(at);
            return;
        }
        if (!held.isEmpty()) {
            if (now != null || Math.abs(at.x - pressed.x) > 2) { // a click is no move
                pane.carry(held, at.x);
                now = at;
            }
        } else if (shifting) {
            Point from = now == null ? pressed : now;
            Point size = area.getSize();
            pane.shift((from.x - at.x) / (double) Math.max(1, size.x), (at.y - from.y) / (double) Math.max(1, size.y));
            now = at;
        } else {
            now = at;
            area.redraw();
        }
    }

    private void up(Event event) {
        Rectangle frame = pulled();
        String carried = held;
        boolean moved = now != null;
        pressed = null;
        now = null;
        held = "";
        if (!carried.isEmpty()) {
            if (moved) {
                pane.putDown(carried);
            }
        } else if (frame != null) {
            pane.zoomTo(frame);
        }
        area.redraw();
    }

    private void key(Event event) {
        if (!pane.explored()) {
            return;
        }
        boolean far = (event.stateMask & SWT.MOD2) != 0;
        boolean carrying = pane.chosenMovable();
        Point size = area.getSize();
        switch (event.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_RIGHT -> {
                int way = event.keyCode == SWT.ARROW_LEFT ? -1 : 1;
                if (carrying) {
                    pane.nudge(way * (far ? JUMP : 1));
                } else {
                    pane.shift(way * SHIFT, 0);
                }
            }
            case SWT.ARROW_UP -> pane.shift(0, SHIFT);
            case SWT.ARROW_DOWN -> pane.shift(0, -SHIFT);
            case SWT.PAGE_DOWN -> pane.chooseNext(1);
            case SWT.PAGE_UP -> pane.chooseNext(-1);
            case SWT.HOME -> pane.whole();
            case SWT.CR, SWT.KEYPAD_CR -> pane.settleCarried();
            case SWT.ESC -> escape();
            default -> {
                switch (event.character) {
                    case '+', '=' -> pane.zoomAcross(STEP, pane.middle());
                    case '-' -> pane.zoomAcross(1 / STEP, pane.middle());
                    case '*' -> pane.zoomUp(STEP, size.y / 2);
                    case '/' -> pane.zoomUp(1 / STEP, size.y / 2);
                    case '0' -> pane.whole();
                    default -> {
                        return;
                    }
                }
            }
        }
        event.doit = false;
    }

    private void escape() {
        if (pressed != null) {
            pressed = null;
            now = null;
            held = "";
        }
        pane.dropCarried();
        area.redraw();
    }
}
