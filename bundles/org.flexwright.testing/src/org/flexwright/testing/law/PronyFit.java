package org.flexwright.testing.law;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Watch;
import org.flexwright.numerics.Covariance;
import org.flexwright.numerics.SeparableFit;
import org.flexwright.numerics.StudentT;

/**
 * Exponentials fitted to a force that falls at constant deformation: F = F0 (1 - sum g (1 - exp(-t / tau))). They describe the fall over the
 * times measured; another set may describe it as well.
 *
 * @param instant  F0, at the moment the hold began
 * @param band     half width of its 95 % interval; empty when not determined
 * @param terms    shortest time first
 * @param rms      root mean square residual, in the unit of the force
 * @param points   how many points were fitted
 * @param shortest first time after the beginning that was measured, s
 * @param longest  last time, s
 */
public record PronyFit(double instant, OptionalDouble band, List<Term> terms, double rms, int points, double shortest, double longest) {
    /** So many terms at the most. */
    public static final int MOST_TERMS = 4;

    private static final int MOST_POINTS = 150;
    private static final int GRID = 7;
    private static final double BEYOND = 3;
    private static final double LEVEL = 0.975;

    /**
     * A term.
     *
     * @param share     of F0 that relaxes with it, above 0
     * @param shareBand half width of its 95 % interval
     * @param time      relaxation time, s
     * @param timeRatio the 95 % interval of the time is from time / ratio to time * ratio
     */
    public record Term(double share, OptionalDouble shareBand, double time, OptionalDouble timeRatio) {
    }

    public PronyFit {
        terms = List.copyOf(terms);
    }

    /** Share of F0 that is left in the end, if nothing slower follows. */
    public double left() {
        return 1 - terms.stream().mapToDouble(Term::share).sum();
    }

    /** The force after a time. */
    public double at(double time) {
        return Relaxation.prony(instant, terms.stream().map(t -> new Relaxation.Term(t.share(), t.time())).toList(), time);
    }

    /** Whether a time is one of the record's ends rather than one of the piece: near the shortest or the longest time measured. */
    public boolean atTheEdge(Term term) {
        return term.time() < 2 * shortest || term.time() > longest / 2;
    }

    /**
     * Fits; long records are evened out over the logarithm of time first, so that each decade counts alike.
     *
     * @param time  s from when the hold began, not below 0, rising
     * @param force as many
     * @param count terms, 1 to 4
     * @return empty when no set of falling terms is determined by the points
     */
    public static Optional<PronyFit> of(double[] time, double[] force, int count, Watch watch) {
        if (count < 1 || count > MOST_TERMS || time.length != force.length) {
            throw new IllegalArgumentException(count + " terms of " + time.length + " times and " + force.length + " forces.");
        }
        double[][] even = evened(time, force);
        double[] t = even[0];
        double[] f = even[1];
        if (t.length < 2 * count + 2) {
            return Optional.empty();
        }
        double shortest = Arrays.stream(time).filter(x -> x > 0).min().orElse(0);
        double longest = time[time.length - 1];
        if (!(longest > shortest) || !(shortest > 0)) {
            return Optional.empty();
        }
        double[] ones = new double[t.length];
        Arrays.fill(ones, 1);
        SeparableFit.Shape falling = (logarithm, column, slope) -> {
            double rate = Math.exp(-logarithm);
            for (int i = 0; i < t.length; i++) {
                column[i] = Math.exp(-rate * t[i]);
                slope[i] = rate * t[i] * column[i];
            }
        };
        double low = Math.log(shortest / BEYOND);
        double high = Math.log(longest * BEYOND);
        List<SeparableFit> found = new ArrayList<>();
        for (double[] start : starts(count, Math.log(shortest), Math.log(longest))) {
            watch.check();
            SeparableFit.from(falling, new double[][] {ones}, f, start, low, high).filter(PronyFit::falls).ifPresent(found::add);
        }
        return found.stream().min(Comparator.comparingDouble(SeparableFit::sse)).map(best -> made(best, t.length, shortest, longest));
    }

