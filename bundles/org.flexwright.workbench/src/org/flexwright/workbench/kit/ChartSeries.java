package org.flexwright.workbench.kit;

/**
 * A series of a chart.
 *
 * @param name   name in the legend
 * @param x      abscissae; for a chart with categories 0, 1, 2…
 * @param y      ordinates, as many as {@code x}
 * @param minus  distance to the lower end of each interval, or empty
 * @param plus   distance to the upper end of each interval, or empty
 * @param joined true when a line joins the points; else markers alone
 * @param marked true when each point has a marker
 */
public record ChartSeries(String name, double[] x, double[] y, double[] minus, double[] plus, boolean joined, boolean marked) {

    public ChartSeries {
        if (x.length != y.length || minus.length != plus.length || minus.length != 0 && minus.length != x.length) {
            throw new IllegalArgumentException("Series " + name + " has columns of different length.");
        }
        x = x.clone();
        y = y.clone();
        minus = minus.clone();
        plus = plus.clone();
    }

    /** A curve. */
    public static ChartSeries line(String name, double[] x, double[] y) {
        return new ChartSeries(name, x, y, new double[0], new double[0], true, false);
    }

    /** Single points. */
    public static ChartSeries points(String name, double[] x, double[] y) {
        return new ChartSeries(name, x, y, new double[0], new double[0], false, true);
    }

    /** Points with intervals. */
    public static ChartSeries intervals(String name, double[] x, double[] y, double[] minus, double[] plus) {
        return new ChartSeries(name, x, y, minus, plus, false, true);
    }
}
