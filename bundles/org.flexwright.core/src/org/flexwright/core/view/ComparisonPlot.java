package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.verdict.Judgement;
import org.flexwright.numerics.Interval;

/** One row of a comparison as a plot. */
final class ComparisonPlot {

    private ComparisonPlot() {
    }

    static Optional<PlotModel> of(Comparison comparison, int row) {
        Comparison.Row target = comparison.rows().get(row);
        Map<String, List<PlotModel.Point>> byRoute = new LinkedHashMap<>();
        List<String> names = new ArrayList<>();
        Strip strip = null;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < comparison.columns().size(); c++) {
            Comparison.Column column = comparison.columns().get(c);
            Comparison.Cell cell = comparison.cell(row, c);
            strip = strip == null ? cell.strip() : strip;
            if (column.reference()) {
                continue;
            }
            Judgement judgement = cell.judgement();
            if (judgement != null && judgement.mean() != null) {
                Interval interval = judgement.interval() == null || judgement.n() < 3 && !target.property().yesNo()
                        ? new Interval(judgement.mean(), judgement.mean()) : judgement.interval();
                byRoute.computeIfAbsent(column.route(), r -> new ArrayList<>())
                        .add(new PlotModel.Point(names.size(), judgement.mean(), interval.low(), interval.high(), column.code() + " " + cell.value() + " " + cell.word()));
                low = Math.min(low, interval.low());
                high = Math.max(high, interval.high());
            }
            names.add(column.code());
        }
        if (byRoute.isEmpty() || strip == null) {
            return Optional.empty();
        }
        low = Math.min(low, strip.scale().low());
        high = Math.max(high, strip.scale().high());
        List<PlotModel.Series> series = byRoute.entrySet().stream()
                .map(e -> new PlotModel.Series(title(comparison, e.getKey()), PlotModel.Style.POINTS, e.getValue())).toList();
        boolean share = target.property().yesNo();
        List<PlotModel.Band> bands = strip.bandHigh() > strip.bandLow() ? List.of(new PlotModel.Band(edge(strip.bandLow(), strip.scale().low(), !share, Double.NEGATIVE_INFINITY),
                edge(strip.bandHigh(), strip.scale().high(), !share, Double.POSITIVE_INFINITY), target.limits())) : List.of();
        List<PlotModel.Level> levels = strip.reference() == null ? List.of() : List.of(new PlotModel.Level(strip.reference(), Comparison.words("reference")));
        return Optional.of(new PlotModel(target.title(), Axis.of(Comparison.words("trials"), names), Axis.over(target.title(), target.unit(), low, high), series, bands,
                levels));
    }

    /** A band that ends where the scale does goes on beyond it. */
    private static double edge(double band, double scale, boolean open, double beyond) {
        return open && band == scale ? beyond : band;
    }

    private static String title(Comparison comparison, String route) {
        return comparison.groups().stream().filter(g -> g.route().equals(route)).map(Comparison.Group::title).findFirst().orElse(route);
    }
}
