package org.flexwright.workbench.kit;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/**
 * The colours of all screens by name. Their values stand in the theme (light in plugin.xml, dark in the style sheet of the dark theme);
 * nothing else in the program names a colour.
 */
public final class Palette {

    /** Names of colours. Text on {@link #PAPER}, {@link #PANEL} or {@link #FIELD} in any of the text colours has a contrast of at least 4.5 : 1. */
    public enum Ink {
        /** Ground. */
        PAPER,
        /** Secondary ground. */
        PANEL,
        /** Ground of fields that are typed in. */
        FIELD,
        /** Hairlines; never text. */
        LINE,
        /** Text. */
        INK,
        /** Secondary text. */
        QUIET,
        /** Links and focus. */
        ACCENT,
        /** Target band; a ground for {@link #INK}. */
        BAND,
        /** Verdict in. */
        IN,
        /** Verdict above or below, failed part. */
        OUT,
        /** Verdict cannot tell. */
        UNSURE,
        /** Finding of level caution. */
        CAUTION,
        /** Finding of level stop, and refused input. */
        STOP,
        /** Series in plots, after Okabe and Ito (2008). */
        SERIES_1,
        /** Second series. */
        SERIES_2,
        /** Third series. */
        SERIES_3,
        /** Fourth series. */
        SERIES_4,
        /** Fifth series. */
        SERIES_5,
        /** Sixth series. */
        SERIES_6;

        /** Id of the colour definition in the theme. */
        public String id() {
            return "org.flexwright.workbench." + name().toLowerCase(Locale.ROOT).replace('_', '.');
        }
    }

    /** Steps of one hue. */
    public static final int SHADES = 5;
    /** From this step on words are in the colour of the ground. */
    private static final int DARK = 3;
    /** From the ground (0) over the accent (1) to the text (2). */
    private static final double[] WAY = {0.08, 0.26, 0.46, 0.92, 1.6};
    private static final List<Ink> SERIES = List.of(Ink.SERIES_1, Ink.SERIES_2, Ink.SERIES_3, Ink.SERIES_4, Ink.SERIES_5, Ink.SERIES_6);

    private final ColorRegistry registry;
    private final Display display;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final IPropertyChangeListener watcher = event -> colourChanged();
    private boolean announced;

    /**
     * Colours as a theme defines them.
     *
     * @param registry the theme's colours
     * @param display  the display whose thread hears of changes
     */
    public Palette(ColorRegistry registry, Display display) {
        this.registry = Objects.requireNonNull(registry, "registry");
        this.display = Objects.requireNonNull(display, "display");
        registry.addListener(watcher);
    }

    /** The colour of that name in the present theme. Throws IllegalStateException when the theme does not define it. */
    public Color get(Ink ink) {
        Color color = registry.get(ink.id());
        if (color == null) {
            throw new IllegalStateException("The theme defines no colour " + ink.id() + ".");
        }
        return color;
    }

    /** Colour name of the series with that index, from 0; after six they begin again and only marker and dash tell them apart. */
    public static Ink series(int index) {
        return SERIES.get(Math.floorMod(index, SERIES.size()));
    }

    /**
     * A step of one hue, from the ground over the accent towards the text, so that the steps differ in grey too. Words on the first three
     * steps are {@link Ink#INK}, on the others {@link Ink#PAPER}: see {@link #onShade}.
     *
     * @param step 0, nearest to the ground, to {@link #SHADES} - 1
     */
    public Color shade(int step) {
        return new Color(shade(get(Ink.PAPER).getRGB(), get(Ink.ACCENT).getRGB(), get(Ink.INK).getRGB(), step));
    }

    /** The same from the three colours themselves. */
    public static RGB shade(RGB paper, RGB accent, RGB ink, int step) {
        double way = WAY[step];
        return way <= 1 ? mix(paper, accent, way) : mix(accent, ink, way - 1);
    }

    /** The colour of words on a step; contrast at least 4.5 : 1 in both themes. */
    public static Ink onShade(int step) {
        return step < DARK ? Ink.INK : Ink.PAPER;
    }

    private static RGB mix(RGB one, RGB other, double share) {
        return new RGB(mix(one.red, other.red, share), mix(one.green, other.green, share), mix(one.blue, other.blue, share));
    }

    private static int mix(int one, int other, double share) {
        return (int) Math.round(one + (other - one) * share);
    }

    /** True when text is lighter than its ground. */
    public boolean dark() {
        return luminance(get(Ink.INK).getRGB()) > luminance(get(Ink.PAPER).getRGB());
    }

    /** Calls the listener on the display's thread, once, after a change of theme. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Ends the calls. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** Stops listening to the theme. */
    public void dispose() {
        registry.removeListener(watcher);
        listeners.clear();
    }

    private void colourChanged() {
        if (announced || display.isDisposed()) {
            return;
        }
        announced = true; // a theme sets its colours one by one: tell once, after the last
        display.asyncExec(() -> {
            announced = false;
            listeners.forEach(Runnable::run);
        });
    }

    /**
     * Contrast of two colours, 1 to 21: relative luminances as the Web Content Accessibility Guidelines 2.1 (W3C, 2018) define them.
     */
    public static double contrast(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(RGB rgb) {
        return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
