package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Resource;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * Sizes of the bench view. They follow the window and not the preference for the size of text: what is read from two metres fills the screen it is on,
 * and never falls below the smallest sizes that can be read or hit there. Fonts are in points, targets in pixels.
 */
final class BenchLook {

    /** The smallest window everything fits into. */
    static final int LEAST_WIDTH = 1024;
    /** Its height. */
    static final int LEAST_HEIGHT = 600;
    /** A gloved finger's width: 15 mm; common practice, no source. */
    private static final double TARGET_MM = 15;
    private static final double MM_AN_INCH = 25.4;
    /** 15 mm on a screen that says nothing of itself, 96 dots an inch. */
    private static final int LEAST_TARGET = 57;
    private static final double MOST = 3;

    /** Sizes of text, points in the smallest window. */
    enum Size {
        /** The smallest there is. */
        TEXT(24, SWT.NORMAL),
        /** Emphasis and taps. */
        STRONG(24, SWT.BOLD),
        /** What the screen is about. */
        TITLE(28, SWT.BOLD),
        /** What is being typed, and the main tap. */
        ENTRY(34, SWT.BOLD),
        /** A key figure. */
        FIGURE(60, SWT.BOLD);

        private final int points;
        private final int style;

        Size(int points, int style) {
            this.points = points;
            this.style = style;
        }
    }

    private final Kit kit;
    private final Display display;
    private final Map<Size, Font> fonts = new EnumMap<>(Size.class);
    private final Map<Size, Integer> lines = new EnumMap<>(Size.class);
    private double factor = 1;

    BenchLook(Display display, Kit kit) {
        this.display = display;
        this.kit = kit;
    }

    /** Takes the sizes for a window of that many pixels; true when they changed. */
    boolean fit(int width, int height) {
        double wanted = Math.clamp(Math.min((double) width / LEAST_WIDTH, (double) height / LEAST_HEIGHT), 1, MOST);
        if (Math.abs(wanted - factor) < 0.01) {
            return false;
        }
        factor = wanted;
        List<Font> old = new ArrayList<>(fonts.values());
        fonts.clear();
        lines.clear();
        display.asyncExec(() -> old.forEach(Resource::dispose)); // after everything was drawn with the new ones
        return true;
    }

    /** Lets the fonts go. */
    void dispose() {
        fonts.values().forEach(Resource::dispose);
        fonts.clear();
    }

    /** Colours by name. */
    Color color(Ink ink) {
        return kit.color(ink);
    }

    /** Text of that size; it is replaced when the window changes its size, so do not keep it. */
    Font font(Size size) {
        return fonts.computeIfAbsent(size, wanted -> {
            FontData base = display.getSystemFont().getFontData()[0];
            return new Font(display, new FontData(base.getName(), points(wanted), wanted.style));
        });
    }

    /** Points of that size now. */
    int points(Size size) {
        return (int) Math.floor(size.points * factor);
    }

    /** Height of a line of that size, pixels. */
    int line(Size size) {
        return lines.computeIfAbsent(size, wanted -> {
            GC gc = new GC(display);
            gc.setFont(font(wanted));
            int height = gc.getFontMetrics().getHeight();
            gc.dispose();
            return height;
        });
    }

    /** Least width and height of what is touched, pixels. */
    int target() {
        int inPixels = (int) Math.ceil(TARGET_MM / MM_AN_INCH * display.getDPI().x);
        return Math.max(Math.max(LEAST_TARGET, inPixels), px(LEAST_TARGET));
    }

    /** Pixels that grow with the window. */
    int px(double pixels) {
        return (int) Math.round(pixels * factor);
    }

    /** Between things that belong together. */
    int gap() {
        return px(8);
    }

    /** Keeps a control's ground and font as the look has them, through changes of theme and of the window's size. */
    void dress(Control control, Ink text, Ink ground, Size size) {
        kit.dress(control, text, ground, Role.BODY);
        kit.whenDressed(control, () -> control.setFont(font(size)));
    }

    /** Dresses and lays out everything below again. */
    void again(org.eclipse.swt.widgets.Composite root) {
        kit.redress(root);
    }
}
