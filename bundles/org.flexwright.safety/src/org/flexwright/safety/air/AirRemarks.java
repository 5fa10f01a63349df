package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.safety.Say;

/** What is said about a concentration: how it compares with the figure entered, and nothing beyond. */
final class AirRemarks {
    /** Share of the lower explosive limit, in per cent, that is taken as the edge of a vapour area. */
    private static final double VAPOUR_AREA = 25;
    private static final Source VAPOUR_AREA_SOURCE = Source.published("29 CFR 1910.123 and .124: 25 % of the lower flammable limit");
    private static final Source ENTERED = Source.ownRecord("the figure entered");
    private static final Source LAYER = Source.derived("vapour at rest above washing liquids lies within or above the explosive limits: NIOSH Pocket Guide 2005-149");
    private static final Source NEAR_FIELD = Source.fromMemory("two-zone room: a room mean understates the breathing zone");

    private AirRemarks() {
    }

    /** How a mean in ppm compares with the figure entered; both may be exceeded near the source whatever it says. */
    static String comparison(double ppm, Double limit, String source) {
        return compare(Figures.of(ppm, "ppm"), ppm, limit, limit == null ? "" : Figures.of(limit, "ppm"), source);
    }

    /** The same without a unit of its own. */
    static String plainComparison(double value, Double limit, String source) {
        return compare(Figures.of(value, ""), value, limit, limit == null ? "" : Figures.of(limit, ""), source);
    }

    private static String compare(String shown, double value, Double limit, String limitShown, String source) {
        if (limit == null) {
            return Say.message("air.no-figure", shown).text();
        }
        String from = source == null || source.isBlank() ? Say.message("air.no-source").text() : source.strip();
        return Say.message(value > limit ? "air.above" : "air.below", shown, limitShown, from).text();
    }

    static void figure(List<Remark> remarks, double ppm, Double limit, String source) {
        if (limit != null && ppm > limit) {
            remarks.add(Say.caution(ENTERED, "air.above.remark", Figures.of(ppm, "ppm"), Figures.of(limit, "ppm")));
        }
        source(remarks, limit, source);
    }

    /** True near every liquid that burns, whatever a sum over the room says. */
    static Remark nearLiquid() {
        return Say.caution(LAYER, "air.near-liquid");
    }

    static Remark nearSource() {
        return Say.caution(NEAR_FIELD, "air.near-source");
    }

    /** A figure without its source and year is worth little. */
    static void source(List<Remark> remarks, Double limit, String source) {
        if (limit != null && (source == null || source.isBlank())) {
            remarks.add(Say.caution(ENTERED, "air.source-missing"));
        }
    }

    static void lowerLimit(List<Remark> remarks, Double percent) {
        if (percent != null && percent >= VAPOUR_AREA) {
            remarks.add(new Remark(Severity.STOP, Say.message("air.vapour-area", Figures.of(percent, "%")), VAPOUR_AREA_SOURCE));
        }
    }

    static String convention(double mixing) {
        return Say.message("air.convention", Figures.of(mixing, "")).text();
    }
}
