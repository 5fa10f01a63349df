package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.model.Censoring;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.StretchLoading;
import org.flexwright.testing.piece.Strength;

/**
 * One stretching, read. The axis of the marks is the length as recorded: travel in mm, strain in per cent or stretch. Strain counts from the
 * mark {@code begin}, where the force begins.
 */
final class StretchLook {
    private static final double PER_CENT = 100;
    /** Three thickness readings may differ by so much: 2 % of a stress, beside what is known of the force. */
    private static final double SECTION = 0.02;
    /** Half width in strain over which a stress at a strain is taken. */
    private static final double NEAR = 0.005;
    private static final double TANGENT = 0.1;
    private static final double SECANT = 0.2;
    /** A broken piece carries less than this share of its highest force. */
    private static final double BROKEN = 0.8;
    /** A loop is closed when the piece comes back to this share of its stretch. */
    private static final double CLOSED = 0.2;
    private static final double REST = 0.02;
    private static final double UPPER = 0.975;
    private static final double SCATTERS = 5;
    private static final Source STRESS = Source.derived("force over undeformed width and thickness; section taken as known to 2 %, as far as ISO 37 lets three thickness readings differ");
    private static final Source STRESS_ALONE = Source.derived(STRESS.text() + "; the force taken as exact, no gauge with a known accuracy is named");
    private static final Source ELONGATION = Source.derived("travel over gauge length; doubt of where the force begins, the gauge length taken as exact");
    private static final Source AS_FILE = Source.ownRecord("stress as the file gives it");
    private static final Source TENSILE = Source.fromMemory("ISO 37, ASTM D412");
    private static final Source AREAS = Source.derived("areas under loading and unloading, trapezoids on their own travel");

    private final Recording recording;
    private final StretchDetails details;
    private final ChannelRole length;
    private final boolean isForce;
    /** Force in N or stress in MPa, rest taken off. */
    private final Trace trace;
    /** One unit of strain along the axis; NaN when the gauge length is needed and missing. */
    private final double unitStrain;
    /** What makes a stress in MPa of the force; NaN when the section is missing. */
    private final double toStress;
    private final List<RecordingResult> results = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final Marks marks;
    private List<Trace.Branch> branches = List.of();
    private Trace.Branch first;
    /** Last row of the first loading that counts. */
    private int end;
    /** Last row before the piece broke; -1 when it did not. */
    private int broken = -1;
    private double begin;
    /** How far off the beginning may be, along the axis. */
    private double doubt;

    StretchLook(Recording recording, StretchDetails details, RecordingData data) {
        this.recording = recording;
        this.details = details;
        this.marks = new Marks(recording);
        length = data.find(ChannelRole.STRETCH).or(() -> data.find(ChannelRole.STRAIN)).or(() -> data.find(ChannelRole.TRAVEL)).orElseThrow().role();
        isForce = data.find(ChannelRole.STRESS).isEmpty();
        double[] raw = data.find(isForce ? ChannelRole.FORCE : ChannelRole.STRESS).orElseThrow().values();
        double zero = !isForce || details == null || details.getZeroForce() == null ? 0 : details.getZeroForce();
        double[] rest = raw;
        if (zero != 0) {
            rest = raw.clone();
            for (int i = 0; i < rest.length; i++) {
                rest[i] -= zero;
            }
        }
        trace = Trace.of(data.find(length).orElseThrow().values(), rest);
        unitStrain = switch (length) {
            case STRETCH -> 1;
            case STRAIN -> PER_CENT;
            default -> details == null || details.getGaugeLength() == null ? Double.NaN : details.getGaugeLength();
        };
        toStress = !isForce ? 1 : details == null || details.getWidth() == null || details.getThickness() == null ? Double.NaN
                : Strength.stress(1, details.getWidth(), details.getThickness());
    }

    Look look(Watch watch) {
        if (!find(watch)) {
            return new Look(List.of(rawPlot()), marks.all(), results, remarks);
        }
        rest();
        List<CurvePlot> plots = new ArrayList<>(List.of(rawPlot()));
        if (known()) {
            if (loading() != Loading.UNIAXIAL) {
                remarks.add(Say.note(TENSILE, "curve.stretch.notUniaxial"));
            }
            stresses();
            moduli();
            ends();
            plots.add(stressPlot());
        }
        loops(watch);
        return new Look(List.copyOf(plots), marks.all(), results, remarks);
    }

