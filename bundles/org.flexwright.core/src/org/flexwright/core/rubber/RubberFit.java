package org.flexwright.core.rubber;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.LinearFit;

/**
 * A polynomial law fitted to measured nominal stresses, unweighted least squares on the stress.
 *
 * @param law       what was found; it may be unstable: ask {@link Stability}
 * @param rms       root of the mean squared residual, MPa
 * @param r2        1 - SSE / sum of squares about the mean stress; empty when the stress does not vary
 */
public record RubberFit(PolynomialLaw law, double rms, OptionalDouble r2) {

    /** Forms of the law. */
    public enum Form {
        /** c10 alone. */
        NEO_HOOKE(PolynomialLaw.neoHooke(1)),
        /** c10 and c01. */
        MOONEY_RIVLIN(PolynomialLaw.neoHooke(1), new PolynomialLaw(0, 1, 0, 0)),
        /** c10, c20 and c30. */
        YEOH(PolynomialLaw.neoHooke(1), new PolynomialLaw(0, 0, 1, 0), new PolynomialLaw(0, 0, 0, 1));

        private final List<PolynomialLaw> parts;

        Form(PolynomialLaw... parts) {
            this.parts = List.of(parts);
        }

        /** How many coefficients it has. */
        public int coefficients() {
            return parts.size();
        }

        private PolynomialLaw law(LinearFit fit) {
            return switch (this) {
                case NEO_HOOKE -> PolynomialLaw.neoHooke(fit.coefficient(0));
                case MOONEY_RIVLIN -> PolynomialLaw.mooneyRivlin(fit.coefficient(0), fit.coefficient(1));
                case YEOH -> PolynomialLaw.yeoh(fit.coefficient(0), fit.coefficient(1), fit.coefficient(2));
            };
        }
    }

    /**
     * A measured point.
     *
     * @param loading how it was stretched
     * @param stretch above 0
     * @param stress  nominal stress, MPa
     */
    public record Point(Loading loading, double stretch, double stress) {
    }

    /** Fits; empty when the points do not determine the coefficients. The stress is linear in them. */
    public static Optional<RubberFit> of(Form form, List<Point> points) {
        double[][] design = points.stream().map(p -> form.parts.stream().mapToDouble(part -> part.stress(p.loading(), p.stretch())).toArray()).toArray(double[][]::new);
        double[] stress = points.stream().mapToDouble(Point::stress).toArray();
        return LeastSquares.linear(design, stress).map(fit -> new RubberFit(form.law(fit), fit.rms(), fit.r2()));
    }
}
