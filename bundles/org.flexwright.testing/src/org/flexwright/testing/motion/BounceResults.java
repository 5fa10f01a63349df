package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.motion.ImpactFinder.Impact;

/** What the impacts of some drops say of restitution, drop height and energy given back. */
final class BounceResults {
    /** Expanded uncertainty at about 95 %. */
    private static final double COVERAGE = 2;
    private static final double LEVEL = 0.975;
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;
    /** Half width in m to which a drop height set by hand and a rule is known. */
    private static final double HEIGHT_HALF_WIDTH = 0.002;
    private static final Source HEIGHT = Source.commonPractice("a drop height set by hand with a rule is taken to be known to 2 mm");
    private static final Source FROM_HEIGHT = Source.derived("free fall: g T0^2 / 8 over the drop height; height taken to be known to 2 mm (common practice, no source)");
    private static final Source TIMING = Source.derived("from the moments of the impacts alone");
    /** s: a soft part may touch so long. */
    private static final double CONTACT_EXAMPLE = 0.005;

    private final List<BounceSeries> drops;
    private final Double height;
    private final List<RecordingResult> results = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    /**
     * Reads the drops.
     *
     * @param drops  by time
     * @param height m it was dropped from; null when nobody said
     */
    BounceResults(List<BounceSeries> drops, Double height) {
        this.drops = List.copyOf(drops);
        this.height = height;
        for (int d = 0; d < drops.size(); d++) {
            read(drops.get(d), d);
        }
        if (!drops.isEmpty()) {
            double flight = drops.get(0).flights()[0];
            remarks.add(Say.note(TIMING, "bounce.contact", Rounded.text(CONTACT_EXAMPLE * MILLI, "ms"), Rounded.text(flight * MILLI, "ms"),
                    Rounded.text(PERCENT * CONTACT_EXAMPLE / flight, "%")));
            remarks.add(Say.note(BouncingBall.SOURCE, "rebound.speed"));
        }
    }

    List<RecordingResult> results() {
        return results;
    }

    List<Remark> remarks() {
        return remarks;
    }

    /** The restitution of each bounce, when there are two flights somewhere. */
    Optional<RecordingPlot> plot() {
        return drops.stream().anyMatch(d -> d.impacts().size() > 2) ? Optional.of(new RestitutionPlot(drops)) : Optional.empty();
    }

    /** Longest first flight in s after a drop from {@code height} m, with a little room for the height. */
    static double longestFlight(double height) {
        return 2 * Math.sqrt(2 * (height + HEIGHT_HALF_WIDTH) / BouncingBall.G) * 1.02;
    }

    /** Words that say which drop is meant; empty when there is one alone. */
    static String which(int drop, int drops) {
        return drops == 1 ? "" : "drop " + (drop + 1) + ": ";
    }

    private void read(BounceSeries drop, int number) {
        String id = drops.size() == 1 ? "" : "-" + (number + 1);
        String which = which(number, drops.size());
        double[] flights = drop.flights();
        List<Impact> impacts = drop.impacts();
        if (height != null) {
            double share = BouncingBall.apex(flights[0]) / height;
            double relative = Math.hypot(2 * Math.hypot(impacts.get(0).uncertainty(), impacts.get(1).uncertainty()) / flights[0], HEIGHT_HALF_WIDTH / Math.sqrt(3) / height);
            add("rebound-drop" + id, which + "rebound after the drop", TestingProperties.REBOUND_DROP, PERCENT * share, COVERAGE * PERCENT * share * relative, "%", FROM_HEIGHT);
            double first = BouncingBall.firstRestitution(height, flights[0]);
            add("restitution-drop" + id, which + "coefficient of restitution, first impact", null, first, COVERAGE * first * relative / 2, "", FROM_HEIGHT);
        }
        if (flights.length < 2) {
            remarks.add(Say.caution(BouncingBall.SOURCE, height == null ? "bounce.two" : "bounce.two.height", which));
            return;
        }
        double e = BouncingBall.restitution(flights[0], flights[1]);
        double u = BouncingBall.restitutionUncertainty(flights[0], e, impacts.get(0).uncertainty(), impacts.get(1).uncertainty(), impacts.get(2).uncertainty());
        add("rebound-bounce" + id, which + "rebound at the second impact", TestingProperties.REBOUND_BOUNCE, PERCENT * e * e, COVERAGE * PERCENT * 2 * e * u, "%", BouncingBall.SOURCE);
        add("restitution" + id, which + "coefficient of restitution, second impact", null, e, COVERAGE * u, "", BouncingBall.SOURCE);
        overAll(flights, id, which);
        double heard = BouncingBall.dropHeight(flights[0], e);
        double uHeard = BouncingBall.dropHeightUncertainty(flights[0], flights[1], impacts.get(0).uncertainty(), impacts.get(1).uncertainty(), impacts.get(2).uncertainty());
        add("height" + id, which + "drop height, as heard", null, MILLI * heard, COVERAGE * MILLI * uHeard, "mm", BouncingBall.SOURCE);
        if (height != null) {
            compare(heard, COVERAGE * Math.hypot(uHeard, HEIGHT_HALF_WIDTH / Math.sqrt(3)), which);
        }
    }

    private void overAll(double[] flights, String id, String which) {
        if (flights.length < 3) {
            return;
        }
        Line line = line(flights);
        double e = Math.exp(line.slope());
        double half = StudentT.quantile(LEVEL, flights.length - 2) * line.slopeError().orElseThrow() * e;
        add("restitution-fit" + id, which + "coefficient of restitution over " + flights.length + " flights", null, e, half, "", BouncingBall.SOURCE);
    }

    /** ln T over the number of the flight; two flights at least. */
    static Line line(double[] flights) {
        double[] number = new double[flights.length];
        double[] logarithm = new double[flights.length];
        for (int i = 0; i < flights.length; i++) {
            number[i] = i;
            logarithm[i] = Math.log(flights[i]);
        }
        return LeastSquares.line(number, logarithm).orElseThrow();
    }

    private void compare(double heard, double half, String which) {
        boolean apart = Math.abs(heard - height) > half;
        String said = Rounded.text(MILLI * height, "mm");
        String as = Rounded.text(MILLI * heard, "mm") + " ± " + Rounded.text(MILLI * half, "mm");
        remarks.add(apart ? Say.caution(HEIGHT, "bounce.height.apart", which, as, said) : Say.note(HEIGHT, "bounce.height.agrees", which, as, said));
    }

    private void add(String id, String title, String property, double value, double half, String unit, Source source) {
        results.add(new RecordingResult(id, title, property, value, half, unit, source));
    }
}
