package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.CurvePlot;
import org.flexwright.core.recording.CurvePlot.Curve;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.Censoring;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.numerics.Line;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.Slack;

/**
 * One press, read. A snap is seen when the force, after a peak, falls by more than 2 % of it and by more than its scatter makes rows of one
 * force differ; the least force is the lowest one until the force is back at the peak or the press ends. A force that scatters is averaged over
 * neighbouring rows first: over as few as bring the scatter below 1 % of the peak, and over half a per cent of the way in at most.
 */
final class PressLook {
    private static final double FALL = 0.02;
    private static final double SCATTERS = 5;
    /** Rows to each side that are averaged at most, as a share of the way in. */
    private static final double SMOOTHED = 0.0025;
    /** Fewer rows show no smallest step of the display. */
    private static final int FEW_ROWS = 100;
    /** A display may go up and down by one step: a fall is more than two. */
    private static final double DIGITS = 2;
    /** A peak is at least this share of the highest force of the way in: smaller ones are contact and friction. */
    private static final double BEYOND_NOISE = 0.05;
    private static final double STIFF_FROM = 0.1;
    private static final double STIFF_TO = 0.4;
    private static final double PER_CENT = 100;
    /** A press that stays farther in than this share of its travel was not let out. */
    private static final double CLOSED = 0.2;
    private static final Source AREAS = Source.derived("areas under pressing in and letting out");
    private static final Source OWN = Source.commonPractice("force gauge and travel of the same press");

    private static final Source STROKE = Source.commonPractice("doubt of the contact and flatness of the turning; the travel scale taken as exact");

    private final Recording recording;
    private final PressDetails details;
    private final double[] travel;
    /** At rest taken off; averaged over rows once the peak is found, so that a single value is not one of noise. */
    private double[] force;
    private final List<RecordingResult> results = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final Marks marks;

    PressLook(Recording recording, PressDetails details, RecordingData data) {
        this.recording = recording;
        this.details = details;
        this.marks = new Marks(recording);
        travel = data.find(ChannelRole.TRAVEL).orElseThrow().values();
        double[] raw = data.find(ChannelRole.FORCE).orElseThrow().values();
        double zero = details == null || details.getZeroForce() == null ? 0 : details.getZeroForce();
        force = raw.clone();
        for (int i = 0; zero != 0 && i < force.length; i++) {
            force[i] -= zero;
        }
    }

    Look look(Watch watch) {
        Trace trace = Trace.of(travel, force);
        List<Trace.Branch> branches = trace.branches();
        watch.check();
        Optional<Trace.Branch> in = branches.stream().filter(Trace.Branch::out).findFirst();
        if (in.isEmpty()) {
            remarks.add(Say.caution(OWN, "curve.press.noWay"));
        } else {
            read(trace, branches, in.get());
        }
        return new Look(List.of(plot(branches)), marks.all(), results, remarks);
    }

