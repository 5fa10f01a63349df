package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.CurvePlot;
import org.flexwright.core.recording.CurvePlot.Curve;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.StudentT;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.HoldDetails;
import org.flexwright.testing.law.PronyFit;

/**
 * One hold, read. It begins where the force is highest and ends with the record, unless a person moved these marks. Relaxation is told from one
 * second after the beginning on: before, the machine still settles (common practice).
 */
final class HoldLook {
    private static final double FIRST = 1;
    private static final double HALF_HOUR = 1800;
    private static final double[] AFTER = {15, 60, HALF_HOUR};
    private static final double KEPT = 60;
    /** A force is the mean over this share of its time to either side. */
    private static final double WINDOW = 0.05;
    private static final double UPPER = 0.975;
    private static final int FEWEST = 8;
    private static final int USUAL_TERMS = 3;
    private static final int FINE = 400;
    private static final double PER_CENT = 100;
    private static final Source SHARE = Source.derived("100 (F1 - Ft) / F1, F1 the force 1 s after the hold began (common practice)");
    private static final Source FORCE = Source.derived("mean of the rows about 1 s after the hold began; band from their scatter and the force gauge");
    private static final Source ISO = Source.fromMemory("ISO 3384: 100 (F0 - Ft) / F0, F0 usually 30 min after loading");
    private static final Source PRONY = Source.derived("least squares, F = F0 (1 - sum g (1 - exp(-t / tau)))");

    private final Recording recording;
    private final HoldDetails details;
    private final double[] time;
    private final double[] force;
    private final boolean stress;
    private final List<RecordingPlot> plots = new ArrayList<>();
    private final List<RecordingResult> results = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final Marks marks;

    private double begin;
    /** Time from the beginning and force of the hold alone. */
    private double[] held;
    private double[] left;

    HoldLook(Recording recording, HoldDetails details, RecordingData data) {
        this.recording = recording;
        this.details = details;
        this.marks = new Marks(recording);
        stress = data.find(ChannelRole.FORCE).isEmpty();
        time = data.find(ChannelRole.TIME).map(RecordingData.Channel::values).orElse(new double[0]);
        double[] raw = data.find(stress ? ChannelRole.STRESS : ChannelRole.FORCE).map(RecordingData.Channel::values).orElse(new double[time.length]);
        double rest = details == null || details.getZeroForce() == null || stress ? 0 : details.getZeroForce();
        force = rest == 0 ? raw : Arrays.stream(raw).map(f -> f - rest).toArray();
    }

    Look look(Watch watch) {
        String unit = stress ? "MPa" : "N";
        List<Curve> curves = new ArrayList<>(List.of(new Curve(Say.message("hold.curve.recorded").text(), time, force)));
        if (cut(watch)) {
            shares(unit);
            prony(unit, curves, watch);
        }
        plots.add(0, new CurvePlot("time", Say.message("hold.plot.time").text(), true, Say.message("hold.axis.time").text(), "s", axis(), unit, curves));
        return new Look(plots, marks.all(), results, remarks);
    }

    private String axis() {
        return Say.message(stress ? "curve.axis.stress" : "curve.axis.force").text();
    }

    /** Finds beginning and end; false when nothing falls. */
    private boolean cut(Watch watch) {
        watch.check();
        int highest = 0;
        for (int i = 1; i < force.length; i++) {
            highest = force[i] > force[highest] ? i : highest;
        }
        if (force.length < FEWEST || !(force[highest] > 0)) {
            remarks.add(Say.caution(SHARE, force.length < FEWEST ? "hold.few" : "hold.noHold", force.length, FEWEST));
            return false;
        }
        begin = marks.at("hold-begin", time[highest]);
        double end = marks.at("hold-end", time[time.length - 1]);
        int from = 0;
        while (from < time.length && time[from] < begin) {
            from++;
        }
        int to = time.length;
        while (to > from && time[to - 1] > end) {
            to--;
        }
        if (to - from < FEWEST) {
            remarks.add(Say.caution(SHARE, "hold.few", to - from, FEWEST));
            return false;
        }
        held = new double[to - from];
        left = Arrays.copyOfRange(force, from, to);
        for (int i = 0; i < held.length; i++) {
            held[i] = time[from + i] - begin;
        }
        if (details == null || details.getZeroForce() == null && !stress) {
            remarks.add(Say.note(SHARE, "hold.rest"));
        }
        return true;
    }

