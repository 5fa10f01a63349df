package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Watch;
import org.flexwright.core.rubber.RubberFit.Point;

/**
 * Laws beside each other on the same points. More coefficients always come closer to what they were fitted to, so laws are ranked by what they had
 * not seen: each loading is left out in turn and foretold from the others; of one loading alone, the upper third of its stretches is.
 *
 * @param weighting of all fits
 * @param loadings  how many loadings there are
 * @param ranks     the stable ones first, best on what they had not seen before the others; then those without such a check; then the unstable
 */
public record LawRanking(Weighting weighting, int loadings, List<Rank> ranks) {
    /** A law with fewer coefficients is preferred unless the other one foretells this much better (common practice, no source). */
    private static final double AS_GOOD = 1.1;

    /**
     * A law.
     *
     * @param form     of the law
     * @param fit      to all points; empty when they do not determine it
     * @param foretold root mean square residual on the points that were left out, MPa; empty when the others do not determine the law
     */
    public record Rank(RubberForm form, Optional<RubberFit> fit, OptionalDouble foretold) {
        /** Whether it may be used. */
        public boolean stable() {
            return fit.isPresent() && fit.get().limit().isEmpty();
        }
    }

    public LawRanking {
        ranks = List.copyOf(ranks);
    }

    /** All forms. Ends with CancellationException when the watch was cancelled. */
    public static LawRanking of(Weighting weighting, List<Point> points, Watch watch) {
        List<Loading> loadings = points.stream().map(Point::loading).distinct().sorted().toList();
        List<Rank> ranks = new ArrayList<>();
        for (RubberForm form : RubberForm.values()) {
            watch.check();
            watch.done(form.ordinal(), RubberForm.values().length);
            Optional<RubberFit> fit = RubberFit.of(form, weighting, points, watch);
            boolean stable = fit.isPresent() && fit.get().limit().isEmpty();
            ranks.add(new Rank(form, fit, stable ? foretold(form, weighting, points, loadings, watch) : OptionalDouble.empty()));
        }
        ranks.sort(Comparator.comparing((Rank r) -> !r.stable()).thenComparing(r -> r.foretold().orElse(Double.MAX_VALUE)).thenComparing(Rank::form));
        return new LawRanking(weighting, loadings.size(), ranks);
    }

    /** The stable law with the fewest coefficients of those that foretell about as well as the best; empty when none could be checked. */
    public Optional<Rank> suggested() {
        OptionalDouble best = ranks.stream().flatMapToDouble(r -> r.foretold().stream()).min();
        return best.isEmpty() ? Optional.empty() : ranks.stream().filter(r -> r.foretold().isPresent() && r.foretold().getAsDouble() <= AS_GOOD * best.getAsDouble())
                .min(Comparator.comparingInt(r -> r.form().coefficients()));
    }

    private static OptionalDouble foretold(RubberForm form, Weighting weighting, List<Point> points, List<Loading> loadings, Watch watch) {
        double squares = 0;
        int n = 0;
        double third = points.stream().mapToDouble(Point::stretch).sorted().skip(points.size() * 2L / 3).findFirst().orElse(1);
        for (Loading left : loadings) {
            List<Point> seen = points.stream().filter(p -> loadings.size() > 1 ? p.loading() != left : p.stretch() < third).toList();
            List<Point> unseen = points.stream().filter(p -> loadings.size() > 1 ? p.loading() == left : p.stretch() >= third).toList();
            Optional<RubberFit> fit = seen.size() <= form.coefficients() ? Optional.empty() : RubberFit.of(form, weighting, seen, watch);
            if (fit.isEmpty()) {
                return OptionalDouble.empty();
            }
            for (Point p : unseen) {
                double residual = p.stress() - fit.get().law().stress(p.loading(), p.stretch());
                squares += residual * residual;
                n++;
            }
        }
        double rms = Math.sqrt(squares / n);
        return n == 0 || !Double.isFinite(rms) ? OptionalDouble.empty() : OptionalDouble.of(rms);
    }
}
