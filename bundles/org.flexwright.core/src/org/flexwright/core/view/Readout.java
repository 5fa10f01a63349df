package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/** What a plot says at a place across, in words: no finer than a screen shows it. */
public final class Readout {

    private static final int MOST_VALUES = 3;
    private static final int MOST_SERIES = 4;

    private Readout() {
    }

    /**
     * {@code Travel, mm: 3.21   Force, N: P1 0.79   P2 0.81}.
     *
     * @param stepX what one point of the screen is worth across, positive
     * @param stepY what one point of the screen is worth upwards, positive
     */
    public static String at(PlotModel plot, double x, double stepX, double stepY) {
        List<String> values = new ArrayList<>();
        for (Series series : plot.series()) {
            List<Double> crossed = series.style() == Style.LINE ? crossings(series.points(), x) : List.of();
            if (!crossed.isEmpty() && values.size() < MOST_SERIES) {
                String numbers = crossed.stream().limit(MOST_VALUES).map(y -> FieldText.rounded(y, stepY)).distinct().collect(Collectors.joining(" / "));
                values.add(plot.series().size() == 1 ? numbers : series.name() + " " + numbers);
            }
        }
        String place = plot.x().title() + ": " + FieldText.rounded(x, stepX);
        return values.isEmpty() ? place : place + "     " + plot.y().title() + ": " + String.join("   ", values);
    }

    private static List<Double> crossings(List<Point> points, double x) {
        List<Double> found = new ArrayList<>();
        for (int i = 1; i < points.size() && found.size() < MOST_VALUES; i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            boolean between = a.x() <= x && x < b.x() || b.x() <= x && x < a.x();
            if (between && Double.isFinite(a.y()) && Double.isFinite(b.y())) {
                found.add(a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
            }
        }
        return found;
    }
}
