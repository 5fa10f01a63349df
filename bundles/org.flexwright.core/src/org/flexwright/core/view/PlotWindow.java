package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/** A plot cut off at the edges of what is looked at. */
public final class PlotWindow {

    private static final int MOST_TICKS = 9;

    private PlotWindow() {
    }

    /**
     * What of a plot lies in a window; lines are cut at its edges and may fall into pieces, which keep their name.
     *
     * @param left  where it begins across
     * @param right where it ends across, above {@code left}
     * @param low   where it begins upwards
     * @param high  where it ends upwards, above {@code low}
     */
    public static PlotModel cut(PlotModel plot, double left, double right, double low, double high) {
        List<Series> kept = new ArrayList<>();
        for (Series series : plot.series()) {
            if (series.style() == Style.POINTS) {
                kept.add(new Series(series.name(), series.style(), series.points().stream().filter(p -> p.x() >= left && p.x() <= right && p.y() >= low
                        && p.y() <= high).toList()));
            } else {
                pieces(series, left, right, low, high).forEach(points -> kept.add(new Series(series.name(), Style.LINE, points)));
            }
        }
        return new PlotModel(plot.title(), axis(plot.x(), left, right), axis(plot.y(), low, high), kept, plot.bands(), plot.lines());
    }

    private static Axis axis(Axis whole, double from, double to) {
        return from == whole.min() && to == whole.max() ? whole : new Axis(whole.title(), from, to, Ticks.of(from, to, MOST_TICKS));
    }

    private static List<List<Point>> pieces(Series series, double left, double right, double low, double high) {
        List<List<Point>> pieces = new ArrayList<>();
        List<Point> piece = new ArrayList<>();
        List<Point> points = series.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double[] part = inside(a, b, left, right, low, high);
            if (part == null) {
                finish(piece, pieces);
                piece = new ArrayList<>();
                continue;
            }
            if (piece.isEmpty()) {
                piece.add(part[0] == 0 ? a : between(a, b, part[0]));
            }
            piece.add(part[1] == 1 ? b : between(a, b, part[1]));
            if (part[1] < 1) {
                finish(piece, pieces);
                piece = new ArrayList<>();
            }
        }
        finish(piece, pieces);
        return pieces;
    }

    private static void finish(List<Point> piece, List<List<Point>> pieces) {
        if (piece.size() > 1) {
            pieces.add(piece);
        }
    }

    private static Point between(Point a, Point b, double at) {
        return Point.of(a.x() + at * (b.x() - a.x()), a.y() + at * (b.y() - a.y()));
    }

    /** Which part of the way from a to b lies inside, as two shares of it; null when none does. */
    private static double[] inside(Point a, Point b, double left, double right, double low, double high) {
        double[] part = {0, 1};
        boolean some = side(b.x() - a.x(), left - a.x(), right - a.x(), part) && side(b.y() - a.y(), low - a.y(), high - a.y(), part);
        return some && part[0] <= part[1] ? part : null;
    }

    private static boolean side(double way, double least, double most, double[] part) {
        if (!Double.isFinite(way)) {
            return false;
        }
        if (way == 0) {
            return least <= 0 && most >= 0;
        }
        double enters = (way > 0 ? least : most) / way;
        double leaves = (way > 0 ? most : least) / way;
        part[0] = Math.max(part[0], enters);
        part[1] = Math.min(part[1], leaves);
        return true;
    }
}
