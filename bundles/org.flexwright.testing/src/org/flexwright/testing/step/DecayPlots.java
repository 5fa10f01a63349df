package org.flexwright.testing.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.flexwright.core.view.Tick;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Line;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Say;
import org.flexwright.testing.hardness.Decay;

/** How far hardness falls while the gauge rests: spots of the trial that were read at several dwells. */
final class DecayPlots {
    /** Room beside the first and last dwell, in decades. */
    private static final double ROOM = 0.15;

    private DecayPlots() {
    }

    private static List<Decay> of(Trial trial) {
        return trial.getParts().stream().filter(part -> !part.isFailed()).flatMap(part -> Decay.of(part).stream()).toList();
    }

    /** One plot a scale. */
    static List<StepPlot> plots(Trial trial) {
        List<Decay> all = of(trial);
        List<StepPlot> plots = new ArrayList<>();
        for (GaugeScale scale : GaugeScale.values()) {
            List<Decay> own = all.stream().filter(decay -> decay.scale() == scale).toList();
            if (!own.isEmpty()) {
                plots.add(new StepPlot("decay-" + scale.symbol().toLowerCase(java.util.Locale.ROOT), plot(scale, own), remarks(own)));
            }
        }
        return plots;
    }

    private static PlotModel plot(GaugeScale scale, List<Decay> decays) {
        double[] times = decays.stream().flatMap(d -> d.points().stream()).mapToDouble(p -> p.time()).distinct().sorted().toArray();
        double[] values = decays.stream().flatMap(d -> d.points().stream()).mapToDouble(p -> p.reading()).toArray();
        List<Tick> ticks = Arrays.stream(times).mapToObj(t -> new Tick(Math.log10(t), Rounded.text(t, ""))).toList();
        Axis x = new Axis(Say.message("decay.time").text(), ticks.getFirst().value() - ROOM, ticks.getLast().value() + ROOM, ticks);
        Axis y = Axis.over(Say.message("decay.reading").text(), scale.kind().unit().display(), Arrays.stream(values).min().orElseThrow(), Arrays.stream(values).max().orElseThrow());
        List<Series> series = new ArrayList<>();
        for (Decay decay : decays) {
            series.add(new Series(decay.words(), Style.POINTS, decay.points().stream().map(p -> new Point(Math.log10(p.time()), p.reading(), p.reading(), p.reading(), Rounded.text(p.time(),
                    "s"))).toList()));
            decay.line().ifPresent(line -> series.add(new Series(Say.message("decay.line", decay.words()).text(), Style.LINE, line(line, decay))));
        }
        return new PlotModel(Say.message("decay.title", scale.kind().unit().display()).text(), x, y, series, List.of(), List.of());
    }

    private static List<Point> line(Line line, Decay decay) {
        double from = Math.log10(decay.points().getFirst().time());
        double to = Math.log10(decay.points().getLast().time());
        return List.of(Point.of(from, line.at(from)), Point.of(to, line.at(to)));
    }

    private static List<Remark> remarks(List<Decay> decays) {
        return decays.stream().map(DecayPlots::remark).flatMap(Optional::stream).toList();
    }

    private static Optional<Remark> remark(Decay decay) {
        return decay.fall().map(fall -> decay.points().size() == 2 ? Say.note(fall.source(), "decay.two", decay.words(), figure(fall.likely()))
                : Say.note(fall.source(), "decay.fall", decay.words(), figure(fall.likely()), figure(fall.low()), figure(fall.high())));
    }

    private static Estimate tenths(Estimate fall) {
        return new Estimate(Math.floor(10 * fall.low()) / 10, Math.round(10 * fall.likely()) / 10.0, Math.ceil(10 * fall.high()) / 10, fall.source());
    }

    /** Tenths of a point: a dial tells no more. */
    private static String figure(double points) {
        return Rounded.text(Math.round(10 * points) / 10.0, "");
    }

    /** The fall of each spot as a figure beside the step. */
    static List<StepAdvice> advice(Trial trial) {
        List<StepAdvice> advice = new ArrayList<>();
        for (Decay decay : of(trial)) {
            Estimate fall = decay.fall().orElse(null);
            if (fall != null) {
                advice.add(new StepAdvice("fall" + (advice.size() + 1), Say.message("decay.label", decay.words()).text(), tenths(fall), "", remark(decay).orElse(null)));
            }
        }
        return advice;
    }
}