    /** The loading branch as rubber laws see it. */
    Optional<StretchCurve> curve(Watch watch) {
        if (!find(watch) || Double.isNaN(unitStrain) || Double.isNaN(toStress)) {
            return Optional.empty();
        }
        int from = trace.reached(first.from(), end, begin);
        double[] stretch = new double[Math.max(0, end - from + 1)];
        double[] stress = new double[stretch.length];
        for (int i = 0; i < stretch.length; i++) {
            stretch[i] = 1 + strain(trace.x()[from + i]);
            stress[i] = trace.y()[from + i] * toStress;
        }
        return stretch.length < 2 ? Optional.empty() : Optional.of(new StretchCurve(loading(), stretch, stress));
    }

    private Loading loading() {
        return details == null ? Loading.UNIAXIAL : switch (details.getLoading()) {
            case EQUIBIAXIAL -> Loading.EQUIBIAXIAL;
            case PLANAR -> Loading.PLANAR;
            default -> Loading.UNIAXIAL;
        };
    }

    private boolean find(Watch watch) {
        branches = trace.branches();
        watch.check();
        Optional<Trace.Branch> out = branches.stream().filter(Trace.Branch::out).findFirst();
        if (out.isEmpty()) {
            remarks.add(Say.caution(TENSILE, "curve.stretch.noWay"));
            return false;
        }
        first = out.get();
        int highest = trace.highest(first.from(), first.to());
        if (!(trace.y()[highest] > 0)) {
            remarks.add(Say.caution(TENSILE, "curve.stretch.noPull"));
            return false;
        }
        Slack slack = details == null ? Slack.UNKNOWN : details.getSlack();
        begin = marks.at("begin", beginning(slack, highest));
        doubt = length != ChannelRole.TRAVEL || marks.byHand("begin") ? 0 : trace.doubt(first.from(), highest, slack);
        end = first.to();
        if (broke()) {
            broken = broken();
            end = Math.min(end, broken);
        } else {
            marks.show("end", trace.x()[end]);
        }
        if (length != ChannelRole.TRAVEL && (slack == Slack.TANGENT || slack == Slack.FORCE_STEP)) {
            remarks.add(Say.note(TENSILE, "curve.stretch.counted"));
        }
        if (slack == Slack.UNKNOWN && !marks.byHand("begin") && length == ChannelRole.TRAVEL) {
            remarks.add(Say.note(Source.commonPractice(), "curve.slack.usual"));
        }
        return true;
    }

    /** A file that gives strain or stretch counts from the undeformed length itself: there only a person can say that it begins elsewhere, by the mark. */
    private double beginning(Slack slack, int highest) {
        return switch (length) {
            case STRETCH -> 1;
            case STRAIN -> 0;
            default -> trace.begin(first.from(), highest, slack);
        };
    }

    /** The last row before the break, on the way out on which the highest force of all was reached. */
    private int broken() {
        int highest = trace.highest(0, trace.y().length - 1);
        Trace.Branch way = branches.stream().filter(b -> b.out() && b.from() <= highest && highest <= b.to()).findFirst().orElse(first);
        int last = Math.min(Math.max(highest, way.from()), way.to());
        while (last < way.to() && trace.y()[last + 1] >= BROKEN * trace.y()[highest]) {
            last++;
        }
        double place = marks.at("break", trace.x()[last]);
        return Math.min(way.to(), trace.reached(way.from(), way.to(), place));
    }

    private boolean broke() {
        return details != null && (Boolean.TRUE.equals(details.getBroke()) || Boolean.TRUE.equals(details.getBrokeInGrip()));
    }

    private boolean known() {
        if (Double.isNaN(unitStrain)) {
            remarks.add(Say.caution(TENSILE, "curve.stretch.noGauge"));
        }
        if (Double.isNaN(toStress)) {
            remarks.add(Say.caution(TENSILE, "curve.stretch.noSection"));
        }
        return !Double.isNaN(unitStrain) && !Double.isNaN(toStress);
    }

    private void rest() {
        double level = trace.y()[first.from()];
        boolean said = !isForce || details != null && details.getZeroForce() != null;
        if (!said && Math.abs(level) > Math.max(REST * trace.y()[trace.highest(first.from(), end)], SCATTERS * trace.step())) {
            remarks.add(Say.caution(Source.commonPractice(), "curve.rest", Rounded.text(level, "N")));
        }
        if (length == ChannelRole.TRAVEL && details != null && details.getPiece() != null && !details.getPiece().isBlank()) {
            remarks.add(Say.note(TENSILE, "curve.stretch.grips"));
        }
    }

    private double strain(double place) {
        return (place - begin) / unitStrain;
    }

    private double place(double strain) {
        return begin + strain * unitStrain;
    }

    private double reached() {
        return strain(trace.x()[end]);
    }

    private double stressAt(int from, int to, double strain) {
        return trace.at(from, to, place(strain), NEAR * unitStrain) * toStress;
    }

