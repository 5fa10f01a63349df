package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.Thinning;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Level;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/** Heights in a film with the parabolas through them, or what the parabolas leave over. */
record FilmPlot(String id, String title, FilmKind.Columns all, FilmedFlights flights, boolean leftOver) implements RecordingPlot {
    private static final int DRAWN = 60;

    static RecordingPlot heights(FilmKind.Columns all, FilmedFlights flights) {
        return new FilmPlot("heights", "Heights", all, flights, false);
    }

    static RecordingPlot residuals(FilmKind.Columns all, FilmedFlights flights) {
        return new FilmPlot("residuals", "Left over by the parabolas", all, flights, true);
    }

    @Override
    public boolean marksAcross() {
        return true;
    }

    @Override
    public PlotModel whole(int points) {
        double first = all.times()[0];
        double last = all.times()[all.times().length - 1];
        return drawn(Axis.over(across(), all.across(), first, last), points);
    }

    @Override
    public PlotModel part(double from, double to, int points) {
        Axis round = Axis.over(across(), all.across(), from, to);
        return drawn(new Axis(round.title(), from, to, round.ticks().stream().filter(t -> t.value() >= from && t.value() <= to).toList()), points);
    }

    private String across() {
        return all.inSeconds() ? "Time" : "Picture";
    }

    private PlotModel drawn(Axis across, int points) {
        List<Series> series = new ArrayList<>();
        if (!leftOver) {
            List<Point> seen = new ArrayList<>();
            for (int row : Thinning.rows(all.heights(), 0, all.times().length, Math.max(2, points))) {
                put(seen, across, all.times()[row], all.heights()[row]);
            }
            series.add(new Series("seen", Style.POINTS, seen));
        }
        int number = 0;
        for (Optional<Parabola> flight : flights.flights()) {
            number++;
            if (flight.isPresent()) {
                series.add(leftOver ? residuals(flight.get(), number, across) : parabola(flight.get(), number, across));
            }
        }
        double low = series.stream().flatMap(s -> s.points().stream()).mapToDouble(Point::y).min().orElse(0);
        double high = series.stream().flatMap(s -> s.points().stream()).mapToDouble(Point::y).max().orElse(1);
        return new PlotModel(title, across, Axis.over(leftOver ? "Seen less parabola" : "Height", all.inMillimetres() ? "mm" : "pixels", low, high), series, List.of(),
                leftOver ? List.of(new Level(0, "")) : List.of());
    }

    private static Series parabola(Parabola p, int number, Axis across) {
        List<Point> line = new ArrayList<>();
        double from = p.times()[0];
        double to = p.times()[p.times().length - 1];
        for (int i = 0; i <= DRAWN; i++) {
            double t = from + (to - from) * i / DRAWN;
            put(line, across, t, p.height(t));
        }
        return new Series("flight " + number, Style.LINE, line);
    }

    private static Series residuals(Parabola p, int number, Axis across) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < p.times().length; i++) {
            put(points, across, p.times()[i], p.heights()[i] - p.height(p.times()[i]));
        }
        return new Series("flight " + number, Style.POINTS, points);
    }

    private static void put(List<Point> points, Axis across, double t, double y) {
        if (t >= across.min() && t <= across.max()) {
            points.add(Point.of(t, y));
        }
    }
}
