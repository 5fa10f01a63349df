package org.flexwright.testing.rule;

import org.flexwright.model.Measurement;
import org.flexwright.model.Specimen;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Readings;
import org.flexwright.testing.data.HardnessDetails;
import org.flexwright.testing.data.HardnessRule;
import org.flexwright.testing.data.RubberSort;
import org.flexwright.testing.data.TestingDataFactory;
import org.flexwright.testing.hardness.DurometerStandard;
import org.flexwright.testing.hardness.Facts;
import org.flexwright.testing.hardness.RubberKind;

/** How a durometer was held: what the details of a measurement say of it. */
final class Held {
    private static final HardnessDetails NOTHING = TestingDataFactory.eINSTANCE.createHardnessDetails();

    private Held() {
    }

    /** What was said; an empty one when nothing was. */
    static HardnessDetails details(Measurement measurement) {
        return measurement.getDetails() instanceof HardnessDetails details ? details : NOTHING;
    }

    /** Whether the place is curved, by its name or by what was said. */
    static boolean curved(Measurement measurement) {
        return Readings.curvedSpot(measurement.getKey().getSpot()) || Boolean.TRUE.equals(details(measurement).getCurved());
    }

    /** Whether somebody said which standard the readings follow. */
    static boolean stated(Measurement measurement) {
        return details(measurement).getRule() != HardnessRule.UNKNOWN;
    }

    /** The standard that was named, else the one for rubber where it has the scale, else the one that has. */
    static DurometerStandard standard(Measurement measurement, GaugeScale scale) {
        return switch (details(measurement).getRule()) {
            case ISO_48_4 -> DurometerStandard.ISO_48_4;
            case ISO_868 -> DurometerStandard.ISO_868;
            case ASTM_D2240 -> DurometerStandard.ASTM_D2240;
            case UNKNOWN -> DurometerStandard.ISO_48_4.covers(scale) ? DurometerStandard.ISO_48_4 : DurometerStandard.ASTM_D2240;
        };
    }

    /** What sort it is, as far as it was said. */
    static RubberKind sort(Measurement measurement) {
        RubberSort sort = details(measurement).getSort();
        return sort == RubberSort.VULCANISED ? RubberKind.VULCANISED : sort == RubberSort.THERMOPLASTIC ? RubberKind.THERMOPLASTIC : RubberKind.UNKNOWN;
    }

    /** All that is known of a measurement; rest after cure and conditioning have rules of their own. The room's temperature stands for that of pieces that lay in it for an hour. */
    static Facts facts(Specimen piece, Measurement measurement, GaugeScale scale) {
        HardnessDetails held = details(measurement);
        Double conditioned = measurement.getSession() == null ? null : measurement.getSession().getConditioningHours();
        Double room = conditioned == null || conditioned < 1 ? null : measurement.getSession().getRoomC();
        return new Facts(standard(measurement, scale), stated(measurement), scale, sort(measurement), piece.getThickness(), held.getPlies(), held.getPlySmooth(),
                curved(measurement), held.getEdge(), held.getSpacing(), measurement.getKey().getDwell(), null,
                measurement.getPieceC() != null ? measurement.getPieceC() : room, Pieces.values(measurement));
    }
}
