package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;

/** The curves of a trial as figures. */
@Command(name = "curves", description = "Curves that the steps offer, as tables: stiffness and viscosity over filler with your own trials.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright trial curves T07" })
final class PlotsCall extends TrialNoun.OneTrial {
    /** Every so many points of a line are enough to read it. */
    private static final int LINES = 4;

    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Trial trial = trial(session);
        Reply reply = new Reply(id()).words("trial", trial.getCode());
        List<StepPlot> plots = services.registries().plots(trial);
        if (plots.isEmpty()) {
            reply.line("The steps of " + trial.getCode() + " offer no curves; a filler in the cup brings some.");
        }
        for (StepPlot plot : plots) {
            if (plot.plot() != null) {
                table(reply, plot);
            }
            plot.remarks().forEach(reply::remark);
        }
        return reply;
    }

    private static void table(Reply reply, StepPlot plot) {
        PlotModel model = plot.plot();
        reply.line(model.title() + ": " + model.y().title() + " by " + model.x().title());
        for (PlotModel.Series series : model.series()) {
            reply.line("  " + series.name());
            int every = series.style() == PlotModel.Style.POINTS ? 1 : Math.max(1, (series.points().size() - 1) / LINES);
            for (int i = 0; i < series.points().size(); i += every) {
                PlotModel.Point point = series.points().get(i);
                String band = point.high() > point.low() ? "  (" + FieldText.range(point.low(), point.high()) + ")" : "";
                reply.line(String.format("    %8s  %8s%s%s", FieldText.digits(point.x()), FieldText.digits(point.y()), band, point.label().isEmpty() ? "" : "  " + point.label()));
            }
            series.points().forEach(point -> reply.item(row(plot.id(), series.name(), point)));
        }
    }

    private static Map<String, Object> row(String plot, String series, PlotModel.Point point) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("curve", plot);
        row.put("series", series);
        row.put("x", point.x());
        row.put("y", point.y());
        row.put("low", point.low());
        row.put("high", point.high());
        row.put("label", point.label());
        return row;
    }
}
