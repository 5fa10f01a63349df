package org.flexwright.core.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Censoring;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;

/**
 * How a control piece read over the sessions: median and all readings of each session, its usual reading, and how far off it may be.
 *
 * @param property what was read, the property it was read for first
 * @param rows     sessions in the order of their time
 */
public record ControlDrift(PropertyDef property, List<Row> rows) {
    public ControlDrift {
        rows = List.copyOf(rows);
    }

    /**
     * A session.
     *
     * @param session the session
     * @param control how the piece read in it
     * @param low     smallest reading
     * @param high    largest reading
     */
    public record Row(Session session, ControlReading control, double low, double high) {
    }

    /** Of a control piece; empty when fewer than two sessions can be compared. */
    public static Optional<ControlDrift> of(Project project, ControlPiece piece, PropertyCatalogue properties) {
        PropertyDef property = piece.getMeasurements().stream().filter(m -> m.getKey() != null && m.getKey().getProperty() != null).findFirst()
                .flatMap(m -> properties.find(m.getKey().getProperty())).orElse(null);
        if (property == null || property.yesNo()) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        project.getSessions().stream().filter(s -> s.getControlPiece() == piece)
                .sorted(Comparator.comparing((Session s) -> s.getAt() == null ? Instant.MIN : s.getAt()))
                .forEach(session -> ControlReading.of(session, property).ifPresent(control -> {
                    double[] values = values(piece, session, property);
                    rows.add(new Row(session, control, values[0], values[values.length - 1]));
                }));
        return rows.size() < 2 ? Optional.empty() : Optional.of(new ControlDrift(property, rows));
    }

    private static double[] values(ControlPiece piece, Session session, PropertyDef property) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == session && isOf(m, property)).flatMap(m -> m.getReadings().stream())
                .filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE && Measurements.counts(r))
                .mapToDouble(Reading::getValue).sorted().toArray();
    }

    private static boolean isOf(Measurement measurement, PropertyDef property) {
        return measurement.getKey() != null && property.id().equals(measurement.getKey().getProperty());
    }

    /** As a plot: one place a session, the band of the newest session's limit around its usual reading. */
    public PlotModel plot() {
        ControlReading newest = rows.getLast().control();
        double limit = Double.isNaN(newest.limit()) ? 0 : newest.limit();
        double low = newest.before() - limit;
        double high = newest.before() + limit;
        List<PlotModel.Point> points = new ArrayList<>();
        List<PlotModel.Point> off = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Row row : rows) {
            String code = row.session().getCode() == null ? "" : row.session().getCode();
            (row.control().off() ? off : points).add(new PlotModel.Point(names.size(), row.control().median(), row.low(), row.high(), code));
            names.add(code);
            low = Math.min(low, row.low());
            high = Math.max(high, row.high());
        }
        List<PlotModel.Series> series = new ArrayList<>();
        series.add(new PlotModel.Series(Comparison.words("drift.median"), PlotModel.Style.POINTS, points));
        if (!off.isEmpty()) {
            series.add(new PlotModel.Series(Doubts.word(), PlotModel.Style.POINTS, off));
        }
        String unit = property.kind().unit().display();
        String title = Comparison.words("drift.title", newest.piece().getCode() == null ? "" : newest.piece().getCode());
        List<PlotModel.Band> bands = limit > 0 ? List.of(new PlotModel.Band(newest.before() - limit, newest.before() + limit, "")) : List.of();
        return new PlotModel(title, Axis.of(Comparison.words("drift.sessions"), names), Axis.over(property.title(), property.title().endsWith(unit) ? "" : unit, low, high), series, bands,
                List.of(new PlotModel.Level(newest.before(), Comparison.words(limit > 0 ? "drift.usualAllowed" : "drift.usual", newest.allowed()))));
    }
}