    private void read(Trace trace, List<Trace.Branch> branches, Trace.Branch in) {
        double digit = digit(in);
        int most = trace.step() > 0 ? (int) (SMOOTHED * (in.to() - in.from())) : 0;
        Fall rough = fall(trace.smoothed(most), in, digit);
        boolean snaps = rough.seen();
        Trace calm = trace.smoothed(rows(trace, rough, in, most));
        force = calm.y();
        int highest = snaps ? calm.highest(Math.max(in.from(), rough.peak() - 2 * most), rough.until()) : calm.highest(in.from(), in.to());
        if (!(force[highest] > 0)) {
            remarks.add(Say.caution(OWN, "curve.press.noForce"));
            return;
        }
        Slack slack = details == null ? Slack.UNKNOWN : details.getSlack();
        double contact = marks.at("contact", calm.begin(in.from(), highest, slack));
        double doubt = marks.byHand("contact") ? 0 : calm.doubt(in.from(), highest, slack);
        if (slack == Slack.UNKNOWN && !marks.byHand("contact")) {
            remarks.add(Say.note(Source.commonPractice(), "curve.slack.usual"));
        }
        rest(calm, in.from(), highest);
        double top = force[highest];
        highest = nearest(in, marks.at("peak", travel[highest]));
        double peakForce = force[highest];
        Double half = ForceGauge.halfWidth(recording.getInstrument(), trace.step());
        ForceGauge.remark(recording.getInstrument()).ifPresent(remarks::add);
        if (!snaps && !marks.byHand("peak")) {
            results.add(new RecordingResult("peak-force", Say.message("curve.result.peak-force").text(), TestingProperties.PEAK_FORCE, peakForce, half, "N", OWN,
                    Censoring.MORE_THAN));
            remarks.add(Say.note(OWN, "curve.press.noSnap", Rounded.text(peakForce, "N"), Rounded.text(travel[in.to()] - contact, "mm")));
        } else {
            snap(calm, in, highest, top, contact, doubt, half);
        }
        stiffness(trace, calm, in.from(), highest);
        branches.stream().filter(b -> !b.out() && b.from() >= in.to()).findFirst().ifPresent(back -> loss(trace, in, back, contact));
    }

    /** What the part does not give back when it is let out again. */
    private void loss(Trace trace, Trace.Branch in, Trace.Branch back, double contact) {
        double put = trace.work(in.from(), in.to(), contact);
        double given = -trace.work(back.from(), back.to(), contact);
        if (!(put > 0)) {
            return;
        }
        if (travel[back.to()] - contact > CLOSED * (travel[in.to()] - contact)) {
            remarks.add(Say.caution(AREAS, "curve.press.open"));
        }
        if (recording.getCycle() == null) {
            remarks.add(Say.note(AREAS, "curve.press.cycle"));
        }
        results.add(new RecordingResult("press-loss", Say.message("curve.result.press-loss").text(), CurveProperties.PRESS_LOSS, PER_CENT * (put - given) / put, null, "%", AREAS));
    }

    /**
     * A peak behind which the force falls.
     *
     * @param peak  its row; below 0 when the force never falls
     * @param until row at which it has fallen far enough to be sure
     */
    private record Fall(int peak, int until) {
        boolean seen() {
            return peak >= 0;
        }
    }

    /** The first fall. A lead-in that only drifts down is none: the force must have risen to the peak by as much. */
    private static Fall fall(Trace calm, Trace.Branch in, double digit) {
        double[] y = calm.y();
        double highest = y[calm.highest(in.from(), in.to())];
        double noise = Math.max(calm.span(in.from(), in.to()), DIGITS * digit);
        int best = in.from();
        double least = y[best];
        double leastBefore = least;
        for (int i = in.from() + 1; i <= in.to(); i++) {
            least = Math.min(least, y[i]);
            double enough = Math.max(FALL * Math.abs(y[best]), noise);
            if (y[i] > y[best]) {
                best = i;
                leastBefore = least;
            } else if (y[best] - y[i] > enough) {
                if (y[best] - leastBefore > enough && y[best] > BEYOND_NOISE * highest) {
                    return new Fall(best, i);
                }
                best = i;
                least = y[i];
                leastBefore = least;
            }
        }
        return new Fall(-1, in.to());
    }

    /** Rows to each side to average over, so that the scatter is small beside the fall that counts; a sharp peak is not blunted more than that asks for. */
    private static int rows(Trace trace, Fall fall, Trace.Branch in, int most) {
        double top = trace.y()[fall.seen() ? fall.peak() : trace.highest(in.from(), in.to())];
        double span = trace.span(in.from(), in.to()) / (FALL / 2 * Math.abs(top));
        return (int) Math.min(most, Math.ceil((span * span - 1) / 2));
    }

