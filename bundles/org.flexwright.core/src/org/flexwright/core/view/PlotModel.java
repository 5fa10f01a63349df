package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A plot without pixels: screens, reports and files draw it.
 *
 * @param title  what is shown, one line
 * @param x      axis across
 * @param y      axis up
 * @param series what is drawn, each with its own marker and dash by its place in the list
 * @param bands  blocks behind the series, such as the target
 * @param lines  lines across the plot, such as the reference
 */
public record PlotModel(String title, Axis x, Axis y, List<Series> series, List<Band> bands, List<Level> lines) {
    public PlotModel {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
        series = List.copyOf(series);
        bands = List.copyOf(bands);
        lines = List.copyOf(lines);
    }

    /** How a series is drawn. */
    public enum Style {
        /** Markers, with their intervals. */
        POINTS,
        /** A line through the points. */
        LINE
    }

    /**
     * One series.
     *
     * @param name   words in the legend
     * @param style  how it is drawn
     * @param points in order
     */
    public record Series(String name, Style style, List<Point> points) {
        public Series {
            Objects.requireNonNull(name, "name");
            points = List.copyOf(points);
        }
    }

    /**
     * One point.
     *
     * @param x     across
     * @param y     up
     * @param low   lower end of its interval; equal to {@code y} when it has none
     * @param high  upper end of its interval; equal to {@code y} when it has none
     * @param label words beside it or in its tooltip; may be empty
     */
    public record Point(double x, double y, double low, double high, String label) {
        /** A point without interval and words. */
        public static Point of(double x, double y) {
            return new Point(x, y, y, y, "");
        }
    }

    /**
     * A block over the whole width.
     *
     * @param low  lower edge; minus infinity when it is open below
     * @param high upper edge; infinity when it is open above
     * @param label words in the legend
     */
    public record Band(double low, double high, String label) {
    }

    /**
     * A line over the whole width.
     *
     * @param y     where
     * @param label words beside it
     */
    public record Level(double y, String label) {
    }

    /** All points as a table, for CSV and for reading aloud. */
    public TableModel table() {
        List<List<String>> rows = new ArrayList<>();
        for (Series s : series) {
            for (Point p : s.points()) {
                rows.add(List.of(s.name(), String.valueOf(p.x()), String.valueOf(p.y()), String.valueOf(p.low()), String.valueOf(p.high()), p.label()));
            }
        }
        return new TableModel(List.of(TableModel.Column.text("series"), TableModel.Column.number(x.title()), TableModel.Column.number(y.title()),
                TableModel.Column.number("low"), TableModel.Column.number("high"), TableModel.Column.text("label")), rows);
    }
}
