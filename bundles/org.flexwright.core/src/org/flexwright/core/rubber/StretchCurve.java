package org.flexwright.core.rubber;

import java.util.Objects;

/**
 * The loading branch of a stretched piece, from the undeformed state to the largest stretch or the break, as a rubber law sees it.
 *
 * @param loading how it was stretched
 * @param stretch length over undeformed length, above 0, as they were recorded; not copied, not to be changed
 * @param stress  nominal stress (force over undeformed area) in MPa, as many
 */
public record StretchCurve(Loading loading, double[] stretch, double[] stress) {
    public StretchCurve {
        Objects.requireNonNull(loading, "loading");
        if (stretch.length != stress.length) {
            throw new IllegalArgumentException("A curve needs as many stretches as stresses.");
        }
    }
}
