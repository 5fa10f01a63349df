package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;

import org.flexwright.core.Message;
import org.flexwright.core.rubber.RubberFit.Point;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/** Fits of rubber laws as plots. */
public final class FitPlots {
    private static final int STEPS = 120;

    private FitPlots() {
    }

    /** Measured points and the law, loading by loading. */
    public static PlotModel fit(RubberFit fit) {
        List<Series> series = new ArrayList<>();
        for (Loading loading : fit.loadings()) {
            List<Point> own = fit.points().stream().filter(p -> p.loading() == loading).toList();
            series.add(new Series(say("measured", loading.title()), Style.POINTS, own.stream().map(p -> PlotModel.Point.of(p.stretch(), p.stress())).toList()));
            double from = Math.min(1, own.stream().mapToDouble(Point::stretch).min().orElse(1));
            double to = Math.max(1, own.stream().mapToDouble(Point::stretch).max().orElse(1));
            series.add(new Series(say("law", loading.title()), Style.LINE, DoubleStream.iterate(0, i -> i + 1).limit(STEPS + 1L).map(i -> from + (to - from) * i / STEPS)
                    .mapToObj(stretch -> PlotModel.Point.of(stretch, fit.law().stress(loading, stretch))).toList()));
        }
        return plot(say("fit.title", fit.form().title(), fit.weighting().title(), FitWords.figure(fit.rms())), say("stress"), series, List.of());
    }

    /** Measured less law, loading by loading. */
    public static PlotModel residuals(RubberFit fit) {
        List<Series> series = new ArrayList<>();
        for (Loading loading : fit.loadings()) {
            List<PlotModel.Point> own = new ArrayList<>();
            for (int i = 0; i < fit.points().size(); i++) {
                if (fit.points().get(i).loading() == loading) {
                    own.add(PlotModel.Point.of(fit.points().get(i).stretch(), fit.residuals().get(i)));
                }
            }
            series.add(new Series(say("measured", loading.title()), Style.POINTS, own));
        }
        return plot(say("residuals.title", fit.form().title()), say("residual"), series, List.of(new PlotModel.Level(0, say("zero"))));
    }

    private static PlotModel plot(String title, String quantity, List<Series> series, List<PlotModel.Level> lines) {
        DoubleSummaryStatistics across = new DoubleSummaryStatistics();
        DoubleSummaryStatistics up = new DoubleSummaryStatistics();
        up.accept(0);
        across.accept(1);
        series.stream().flatMap(s -> s.points().stream()).forEach(p -> {
            across.accept(p.x());
            up.accept(p.y());
        });
        return new PlotModel(title, Axis.over(say("stretch"), "", across.getMin(), across.getMax()), Axis.over(quantity, "MPa", up.getMin(), up.getMax()), series, List.of(), lines);
    }

    private static String say(String key, Object... arguments) {
        return Message.of(FitPlots.class, key, arguments).text();
    }
}
