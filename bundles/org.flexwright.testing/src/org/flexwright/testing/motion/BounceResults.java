package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Figures;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.numerics.Uncertainty;
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
    /** A height heard that is less than this share of the one entered, or the other way round, is another drop; our own choice. */
    private static final double LEAST_OF_HEIGHT = 0.7;
    private static final Source HEIGHT = Source.commonPractice("a drop height set by hand with a rule is taken to be known to 2 mm");
    private static final Source FROM_HEIGHT = Source.derived("free fall: g T0^2 / 8 over the drop height; height taken to be known to 2 mm (common practice, no source)");
    /** s: a soft part may touch so long, which is heard as flight. Nobody measured it, so it is in every band as a limit, either way. */
    private static final double LONGEST_CONTACT = 0.005;
    private static final double CONTACT = Uncertainty.rectangular(LONGEST_CONTACT);
    private static final Source TIMING = Source.commonPractice("moments of the impacts, and a contact of 5 ms at the most that is heard as flight");

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
            remarks.add(Say.note(TIMING, "bounce.contact", Rounded.text(LONGEST_CONTACT * MILLI, "ms"), Rounded.text(flight * MILLI, "ms"),
                    Figures.of(PERCENT * LONGEST_CONTACT / flight, "%", 2)));
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

    /** Words that say which drop is meant; empty when there is one alone. */
    static String which(int drop, int drops) {
        return drops == 1 ? "" : "Drop " + (drop + 1) + ": ";
    }

    private void read(BounceSeries drop, int number) {
        String id = drops.size() == 1 ? "" : "-" + (number + 1);
        String which = which(number, drops.size());
        double[] flights = drop.flights();
        List<Impact> impacts = drop.impacts();
        double share = height == null ? 0 : BouncingBall.apex(flights[0]) / height;
        if (share >= 1) {
            remarks.add(Say.caution(HEIGHT, "bounce.gains", which, Rounded.text(MILLI * share * height, "mm"), Rounded.text(MILLI * height, "mm")));
        } else if (height != null && fromThere(flights)) {
            double moments = Math.hypot(impacts.get(0).uncertainty(), impacts.get(1).uncertainty());
            double relative = Math.hypot(2 * Math.hypot(moments, CONTACT) / flights[0], Uncertainty.rectangular(HEIGHT_HALF_WIDTH) / height);
            add("rebound-drop" + id, which + "Rebound after the drop", TestingProperties.REBOUND_DROP, PERCENT * share, COVERAGE * PERCENT * share * relative, "%", FROM_HEIGHT);
            double first = BouncingBall.firstRestitution(height, flights[0]);
            add("restitution-drop" + id, which + "Restitution, first impact", null, first, COVERAGE * first * relative / 2, "", FROM_HEIGHT);
        }
        if (flights.length < 2) {
            remarks.add(Say.caution(BouncingBall.SOURCE, height == null ? "bounce.two" : "bounce.two.height", which));
            return;
        }
        double e = BouncingBall.restitution(flights[0], flights[1]);
        double u = Math.hypot(BouncingBall.restitutionUncertainty(flights[0], e, impacts.get(0).uncertainty(), impacts.get(1).uncertainty(), impacts.get(2).uncertainty()),
                (1 - e) / flights[0] * CONTACT);
        add("rebound-bounce" + id, which + "Rebound at the second impact", TestingProperties.REBOUND_BOUNCE, PERCENT * e * e, COVERAGE * PERCENT * 2 * e * u, "%", BouncingBall.SOURCE);
        add("restitution" + id, which + "Restitution, second impact", null, e, COVERAGE * u, "", BouncingBall.SOURCE);
        overAll(drop, id, which);
        double heard = BouncingBall.dropHeight(flights[0], e);
        double uHeard = Math.hypot(BouncingBall.dropHeightUncertainty(flights[0], flights[1], impacts.get(0).uncertainty(), impacts.get(1).uncertainty(), impacts.get(2)
                .uncertainty()), heard * Math.abs(4 / flights[0] - 2 / flights[1]) * CONTACT);
        add("height" + id, which + "Drop height, as heard", null, MILLI * heard, COVERAGE * MILLI * uHeard, "mm", BouncingBall.SOURCE);
        if (height != null) {
            compare(heard, COVERAGE * Math.hypot(uHeard, Uncertainty.rectangular(HEIGHT_HALF_WIDTH)), which, flights);
        }
    }

    /** The band holds the wider one of what the flights scatter about the line and of what the moments are known to, and the contact, the same in every flight. */
    private void overAll(BounceSeries drop, String id, String which) {
        double[] flights = drop.flights();
        if (flights.length < 3) {
            return;
        }
        Line line = line(flights);
        double e = Math.exp(line.slope());
        double scatter = StudentT.quantile(LEVEL, flights.length - 2) * line.slopeError().orElseThrow();
        double half = Math.hypot(Math.max(scatter, COVERAGE * slopeUncertainty(drop, line)), COVERAGE * contactInSlope(flights, line));
        add("restitution-fit" + id, which + "Restitution over " + flights.length + " flights", null, e, half * e, "", BouncingBall.SOURCE);
    }

    /** What the uncertainties of the moments do to the slope of the line. */
    private static double slopeUncertainty(BounceSeries drop, Line line) {
        double[] flights = drop.flights();
        double sum = 0;
        double before = 0;
        for (int i = 0; i <= flights.length; i++) {
            double after = i < flights.length ? (i - line.meanX()) / line.sumOfSquaresX() / flights[i] : 0;
            double part = (before - after) * drop.impacts().get(i).uncertainty();
            sum += part * part;
            before = after;
        }
        return Math.sqrt(sum);
    }

    /** What a contact that is the same in every flight does to the slope of the line: it lengthens short flights by a larger share. */
    private static double contactInSlope(double[] flights, Line line) {
        double sum = 0;
        for (int i = 0; i < flights.length; i++) {
            sum += (i - line.meanX()) / line.sumOfSquaresX() / flights[i];
        }
        return Math.abs(sum) * CONTACT;
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

    /** Whether the first flight can have begun at the height entered: with the coefficient of the second impact it does not tell quite another one. */
    private boolean fromThere(double[] flights) {
        if (flights.length < 2) {
            return true;
        }
        double heard = BouncingBall.dropHeight(flights[0], BouncingBall.restitution(flights[0], flights[1]));
        return heard > LEAST_OF_HEIGHT * height && heard < height / LEAST_OF_HEIGHT;
    }

    private void compare(double heard, double half, String which, double[] flights) {
        String said = Rounded.text(MILLI * height, "mm");
        String as = FieldText.rounded(MILLI * heard, MILLI * half) + " ± " + FieldText.rounded(MILLI * half, MILLI * half) + " mm";
        if (!fromThere(flights)) {
            remarks.add(Say.caution(HEIGHT, "bounce.height.apart", which, as, said));
        } else if (Math.abs(heard - height) <= half) {
            remarks.add(Say.note(HEIGHT, "bounce.height.agrees", which, as, said));
        } else if (heard < height) {
            remarks.add(Say.note(HEIGHT, "bounce.height.lower", which, as, said));
        } else {
            remarks.add(Say.caution(HEIGHT, "bounce.height.higher", which, as, said));
        }
    }

    private void add(String id, String title, String property, double value, double half, String unit, Source source) {
        results.add(new RecordingResult(id, title, property, value, half, unit, source));
    }
}
