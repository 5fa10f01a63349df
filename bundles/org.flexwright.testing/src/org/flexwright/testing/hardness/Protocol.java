package org.flexwright.testing.hardness;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Severity;
import org.flexwright.numerics.Descriptive;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.hardness.Deviation.Matter;

/** Where durometer readings differ from the protocol of their standard. What nobody said is passed over, or noted where the standard was named. */
public final class Protocol {
    /** By hand, readings on one piece may differ by so much. */
    private static final double HAND_SPREAD = 5;
    private static final Source HAND_SOURCE = Source.published("rubber handbook page: up to 5 points between readings by hand");
    private static final Source USUAL = Source.commonPractice();
    private static final double ROOM = 23;
    private static final double ROOM_TOLERANCE = 2;
    private static final double WARM_ROOM = 27;
    /** So near, in kelvin, it is noted and no more (common practice, no source). */
    private static final double NOTED = 5;
    /** Dwells that differ by no more than this share of the wanted one, or by a tenth of a second, count as the same. */
    private static final double DWELL_TOLERANCE = 0.1;

    private Protocol() {
    }

    /** All deviations, the piece first. */
    public static List<Deviation> check(Facts facts) {
        List<Deviation> found = new ArrayList<>();
        thickness(facts, found);
        plies(facts, found);
        if (facts.curved()) {
            found.add(Deviation.caution(Matter.CURVATURE, USUAL, "curved"));
        }
        distance(found, facts, facts.edge(), facts.standard().minEdge(facts.scale()), Matter.EDGE, "edge", "edge.missing");
        distance(found, facts, facts.spacing(), facts.standard().minSpacing(facts.scale()), Matter.SPACING, "spacing", "spacing.missing");
        number(facts, found);
        dwell(facts, found);
        rest(facts, found);
        if (!facts.readings().isEmpty()) {
            figures(facts, found);
        }
        return found;
    }

    private static void thickness(Facts facts, List<Deviation> found) {
        Requirement least = facts.standard().minThickness(facts.scale());
        if (facts.thickness() != null && facts.thickness() < least.value()) {
            found.add(Deviation.caution(Matter.THICKNESS, least.source(), "thin", mm(facts.thickness()), facts.standard(), mm(least.value())));
        }
    }

    private static void plies(Facts facts, List<Deviation> found) {
        if (facts.plies() == null) {
            return;
        }
        Requirement most = facts.standard().maxPlies();
        if (facts.plies() > most.value()) {
            found.add(Deviation.caution(Matter.PLIES, most.source(), "many-plies", facts.plies(), Rounded.text(most.value(), "")));
        } else if (facts.plies() > 1) {
            found.add(Deviation.note(Matter.PLIES, USUAL, "plies", facts.plies()));
        }
        if (facts.plies() > 1 && Boolean.FALSE.equals(facts.plySmooth())) {
            found.add(Deviation.caution(Matter.PLIES, USUAL, "rough-plies"));
        }
    }

    private static void distance(List<Deviation> found, Facts facts, Double entered, Requirement wanted, Matter matter, String key, String missing) {
        if (entered == null && facts.stated()) {
            found.add(Deviation.note(matter, wanted.source(), missing, facts.standard(), mm(wanted.value())));
        } else if (entered != null && entered < wanted.value()) {
            found.add(Deviation.caution(matter, wanted.source(), key, mm(entered), facts.standard(), mm(wanted.value())));
        }
    }

    private static void number(Facts facts, List<Deviation> found) {
        Requirement number = facts.standard().minReadings(facts.sort());
        int count = facts.readings().size();
        if (count == 1) {
            found.add(Deviation.caution(Matter.NUMBER, number.source(), "one-reading", Rounded.text(number.value(), "")));
        } else if (count > 0 && count < number.value()) {
            found.add(Deviation.caution(Matter.NUMBER, number.source(), "few-readings", count, facts.standard(), Rounded.text(number.value(), "")));
        }
    }

    private static void dwell(Facts facts, List<Deviation> found) {
        Requirement dwell = facts.standard().dwell(facts.sort());
        boolean asked = facts.stated() || facts.sort() != RubberKind.UNKNOWN;
        if (asked && facts.dwell() != null && Math.abs(facts.dwell() - dwell.value()) > DWELL_TOLERANCE * Math.max(1, dwell.value())) {
            found.add(Deviation.note(Matter.DWELL, dwell.source(), "dwell", Rounded.text(facts.dwell(), "s"), facts.standard(), Rounded.text(dwell.value(), "s")));
        }
    }

    private static void rest(Facts facts, List<Deviation> found) {
        Requirement rest = facts.standard().hoursAfterCure();
        if (facts.rest() != null && facts.rest() < rest.value()) {
            found.add(Deviation.caution(Matter.REST, rest.source(), "rest", Rounded.text(facts.rest(), "h"), Rounded.text(rest.value(), "h")));
        }
    }

    private static void figures(Facts facts, List<Deviation> found) {
        double[] readings = facts.readings().stream().mapToDouble(Double::doubleValue).toArray();
        double centre = facts.standard().centre() == Centre.MEDIAN ? Descriptive.median(readings) : Descriptive.mean(readings);
        if (facts.temperature() != null && !near(facts.temperature(), ROOM_TOLERANCE)) {
            boolean told = centre > 0 && centre < 100;
            double ideal = told ? (facts.temperature() - ROOM) * EntropicDrift.pointsPerKelvin(facts.scale(), centre, ROOM) : 0;
            Severity severity = near(facts.temperature(), NOTED) ? Severity.NOTE : Severity.CAUTION;
            found.add(new Deviation(Matter.TEMPERATURE, severity, "temperature", Source.published("ISO 48-4:2018, cl. 8; what warmth does: derived and common practice"), List.of(
                    Rounded.text(facts.temperature(), "°C"), (ideal < 0 ? "−" : "+") + Rounded.text(Math.abs(Math.round(10 * ideal) / 10.0), ""))));
        }
        if (!ScaleChoice.inWindow(centre)) {
            GaugeScale suited = ScaleChoice.suited(facts.scale(), centre);
            String key = suited == facts.scale() ? "window.alone" : "window";
            found.add(Deviation.caution(Matter.WINDOW, ScaleChoice.WINDOW_SOURCE, key, Rounded.text(centre, ""), facts.scale(), suited));
        }
        double spread = Descriptive.range(readings);
        if (spread > HAND_SPREAD) {
            found.add(Deviation.caution(Matter.SPREAD, HAND_SOURCE, "spread", Rounded.text(spread, "")));
        }
    }

    private static boolean near(double celsius, double by) {
        return Math.abs(celsius - ROOM) <= by || Math.abs(celsius - WARM_ROOM) <= by;
    }

    private static String mm(double value) {
        return Rounded.text(value, "mm");
    }
}
