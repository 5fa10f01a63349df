package org.flexwright.workbench.bench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Words that wrap to the width there is. */
final class Words extends BenchPart {

    private final Size size;
    private final Ink ground;
    private final String role;
    private String words = "";
    private Ink ink = Ink.INK;

    /**
     * Empty words.
     *
     * @param role what they are, for people who hear the screen
     */
    Words(Composite parent, BenchLook look, String role, Size size, Ink ground) {
        super(parent, look, ground, size, role, SWT.NO_FOCUS);
        this.size = size;
        this.ground = ground;
        this.role = role;
    }

    /** Other words; the caller lays out again when their length may have changed the height. */
    void show(String shown, Ink colour) {
        if (!shown.equals(words) || colour != ink) {
            words = shown;
            ink = colour;
            Kit.name(this, shown.isEmpty() ? role : role + ": " + shown);
            redraw();
        }
    }

    String words() {
        return words;
    }

    @Override
    List<Shown> shown() {
        return words.isEmpty() ? List.of() : List.of(new Shown(words, size, ink, ground));
    }

    @Override
    boolean whole() {
        return words.isEmpty() || fits(words, size, getSize().x, getSize().y);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        Point extent = extent(words, size, wHint == SWT.DEFAULT ? 0 : Math.max(1, wHint));
        return new Point(wHint == SWT.DEFAULT ? extent.x : wHint, hHint == SWT.DEFAULT ? extent.y : hHint);
    }

    @Override
    void paint(GC gc) {
        if (words.isEmpty()) {
            return;
        }
        TextLayout layout = lines(words, size, Math.max(1, getSize().x), SWT.LEFT);
        gc.setForeground(look().color(ink));
        layout.draw(gc, 0, 0);
        layout.dispose();
    }
}
