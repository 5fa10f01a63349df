package org.flexwright.testing.curve;

import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.model.Instrument;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Units;
import org.flexwright.testing.Say;

/** How well a single force of a recording is known. */
final class ForceGauge {
    private static final double TWO = 2;
    private static final double RECTANGLE = 3;
    private static final double STEP = 12;

    private ForceGauge() {
    }

    /**
     * Half width in N at about 95 %: what the gauge's maker or check says of it, its step, its own spread and the scatter from row to row; null
     * when no gauge is named or nothing is known of it.
     */
    static Double halfWidth(Instrument gauge, double scatter) {
        if (gauge == null || gauge.getUnit() == null || gauge.getAccuracy() == null && gauge.getSpread() == null) {
            return null;
        }
        return Units.find(QuantityKind.FORCE, gauge.getUnit()).map(unit -> TWO * Math.sqrt(square(gauge.getAccuracy(), unit.factor()) / RECTANGLE + square(gauge
                .getResolution(), unit.factor()) / STEP + square(gauge.getSpread(), unit.factor()) + scatter * scatter)).orElse(null);
    }

    /** What the bands of forces lack; empty when the gauge says how far it may be off. */
    static Optional<Remark> remark(Instrument gauge) {
        if (halfWidth(gauge, 0) == null) {
            return Optional.of(Say.note(Source.commonPractice(), "curve.noBand"));
        }
        return gauge.getAccuracy() == null ? Optional.of(Say.note(Source.commonPractice(), "curve.noAccuracy")) : Optional.empty();
    }

    private static double square(Double value, double factor) {
        return value == null ? 0 : value * factor * value * factor;
    }
}
