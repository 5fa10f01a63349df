package org.flexwright.testing.hardness;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Say;

/** Where durometer readings differ from the protocol of their standard. */
final class ProtocolRemarks {
    /** By hand, readings on one piece may differ by so much. */
    private static final double HAND_SPREAD = 5;
    private static final Source HAND_SOURCE = Source.published("rubber handbook page: up to 5 points between readings by hand");
    private static final Source USUAL = Source.commonPractice();
    private static final double ROOM = 23;
    private static final double ROOM_TOLERANCE = 2;
    private static final double WARM_ROOM = 27;
    /** Dwells that differ by no more than this share of the wanted one, or by a tenth of a second, count as the same. */
    private static final double DWELL_TOLERANCE = 0.1;

    private ProtocolRemarks() {
    }

    /** About the piece: thickness, plies, shape, places. */
    static List<Remark> ofPiece(DurometerCheck.Inputs in) {
        List<Remark> remarks = new ArrayList<>();
        Requirement thickness = in.standard().minThickness(in.scale());
        if (in.thickness() < thickness.value()) {
            remarks.add(Say.caution(thickness.source(), "thin", mm(in.thickness()), in.standard(), mm(thickness.value())));
        }
        Requirement plies = in.standard().maxPlies();
        if (in.plies() > plies.value()) {
            remarks.add(Say.caution(plies.source(), "many-plies", in.plies(), Rounded.text(plies.value(), "")));
        } else if (in.plies() > 1) {
            remarks.add(Say.note(USUAL, "plies", in.plies()));
        }
        if (in.curved()) {
            remarks.add(Say.caution(USUAL, "curved"));
        }
        distance(remarks, in.edge(), in.standard().minEdge(in.scale()), "edge", in.standard());
        distance(remarks, in.spacing(), in.standard().minSpacing(in.scale()), "spacing", in.standard());
        return remarks;
    }

    private static void distance(List<Remark> remarks, Double entered, Requirement wanted, String key, DurometerStandard standard) {
        if (entered == null) {
            remarks.add(Say.note(wanted.source(), key + ".missing", standard, mm(wanted.value())));
        } else if (entered < wanted.value()) {
            remarks.add(Say.caution(wanted.source(), key, mm(entered), standard, mm(wanted.value())));
        }
    }

    /** About the readings: number, dwell, rest, temperature, window, spread. */
    static List<Remark> ofReading(DurometerCheck.Inputs in, double centre, double spread) {
        List<Remark> remarks = new ArrayList<>();
        Requirement number = in.standard().minReadings(in.material());
        if (in.readings().size() == 1) {
            remarks.add(Say.caution(number.source(), "one-reading", Rounded.text(number.value(), "")));
        } else if (in.readings().size() < number.value()) {
            remarks.add(Say.caution(number.source(), "few-readings", in.readings().size(), in.standard(), Rounded.text(number.value(), "")));
        }
        Requirement dwell = in.standard().dwell(in.material());
        if (Math.abs(in.dwell() - dwell.value()) > DWELL_TOLERANCE * Math.max(1, dwell.value())) {
            remarks.add(Say.note(dwell.source(), "dwell", Rounded.text(in.dwell(), "s"), in.standard(), Rounded.text(dwell.value(), "s")));
        }
        Requirement rest = in.standard().hoursAfterCure();
        if (in.rest() != null && in.rest() < rest.value()) {
            remarks.add(Say.caution(rest.source(), "rest", Rounded.text(in.rest(), "h"), Rounded.text(rest.value(), "h")));
        }
        if (in.temperature() != null && !nearRoom(in.temperature())) {
            double ideal = (in.temperature() - ROOM) * EntropicDrift.pointsPerKelvin(in.scale(), centre, ROOM);
            remarks.add(Say.caution(Source.published("ISO 48-4:2018, cl. 8; what warmth does: derived and common practice"), "temperature",
                    Rounded.text(in.temperature(), "°C"), Rounded.text(ideal, "")));
        }
        if (!ScaleChoice.inWindow(centre)) {
            GaugeScale suited = ScaleChoice.suited(in.scale(), centre);
            String key = suited == in.scale() ? "window.alone" : "window";
            remarks.add(Say.caution(ScaleChoice.WINDOW_SOURCE, key, Rounded.text(centre, ""), in.scale(), suited));
        }
        if (spread > HAND_SPREAD) {
            remarks.add(Say.caution(HAND_SOURCE, "spread", Rounded.text(spread, "")));
        }
        return remarks;
    }

    private static boolean nearRoom(double celsius) {
        return Math.abs(celsius - ROOM) <= ROOM_TOLERANCE || Math.abs(celsius - WARM_ROOM) <= ROOM_TOLERANCE;
    }

    private static String mm(double value) {
        return Rounded.text(value, "mm");
    }
}
