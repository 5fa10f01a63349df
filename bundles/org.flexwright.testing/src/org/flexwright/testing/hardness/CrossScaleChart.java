package org.flexwright.testing.hardness;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.testing.GaugeScale;

/**
 * The handbook chart that sets the scales A, 00 and D side by side. A guide only: there is no simple relation between the scales, so
 * a converted value carries 5 points either way, is marked as converted and is never averaged with a measured one.
 */
public final class CrossScaleChart {
    /** Half width of a converted value in points. */
    public static final double HALF_WIDTH = 5;
    /** Where the chart comes from. */
    public static final Source SOURCE = Source.published("two handbook pages that agree, \"guide only\"; ASTM D2240: comparison tables are approximations");

    private static final double LOWEST = 10;
    private static final double HIGHEST = 95;
    private static final double NONE = Double.NaN;
    private static final double[] SHORE_A = {5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95};
    private static final double[] SHORE_00 = {45, 55, 62, 70, 76, 80, 83, 86, 88, 90, 91, 93, 94, 95, 97, 98, NONE, NONE, NONE};
    private static final double[] SHORE_D = {NONE, NONE, NONE, NONE, NONE, 6, 7, 8, 10, 12, 14, 16, 19, 22, 25, 29, 33, 39, 46};

    private CrossScaleChart() {
    }

    /** Scales the chart holds. */
    public static List<GaugeScale> scales() {
        return List.of(GaugeScale.A, GaugeScale.SHORE_00, GaugeScale.D);
    }

    /** Number of columns of a row. */
    public static int columns(GaugeScale scale) {
        return row(scale).length;
    }

    /** Lowest reading of a scale the chart holds beside another scale; empty when the two share no column. */
    public static Optional<double[]> range(GaugeScale from, GaugeScale to) {
        double[] x = row(from);
        double[] y = row(to);
        double low = NONE;
        double high = NONE;
        for (int i = 0; i < x.length; i++) {
            if (!Double.isNaN(x[i]) && !Double.isNaN(y[i])) {
                low = Double.isNaN(low) ? x[i] : low;
                high = x[i];
            }
        }
        return Double.isNaN(low) ? Optional.empty() : Optional.of(new double[] {low, high});
    }

    /** The ends between which a reading is converted to the other scale: inside the chart and inside 10 to 95; empty when the two share no column. */
    public static Optional<double[]> convertible(GaugeScale from, GaugeScale to) {
        return range(from, to).map(range -> new double[] {Math.max(LOWEST, range[0]), Math.min(HIGHEST, range[1])});
    }

    /** The value on the other scale, inside 10 to 95 alone; empty outside. */
    public static Optional<Estimate> about(GaugeScale from, double reading, GaugeScale to) {
        return scales().contains(from) && scales().contains(to) && from != to ? convertible(from, to).filter(ends -> reading >= ends[0] && reading <= ends[1])
                .flatMap(ends -> convert(from, reading, to)) : Optional.empty();
    }

    /** The value on the other scale, straight lines between the columns; empty outside the chart. */
    public static Optional<Estimate> convert(GaugeScale from, double reading, GaugeScale to) {
        double[] x = row(from);
        double[] y = row(to);
        for (int i = 0; i + 1 < x.length; i++) {
            boolean filled = !Double.isNaN(x[i] + x[i + 1] + y[i] + y[i + 1]);
            if (filled && reading >= x[i] && reading <= x[i + 1]) {
                double likely = y[i] + (y[i + 1] - y[i]) * (reading - x[i]) / (x[i + 1] - x[i]);
                return Optional.of(new Estimate(Math.max(0, likely - HALF_WIDTH), likely, Math.min(100, likely + HALF_WIDTH), SOURCE));
            }
        }
        return Optional.empty();
    }

    private static double[] row(GaugeScale scale) {
        return switch (scale) {
            case A -> SHORE_A;
            case SHORE_00 -> SHORE_00;
            case D -> SHORE_D;
            default -> throw new IllegalArgumentException("The chart has no row for scale " + scale.symbol() + ".");
        };
    }
}
