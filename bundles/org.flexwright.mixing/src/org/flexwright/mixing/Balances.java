package org.flexwright.mixing;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Weighing;

/** The balances of a weighing: those named at the weighings, else those of the session. Steps of the display in g. */
final class Balances {

    private Balances() {
    }

    /** The coarsest of those named in the weighings; before anything is weighed, of the session's. Empty when none is known. */
    static OptionalDouble coarsest(Step step) {
        List<Instrument> used = step.getUses().stream().flatMap(u -> u.getWeighings().stream()).map(Weighing::getInstrument).filter(Objects::nonNull).toList();
        return used.isEmpty() ? ofSession(step) : steps(used.stream());
    }

    /** The step of the balance a weighing was read from; empty when nobody knows. */
    static OptionalDouble of(Weighing weighing, Step step) {
        return weighing.getInstrument() == null ? ofSession(step) : steps(Stream.of(weighing.getInstrument()));
    }

    /** Squared standard uncertainty of the grams of a use: each weighing is two readings rounded to a step. Empty when one balance is unknown. */
    static OptionalDouble variance(MaterialUse use, Step step) {
        double sum = 0;
        for (Weighing weighing : use.getWeighings()) {
            OptionalDouble d = of(weighing, step);
            if (d.isEmpty()) {
                return d;
            }
            double u = ScaleReading.ofNet(d.getAsDouble());
            sum += u * u;
        }
        return OptionalDouble.of(sum);
    }

    private static OptionalDouble ofSession(Step step) {
        return step.getSession() == null ? OptionalDouble.empty()
                : steps(step.getSession().getInstruments().stream().filter(i -> "balance".equals(i.getKind())));
    }

    private static OptionalDouble steps(Stream<Instrument> balances) {
        return balances.filter(i -> "g".equals(i.getUnit())).map(Instrument::getResolution).filter(Objects::nonNull).mapToDouble(Double::doubleValue).filter(r -> r > 0).max();
    }
}
