package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.numerics.Descriptive;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.FilmDetails;

/** What flights seen in a film say of rebound, heights, scale and the true number of pictures a second. */
final class FilmResults {
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;
    /** Bends are looked at over such a part of what is seen. */
    private static final int SPANS = 40;
    private static final Source FITTED = Source.derived("free fall, parabolas by least squares; band from the scatter of the points");
    private static final Source BY_SCALE = Source.derived("parabolas by least squares and the scale entered; the band holds the scatter of the points alone");
    private static final Source BY_FALL = Source.derived("parabolas by least squares; scale from their bend, g = 9.80665 m/s2");

    private final FilmedFlights flights;
    private final FilmKind.Columns columns;
    private final Double rate;
    private final Double scale;
    private final List<RecordingResult> results = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    FilmResults(FilmedFlights flights, FilmDetails details, FilmKind.Columns columns) {
        this.flights = flights;
        this.columns = columns;
        this.rate = columns.inSeconds() ? Double.valueOf(1) : details.getFrameRate();
        this.scale = columns.inMillimetres() ? Double.valueOf(1) : details.getPixelsPerMm();
        double[] h = columns.heights();
        if (h.length > 0 && Descriptive.range(h) == 0) {
            remarks.add(Say.caution(FITTED, "film.still"));
            return;
        }
        if (bendsUp(h)) {
            remarks.add(Say.caution(FITTED, "film.upside"));
            return;
        }
        Optional<Parabola> surest = flights.flights().stream().flatMap(Optional::stream).filter(p -> p.bend() < 0).min(Comparator.comparingDouble(p -> p.factor() * p.uBend() / -p.bend()));
        if (surest.isEmpty()) {
            remarks.add(Say.caution(FITTED, "film.few", Parabola.LEAST));
            return;
        }
        bounces();
        fall(surest.get());
        heights(surest.get());
        remarks.add(Say.note(FITTED, "film.bands"));
        remarks.add(Say.note(FITTED, "film.points", Rounded.text(surest.get().sd(), columns.inMillimetres() ? "mm" : "pixels")));
    }

    List<RecordingResult> results() {
        return results;
    }

    List<Remark> remarks() {
        return remarks;
    }

    /** What flies bends down most of the time, contacts are short. */
    private static boolean bendsUp(double[] h) {
        int apart = Math.max(1, h.length / SPANS);
        if (h.length <= 2 * apart) {
            return false;
        }
        double[] bend = new double[h.length - 2 * apart];
        for (int i = 0; i < bend.length; i++) {
            bend[i] = h[i] - 2 * h[i + apart] + h[i + 2 * apart];
        }
        return Descriptive.median(bend) > 0;
    }

    private void bounces() {
        for (int c = 0; c < flights.contacts().size(); c++) {
            Optional<FilmedFlights.Bounce> bounce = flights.bounce(c);
            if (bounce.isEmpty()) {
                remarks.add(Say.caution(FITTED, "film.contact", c + 1, Parabola.LEAST));
                continue;
            }
            double r = bounce.get().rebound();
            if (!(r > 0 && r < 1)) {
                remarks.add(Say.caution(FITTED, "film.gains", c + 1, Rounded.text(PERCENT * r, "%")));
                continue;
            }
            String property = c == 0 ? TestingProperties.REBOUND_DROP : c == 1 ? TestingProperties.REBOUND_BOUNCE : null;
            String title = c == 0 ? "Rebound after the drop" : "Rebound at impact " + (c + 1);
            double half = bounce.get().halfWidth();
            add("rebound-" + (c + 1), title, property, PERCENT * r, PERCENT * half, "%", FITTED);
            add("restitution-" + (c + 1), "Restitution, impact " + (c + 1), null, Math.sqrt(r), half / (2 * Math.sqrt(r)), "", FITTED);
        }
    }

    /** The bend against the fall of things: a check when scale and rate are both known, the missing one when one is. */
    private void fall(Parabola p) {
        double relative = p.factor() * p.uBend() / -p.bend();
        double g = MILLI * BouncingBall.G;
        double perPictures = -2 * p.bend();
        if (rate != null && scale != null) {
            double seen = perPictures * rate * rate / scale / MILLI;
            add("fall", "Free fall as seen, m/s²", null, seen, seen * relative, "", FITTED);
            double trueRate = rate * Math.sqrt(BouncingBall.G / seen);
            double trueScale = scale * seen / BouncingBall.G;
            boolean agrees = Math.abs(seen - BouncingBall.G) <= seen * relative;
            if (agrees) {
                remarks.add(Say.note(FITTED, "film.fall.agrees", Rounded.text(PERCENT * relative, "%")));
            } else if (columns.inSeconds() && columns.inMillimetres()) {
                remarks.add(Say.caution(FITTED, "film.fall.columns", Rounded.text(seen, "m/s²")));
            } else {
                remarks.add(Say.caution(FITTED, "film.fall.apart", Rounded.text(seen, "m/s²"), columns.inSeconds() ? "the times of the file are wrong" : "the true rate is " + Rounded.text(trueRate,
                        "pictures a second"), columns.inMillimetres() ? "the heights of the file are wrong" : "the scale is " + Rounded.text(trueScale, "pixels a mm")));
            }
        } else if (rate != null) {
            double found = perPictures * rate * rate / g;
            add("scale", "Pixels a mm, as the fall tells", null, found, found * relative, "", FITTED);
            remarks.add(Say.note(FITTED, "film.noScale"));
        } else if (scale != null) {
            double found = Math.sqrt(g * scale / perPictures);
            add("rate", "Pictures a second, as the fall tells", null, found, found * relative / 2, "", FITTED);
            remarks.add(Say.note(FITTED, "film.noRate"));
        } else {
            remarks.add(Say.note(FITTED, "film.neither"));
        }
    }

    private void heights(Parabola p) {
        double perMm = scale != null ? scale : rate != null ? -2 * p.bend() * rate * rate / (MILLI * BouncingBall.G) : Double.NaN;
        if (Double.isNaN(perMm)) {
            return;
        }
        double uScale = scale != null ? 0 : p.factor() * p.uBend() / -p.bend();
        Source source = scale != null ? BY_SCALE : BY_FALL;
        for (int c = 0; c < flights.contacts().size(); c++) {
            Optional<FilmedFlights.Bounce> bounce = flights.bounce(c);
            if (bounce.isPresent()) {
                FilmedFlights.Bounce b = bounce.get();
                if (c == 0) {
                    height("drop", "Drop height", b.before(), b, perMm, uScale, source);
                }
                height("height-" + (c + 1), "Height after impact " + (c + 1), b.after(), b, perMm, uScale, source);
            }
        }
        if (flights.contacts().isEmpty() && columns.heights().length > 0) {
            double rise = (p.top() - columns.heights()[0]) / perMm;
            if (rise > 0) {
                double half = Math.hypot(p.factor() * Math.hypot(p.uTop(), p.sd()) / perMm, rise * uScale);
                add("rise", "Top above the first place", null, rise, half, "mm", source);
            }
        }
    }

    private void height(String id, String title, Parabola flight, FilmedFlights.Bounce b, double perMm, double uScale, Source source) {
        double h = (flight.top() - b.level()) / perMm;
        double half = Math.hypot(flight.factor() * Math.hypot(flight.uTop(), b.uLevel()) / perMm, h * uScale);
        add(id, title, null, h, half, "mm", source);
    }

    private void add(String id, String title, String property, double value, double half, String unit, Source source) {
        results.add(new RecordingResult(id, title, property, value, Double.isFinite(half) ? half : null, unit, source));
    }
}
