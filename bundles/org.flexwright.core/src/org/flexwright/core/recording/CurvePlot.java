package org.flexwright.core.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/**
 * Long curves over one pair of axes, drawn thinned.
 *
 * @param id          stable id within the recording kind
 * @param title       words for the tab
 * @param marksAcross whether the recording's marks lie on the horizontal axis
 * @param x           quantity across, without unit
 * @param xUnit       its unit
 * @param y           quantity up, without unit
 * @param yUnit       its unit
 * @param curves      what is drawn, in the order of the legend
 */
public record CurvePlot(String id, String title, boolean marksAcross, String x, String xUnit, String y, String yUnit, List<Curve> curves)
        implements RecordingPlot {
    public CurvePlot {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        curves = List.copyOf(curves);
    }

    /**
     * One curve: the rows {@code from} to before {@code to} of two arrays, which are neither copied nor to be changed.
     *
     * @param name words in the legend
     */
    public record Curve(String name, double[] x, double[] y, int from, int to) {
        public Curve {
            Objects.requireNonNull(name, "name");
            if (from < 0 || to < from || to > x.length || to > y.length) {
                throw new IllegalArgumentException("Rows " + from + " to " + to + " of " + x.length + " and " + y.length + ".");
            }
        }

        /** All rows. */
        public Curve(String name, double[] x, double[] y) {
            this(name, x, y, 0, x.length);
        }
    }

    @Override
    public PlotModel whole(int points) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Curve c : curves) {
            for (int i = c.from; i < c.to; i++) {
                low = Math.min(low, c.x[i]);
                high = Math.max(high, c.x[i]);
            }
        }
        List<Series> series = new ArrayList<>();
        for (Curve c : curves) {
            List<Point> drawn = new ArrayList<>();
            for (int row : Thinning.rows(c.y, c.from, c.to, Math.max(points, 2))) {
                drawn.add(Point.of(c.x[row], c.y[row]));
            }
            series.add(new Series(c.name, Style.LINE, drawn));
        }
        return model(low <= high ? Axis.over(x, xUnit, low, high) : Axis.over(x, xUnit, 0, 1), series);
    }

    @Override
    public PlotModel part(double from, double to, int points) {
        if (!(from < to)) {
            throw new IllegalArgumentException("A stretch from " + from + " to " + to + ".");
        }
        List<Series> series = new ArrayList<>();
        for (Curve c : curves) {
            series.add(new Series(c.name, Style.LINE, inside(c, from, to, Math.max(points, 2))));
        }
        Axis round = Axis.over(x, xUnit, from, to);
        return model(new Axis(round.title(), from, to, round.ticks().stream().filter(t -> t.value() >= from && t.value() <= to).toList()), series);
    }

    /** The rows inside; where the curve leaves or enters, it is cut at the edge. */
    private static List<Point> inside(Curve c, double from, double to, int points) {
        int first = c.from;
        while (first < c.to && !(c.x[first] >= from && c.x[first] <= to)) {
            first++;
        }
        int last = c.to - 1;
        while (last >= first && !(c.x[last] >= from && c.x[last] <= to)) {
            last--;
        }
        if (first > last) {
            return crossing(c, from, to);
        }
        List<Point> drawn = new ArrayList<>();
        int before = Math.max(c.from, first - 1);
        int end = Math.min(c.to, last + 2);
        int previous = -1;
        for (int row : Thinning.rows(c.y, before, end, points)) {
            if (previous >= 0) {
                cut(c, previous, row, from, to, drawn);
            }
            if (c.x[row] >= from && c.x[row] <= to) {
                drawn.add(Point.of(c.x[row], c.y[row]));
            }
            previous = row;
        }
        return drawn;
    }

    private static List<Point> crossing(Curve c, double from, double to) {
        List<Point> drawn = new ArrayList<>();
        for (int i = c.from + 1; i < c.to; i++) {
            cut(c, i - 1, i, from, to, drawn);
        }
        return drawn;
    }

    /** Adds the places where the piece between two rows crosses an edge. */
    private static void cut(Curve c, int a, int b, double from, double to, List<Point> drawn) {
        boolean up = c.x[a] <= c.x[b];
        for (double edge : up ? new double[] { from, to } : new double[] { to, from }) {
            if ((c.x[a] - edge) * (c.x[b] - edge) < 0) {
                double share = (edge - c.x[a]) / (c.x[b] - c.x[a]);
                drawn.add(Point.of(edge, c.y[a] + share * (c.y[b] - c.y[a])));
            }
        }
    }

    private PlotModel model(Axis across, List<Series> series) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Series s : series) {
            for (Point p : s.points()) {
                low = Math.min(low, p.y());
                high = Math.max(high, p.y());
            }
        }
        Axis upAxis = low <= high ? Axis.over(y, yUnit, low, high) : Axis.over(y, yUnit, 0, 1);
        return new PlotModel(title, across, upAxis, series, List.of(), List.of());
    }
}
