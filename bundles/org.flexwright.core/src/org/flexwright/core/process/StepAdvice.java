package org.flexwright.core.process;

import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.find.Remark;

/**
 * What a step says about itself right now: a running target, a deviation, an amount to add. Shown beside the fields and on the command line.
 *
 * @param name   stable name within the step kind, e.g. {@code targetB}, {@code deviation}, {@code addB}
 * @param label  words beside it
 * @param value  the value with its source
 * @param unit   unit symbol
 * @param remark a sentence that goes with it, or null
 */
public record StepAdvice(String name, String label, Estimate value, String unit, Remark remark) {
    public StepAdvice {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
    }
}
