package org.flexwright.report.doc;

import java.util.Base64;
import java.util.Locale;

/** A drawing as SVG; every text is escaped, every number uses the decimal point. */
public final class Svg {
    private static final String STYLE = "<style>" + Drawing.Style.sheet() + "</style><rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>";
    private final StringBuilder out = new StringBuilder();

    private Svg(Drawing drawing, String style) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"").append(n(drawing.width())).append("\" height=\"").append(n(drawing.height()))
                .append("\" viewBox=\"0 0 ").append(n(drawing.width())).append(' ').append(n(drawing.height())).append("\"><title>").append(Html.escape(drawing
                        .title())).append("</title>").append(style);
        drawing.marks().forEach(this::mark);
        out.append("</svg>");
    }

    /** The drawing for a page that has the styles. */
    static String inline(Drawing drawing) {
        return new Svg(drawing, "").out.toString();
    }

    /** The drawing as a file that needs no style from elsewhere. */
    public static String file(Drawing drawing) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + new Svg(drawing, STYLE).out + "\n";
    }

    private void mark(Drawing.Mark mark) {
        switch (mark) {
            case Drawing.Mark.Rectangle r -> open("rect", r.style()).number("x", r.x()).number("y", r.y()).number("width", r.width()).number("height", r.height())
                    .end();
            case Drawing.Mark.Line l -> open("line", l.style()).number("x1", l.x1()).number("y1", l.y1()).number("x2", l.x2()).number("y2", l.y2()).end();
            case Drawing.Mark.Path p -> {
                open("polyline", p.style());
                out.append(" points=\"");
                p.spots().forEach(spot -> out.append(n(spot.x())).append(',').append(n(spot.y())).append(' '));
                out.append('"');
                end();
            }
            case Drawing.Mark.Circle c -> open("circle", c.style()).number("cx", c.x()).number("cy", c.y()).number("r", c.r()).end();
            case Drawing.Mark.Diamond d -> {
                open("path", d.style());
                out.append(" d=\"M").append(n(d.x() - d.r())).append(' ').append(n(d.y())).append('L').append(n(d.x())).append(' ').append(n(d.y() - d.r())).append(
                        'L').append(n(d.x() + d.r())).append(' ').append(n(d.y())).append('L').append(n(d.x())).append(' ').append(n(d.y() + d.r())).append("Z\"");
                end();
            }
            case Drawing.Mark.Image i -> out.append("<image x=\"").append(n(i.x())).append("\" y=\"").append(n(i.y())).append("\" width=\"").append(n(i.width())).append("\" height=\"")
                    .append(n(i.height())).append("\" preserveAspectRatio=\"none\" href=\"data:").append(i.picture().type()).append(";base64,").append(Base64.getEncoder().encodeToString(i
                            .picture().bytes())).append("\"/>");
            case Drawing.Mark.Text t -> {
                open("text", t.style()).number("x", t.x()).number("y", t.y());
                out.append(" text-anchor=\"").append(t.anchor().name().toLowerCase(Locale.ROOT)).append("\">").append(Html.escape(t.text())).append("</text>");
            }
        }
    }

    private Svg open(String tag, Drawing.Style style) {
        out.append('<').append(tag).append(" class=\"").append(style.css()).append('"');
        return this;
    }

    private Svg number(String name, double value) {
        out.append(' ').append(name).append("=\"").append(n(value)).append('"');
        return this;
    }

    private void end() {
        out.append("/>");
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