    /** Half width at 95 % of what its rows scatter alone; empty with fewer than three rows, or when they are all alike. */
    private record Force(double value, OptionalDouble half) {
    }

    /** The force about a time: mean of its rows, or drawn between two rows; empty outside the hold. */
    private Optional<Force> at(double t) {
        if (t > held[held.length - 1] * (1 + WINDOW) || t < held[0]) {
            return Optional.empty();
        }
        double[] near = new double[held.length];
        int n = 0;
        int before = 0;
        for (int i = 0; i < held.length; i++) {
            if (held[i] >= t * (1 - WINDOW) && held[i] <= t * (1 + WINDOW)) {
                near[n++] = left[i];
            }
            before = held[i] <= t ? i : before;
        }
        if (n > 0) {
            double[] own = Arrays.copyOf(near, n);
            // the fall itself is part of this scatter, so the band is rather too wide
            double sd = n < 3 ? 0 : Descriptive.standardDeviation(own).orElse(0);
            return Optional.of(new Force(Descriptive.mean(own), sd > 0 ? OptionalDouble.of(StudentT.quantile(UPPER, n - 1.0) * sd / Math.sqrt(n)) : OptionalDouble.empty()));
        }
        int after = Math.min(before + 1, held.length - 1);
        double share = after == before ? 0 : (t - held[before]) / (held[after] - held[before]);
        return Optional.of(new Force(left[before] + share * (left[after] - left[before]), OptionalDouble.empty()));
    }

    private void shares(String unit) {
        Optional<Force> first = at(FIRST);
        if (first.isEmpty() || !(first.get().value() > 0)) {
            remarks.add(Say.caution(SHARE, "hold.short", Figures.of(held[held.length - 1], "s", 3)));
            return;
        }
        Double gauge = stress ? null : ForceGauge.halfWidth(recording.getInstrument(), 0);
        if (!stress) {
            ForceGauge.remark(recording.getInstrument()).ifPresent(remarks::add);
        }
        Double whole = gauge == null || first.get().half().isEmpty() ? null : Double.valueOf(Math.hypot(gauge, first.get().half().getAsDouble()));
        results.add(new RecordingResult("force-1s", Say.message("hold.result.force-1s").text(), null, first.get().value(), whole, unit, FORCE));
        remarks.add(Say.note(SHARE, "hold.bands"));
        for (double after : AFTER) {
            at(after).ifPresent(then -> share("relaxation-" + (int) after, Say.message("hold.result.after", said(after)).text(), after == KEPT ? CurveProperties.RELAXATION_60 : null, first.get(),
                    then, SHARE));
        }
        double last = held[held.length - 1];
        Optional<Force> halfHour = at(HALF_HOUR);
        if (halfHour.isPresent() && last >= 2 * HALF_HOUR) {
            at(last).ifPresent(then -> share("relaxation-iso", Say.message("hold.result.iso", said(last)).text(), null, halfHour.get(), then, ISO));
        }
    }

    private void share(String id, String title, String property, Force from, Force then, Source source) {
        double value = PER_CENT * (from.value() - then.value()) / from.value();
        Double half = from.half().isEmpty() || then.half().isEmpty() ? null
                : PER_CENT / from.value() * Math.hypot(then.half().getAsDouble(), from.half().getAsDouble() * then.value() / from.value());
        results.add(new RecordingResult(id, title, property, value, half, "%", source));
    }

    private static String said(double seconds) {
        return seconds >= HALF_HOUR ? Figures.of(seconds / 60, "min", 3) : Figures.of(seconds, "s", 3);
    }

