package org.flexwright.testing.law;

import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.rubber.RubberLaw;
import org.flexwright.core.rubber.Stability;
import org.flexwright.testing.Say;

/** Laws of rubber in words. */
final class RubberWords {

    private RubberWords() {
    }

    /** Whether a law holds from one stretch to another, and where it gives way when it does not. */
    static String stability(RubberLaw law, double lowest, double highest) {
        Optional<Stability.Limit> limit = Stability.limit(law, lowest, highest);
        return limit.isEmpty() ? Say.message("rubber.stable", Rounded.text(lowest, ""), Rounded.text(highest, "")).text()
                : Say.message("rubber.gives-way", Rounded.text(limit.get().stretch(), ""), limit.get().loading().title()).text();
    }
}
