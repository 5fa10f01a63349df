package org.flexwright.workbench.bench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleActionAdapter;
import org.eclipse.swt.accessibility.AccessibleActionEvent;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Something to touch: large, with a word, a shape where it helps, and a ground that tells how much depends on it. Space and Enter work too. */
final class Tap extends BenchPart {

    /** How much it stands out. */
    enum Weight {
        /** The next thing to do. */
        MAIN(Ink.PAPER, Ink.ACCENT, Ink.ACCENT, Size.ENTRY),
        /** Anything else. */
        PLAIN(Ink.INK, Ink.PANEL, Ink.LINE, Size.STRONG),
        /** Gives something up. */
        STOP(Ink.STOP, Ink.PAPER, Ink.STOP, Size.STRONG),
        /** A key of the number pad. */
        KEY(Ink.INK, Ink.PANEL, Ink.LINE, Size.ENTRY),
        /** The one of several that is chosen. */
        CHOSEN(Ink.INK, Ink.BAND, Ink.ACCENT, Size.STRONG);

        private final Ink text;
        private final Ink ground;
        private final Ink edge;
        private final Size size;

        Weight(Ink text, Ink ground, Ink edge, Size size) {
            this.text = text;
            this.ground = ground;
            this.edge = edge;
            this.size = size;
        }
    }

    /** A finger that trembles touches twice within this time, milliseconds; common practice, no source. */
    private static final int BOUNCE = 300;

    private final Runnable action;
    private Weight weight;
    private String words;
    private boolean pressed;
    private int lastTouch;

    Tap(Composite parent, BenchLook look, Weight weight, String words, Runnable action) {
        super(parent, look, Ink.PAPER, weight.size, words, SWT.NONE);
        this.weight = weight;
        this.words = words;
        this.action = action;
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PUSHBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = isEnabled() ? ACC.STATE_FOCUSABLE : ACC.STATE_DISABLED;
            }
        });
        getAccessible().addAccessibleActionListener(new AccessibleActionAdapter() {
            @Override
            public void getActionCount(AccessibleActionEvent event) {
                event.count = 1;
            }

            @Override
            public void doAction(AccessibleActionEvent event) {
                run();
                event.result = ACC.OK;
            }
        });
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseUp, this::up);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, Tap::traverse);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
    }

    /** Other words, for people who hear the screen too. */
    void show(String shown) {
        show(shown, shown);
    }

    /** Other words, and others again for people who hear the screen. */
    void show(String shown, String heard) {
        if (!shown.equals(words)) {
            words = shown;
            redraw();
        }
        Kit.name(this, heard);
    }

    /** Stands out more or less. */
    void weigh(Weight wanted) {
        if (wanted != weight) {
            weight = wanted;
            redraw();
        }
    }

    /** Can be touched, or is only there. */
    void allow(boolean allowed) {
        if (allowed != getEnabled()) {
            setEnabled(allowed);
            redraw();
        }
    }

    String words() {
        return words;
    }

    private void down(Event event) {
        if (event.button == 1) {
            pressed = true;
            redraw();
        }
    }

    private void up(Event event) {
        if (!pressed) {
            return;
        }
        pressed = false;
        redraw();
        boolean inside = inside(new Point(event.x, event.y)) || inside(toControl(getDisplay().getCursorLocation())); // an event made by a program has no place
        boolean bounced = weight != Weight.KEY && lastTouch != 0 && event.time - lastTouch >= 0 && event.time - lastTouch < BOUNCE;
        if (inside && !bounced) {
            lastTouch = event.time;
            run();
        }
    }

    private boolean inside(Point at) {
        return at.x >= 0 && at.y >= 0 && at.x < getSize().x && at.y < getSize().y;
    }

    private void key(Event event) {
        if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.keyCode == ' ') {
            event.doit = false;
            run();
        }
    }

    private static void traverse(Event event) {
        event.doit = event.detail != SWT.TRAVERSE_RETURN && event.detail != SWT.TRAVERSE_ESCAPE;
    }

    private void run() {
        if (isEnabled()) {
            action.run();
        }
    }

    /** The main tap and the keys take the largest size that has room. */
    private Size size() {
        boolean large = weight.size != Size.ENTRY || getSize().x == 0 || fits(words, Size.ENTRY, getSize().x - 2 * inset(), getSize().y);
        return large ? weight.size : Size.STRONG;
    }

    private int inset() {
        return look().px(weight == Weight.KEY ? 2 : 10);
    }

    @Override
    List<Shown> shown() {
        return words.isEmpty() ? List.of() : List.of(new Shown(words, size(), isEnabled() ? weight.text : Ink.QUIET, isEnabled() ? weight.ground : Ink.PAPER));
    }

    @Override
    boolean whole() {
        return fits(words, size(), getSize().x - 2 * inset(), getSize().y);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int least = look().target();
        int side = 2 * inset();
        Point extent = extent(words, weight.size, wHint == SWT.DEFAULT ? 0 : Math.max(1, wHint - side));
        return new Point(Math.max(least, wHint == SWT.DEFAULT ? extent.x + side : wHint), Math.max(least, hHint == SWT.DEFAULT ? extent.y + look().px(12) : hHint));
    }

    @Override
    void paint(GC gc) {
        Point size = getSize();
        boolean on = isEnabled();
        Ink ground = !on ? Ink.PAPER : pressed ? Ink.BAND : weight.ground;
        Ink text = !on ? Ink.QUIET : pressed ? Ink.INK : weight.text;
        int round = look().px(10);
        gc.setAntialias(SWT.ON);
        gc.setBackground(look().color(Ink.PAPER));
        gc.fillRectangle(0, 0, size.x, size.y);
        gc.setBackground(look().color(ground));
        gc.fillRoundRectangle(1, 1, size.x - 2, size.y - 2, round, round);
        gc.setForeground(look().color(on ? weight.edge : Ink.LINE));
        gc.setLineWidth(2);
        if (!on) {
            gc.setLineStyle(SWT.LINE_DASH);
        }
        gc.drawRoundRectangle(1, 1, size.x - 3, size.y - 3, round, round);
        gc.setLineStyle(SWT.LINE_SOLID);
        if (isFocusControl()) {
            gc.setForeground(look().color(text));
            gc.drawRoundRectangle(5, 5, size.x - 11, size.y - 11, round, round);
        }
        TextLayout layout = lines(words, size(), Math.max(1, size.x - 2 * inset()), SWT.CENTER);
        gc.setForeground(look().color(text));
        layout.draw(gc, inset(), (size.y - layout.getBounds().height) / 2);
        layout.dispose();
    }
}
