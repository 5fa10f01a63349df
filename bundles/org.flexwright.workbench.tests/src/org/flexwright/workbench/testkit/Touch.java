package org.flexwright.workbench.testkit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** A finger: real mouse events posted to the display at the middle of controls, and real keys. It counts its touches. */
public final class Touch {

    /** A person lifts a finger at least this long before the next touch, milliseconds. */
    private static final int LIFT = 15;

    private final Display display = Display.getCurrent();
    private int count;

    /** How often it has touched. */
    public int count() {
        return count;
    }

    /** Touches the middle of a control. */
    public void at(Control control) {
        if (!control.isVisible() || !control.isEnabled()) {
            throw new AssertionError("It cannot be touched: " + org.flexwright.workbench.kit.Kit.nameOf(control));
        }
        Point size = control.getSize();
        Point middle = control.toDisplay(size.x / 2, size.y / 2);
        post(event(SWT.MouseMove, middle));
        Ui.await("the finger is there", () -> display.getCursorLocation().equals(middle));
        pause(LIFT);
        post(event(SWT.MouseDown, middle));
        post(event(SWT.MouseUp, middle));
        pause(LIFT);
        count++;
    }

    /** Types a character with a keyboard, or with a balance that types like one, while that control has the focus; filters of the display hear it first. */
    public static void key(Control focus, char character) {
        Event down = new Event();
        down.keyCode = character == '\r' ? SWT.CR : character;
        down.character = character;
        down.doit = true;
        focus.notifyListeners(SWT.KeyDown, down);
    }

    private void post(Event event) {
        if (!display.post(event)) {
            throw new AssertionError("The display does not take events that are posted to it.");
        }
    }

    private static Event event(int type, Point at) {
        Event event = new Event();
        event.type = type;
        event.x = at.x;
        event.y = at.y;
        event.button = type == SWT.MouseMove ? 0 : 1;
        return event;
    }

    /** Handles events for that long. */
    public void pause(int milliseconds) {
        long end = System.nanoTime() + milliseconds * 1_000_000L;
        Ui.await("a short while", () -> System.nanoTime() > end);
    }
}