    private static boolean falls(SeparableFit fit) {
        return Arrays.stream(fit.factors()).allMatch(factor -> factor >= 0) && Arrays.stream(fit.factors()).limit(fit.parameters().length).allMatch(factor -> factor > 0);
    }

    /** All ways to take so many places of an even grid. */
    private static List<double[]> starts(int count, double low, double high) {
        List<double[]> all = new ArrayList<>();
        for (int set = 0; set < 1 << GRID; set++) {
            if (Integer.bitCount(set) == count) {
                double[] start = new double[count];
                int j = 0;
                for (int place = 0; place < GRID; place++) {
                    if ((set >> place & 1) == 1) {
                        start[j++] = low + (high - low) * (place + 0.5) / GRID;
                    }
                }
                all.add(start);
            }
        }
        return all;
    }

    private static PronyFit made(SeparableFit fit, int points, double shortest, double longest) {
        int k = fit.parameters().length;
        double[] c = fit.factors();
        double instant = Arrays.stream(c).sum();
        int df = points - 2 * k - 1;
        Optional<Covariance> covariance = df < 1 ? Optional.empty() : Covariance.of(fit.jacobian(), fit.sse() / df);
        double factor = df < 1 ? 0 : StudentT.quantile(LEVEL, df);
        List<Term> terms = new ArrayList<>();
        for (int j = 0; j < k; j++) {
            double[] slopes = new double[2 * k + 1];
            for (int i = 0; i <= k; i++) {
                slopes[i] = (i == j ? 1 : 0) / instant - c[j] / (instant * instant);
            }
            double[] time = new double[2 * k + 1];
            time[k + 1 + j] = 1;
            terms.add(new Term(c[j] / instant, band(covariance, slopes, factor), Math.exp(fit.parameters()[j]), ratio(band(covariance, time, factor))));
        }
        terms.sort(Comparator.comparingDouble(Term::time));
        double[] whole = new double[2 * k + 1];
        Arrays.fill(whole, 0, k + 1, 1);
        return new PronyFit(instant, band(covariance, whole, factor), terms, Math.sqrt(fit.sse() / points), points, shortest, longest);
    }

    private static OptionalDouble band(Optional<Covariance> covariance, double[] slopes, double factor) {
        double error = covariance.map(v -> factor * v.error(slopes)).orElse(Double.NaN);
        return Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty();
    }

    private static OptionalDouble ratio(OptionalDouble logarithm) {
        return logarithm.isPresent() && Double.isFinite(Math.exp(logarithm.getAsDouble())) ? OptionalDouble.of(Math.exp(logarithm.getAsDouble())) : OptionalDouble.empty();
    }

    /** Means over even steps of the logarithm of time; short records as they are. */
    static double[][] evened(double[] time, double[] force) {
        if (time.length <= MOST_POINTS) {
            return new double[][] {time, force};
        }
        double first = Arrays.stream(time).filter(x -> x > 0).min().orElse(1);
        double last = Math.max(time[time.length - 1], first);
        double[][] sums = new double[MOST_POINTS + 1][3];
        for (int i = 0; i < time.length; i++) {
            int bin = time[i] <= 0 ? 0 : 1 + (int) Math.min(MOST_POINTS - 1, MOST_POINTS * Math.log(time[i] / first) / Math.max(Math.log(last / first), Double.MIN_NORMAL));
            sums[bin][0]++;
            sums[bin][1] += time[i];
            sums[bin][2] += force[i];
        }
        double[][] used = Arrays.stream(sums).filter(s -> s[0] > 0).toArray(double[][]::new);
        return new double[][] {Arrays.stream(used).mapToDouble(s -> s[1] / s[0]).toArray(), Arrays.stream(used).mapToDouble(s -> s[2] / s[0]).toArray()};
    }
}
