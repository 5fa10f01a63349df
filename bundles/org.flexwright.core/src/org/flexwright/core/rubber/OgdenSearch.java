package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.flexwright.core.Watch;
import org.flexwright.numerics.SeparableFit;

/** Fits an Ogden law from many starts, always the same ones: the stress is linear in mu, so only the exponents are searched. */
final class OgdenSearch {
    /** Exponents beyond are no rubber but a wall. */
    private static final double MOST = 30;
    /** More points than these are not needed to tell one least from another. */
    private static final int MOST_POINTS = 400;
    private static final double SAME = 1e-6;
    private static final double NO_TERM = 1e-6;

    /**
     * A least that was found.
     *
     * @param coefficients mu and alpha of each term, largest exponent first
     * @param sse          sum of the weighted squared residuals
     * @param jacobian     in the order of the coefficients
     * @param reached      how many starts ended there
     */
    record Found(double[] coefficients, double sse, double[][] jacobian, int reached) {
        double[] exponents() {
            return IntStream.range(0, coefficients.length / 2).mapToDouble(t -> coefficients[2 * t + 1]).toArray();
        }
    }

    private OgdenSearch() {
    }

    /** All leasts that were found, closest first. Of many points, every so many are searched first and all only from what that found. */
    static List<Found> of(int terms, List<RubberFit.Point> points, double[] factors, Watch watch) {
        int every = (points.size() + MOST_POINTS - 1) / MOST_POINTS;
        if (every > 1) {
            int[] some = IntStream.range(0, points.size()).filter(i -> i % every == 0).toArray();
            List<Found> coarse = of(terms, IntStream.of(some).mapToObj(points::get).toList(), IntStream.of(some).mapToDouble(i -> factors[i]).toArray(), watch);
            return search(points, factors, coarse.stream().map(Found::exponents).toList(), coarse.stream().map(Found::reached).toList(), watch);
        }
        List<double[]> starts = OgdenStarts.all(terms);
        return search(points, factors, starts, Collections.nCopies(starts.size(), 1), watch);
    }

    private static List<Found> search(List<RubberFit.Point> points, double[] factors, List<double[]> starts, List<Integer> reached, Watch watch) {
        SeparableFit.Shape shape = new Powers(points, factors);
        double[] stress = IntStream.range(0, factors.length).mapToDouble(i -> factors[i] * points.get(i).stress()).toArray();
        List<Found> found = new ArrayList<>();
        for (int s = 0; s < starts.size(); s++) {
            watch.check();
            int ended = reached.get(s);
            SeparableFit.from(shape, new double[0][], stress, starts.get(s), -MOST, MOST).filter(OgdenSearch::usable).ifPresent(fit -> add(found, sorted(fit, ended)));
        }
        found.sort(Comparator.comparingDouble(Found::sse));
        return found;
    }

    private static boolean usable(SeparableFit fit) {
        for (double alpha : fit.parameters()) {
            if (Math.abs(alpha) < NO_TERM) {
                return false;
            }
        }
        return true;
    }

    private static Found sorted(SeparableFit fit, int reached) {
        int terms = fit.parameters().length;
        List<Integer> order = IntStream.range(0, terms).boxed().sorted(Comparator.comparingDouble((Integer j) -> -fit.parameters()[j])).toList();
        double[] coefficients = new double[2 * terms];
        double[][] jacobian = new double[fit.jacobian().length][2 * terms];
        for (int t = 0; t < terms; t++) {
            int j = order.get(t);
            coefficients[2 * t] = fit.factors()[j];
            coefficients[2 * t + 1] = fit.parameters()[j];
            for (int i = 0; i < jacobian.length; i++) {
                jacobian[i][2 * t] = fit.jacobian()[i][j];
                jacobian[i][2 * t + 1] = fit.jacobian()[i][terms + j];
            }
        }
        return new Found(coefficients, fit.sse(), jacobian, reached);
    }

    private static void add(List<Found> all, Found one) {
        for (int i = 0; i < all.size(); i++) {
            Found other = all.get(i);
            if (Math.abs(other.sse() - one.sse()) <= SAME * other.sse() && near(other.coefficients(), one.coefficients())) {
                Found better = one.sse() < other.sse() ? one : other;
                all.set(i, new Found(better.coefficients(), better.sse(), better.jacobian(), other.reached() + one.reached()));
                return;
            }
        }
        all.add(one);
    }

    private static boolean near(double[] a, double[] b) {
        for (int j = 1; j < a.length; j += 2) {
            if (Math.abs(a[j] - b[j]) > 1e-3 * (1 + Math.abs(a[j]))) {
                return false;
            }
        }
        return true;
    }

    /** Stress of a term with mu = 1 by its exponent: l^(a - 1) - l^(e a - 1). */
    private static final class Powers implements SeparableFit.Shape {
        private final double[] logarithm;
        private final double[] free;
        private final double[] factor;

        Powers(List<RubberFit.Point> points, double[] factors) {
            logarithm = points.stream().mapToDouble(p -> Math.log(p.stretch())).toArray();
            free = points.stream().mapToDouble(p -> OgdenLaw.free(p.loading())).toArray();
            factor = IntStream.range(0, factors.length).mapToDouble(i -> factors[i] / points.get(i).stretch()).toArray();
        }

        @Override
        public void at(double alpha, double[] column, double[] slope) {
            for (int i = 0; i < column.length; i++) {
                double along = Math.exp(alpha * logarithm[i]);
                // along to the power of free, without another exponential
                double across = free[i] == -0.5 ? 1 / Math.sqrt(along) : free[i] == -1 ? 1 / along : 1 / (along * along);
                column[i] = factor[i] * (along - across);
                slope[i] = factor[i] * logarithm[i] * (along - free[i] * across);
            }
        }
    }
}
