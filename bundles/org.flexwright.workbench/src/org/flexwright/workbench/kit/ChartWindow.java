package org.flexwright.workbench.kit;

/**
 * What of a plot is looked at, in the units of its axes.
 *
 * @param left   where it begins across
 * @param right  where it ends across, above {@code left}
 * @param low    where it begins upwards
 * @param high   where it ends upwards, above {@code low}
 */
public record ChartWindow(double left, double right, double low, double high) {

    /** So many parts of the whole can still be told apart as numbers. */
    private static final double FINEST = 1e-7;

    public ChartWindow {
        if (!(left < right) || !(low < high) || !Double.isFinite(right - left) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException("A window needs room on both axes.");
        }
    }

    /** This window with everything drawn {@code factor} times as wide; the place {@code at} stays where it is. */
    public ChartWindow widened(double factor, double at) {
        return new ChartWindow(at - (at - left) / factor, at + (right - at) / factor, low, high);
    }

    /** This window with everything drawn {@code factor} times as high; the place {@code at} stays where it is. */
    public ChartWindow heightened(double factor, double at) {
        return new ChartWindow(left, right, at - (at - low) / factor, at + (high - at) / factor);
    }

    /** This window moved by so much of its own width to the right and of its own height upwards. */
    public ChartWindow moved(double across, double up) {
        double x = across * (right - left);
        double y = up * (high - low);
        return new ChartWindow(left + x, right + x, low + y, high + y);
    }

    /** The window nearest to this one that reaches nowhere beyond the whole, and is not finer than numbers can tell apart. */
    public ChartWindow within(ChartWindow whole) {
        double[] x = fit(left, right, whole.left, whole.right);
        double[] y = fit(low, high, whole.low, whole.high);
        return new ChartWindow(x[0], x[1], y[0], y[1]);
    }

    private static double[] fit(double from, double to, double least, double most) {
        double room = most - least;
        double wide = Math.min(Math.max(to - from, room * FINEST), room);
        double begin = Math.min(Math.max((from + to - wide) / 2, least), most - wide);
        return wide == room ? new double[] {least, most} : new double[] {begin, begin + wide};
    }
}
