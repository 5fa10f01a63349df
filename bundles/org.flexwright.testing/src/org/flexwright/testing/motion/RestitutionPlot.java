package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Level;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.flexwright.core.view.Tick;
import org.flexwright.testing.motion.ImpactFinder.Impact;

/**
 * The coefficient of restitution of each bounce with its band; of a drop alone also the one fitted over all flights.
 *
 * @param drops by time
 */
record RestitutionPlot(List<BounceSeries> drops) implements RecordingPlot {
    private static final double COVERAGE = 2;
    private static final int MOST_TICKS = 30;
    /** Room that the drops take side by side. */
    private static final double BESIDE = 0.5;

    @Override
    public String id() {
        return "restitution";
    }

    @Override
    public String title() {
        return "Restitution of each bounce";
    }

    @Override
    public boolean marksAcross() {
        return false;
    }

    @Override
    public PlotModel whole(int points) {
        int longest = drops.stream().mapToInt(d -> d.impacts().size()).max().orElse(3);
        return drawn(across(1.5, longest - 0.5));
    }

    @Override
    public PlotModel part(double from, double to, int points) {
        return drawn(across(from, to));
    }

    /** The first impact has no coefficient of its own: the second is the first one here. */
    private static Axis across(double from, double to) {
        List<Tick> ticks = new ArrayList<>();
        for (int i = (int) Math.max(2, Math.ceil(from)); i <= to && ticks.size() < MOST_TICKS; i++) {
            ticks.add(new Tick(i, String.valueOf(i)));
        }
        return new Axis("Impact", from, to, ticks);
    }

    private PlotModel drawn(Axis across) {
        List<Series> series = new ArrayList<>();
        List<Level> levels = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int d = 0; d < drops.size(); d++) {
            double[] flights = drops.get(d).flights();
            List<Impact> impacts = drops.get(d).impacts();
            List<Point> list = new ArrayList<>();
            for (int i = 0; i + 1 < flights.length; i++) {
                double e = flights[i + 1] / flights[i];
                double half = COVERAGE * BouncingBall.restitutionUncertainty(flights[i], e, impacts.get(i).uncertainty(), impacts.get(i + 1).uncertainty(), impacts.get(i + 2).uncertainty());
                low = Math.min(low, e - half);
                high = Math.max(high, e + half);
                double x = i + 2 + BESIDE * (d - (drops.size() - 1) / 2.0) / drops.size();
                if (x >= across.min() && x <= across.max()) {
                    list.add(new Point(x, e, e - half, e + half, Rounded.text(e, "")));
                }
            }
            if (flights.length > 2 && drops.size() == 1) {
                levels.add(new Level(Math.exp(BounceResults.line(flights).slope()), "over all flights"));
            }
            series.add(new Series(drops.size() == 1 ? "each bounce" : "drop " + (d + 1), Style.POINTS, list));
        }
        return new PlotModel(title(), across, low <= high ? Axis.over("Coefficient of restitution", "", low, high) : Axis.over("Coefficient of restitution", "", 0, 1), series, List.of(),
                levels);
    }
}