    /** Share of a stress at a strain that hangs on where the strain begins. */
    private double slackAt(double strain) {
        double one = stressAt(first.from(), end, strain);
        double other = stressAt(first.from(), end, Math.max(0, strain - doubt / unitStrain));
        return one > 0 ? Math.abs(one - other) / one : 0;
    }

    private void stresses() {
        if (details == null || details.getLoading() == StretchLoading.UNKNOWN) {
            remarks.add(Say.note(TENSILE, "curve.stretch.loading"));
        }
        for (int percent : new int[] { 100, 300 }) {
            if (reached() >= percent / PER_CENT) {
                marks.show("stress-" + percent, place(percent / PER_CENT));
                stress("stress-" + percent, percent == 100 ? CurveProperties.STRESS_100 : CurveProperties.STRESS_300, stressAt(first.from(), end, percent / PER_CENT), slackAt(percent
                        / PER_CENT));
            } else {
                remarks.add(Say.note(TENSILE, "curve.stretch.notReached", percent, Rounded.text(reached() * PER_CENT, "%")));
            }
        }
    }

    private void moduli() {
        double reached = reached();
        if (!(reached > 0)) {
            return;
        }
        int a = trace.reached(first.from(), end, marks.at("tangent-from", place(0)));
        double to = marks.at("tangent-to", place(Math.min(TANGENT, reached / 2)));
        int b = trace.reached(first.from(), end, to) - 1;
        Optional<Line> line = b > a ? trace.line(a, b) : Optional.empty();
        if (line.isPresent() && line.get().slope() > 0) {
            double modulus = line.get().slope() * unitStrain * toStress;
            double scatter = line.get().slopeError().orElse(Double.NaN) / line.get().slope();
            stress("tangent-modulus", CurveProperties.TANGENT_MODULUS, modulus, Double.isNaN(scatter) ? null : StudentT.quantile(UPPER, line.get().n() - 2.0) * scatter);
        } else {
            remarks.add(Say.note(TENSILE, "curve.stretch.fewRows"));
        }
        double at = strain(marks.at("secant", place(Math.min(SECANT, reached / 2))));
        if (at > 0 && at <= reached) {
            double modulus = stressAt(first.from(), end, at) / at;
            results.add(new RecordingResult("secant-modulus", Say.message("curve.result.secant-modulus-at", Rounded.text(at * PER_CENT, "%")).text(),
                    ofStrip(CurveProperties.SECANT_MODULUS), modulus, half(modulus, Math.hypot(slackAt(at), doubt / unitStrain / at)), "MPa", source()));
        }
    }

    private void ends() {
        int until = broken < 0 ? trace.y().length - 1 : broken;
        double strength = trace.y()[trace.highest(first.from(), until)] * toStress;
        if (details != null && Boolean.TRUE.equals(details.getBrokeInGrip())) {
            remarks.add(Say.caution(TENSILE, "curve.stretch.inGrip"));
        } else if (broke()) {
            stress("strength", CurveProperties.STRENGTH, strength);
            results.add(new RecordingResult("break-elongation", Say.message("curve.result.break-elongation").text(), ofStrip(CurveProperties.BREAK_ELONGATION), PER_CENT * strain(trace.x()[broken]),
                    doubt == 0 ? null : PER_CENT * doubt / unitStrain, "%", doubt == 0 ? TENSILE : ELONGATION));
        } else if (details != null && Boolean.FALSE.equals(details.getBroke())) {
            results.add(new RecordingResult("strength", Say.message("curve.result.strength").text(), ofStrip(CurveProperties.STRENGTH), strength, half(strength, 0), "MPa", source(),
                    Censoring.MORE_THAN));
        } else {
            remarks.add(Say.note(TENSILE, "curve.stretch.brokeUnsaid"));
        }
    }

    /** The properties are those of a strip pulled in one direction. */
    private String ofStrip(String property) {
        return loading() == Loading.UNIAXIAL ? property : null;
    }

    private void stress(String id, String property, double value) {
        stress(id, property, value, 0.0);
    }

    private void stress(String id, String property, double value, Double relative) {
        results.add(new RecordingResult(id, Say.message("curve.result." + id).text(), ofStrip(property), value, relative == null ? null : half(value, relative), "MPa", source()));
    }

    private Source source() {
        return !isForce ? AS_FILE : ForceGauge.halfWidth(recording.getInstrument(), trace.step()) == null ? STRESS_ALONE : STRESS;
    }

