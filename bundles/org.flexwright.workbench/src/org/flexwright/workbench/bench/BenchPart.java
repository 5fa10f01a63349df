package org.flexwright.workbench.bench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Something painted in the bench view. It knows what it shows, how large and in which colours, so that it can be looked at by a test as by a reader. */
abstract class BenchPart extends Canvas {

    /**
     * Words as they stand on the screen.
     *
     * @param words  the words
     * @param size   their size
     * @param text   their colour
     * @param ground the colour behind them
     */
    record Shown(String words, Size size, Ink text, Ink ground) {
    }

    private final BenchLook look;

    BenchPart(Composite parent, BenchLook look, Ink ground, Size size, String name, int style) {
        super(parent, SWT.DOUBLE_BUFFERED | style);
        this.look = look;
        look.dress(this, Ink.INK, ground, size);
        Kit.name(this, name);
        addListener(SWT.Paint, event -> paint(event.gc));
    }

    /** Sizes and colours. */
    final BenchLook look() {
        return look;
    }

    /** What it shows now; empty when nothing. */
    abstract List<Shown> shown();

    /** True when all it shows has room. */
    abstract boolean whole();

    abstract void paint(GC gc);

    /** Words laid out in lines of at most that width; the caller lets it go. */
    final TextLayout lines(String words, Size size, int width, int alignment) {
        TextLayout layout = new TextLayout(getDisplay());
        layout.setFont(look.font(size));
        layout.setAlignment(alignment);
        layout.setText(words);
        if (width > 0) {
            layout.setWidth(width);
        }
        return layout;
    }

    /** Room that words take in lines of at most that width; 0 or less: on one line. */
    final Point extent(String words, Size size, int width) {
        if (words.isEmpty()) {
            return new Point(0, 0);
        }
        TextLayout layout = lines(words, size, width, SWT.LEFT);
        Rectangle bounds = layout.getBounds();
        int widest = 0;
        for (int i = 0; i < layout.getLineCount(); i++) {
            widest = Math.max(widest, layout.getLineBounds(i).width);
        }
        layout.dispose();
        return new Point(widest, bounds.height);
    }

    /** True when the longest word of these has room in that width and all lines in that height. */
    final boolean fits(String words, Size size, int width, int height) {
        for (String word : words.split("\\s+")) {
            if (extent(word, size, 0).x > width) {
                return false;
            }
        }
        return extent(words, size, width).y <= height;
    }
}
