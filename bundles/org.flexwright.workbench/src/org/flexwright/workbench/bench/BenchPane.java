package org.flexwright.workbench.bench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * Where everything stands in the bench view, always at the same place: cups at the top, the clock with its marks below, then what to do, the number pad when a
 * number is asked for, at the right what is always there (undo, note, photo, odd), and at the foot what can be done.
 */
final class BenchPane {

    private static final int PAD_WIDTH = 252;
    private static final int TOOLS_WIDTH = 136;
    private static final int CLOCK_WIDTH = 224;

    private final BenchLook look;
    private final Composite root;
    private final Composite cupPlace;
    private final Words clock;
    private final Words alert;
    private final MarksBar marks;
    private final Composite storyPlace;
    private final Composite padPlace;
    private final Composite toolPlace;
    private final Composite footPlace;

    BenchPane(Composite parent, BenchLook look) {
        this.look = look;
        root = new Composite(parent, SWT.NONE);
        look.dress(root, Ink.INK, Ink.PAPER, Size.TEXT);
        Kit.name(root, "At the bench");
        root.setLayout(new Places());
        cupPlace = place();
        clock = new Words(root, look, "Time since first contact", Size.FIGURE, Ink.PAPER);
        alert = new Words(root, look, "Due next", Size.STRONG, Ink.PAPER);
        marks = new MarksBar(root, look);
        storyPlace = place();
        padPlace = place();
        padPlace.setVisible(false);
        toolPlace = place();
        footPlace = place();
    }

    private Composite place() {
        Composite place = new Composite(root, SWT.NONE);
        look.dress(place, Ink.INK, Ink.PAPER, Size.TEXT);
        place.setLayout(new FillLayout());
        return place;
    }

    Composite root() {
        return root;
    }

    Composite cups() {
        return cupPlace;
    }

    Words clock() {
        return clock;
    }

    Words alert() {
        return alert;
    }

    MarksBar marks() {
        return marks;
    }

    Composite story() {
        return storyPlace;
    }

    Composite pad() {
        return padPlace;
    }

    Composite tools() {
        return toolPlace;
    }

    Composite foot() {
        return footPlace;
    }

    /** Gives the room of the marks to a sentence while the clock has not started. */
    void waiting(boolean waits) {
        if (marks.getVisible() == waits) {
            marks.setVisible(!waits);
            root.layout(true, true);
        }
    }

    /** Makes room for a clock that has become longer. */
    void clockChanged() {
        if (clock.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > clock.getSize().x) {
            root.layout(true, true);
        }
    }

    /** Shows the number pad, or gives its room to the story. */
    void padShown(boolean shown) {
        if (padPlace.getVisible() != shown) {
            padPlace.setVisible(shown);
            root.layout(true, true);
        }
    }

    /** One fixed arrangement, in the sizes of the look. */
    private final class Places extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            return new Point(Math.max(wHint, BenchLook.LEAST_WIDTH), Math.max(hHint, BenchLook.LEAST_HEIGHT));
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle all = composite.getClientArea();
            int edge = look.px(6);
            int gap = look.gap();
            int width = all.width - 2 * edge;
            int y = edge;
            int strip = look.target();
            cupPlace.setBounds(edge, y, width, strip);
            y += strip + look.px(2);
            int bar = marks.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
            int row = Math.max(look.line(Size.FIGURE), look.line(Size.STRONG) + bar);
            int clockWidth = Math.max(look.px(CLOCK_WIDTH), clock.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + look.px(16));
            clock.setBounds(edge, y + (row - look.line(Size.FIGURE)) / 2, clockWidth, look.line(Size.FIGURE));
            alert.setBounds(edge + clockWidth, y, width - clockWidth, marks.getVisible() ? look.line(Size.STRONG) : row);
            marks.setBounds(edge + clockWidth, y + row - bar, width - clockWidth, bar);
            y += row + look.px(4);
            int foot = footPlace.getChildren().length == 0 ? strip : footPlace.getChildren()[0].computeSize(width, SWT.DEFAULT).y;
            int footTop = all.height - edge - foot;
            footPlace.setBounds(edge, footTop, width, foot);
            int height = footTop - gap - y;
            int tools = look.px(TOOLS_WIDTH);
            toolPlace.setBounds(edge + width - tools, y, tools, height);
            int pad = padPlace.getVisible() ? look.px(PAD_WIDTH) + 2 * gap : 0;
            padPlace.setBounds(edge + width - tools - gap - pad + gap, y, Math.max(0, pad - gap), height);
            storyPlace.setBounds(edge, y, width - tools - 2 * gap - pad, height);
        }
    }
}
