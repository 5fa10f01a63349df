package org.flexwright.report.pdf;

import java.util.List;
import java.util.stream.Stream;

import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Drawing.Mark;
import org.flexwright.report.doc.Drawing.Style;

/** Drawings as lines on paper. */
final class Drawn {
    private Drawn() {
    }

    /** A drawing at a place, made smaller when it is wider than the room. */
    static List<Ink> inks(Drawing drawing, double x, double y, double room, Type type) {
        double scale = Math.min(Look.PIXEL, room / drawing.width());
        return drawing.marks().stream().flatMap(m -> Stream.of(ink(m, scale, type).moved(x, y))).toList();
    }

    private static Ink ink(Mark mark, double k, Type type) {
        return switch (mark) {
            case Mark.Rectangle r -> new Ink.Box(r.x() * k, r.y() * k, r.width() * k, r.height() * k, fill(r.style()), line(r.style()), r.style().size() * k);
            case Mark.Line l -> new Ink.Line(l.x1() * k, l.y1() * k, l.x2() * k, l.y2() * k, line(l.style()), l.style().size() * k, l.style().dash() == null ? 0 : 4 * k);
            case Mark.Path p -> new Ink.Path(p.spots().stream().map(s -> new Drawing.Spot(s.x() * k, s.y() * k)).toList(), line(p.style()), p.style().size() * k, dashes(p
                    .style(), k));
            case Mark.Circle c -> new Ink.Disc(c.x() * k, c.y() * k, c.r() * k, fill(c.style()), line(c.style()), c.style().size() * k);
            case Mark.Diamond d -> new Ink.Diamond(d.x() * k, d.y() * k, d.r() * k, fill(d.style()));
            case Mark.Image i -> new Ink.Photo(i.x() * k, i.y() * k, i.width() * k, i.height() * k, i.picture());
            case Mark.Text t -> words(t, k, type);
        };
    }

    private static Ink words(Mark.Text text, double k, Type type) {
        String line = String.join(" ", type.lines(text.text(), Double.MAX_VALUE, 1));
        double size = text.style().size() * k;
        double width = type.width(line, size);
        double x = text.x() * k - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        return new Ink.Words(x, text.y() * k, line, size, false, fill(text.style()));
    }

    private static List<Float> dashes(Style style, double k) {
        return style.dash() == null ? List.of() : Stream.of(style.dash().split(" ")).map(part -> (float) (Double.parseDouble(part) * k)).toList();
    }

    private static int fill(Style style) {
        return Look.colour(style.fill());
    }

    private static int line(Style style) {
        return Look.colour(style.stroke());
    }
}
