package org.flexwright.workbench.kit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Resource;
import org.eclipse.swt.widgets.Display;

/** The fonts of all screens: the system's font in a few sizes, scaled by the maker's preference. */
public final class Type {

    /** Smallest scale, per cent. */
    public static final int SMALLEST = 80;
    /** Largest scale, per cent. */
    public static final int LARGEST = 200;

    /** Sizes of text relative to the system's. */
    public enum Role {
        /** Running text and fields. */
        BODY(1.0, SWT.NORMAL),
        /** Emphasis within running text. */
        STRONG(1.0, SWT.BOLD),
        /** Heads a page or a group. */
        HEADING(1.35, SWT.BOLD),
        /** A key figure. */
        FIGURE(1.8, SWT.NORMAL),
        /** Read from arm's length at the bench. */
        BENCH(3.0, SWT.NORMAL);

        private final double factor;
        private final int style;

        Role(double factor, int style) {
            this.factor = factor;
            this.style = style;
        }
    }

    private final Display display;
    private final FontData[] base;
    private final Map<Role, Font> fonts = new EnumMap<>(Role.class);
    private final Map<Role, Point> averages = new EnumMap<>(Role.class);
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private int percent;

    /**
     * Fonts from the display's system font.
     *
     * @param percent scale, 80 to 200; a value outside is taken to the nearer end
     */
    public Type(Display display, int percent) {
        this.display = display;
        this.base = display.getSystemFont().getFontData();
        this.percent = clamp(percent);
    }

    private static int clamp(int percent) {
        return Math.clamp(percent, SMALLEST, LARGEST);
    }

    /** The present scale, per cent. */
    public int percent() {
        return percent;
    }

    /** The font of that role; it is replaced when the scale changes, so do not keep it. */
    public Font font(Role role) {
        return fonts.computeIfAbsent(role, this::make);
    }

    private Font make(Role role) {
        FontData[] scaled = data(role);
        return new Font(display, scaled);
    }

    /** The description of a role's font, for registries that make their own. */
    public FontData[] data(Role role) {
        FontData[] scaled = new FontData[base.length];
        for (int i = 0; i < base.length; i++) {
            int height = (int) Math.round(base[i].getHeight() * role.factor * percent / 100.0);
            scaled[i] = new FontData(base[i].getName(), height, role.style);
            scaled[i].setLocale(base[i].getLocale());
        }
        return scaled;
    }

    /** Width that {@code count} average characters of that role take, in points. */
    public int chars(Role role, int count) {
        return average(role).x * count;
    }

    /** Height of a line of that role, in points. */
    public int lineHeight(Role role) {
        return average(role).y;
    }

    private Point average(Role role) {
        return averages.computeIfAbsent(role, r -> {
            GC gc = new GC(display);
            gc.setFont(font(r));
            Point size = new Point((int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth()), gc.getFontMetrics().getHeight());
            gc.dispose();
            return size;
        });
    }

    /** Changes the scale, re-applies fonts through the listeners, then lets the old fonts go. */
    public void setPercent(int wanted) {
        int next = clamp(wanted);
        if (next == percent) {
            return;
        }
        percent = next;
        List<Font> old = new ArrayList<>(fonts.values());
        fonts.clear();
        averages.clear();
        listeners.forEach(Runnable::run);
        old.forEach(Resource::dispose);
    }

    /** Calls the listener after a change of scale; it must re-apply every font it took from here. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Ends the calls. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** Lets the fonts go. */
    public void dispose() {
        listeners.clear();
        fonts.values().forEach(Resource::dispose);
        fonts.clear();
    }
}