    /** The smallest step of the force from row to row: that of the display, when it shows one; 0 for a few rows. */
    private double digit(Trace.Branch in) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = in.from() + 1; i <= in.to(); i++) {
            double step = Math.abs(force[i] - force[i - 1]);
            least = step > 0 && step < least ? step : least;
        }
        return in.to() - in.from() < FEW_ROWS || Double.isInfinite(least) ? 0 : least;
    }

    private void snap(Trace calm, Trace.Branch in, int peak, double top, double contact, double doubt, Double half) {
        int least = peak;
        for (int i = peak + 1; i <= in.to() && force[i] <= Math.max(top, force[peak]); i++) {
            least = force[i] < force[least] ? i : least;
        }
        least = nearest(in, marks.at("least", travel[least]));
        double p = force[peak];
        double l = force[least];
        result("peak-force", TestingProperties.PEAK_FORCE, p, half, "N");
        result("least-force", TestingProperties.LEAST_FORCE, l, half, "N");
        Double ratioHalf = half == null ? null : half * Math.sqrt(1 + l * l / (p * p)) / p;
        result("snap-ratio", TestingProperties.SNAP_RATIO, (p - l) / p, ratioHalf, "");
        stroke("peak-travel", CurveProperties.PEAK_TRAVEL, travel[peak] - contact, Math.hypot(doubt, flat(calm, in, peak, 1)));
        stroke("least-travel", CurveProperties.LEAST_TRAVEL, travel[least] - contact, Math.hypot(doubt, flat(calm, in, least, -1)));
        if (least == in.to()) {
            remarks.add(Say.caution(OWN, "curve.press.leastAtEnd"));
        }
        if (l <= 0) {
            remarks.add(Say.note(OWN, "curve.press.stays"));
        }
    }

    private void stiffness(Trace trace, Trace calm, int from, int peak) {
        int a = calm.begun(from, peak, STIFF_FROM * force[peak]);
        int b = calm.begun(from, peak, STIFF_TO * force[peak]);
        if (b - a < 2) {
            remarks.add(Say.note(OWN, "curve.press.fewRows"));
            return;
        }
        trace.line(a, b).map(Line::slope).filter(s -> s > 0).ifPresent(s -> result("stiffness", null, s, null, "N/mm"));
    }

    private void rest(Trace calm, int from, int peak) {
        boolean said = details != null && details.getZeroForce() != null;
        double first = force[from];
        if (!said && Math.abs(first) > Math.max(FALL * force[peak], SCATTERS * calm.step())) {
            remarks.add(Say.caution(Source.commonPractice(), "curve.rest", Rounded.text(first, "N")));
        }
    }

    /** How far about a turning of the force it is as high (sign 1) or as low (-1) as far as the scatter lets one tell; one row at least. */
    private double flat(Trace calm, Trace.Branch in, int row, int sign) {
        double give = calm.span(in.from(), in.to());
        int a = row;
        int b = row;
        while (a > in.from() && (force[row] - force[a]) * sign <= give) {
            a--;
        }
        while (b < in.to() && (force[row] - force[b]) * sign <= give) {
            b++;
        }
        return (travel[b] - travel[a]) / 2;
    }

    private void stroke(String id, String property, double value, double half) {
        results.add(new RecordingResult(id, Say.message("curve.result." + id).text(), property, value, half, "mm", STROKE));
    }

    private int nearest(Trace.Branch branch, double place) {
        int best = branch.from();
        for (int i = branch.from(); i <= branch.to(); i++) {
            best = Math.abs(travel[i] - place) < Math.abs(travel[best] - place) ? i : best;
        }
        return best;
    }

    private void result(String id, String property, double value, Double half, String unit) {
        results.add(new RecordingResult(id, Say.message("curve.result." + id).text(), property, value, half, unit, OWN));
    }

    private CurvePlot plot(List<Trace.Branch> branches) {
        List<Curve> curves = Branches.curves(branches, travel, force);
        return new CurvePlot("force", Say.message("curve.plot.press").text(), true, Say.message("curve.axis.travel").text(), "mm", Say.message("curve.axis.force").text(), "N",
                curves);
    }
}
