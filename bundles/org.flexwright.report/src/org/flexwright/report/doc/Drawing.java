package org.flexwright.report.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A drawing of lines and words, the same on screen and paper.
 *
 * @param width  in CSS pixels (three quarters of a point)
 * @param height in CSS pixels
 * @param title  what it says, read aloud
 * @param marks  from back to front
 */
public record Drawing(double width, double height, String title, List<Mark> marks) implements Block {
    public Drawing {
        Objects.requireNonNull(title, "title");
        marks = List.copyOf(marks);
    }

    /** What a mark looks like. */
    public enum Style {
        /** Target band. */
        BAND("band", "#CFE5F3", null, 0, null),
        /** Interval of a mean. */
        INTERVAL("interval", null, "#1B2126", 1.4, null),
        /** A part. */
        DOT("dot", "#005A91", null, 0, null),
        /** A part of which only a bound is known. */
        BOUND("bound", null, "#005A91", 1.2, null),
        /** The reference part. */
        REFERENCE("reference", "#B33C00", null, 0, null),
        /** Axes and their marks. */
        AXIS("axis", null, "#59636C", 1, null),
        /** A level across a plot. */
        LEVEL("level", null, "#B33C00", 1, "5 3"),
        /** Words at marks. */
        LABEL("label", "#59636C", null, 11, null),
        /** Words at axes. */
        TITLE("title", "#1B2126", null, 12, null),
        /** First curve of a plot; the colours are those of Okabe and Ito (2008), each with a dash of its own. */
        CURVE_1("curve1", null, "#0072B2", 1.6, null),
        /** Second curve. */
        CURVE_2("curve2", null, "#D55E00", 1.6, "6 3"),
        /** Third curve. */
        CURVE_3("curve3", null, "#009E73", 1.6, "2 2"),
        /** Fourth curve. */
        CURVE_4("curve4", null, "#CC79A7", 1.6, "8 3 2 3"),
        /** Fifth curve. */
        CURVE_5("curve5", null, "#E69F00", 1.6, "8 2 2 2 2 2"),
        /** Sixth curve. */
        CURVE_6("curve6", null, "#56B4E9", 1.6, "10 4"),
        /** One hue, lightest step; also legible in grey, as are the others. */
        SHADE_1("shade1", "#EBF2F7", "#59636C", 1, null),
        /** Second step. */
        SHADE_2("shade2", "#B8D2E2", "#59636C", 1, null),
        /** Third step. */
        SHADE_3("shade3", "#80ADC8", "#59636C", 1, null),
        /** Fourth step. */
        SHADE_4("shade4", "#1A6B9C", "#59636C", 1, null),
        /** Darkest step. */
        SHADE_5("shade5", "#0D3A57", "#59636C", 1, null),
        /** Ground behind words that lie on a picture. */
        PAPER("paper", "#FFFFFF", null, 0, null),
        /** A spot without a value. */
        UNREAD("unread", "#FFFFFF", "#59636C", 1, "3 2"),
        /** Dark words on a shade. */
        VALUE("value", "#1B2126", null, 13, null),
        /** Light words on a shade. */
        VALUE_LIGHT("valuelight", "#FFFFFF", null, 13, null),
        /** Solid black. */
        INK("ink", "#000000", null, 0, null);

        private static final List<Style> CURVES = List.of(CURVE_1, CURVE_2, CURVE_3, CURVE_4, CURVE_5, CURVE_6);

        private final String css;
        private final String fill;
        private final String stroke;
        private final double size;
        private final String dash;

        Style(String css, String fill, String stroke, double size, String dash) {
            this.css = css;
            this.fill = fill;
            this.stroke = stroke;
            this.size = size;
            this.dash = dash;
        }

        /** The curve with that index, from 0; after six they begin again. */
        static Style curve(int index) {
            return CURVES.get(Math.floorMod(index, CURVES.size()));
        }

        /** Class name in HTML. */
        public String css() {
            return css;
        }

        /** Colour inside as {@code #RRGGBB}, or null. */
        public String fill() {
            return fill;
        }

        /** Colour of the line, or null. */
        public String stroke() {
            return stroke;
        }

        /** Width of the line, or size of the letters, in CSS pixels. */
        public double size() {
            return size;
        }

        /** Dash and gap, or null. */
        public String dash() {
            return dash;
        }

        /** All styles as a style sheet. */
        static String sheet() {
            StringBuilder css = new StringBuilder();
            for (Style style : values()) {
                css.append("svg .").append(style.css).append("{fill:").append(style.fill == null ? "none" : style.fill);
                if (style.stroke != null) {
                    css.append(";stroke:").append(style.stroke).append(";stroke-width:").append(style.size);
                }
                if (style.dash != null) {
                    css.append(";stroke-dasharray:").append(style.dash);
                }
                if (style.stroke == null && style.size > 0) {
                    css.append(";font:").append((int) style.size).append("px sans-serif");
                }
                css.append('}');
            }
            return css.toString();
        }
    }

    /** Where words hang. */
    public enum Anchor {
        /** They begin there. */
        START,
        /** Their middle is there. */
        MIDDLE,
        /** They end there. */
        END
    }

    /** A place. */
    public record Spot(double x, double y) {
    }

    /** One mark. */
    public sealed interface Mark {
        /** A block. */
        record Rectangle(double x, double y, double width, double height, Style style) implements Mark {
        }

        /** A line. */
        record Line(double x1, double y1, double x2, double y2, Style style) implements Mark {
        }

        /** A line through places, in order. */
        record Path(List<Spot> spots, Style style) implements Mark {
            public Path {
                spots = List.copyOf(spots);
            }
        }

        /** A circle. */
        record Circle(double x, double y, double r, Style style) implements Mark {
        }

        /** A square on its point. */
        record Diamond(double x, double y, double r, Style style) implements Mark {
        }

        /** A picture. */
        record Image(double x, double y, double width, double height, Picture picture) implements Mark {
            public Image {
                Objects.requireNonNull(picture, "picture");
            }
        }

        /** Words; their foot is at y. */
        record Text(double x, double y, String text, Anchor anchor, Style style) implements Mark {
        }
    }

    /** Gathers marks. */
    static final class Pen {
        private final List<Mark> marks = new ArrayList<>();

        Pen rectangle(double x, double y, double width, double height, Style style) {
            marks.add(new Mark.Rectangle(x, y, Math.max(0, width), Math.max(0, height), style));
            return this;
        }

        Pen line(double x1, double y1, double x2, double y2, Style style) {
            marks.add(new Mark.Line(x1, y1, x2, y2, style));
            return this;
        }

        Pen path(List<Spot> spots, Style style) {
            marks.add(new Mark.Path(spots, style));
            return this;
        }

        Pen circle(double x, double y, double r, Style style) {
            marks.add(new Mark.Circle(x, y, r, style));
            return this;
        }

        Pen image(double x, double y, double width, double height, Picture picture) {
            marks.add(new Mark.Image(x, y, width, height, picture));
            return this;
        }

        Pen diamond(double x, double y, double r, Style style) {
            marks.add(new Mark.Diamond(x, y, r, style));
            return this;
        }

        Pen text(double x, double y, String text, Anchor anchor, Style style) {
            marks.add(new Mark.Text(x, y, text, anchor, style));
            return this;
        }

        Drawing done(double width, double height, String title) {
            return new Drawing(width, height, title, marks);
        }
    }
}
