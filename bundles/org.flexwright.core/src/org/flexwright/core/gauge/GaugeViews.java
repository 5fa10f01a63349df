package org.flexwright.core.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.gauge.GaugeResult.Component;
import org.flexwright.core.gauge.GaugeResult.Kind;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.Bars;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.Censoring;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.StudentT;

/** What a gauge study looks like. */
public final class GaugeViews {
    private GaugeViews() {
    }

    /** The components as bars, each a standard deviation with its interval. */
    public static Bars components(GaugeResult result) {
        String unit = result.property().kind().unit().display();
        List<Bars.Bar> bars = new ArrayList<>();
        // what is made of all is no surer than the least sure of them
        double unsure = result.components().stream().filter(c -> c.interval() != null).mapToDouble(c -> c.interval().halfWidth()).max().orElse(0);
        for (Component c : result.components()) {
            boolean sum = c.kind() == Kind.GAUGE || c.kind() == Kind.TOTAL;
            double low = c.interval() == null ? c.sd() : Math.min(c.sd(), c.interval().low());
            double high = c.interval() == null ? c.sd() : Math.max(c.sd(), c.interval().high());
            bars.add(new Bars.Bar(word(result, c.kind()), c.sd(), low, high, words(c, unit, unsure), sum));
        }
        return new Bars(GaugeAnalysis.say("components", result.property().title()).text(), unit, bars);
    }

    private static String word(GaugeResult result, Kind kind) {
        return kind == Kind.GAUGE && result.onePerson() ? GaugeAnalysis.say("kind.gauge.onePerson").text() : kind.word();
    }

    private static String words(Component c, String unit, double unsure) {
        if (c.interval() == null) {
            return (FieldText.rounded(c.sd(), unsure > 0 ? unsure : Math.max(c.sd(), 1e-9) / 10) + " " + unit).strip();
        }
        return GaugeAnalysis.say("sd", (figure(c.sd(), Math.min(c.interval().halfWidth(), c.sd() / 2)) + " " + unit).strip(), figure(c.interval().low(), c.interval().low() / 5), figure(c.interval()
                .high(), c.interval().high() / 5)).text();
    }

    private static String figure(double value, double unsure) {
        return unsure > 0 ? FieldText.rounded(value, unsure) : FieldText.digits(value);
    }

    /** Every piece by every person: the mean of the readings, and how far they reach. Works without a result, too. */
    public static java.util.Optional<PlotModel> readings(GaugeTable table, PropertyDef property) {
        List<PlotModel.Series> series = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int persons = table.persons().size();
        for (int w = 0; w < persons; w++) {
            String who = table.persons().get(w);
            List<PlotModel.Point> points = new ArrayList<>();
            for (int p = 0; p < table.pieces().size(); p++) {
                double[] numbers = table.counting(table.pieces().get(p), who).stream().filter(r -> r.getCensoring() == Censoring.NONE).mapToDouble(r -> r.getValue()).toArray();
                if (numbers.length > 0) {
                    double least = Arrays.stream(numbers).min().orElseThrow();
                    double most = Arrays.stream(numbers).max().orElseThrow();
                    // persons stand beside one another within the place of the piece
                    double beside = persons == 1 ? 0 : 0.5 * (w - (persons - 1) / 2.0) / persons;
                    points.add(new PlotModel.Point(p + beside, Descriptive.mean(numbers), least, most, table.pieces().get(p) + " " + who));
                    low = Math.min(low, least);
                    high = Math.max(high, most);
                }
            }
            if (!points.isEmpty()) {
                series.add(new PlotModel.Series(who.isEmpty() ? GaugeAnalysis.say("nobody").text() : who, PlotModel.Style.POINTS, points));
            }
        }
        if (series.isEmpty()) {
            return java.util.Optional.empty();
        }
        return java.util.Optional.of(new PlotModel(GaugeAnalysis.say("plot", property.title()).text(), Axis.of(GaugeAnalysis.say("piece").text(), table.pieces()), Axis.over(property.title(), property.kind()
                .unit().display(), low, high), series, List.of(), List.of()));
    }

    /** What the study says, one sentence a line, without the components. */
    public static List<String> sentences(GaugeResult result) {
        List<String> said = new ArrayList<>();
        String unit = result.property().kind().unit().display();
        Component repeat = result.component(Kind.REPEATABILITY).orElseThrow();
        double spread = result.ownSpread();
        // from few repeats the standard deviation itself is unsure, and 2 would be too small a factor
        double reach = StudentT.quantile((1 + Verdicts.LEVEL) / 2, result.errorDf());
        double unsure = Math.max(repeat.interval().halfWidth(), spread / 10);
        said.add(GaugeAnalysis.say("says.reading", (FieldText.rounded(spread, unsure) + " " + unit).strip(), (FieldText.rounded(reach * spread, reach * unsure) + " " + unit).strip()).text());
        result.studyPercent().ifPresent(percent -> said.add(GaugeAnalysis.say("says.share", FieldText.fixed(percent, 0), FieldText.fixed(result.sharePercent(Kind.GAUGE).orElse(0), 0)).text()));
        if (result.kinds().isPresent()) {
            int kinds = result.kinds().getAsInt();
            said.add(GaugeAnalysis.say(kinds < 2 ? "says.kinds.none" : kinds < 5 ? "says.kinds.few" : "says.kinds", String.valueOf(kinds)).text());
        }
        result.tolerancePercent().ifPresent(percent -> said.add(GaugeAnalysis.say(Math.round(percent) > 30 ? "says.tolerance.wide" : "says.tolerance", FieldText.fixed(percent, 0), (FieldText.digits(result.table()
                .study().getTolerance()) + " " + unit).strip()).text()));
        result.notes().forEach(note -> said.add(note.text()));
        return said;
    }
}
