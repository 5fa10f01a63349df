package org.flexwright.report.pdf;

import java.util.List;

import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Picture;

/** One thing on paper. Points (1/72 inch) from the left and down from the top of what it belongs to. */
sealed interface Ink {
    /** The same, moved. */
    Ink moved(double dx, double dy);

    /** Words in one line; their foot is at y. */
    record Words(double x, double y, String text, double size, boolean bold, int colour) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Words(x + dx, y + dy, text, size, bold, colour);
        }
    }

    /** A rectangle; a negative colour is none. */
    record Box(double x, double y, double width, double height, int fill, int line, double thick) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Box(x + dx, y + dy, width, height, fill, line, thick);
        }
    }

    /** A line through places, with its dashes and gaps; none: solid. */
    record Path(List<Drawing.Spot> spots, int colour, double thick, List<Float> dashes) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Path(spots.stream().map(s -> new Drawing.Spot(s.x() + dx, s.y() + dy)).toList(), colour, thick, dashes);
        }
    }

    /** A line, dashed when {@code dash} is positive. */
    record Line(double x1, double y1, double x2, double y2, int colour, double thick, double dash) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, colour, thick, dash);
        }
    }

    /** A circle; a negative colour is none. */
    record Disc(double x, double y, double r, int fill, int line, double thick) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Disc(x + dx, y + dy, r, fill, line, thick);
        }
    }

    /** A square on its point. */
    record Diamond(double x, double y, double r, int fill) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Diamond(x + dx, y + dy, r, fill);
        }
    }

    /** A picture. */
    record Photo(double x, double y, double width, double height, Picture picture) implements Ink {
        @Override
        public Ink moved(double dx, double dy) {
            return new Photo(x + dx, y + dy, width, height, picture);
        }
    }
}
