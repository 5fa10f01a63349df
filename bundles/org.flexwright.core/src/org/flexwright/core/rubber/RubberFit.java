package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

import org.flexwright.core.Watch;
import org.flexwright.numerics.Covariance;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.LinearFit;
import org.flexwright.numerics.StudentT;

/**
 * A law fitted to measured nominal stresses by least squares, one or several loadings together.
 *
 * @param form         of the law
 * @param weighting    which points counted how much
 * @param points       what it was fitted to
 * @param law          what was found; it may be unstable: see {@code limit}
 * @param coefficients in the order of the form
 * @param young        initial Young's modulus of the law in MPa with its standard error
 * @param residuals    measured less law, MPa, one a point
 * @param rms          root of the mean squared residual, unweighted, MPa
 * @param r2           1 - SSE / sum of squares about the mean stress, unweighted; empty when the stress does not vary
 * @param limit        where the law loses its stability between the least and the largest stretch used, in any loading; empty when nowhere
 * @param starts       how many starts the search had; 0 for a law whose fit needs none
 * @param reached      how many of them ended here
 * @param closer       a fit of this form that lies closer to the points but is unstable; null when there is none
 */
public record RubberFit(RubberForm form, Weighting weighting, List<Point> points, RubberLaw law, List<Coefficient> coefficients, Coefficient young, List<Double> residuals, double rms,
        OptionalDouble r2, Optional<Stability.Limit> limit, int starts, int reached, Closer closer) {
    /** Name of the initial Young's modulus among the coefficients. */
    public static final String YOUNG = "E";

    /** The stability of a law is looked at over some compression and some stretching at least. */
    private static final double NEARLY_ONE = 0.9;
    private static final double LEVEL = 0.95;
    /** Share of the largest stress below which a residual is rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * A measured point.
     *
     * @param loading how it was stretched
     * @param stretch above 0
     * @param stress  nominal stress, MPa
     */
    public record Point(Loading loading, double stretch, double stress) {
    }

    /**
     * A coefficient with its error. It speaks of these points alone, and only as far as the law is right and the residuals are chance.
     *
     * @param name  as in the formula
     * @param unit  {@code MPa} or empty
     * @param value in the unit
     * @param error standard error to first order; empty when as many points as coefficients or when the points do not determine it
     * @param band  95 % interval by Student's t; empty with the error
     */
    public record Coefficient(String name, String unit, double value, OptionalDouble error, Optional<Interval> band) {
    }

    /**
     * An unstable fit that lies closer.
     *
     * @param rms   its root mean square residual, MPa
     * @param limit where it gives way
     */
    public record Closer(double rms, Stability.Limit limit) {
    }

    public RubberFit {
        points = List.copyOf(points);
        coefficients = List.copyOf(coefficients);
        residuals = List.copyOf(residuals);
    }

    /** Every MPa counts alike. */
    public static Optional<RubberFit> of(RubberForm form, List<Point> points) {
        return of(form, Weighting.EQUAL, points, Watch.NONE);
    }

    /**
     * Fits. Of an Ogden law, whose fit has several leasts, the closest stable one is taken, and the closest of all only when none is stable.
     *
     * @return empty when the points do not determine the coefficients, or no search settled
     */
    public static Optional<RubberFit> of(RubberForm form, Weighting weighting, List<Point> points, Watch watch) {
        if (points.size() < form.coefficients()) {
            return Optional.empty();
        }
        double[] factors = weighting.factors(points);
        if (form.terms() > 0) {
            return ogden(form, weighting, points, OgdenSearch.of(form.terms(), points, factors, watch));
        }
        List<PolynomialLaw> units = form.units();
        double[][] design = new double[points.size()][];
        double[] stress = new double[points.size()];
        for (int i = 0; i < design.length; i++) {
            Point p = points.get(i);
            double factor = factors[i];
            design[i] = units.stream().mapToDouble(unit -> factor * unit.stress(p.loading(), p.stretch())).toArray();
            stress[i] = factor * p.stress();
        }
        Optional<LinearFit> fit = LeastSquares.linear(design, stress);
        return fit.map(f -> made(form, weighting, points, f.coefficients().stream().mapToDouble(Double::doubleValue).toArray(), f.sse(), design, 0, 0));
    }

    private static Optional<RubberFit> ogden(RubberForm form, Weighting weighting, List<Point> points, List<OgdenSearch.Found> found) {
        List<RubberFit> fits = found.stream().map(f -> made(form, weighting, points, f.coefficients(), f.sse(), f.jacobian(), OgdenStarts.COUNT, f.reached())).toList();
        Optional<RubberFit> stable = fits.stream().filter(f -> f.limit().isEmpty()).findFirst();
        if (stable.isEmpty() || fits.get(0).limit().isEmpty()) {
            return fits.stream().findFirst();
        }
        return stable.map(f -> f.besides(new Closer(fits.get(0).rms(), fits.get(0).limit().orElseThrow())));
    }

    private RubberFit besides(Closer unstable) {
        return new RubberFit(form, weighting, points, law, coefficients, young, residuals, rms, r2, limit, starts, reached, unstable);
    }

    private static RubberFit made(RubberForm form, Weighting weighting, List<Point> points, double[] c, double sse, double[][] jacobian, int starts, int reached) {
        RubberLaw law = form.law(c);
        int df = points.size() - c.length;
        Optional<Covariance> covariance = df == 0 ? Optional.empty() : Covariance.of(jacobian, sse / df);
        List<Coefficient> coefficients = new ArrayList<>();
        for (int j = 0; j < c.length; j++) {
            int at = j;
            String name = form.names().get(j);
            coefficients.add(coefficient(name, name.startsWith("alpha") ? "" : "MPa", c[j], covariance.map(v -> v.error(at)), df));
        }
        Coefficient young = coefficient(YOUNG, "MPa", law.youngsModulus(), covariance.map(v -> v.error(slopesOfYoung(form, c))), df);
        double[] residuals = points.stream().mapToDouble(p -> p.stress() - law.stress(p.loading(), p.stretch())).toArray();
        double squares = DoubleStream.of(residuals).map(r -> r * r).sum();
        double mean = points.stream().mapToDouble(Point::stress).average().orElse(0);
        double about = points.stream().mapToDouble(p -> (p.stress() - mean) * (p.stress() - mean)).sum();
        OptionalDouble r2 = about == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 - squares / about);
        return new RubberFit(form, weighting, points, law, coefficients, young, DoubleStream.of(residuals).boxed().toList(), Math.sqrt(squares / points.size()), r2,
                Stability.limit(law, Math.min(NEARLY_ONE, least(points)), Math.max(1 / NEARLY_ONE, largest(points))), starts, reached, null);
    }

    private static Coefficient coefficient(String name, String unit, double value, Optional<Double> error, int df) {
        Optional<Double> known = error.filter(Double::isFinite);
        return new Coefficient(name, unit, value, known.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                known.map(e -> Interval.around(value, StudentT.quantile((1 + LEVEL) / 2, df) * e)));
    }

    /** How E changes with each coefficient: E = 6 (C10 + C01), or 3/2 sum of mu alpha. */
    private static double[] slopesOfYoung(RubberForm form, double[] c) {
        double[] slopes = new double[c.length];
        for (int j = 0; j < c.length; j++) {
            if (form.terms() > 0) {
                slopes[j] = 1.5 * (j % 2 == 0 ? c[j + 1] : c[j - 1]);
            } else {
                slopes[j] = form.units().get(j).youngsModulus();
            }
        }
        return slopes;
    }

    /** Least stretch used. */
    public double least() {
        return least(points);
    }

    /** Largest stretch used. */
    public double largest() {
        return largest(points);
    }

    /** The loadings that were used. */
    public List<Loading> loadings() {
        return points.stream().map(Point::loading).distinct().sorted().toList();
    }

    /** Root mean square residual of one loading, MPa. */
    public double rms(Loading loading) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).loading() == loading) {
                sum += residuals.get(i) * residuals.get(i);
                n++;
            }
        }
        return n == 0 ? 0 : Math.sqrt(sum / n);
    }

    /**
     * Whether residuals beside each other along the stretch have the same sign so often that they are no chance (runs of signs,
     * A. Wald and J. Wolfowitz 1940, from memory, unconfirmed; one-sided 5 % with the normal distribution, at least 10 points). Then the law
     * bends otherwise than the points, and the errors of the coefficients say too little.
     */
    public boolean bendsOtherwise() {
        if (rms <= ROUNDING * points.stream().mapToDouble(p -> Math.abs(p.stress())).max().orElse(0)) {
            return false;
        }
        int plus = 0;
        int minus = 0;
        int runs = 0;
        int before = 0;
        Loading loading = null;
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> points.get(i).loading()).thenComparing(i -> points.get(i).stretch()));
        for (int i : order) {
            int sign = residuals.get(i) >= 0 ? 1 : -1;
            plus += sign > 0 ? 1 : 0;
            minus += sign < 0 ? 1 : 0;
            runs += sign != before || points.get(i).loading() != loading ? 1 : 0;
            before = sign;
            loading = points.get(i).loading();
        }
        double n = plus + (double) minus;
        if (n < 10 || plus == 0 || minus == 0) {
            return n >= 10;
        }
        double expected = 1 + 2.0 * plus * minus / n;
        double deviation = Math.sqrt((expected - 1) * (expected - 2) / (n - 1));
        return runs < expected - 1.645 * deviation;
    }

    private static double least(List<Point> points) {
        return points.stream().mapToDouble(Point::stretch).min().orElse(1);
    }

    private static double largest(List<Point> points) {
        return points.stream().mapToDouble(Point::stretch).max().orElse(1);
    }
}