    private void prony(String unit, List<Curve> curves, Watch watch) {
        boolean asked = details != null && details.getTerms() != null;
        int terms = Math.min(asked ? details.getTerms() : USUAL_TERMS, PronyFit.MOST_TERMS);
        if (asked && details.getTerms() > PronyFit.MOST_TERMS) {
            remarks.add(Say.note(PRONY, "hold.terms", details.getTerms(), PronyFit.MOST_TERMS));
        }
        Optional<PronyFit> found = Optional.empty();
        int count = terms;
        while (count > 0 && found.isEmpty()) {
            found = PronyFit.of(held, left, count, watch);
            count--;
        }
        if (found.isEmpty()) {
            remarks.add(Say.caution(PRONY, "hold.noProny"));
            return;
        }
        PronyFit fit = found.get();
        if (fit.terms().size() < terms) {
            remarks.add(Say.note(PRONY, "hold.fewer", terms, fit.terms().size()));
        }
        results.add(result("prony-f0", Say.message("hold.result.f0").text(), fit.instant(), fit.band(), unit));
        int number = 1;
        for (PronyFit.Term term : fit.terms()) {
            results.add(result("prony-g" + number, Say.message("hold.result.share", number).text(), PER_CENT * term.share(), term.shareBand().isPresent() ? OptionalDouble.of(PER_CENT * term
                    .shareBand().getAsDouble()) : OptionalDouble.empty(), "%"));
            // the interval of a time is a ratio; its wider side is told
            results.add(result("prony-tau" + number, Say.message("hold.result.time", number).text(), term.time(), term.timeRatio().isPresent() ? OptionalDouble.of(term.time() * (term.timeRatio()
                    .getAsDouble() - 1)) : OptionalDouble.empty(), "s"));
            if (fit.atTheEdge(term)) {
                remarks.add(Say.caution(PRONY, "hold.edge", number, Figures.of(term.time(), "s", 3), Figures.of(fit.shortest(), "s", 3), said(fit.longest())));
            }
            number++;
        }
        results.add(result("prony-left", Say.message("hold.result.left").text(), PER_CENT * fit.left(), OptionalDouble.empty(), "%"));
        results.add(result("prony-rms", Say.message("hold.result.rms").text(), fit.rms(), OptionalDouble.empty(), unit));
        remarks.add(Say.note(PRONY, "hold.describes", said(fit.longest())));
        double[] x = new double[FINE];
        double[] y = new double[FINE];
        for (int i = 0; i < FINE; i++) {
            double t = fit.shortest() * Math.pow(fit.longest() / fit.shortest(), i / (FINE - 1.0));
            x[i] = begin + t;
            y[i] = fit.at(t);
        }
        curves.add(new Curve(Say.message("hold.curve.fit", fit.terms().size()).text(), x, y));
        double[] lasting = Arrays.stream(x).map(at -> at - begin).toArray();
        double[] share = Arrays.stream(left).map(force -> PER_CENT * force / fit.instant()).toArray();
        double[] over = new double[left.length];
        for (int i = 0; i < over.length; i++) {
            over[i] = left[i] - fit.at(held[i]);
        }
        plots.add(decades("decades", Say.message("hold.axis.left").text(), "%", List.of(DecadePlot.curve(Say.message("hold.curve.recorded").text(), held, share), DecadePlot.curve(Say.message(
                "hold.curve.fit", fit.terms().size()).text(), lasting, Arrays.stream(y).map(force -> PER_CENT * force / fit.instant()).toArray()))));
        plots.add(decades("residuals", Say.message("hold.axis.residual").text(), unit, List.of(DecadePlot.curve(Say.message("hold.curve.residual").text(), held, over))));
    }

    private static RecordingPlot decades(String id, String quantity, String unit, List<Curve> curves) {
        return new DecadePlot(new CurvePlot(id, Say.message("hold.plot." + id).text(), false, Say.message("hold.axis.since").text(), "s", quantity, unit, curves));
    }

    private static RecordingResult result(String id, String title, double value, OptionalDouble half, String unit) {
        return new RecordingResult(id, title, null, value, half.isPresent() ? Double.valueOf(half.getAsDouble()) : null, unit, PRONY);
    }
}
