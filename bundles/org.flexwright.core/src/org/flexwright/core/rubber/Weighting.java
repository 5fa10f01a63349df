package org.flexwright.core.rubber;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which points of a fit count how much. */
public enum Weighting {
    /** Every MPa of a residual counts alike: the high stresses rule. */
    EQUAL("every MPa alike"),
    /** Every per cent of the stress counts alike; below a twentieth of the largest stress of its loading, of that twentieth. */
    RELATIVE("every per cent alike"),
    /** Every loading counts alike, whatever its number of points and its stresses: residuals over the root mean square stress of the loading. */
    PER_LOADING("every loading alike");

    private static final double LEAST_SHARE = 0.05;

    private final String title;

    Weighting(String title) {
        this.title = title;
    }

    /** As it stands in files and on the command line: {@code per-loading}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one meant by its id or title, in any case; empty for another word and for null. */
    public static Optional<Weighting> find(String typed) {
        return typed == null ? Optional.empty() : Stream.of(values()).filter(one -> one.id().equalsIgnoreCase(typed.strip()) || one.title().equalsIgnoreCase(typed.strip())).findFirst();
    }

    /** All ids, for sentences. */
    public static String ids() {
        return Stream.of(values()).map(Weighting::id).collect(Collectors.joining(", "));
    }

    /** For people. */
    public String title() {
        return title;
    }

    /** Factors on the residuals, one a point, about 1 on average of their squares over all points where stresses allow. */
    double[] factors(List<RubberFit.Point> points) {
        double[] factors = new double[points.size()];
        Map<Loading, double[]> sizes = new EnumMap<>(Loading.class);
        for (RubberFit.Point p : points) {
            double[] size = sizes.computeIfAbsent(p.loading(), l -> new double[3]);
            size[0] += 1;
            size[1] += p.stress() * p.stress();
            size[2] = Math.max(size[2], Math.abs(p.stress()));
        }
        double squares = 0;
        for (int i = 0; i < factors.length; i++) {
            double[] size = sizes.get(points.get(i).loading());
            double unit = switch (this) {
                case EQUAL -> 1;
                case RELATIVE -> Math.max(Math.abs(points.get(i).stress()), LEAST_SHARE * size[2]);
                case PER_LOADING -> Math.sqrt(size[1]);
            };
            factors[i] = unit > 0 ? 1 / unit : 1;
            squares += factors[i] * factors[i];
        }
        double mean = Math.sqrt(squares / factors.length);
        for (int i = 0; i < factors.length; i++) {
            factors[i] /= mean;
        }
        return factors;
    }
}