    /** Half width of a stress: the section, the gauge where it is known, and what is known besides; null for a stress the file gave ready made. */
    private Double half(double stress, double relative) {
        if (!isForce) {
            return null;
        }
        Double gauge = ForceGauge.halfWidth(recording.getInstrument(), trace.step());
        double force = gauge == null ? 0 : gauge * toStress;
        return Math.sqrt(Math.pow(SECTION * stress, 2) + force * force + Math.pow(relative * stress, 2));
    }

    /** Losses of the loops, and what the first loading cost the later ones. */
    private void loops(Watch watch) {
        List<int[]> loops = new ArrayList<>();
        for (int i = 0; i + 1 < branches.size(); i++) {
            if (branches.get(i).out() && (broken < 0 || branches.get(i + 1).to() <= broken)) {
                loops.add(new int[] { i, i + 1 });
            }
        }
        if (loops.isEmpty()) {
            return;
        }
        int before = recording.getCycle() == null ? 1 : recording.getCycle();
        if (recording.getCycle() == null) {
            remarks.add(Say.note(TENSILE, "curve.stretch.cycle"));
        }
        loss(loops.get(0), before);
        watch.check();
        if (loops.size() > 1) {
            loss(loops.get(loops.size() - 1), before + loops.size() - 1);
        }
        long loadings = branches.stream().filter(Trace.Branch::out).count();
        if (loadings > 1 && before == 1) {
            softening(loadings);
        }
    }

    private void loss(int[] loop, int number) {
        Trace.Branch out = branches.get(loop[0]);
        Trace.Branch back = branches.get(loop[1]);
        double in = trace.work(out.from(), out.to(), begin);
        double given = -trace.work(back.from(), back.to(), begin);
        if (!(in > 0)) {
            return;
        }
        if (trace.x()[back.to()] - begin > CLOSED * (trace.x()[out.to()] - begin)) {
            remarks.add(Say.caution(AREAS, "curve.loop.open", number));
        }
        boolean virgin = number == 1;
        results.add(new RecordingResult(virgin ? "first-loop-loss" : "loop-loss", Say.message("curve.result.loss", number).text(), virgin ? CurveProperties.FIRST_LOOP_LOSS
                : CurveProperties.LOOP_LOSS, PER_CENT * (in - given) / in, null, "%", AREAS));
    }

    private void softening(long loadings) {
        Trace.Branch last = branches.stream().filter(Trace.Branch::out).reduce((a, b) -> b).orElseThrow();
        double half = begin + (trace.x()[first.to()] - begin) / 2;
        if (trace.x()[last.to()] < half) {
            return;
        }
        double near = NEAR * (Double.isNaN(unitStrain) ? trace.x()[first.to()] - begin : unitStrain);
        double one = trace.at(first.from(), first.to(), half, near);
        double later = trace.at(last.from(), last.to(), half, near);
        if (one > 0) {
            results.add(new RecordingResult("softening", Say.message("curve.result.softening", loadings).text(), CurveProperties.SOFTENING, PER_CENT * (one - later) / one, null,
                    "%", Source.derived("two stresses of one piece at half the strain that the first loading reached")));
        }
    }

    private CurvePlot rawPlot() {
        String axis = switch (length) {
            case STRETCH -> "stretch";
            case STRAIN -> "strain";
            default -> "travel";
        };
        String unit = switch (length) {
            case STRETCH -> "";
            case STRAIN -> "%";
            default -> "mm";
        };
        return new CurvePlot("force", Say.message(isForce ? "curve.plot.pull" : "curve.plot.recorded").text(), true, Say.message("curve.axis." + axis).text(), unit, Say.message(
                isForce ? "curve.axis.force" : "curve.axis.stress").text(), isForce ? "N" : "MPa", Branches.curves(branches, trace.x(), trace.y()));
    }

    private CurvePlot stressPlot() {
        int to = broken < 0 ? trace.x().length : broken + 1;
        double[] strain = Arrays.stream(trace.x(), 0, to).map(v -> PER_CENT * strain(v)).toArray();
        double[] stress = Arrays.stream(trace.y(), 0, to).map(v -> v * toStress).toArray();
        // the slack before the force begins is seen in the curve as recorded
        int start = Math.min(trace.reached(first.from(), end, begin), end);
        List<Trace.Branch> drawn = branches.stream().filter(b -> b.from() < to - 1).map(b -> new Trace.Branch(b.equals(first) ? start : b.from(), Math.min(b.to(), to - 1), b
                .out())).toList();
        List<Curve> curves = Branches.curves(drawn, strain, stress);
        return new CurvePlot("stress", Say.message("curve.plot.stress").text(), false, Say.message("curve.axis.strain").text(), "%", Say.message("curve.axis.stress").text(), "MPa",
                curves);
    }
}
