package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.flexwright.core.Figures;
import org.flexwright.core.recording.CurvePlot;
import org.flexwright.core.recording.CurvePlot.Curve;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.Tick;

/**
 * Curves over decades: the horizontal axis is the logarithm to base ten, its marks are written as the numbers themselves.
 *
 * @param plot curves over the logarithm
 */
record DecadePlot(CurvePlot plot) implements RecordingPlot {
    private static final int BINS = 500;
    private static final double[] INSIDE = {1, 2, 5};
    private static final int FEW = 4;

    /** A curve of values over numbers above 0; of each five-hundredth of its decades the lowest and the highest stay. */
    static Curve curve(String name, double[] numbers, double[] values) {
        double low = Arrays.stream(numbers).filter(x -> x > 0).map(Math::log10).min().orElse(0);
        double high = Arrays.stream(numbers).filter(x -> x > 0).map(Math::log10).max().orElse(1);
        int[] least = new int[BINS];
        int[] most = new int[BINS];
        Arrays.fill(least, -1);
        Arrays.fill(most, -1);
        for (int i = 0; i < numbers.length; i++) {
            if (numbers[i] > 0) {
                int bin = high > low ? (int) Math.min(BINS - 1, BINS * (Math.log10(numbers[i]) - low) / (high - low)) : 0;
                least[bin] = least[bin] < 0 || values[i] < values[least[bin]] ? i : least[bin];
                most[bin] = most[bin] < 0 || values[i] > values[most[bin]] ? i : most[bin];
            }
        }
        int[] rows = IntStream.concat(Arrays.stream(least), Arrays.stream(most)).filter(row -> row >= 0).sorted().distinct().toArray();
        return new Curve(name, Arrays.stream(rows).mapToDouble(row -> Math.log10(numbers[row])).toArray(), Arrays.stream(rows).mapToDouble(row -> values[row]).toArray());
    }

    @Override
    public String id() {
        return plot.id();
    }

    @Override
    public String title() {
        return plot.title();
    }

    @Override
    public boolean marksAcross() {
        return false;
    }

    @Override
    public PlotModel whole(int points) {
        return written(plot.whole(points));
    }

    @Override
    public PlotModel part(double from, double to, int points) {
        return written(plot.part(from, to, points));
    }

    private static PlotModel written(PlotModel model) {
        Axis x = model.x();
        List<Tick> decades = new ArrayList<>();
        List<Tick> fine = new ArrayList<>();
        for (int decade = (int) Math.floor(x.min()); decade <= x.max(); decade++) {
            for (double inside : INSIDE) {
                double at = decade + Math.log10(inside);
                if (at >= x.min() && at <= x.max()) {
                    Tick tick = new Tick(at, Figures.of(inside * Math.pow(10, decade), ""));
                    fine.add(tick);
                    if (inside == 1) {
                        decades.add(tick);
                    }
                }
            }
        }
        List<Tick> ticks = decades.size() >= FEW ? decades : fine.size() >= 2 ? fine : x.ticks().stream().map(t -> new Tick(t.value(), Figures.of(Math.pow(10, t.value()), "", 3))).toList();
        return new PlotModel(model.title(), new Axis(x.title(), x.min(), x.max(), ticks), model.y(), model.series(), model.bands(), model.lines());
    }
}
