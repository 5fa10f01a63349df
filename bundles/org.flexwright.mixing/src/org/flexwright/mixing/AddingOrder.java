package org.flexwright.mixing;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Weighing;

/**
 * The order of adding: meant is that of the uses in the step, done is that of their first weighings.
 *
 * @param meant in the order of the step, those weighed only
 * @param done  by the time of the first weighing
 */
record AddingOrder(List<MaterialUse> meant, List<MaterialUse> done) {

    /** Empty until two are weighed at known times. */
    static Optional<AddingOrder> of(Step step) {
        List<MaterialUse> weighed = step.getUses().stream().filter(use -> first(use) != null).toList();
        return weighed.size() < 2 ? Optional.empty() : Optional.of(new AddingOrder(weighed, weighed.stream().sorted(Comparator.comparing(AddingOrder::first)).toList()));
    }

    private static Instant first(MaterialUse use) {
        return use.getWeighings().stream().filter(w -> !w.isCorrection()).map(Weighing::getAt).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    boolean kept() {
        return meant.equals(done);
    }

    static String words(List<MaterialUse> uses) {
        return String.join(", ", uses.stream().map(WeighAdvice::name).toList());
    }
}
