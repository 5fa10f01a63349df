package org.flexwright.core.rubber;

import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.numerics.Roots;

/** Where a law loses its stability (Drucker's condition in plane stress). */
public final class Stability {
    /** Steps over the range, even in the logarithm of the stretch: fine enough that no smooth law of few terms turns back in between. */
    private static final int STEPS = 400;
    private static final double ROOT_TOLERANCE = 1e-12;

    /**
     * A place where a law gives way.
     *
     * @param loading how it is stretched
     * @param stretch where it happens, nearest to 1
     */
    public record Limit(Loading loading, double stretch) {
    }

    private Stability() {
    }

    /** The place nearest to the undeformed state, over all loadings, between two stretches around 1; empty when there is none. */
    public static Optional<Limit> limit(RubberLaw law, double low, double high) {
        Limit nearest = null;
        for (Loading loading : Loading.values()) {
            for (double end : new double[] {low, high}) {
                OptionalDouble found = towards(law, loading, end);
                boolean nearer = found.isPresent() && (nearest == null || Math.abs(Math.log(found.getAsDouble())) < Math.abs(Math.log(nearest.stretch())));
                nearest = nearer ? new Limit(loading, found.getAsDouble()) : nearest;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** The first stretch from 1 towards {@code end} where a loading loses its stability; empty when it keeps it. */
    public static OptionalDouble towards(RubberLaw law, Loading loading, double end) {
        double step = Math.log(end) / STEPS;
        if (!law.tangent(loading, 1).stable()) {
            return OptionalDouble.of(1);
        }
        for (int i = 1; i <= STEPS; i++) {
            double here = Math.exp(step * i);
            if (!law.tangent(loading, here).stable()) {
                double before = Math.exp(step * (i - 1));
                // Trace and determinant are positive before: the determinant goes first, or both fail between two steps.
                OptionalDouble root = Roots.brent(s -> law.tangent(loading, s).determinant(), Math.min(before, here), Math.max(before, here), ROOT_TOLERANCE);
                return root.isPresent() ? root : OptionalDouble.of(here);
            }
        }
        return OptionalDouble.empty();
    }
}
