package org.flexwright.report;

import java.util.Locale;

/** A small writer of scalable drawings; every text is escaped, every number uses the decimal point. */
final class Svg {
    private final StringBuilder out = new StringBuilder();

    /** A drawing of that size in CSS pixels; {@code title} is read aloud. */
    Svg(double width, double height, String title) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"").append(n(width)).append("\" height=\"").append(n(height))
                .append("\" viewBox=\"0 0 ").append(n(width)).append(' ').append(n(height)).append("\"><title>").append(Html.escape(title))
                .append("</title>");
    }

    Svg rectangle(double x, double y, double width, double height, String style) {
        out.append("<rect x=\"").append(n(x)).append("\" y=\"").append(n(y)).append("\" width=\"").append(n(Math.max(0, width))).append("\" height=\"")
                .append(n(Math.max(0, height))).append("\" class=\"").append(style).append("\"/>");
        return this;
    }

    Svg line(double x1, double y1, double x2, double y2, String style) {
        out.append("<line x1=\"").append(n(x1)).append("\" y1=\"").append(n(y1)).append("\" x2=\"").append(n(x2)).append("\" y2=\"").append(n(y2))
                .append("\" class=\"").append(style).append("\"/>");
        return this;
    }

    Svg circle(double x, double y, double r, String style) {
        out.append("<circle cx=\"").append(n(x)).append("\" cy=\"").append(n(y)).append("\" r=\"").append(n(r)).append("\" class=\"").append(style)
                .append("\"/>");
        return this;
    }

    Svg diamond(double x, double y, double r, String style) {
        out.append("<path d=\"M").append(n(x - r)).append(' ').append(n(y)).append("L").append(n(x)).append(' ').append(n(y - r)).append("L").append(n(x
                + r)).append(' ').append(n(y)).append("L").append(n(x)).append(' ').append(n(y + r)).append("Z\" class=\"").append(style).append("\"/>");
        return this;
    }

    /** Text; anchor is start, middle or end. */
    Svg text(double x, double y, String text, String anchor, String style) {
        out.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y)).append("\" text-anchor=\"").append(anchor).append("\" class=\"").append(
                style).append("\">").append(Html.escape(text)).append("</text>");
        return this;
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    @Override
    public String toString() {
        return out + "</svg>";
    }
}
