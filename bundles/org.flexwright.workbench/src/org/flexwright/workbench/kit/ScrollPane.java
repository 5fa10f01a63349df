package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A page that scrolls up and down, never sideways, and keeps the field in focus in sight. */
public final class ScrollPane extends Composite {

    /** A page that asks to be laid out again each time is not given more than this. */
    private static final int MOST_ROUNDS = 2;

    private final ScrolledComposite scroller;
    private final Composite body;
    private boolean reflowing;
    private boolean again;
    private int last = -1;

    /** A scrolling page whose body has that many columns. */
    public ScrollPane(Composite parent, Kit kit, int columns, Spacing spacing) {
        super(parent, SWT.NONE);
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        setLayout(new FillLayout());
        scroller = new ScrolledComposite(this, SWT.V_SCROLL);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        kit.dress(scroller, Ink.INK, Ink.PAPER, Role.BODY);
        body = kit.pane(scroller, columns, spacing);
        scroller.setContent(body);
        scroller.addListener(SWT.Resize, event -> resized());
        body.addListener(SWT.Resize, event -> resized());
        kit.whenDressed(this, this::reflow);
        Listener follow = this::follow;
        Listener wheel = this::wheel;
        getDisplay().addFilter(SWT.FocusIn, follow);
        getDisplay().addFilter(SWT.MouseVerticalWheel, wheel);
        addListener(SWT.Dispose, event -> {
            event.display.removeFilter(SWT.FocusIn, follow);
            event.display.removeFilter(SWT.MouseVerticalWheel, wheel);
        });
    }

    /** Where the page's controls go. */
    public Composite body() {
        return body;
    }

    /** Scrolls to where the page begins. */
    public void top() {
        scroller.setOrigin(0, 0);
    }

    /** Scrolls until a control of the page is in sight. */
    public void reveal(Control control) {
        scroller.showControl(control);
    }

    /** Computes the height again; call it after adding, hiding or lengthening something. */
    public void reflow() {
        reflow(true);
    }

    /**
     * @param changed whether what is on the page may have changed; otherwise sizes known before are used
     */
    private void reflow(boolean changed) {
        if (reflowing) {
            again |= changed; // a form on the page folded while it was laid out
            return;
        }
        reflowing = true;
        try {
            int rounds = 0;
            boolean anew = changed;
            do {
                again = false;
                lay(anew);
                anew = true;
            } while (again && ++rounds < MOST_ROUNDS);
        } finally {
            reflowing = false;
        }
    }

    private void lay(boolean anew) {
        if (scroller.isDisposed()) {
            return;
        }
        int width = scroller.getClientArea().width;
        int height = body.computeSize(width, SWT.DEFAULT, anew).y;
        if (height != scroller.getMinHeight()) {
            scroller.setMinHeight(height);
            int narrowed = scroller.getClientArea().width;
            if (narrowed != width) { // the scroll bar came or went
                scroller.setMinHeight(body.computeSize(narrowed, SWT.DEFAULT, false).y);
            }
        }
        body.layout(false, true); // with the sizes just computed
        last = scroller.getClientArea().width;
        scroller.getVerticalBar().setIncrement(24);
        scroller.getVerticalBar().setPageIncrement(Math.max(24, scroller.getClientArea().height - 24));
    }

    /** Blocks may fold differently at another width. */
    private void resized() {
        if (!scroller.isDisposed()) {
            reflow(scroller.getClientArea().width != last);
        }
    }

    /** The height that a page asks for is known already, and whoever holds a scrolling page lays out without measuring it anew. */
    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return super.computeSize(wHint, hHint, false);
    }

    /** Computes the height of the scrolling page around a control again, or lays its parent out when there is none. */
    public static void reflowAround(Control control) {
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane pane) {
                pane.reflow();
                return;
            }
        }
        control.requestLayout();
    }

    /** Scrolls the page around a control until that is in sight; without such a page nothing happens. */
    public static void revealAround(Control control) {
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane pane) {
                pane.reveal(control);
                return;
            }
        }
    }

    /**
     * GTK gives the wheel over a page that was opened later to the window around it, until the window is resized: so the page turns it
     * itself when it hears of it that way. A wheel that reaches something on the page is left to the system.
     */
    private void wheel(Event event) {
        if (event.widget instanceof Composite around && around != this && holds(around) && scroller.isVisible()
                && scroller.getClientArea().contains(event.display.map(null, scroller, event.display.getCursorLocation()))) {
            scroller.setOrigin(0, scroller.getOrigin().y - event.count * scroller.getVerticalBar().getIncrement());
            event.doit = false;
        }
    }

    private boolean holds(Composite around) {
        for (Composite up = getParent(); up != null; up = up.getParent()) {
            if (up == around) {
                return true;
            }
        }
        return false;
    }

    private void follow(Event event) {
        if (event.widget instanceof Control control && within(control)) {
            Rectangle at = event.display.map(control.getParent(), body, control.getBounds());
            if (at.height < scroller.getClientArea().height) {
                scroller.showControl(control);
            }
        }
    }

    private boolean within(Control control) {
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up == body) {
                return true;
            }
        }
        return false;
    }
}
