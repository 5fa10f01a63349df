package org.flexwright.testing.motion;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Outcome;
import org.flexwright.testing.Say;

/** Heights of rebounds that a person typed, in the order they were seen. */
final class ReboundHeights {
    private ReboundHeights() {
    }

    /** The refusal of the first height that nothing can come back to from a fall, both in mm; empty when all are possible. */
    static <R extends Record> Optional<Outcome<R>> refused(List<Double> heights, double fall) {
        for (int i = 0; i < heights.size(); i++) {
            double height = heights.get(i);
            if (!(height > 0 && height < fall)) {
                return Optional.of(Outcome.refused("rebounds", Say.message("drop.height", i + 1, Rounded.text(height, "mm"), Rounded.text(fall, "mm")), Say.message("drop.height.remedy")));
            }
        }
        return Optional.empty();
    }
}
