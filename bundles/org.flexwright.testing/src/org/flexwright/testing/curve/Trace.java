package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.testing.data.Slack;

/**
 * Force (or stress) over travel (or strain), row by row. Neither array is changed.
 *
 * @param x    along the axis of the marks
 * @param y    what was pulled or pressed with, its value at rest taken off
 * @param step how much {@code y} scatters from row to row, one standard deviation; 0 when it does not
 */
record Trace(double[] x, double[] y, double step) {
    /** A branch goes on until the travel comes back by more than this share of all travel: 2 %. */
    private static final double TURN = 0.02;
    /** Force counts as begun when it stays above this share of the highest: 0.5 %, or five times its scatter. */
    private static final double BEGUN = 0.005;
    private static final double SCATTERS = 5;
    private static final double TANGENT_FROM = 0.01;
    private static final double TANGENT_TO = 0.05;
    private static final int SAMPLES = 20_000;
    /** Fewer rows bend more from one to the next than they scatter. */
    private static final int FEW_ROWS = 100;
    /** Median of the absolute of a normal scatter, and the size of a second difference. */
    private static final double NORMAL = 1.4826 / Math.sqrt(6);

    static Trace of(double[] x, double[] y) {
        return new Trace(x, y, scatter(y));
    }

    /**
     * Rows from one turning of the travel to the next.
     *
     * @param from first row
     * @param to   last row
     * @param out  whether the travel grows
     */
    record Branch(int from, int to, boolean out) {
    }

    /** Scatter from row to row by second differences, which a smooth curve does not have. */
    private static double scatter(double[] y) {
        if (y.length < FEW_ROWS) {
            return 0;
        }
        int stride = Math.max(1, (y.length - 2) / SAMPLES);
        double[] second = new double[(y.length - 3) / stride + 1];
        for (int i = 0; i < second.length; i++) {
            int row = 1 + i * stride;
            second[i] = Math.abs(y[row - 1] - 2 * y[row] + y[row + 1]);
        }
        Arrays.sort(second);
        return NORMAL * second[second.length / 2];
    }

    /** The mean of each row and as many rows to each side of it; fewer at the ends. The same for 0 rows. */
    Trace smoothed(int rows) {
        if (rows <= 0) {
            return this;
        }
        double[] mean = new double[y.length];
        double sum = 0;
        int from = 0;
        int to = 0;
        for (int i = 0; i < y.length; i++) {
            while (to < Math.min(y.length, i + rows + 1)) {
                sum += y[to++];
            }
            while (from < i - rows) {
                sum -= y[from++];
            }
            mean[i] = sum / (to - from);
        }
        return new Trace(x, mean, step / Math.sqrt(2.0 * rows + 1));
    }

    /** How far rows of one force may be apart by scatter alone: about as far as the highest of so many normal values is above the lowest. */
    double span(int from, int to) {
        return 2 * step * Math.sqrt(2 * Math.log(Math.max(2, to - from)));
    }

    /** The branches in order; one at least when there are two rows. */
    List<Branch> branches() {
        List<Branch> found = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double v : x) {
            low = Math.min(low, v);
            high = Math.max(high, v);
        }
        double turn = TURN * (high - low);
        if (!(turn > 0)) {
            return found;
        }
        int begin = 0;
        int farthest = 0;
        int direction = 0;
        int lowest = 0;
        int highest = 0;
        for (int i = 1; i < x.length; i++) {
            if (direction == 0) {
                lowest = x[i] < x[lowest] ? i : lowest;
                highest = x[i] > x[highest] ? i : highest;
                if (x[i] - x[lowest] > turn || x[highest] - x[i] > turn) {
                    direction = x[i] - x[lowest] > turn ? 1 : -1;
                    farthest = i;
                }
            } else if ((x[i] - x[farthest]) * direction >= 0) {
                farthest = i;
            } else if ((x[farthest] - x[i]) * direction > turn) {
                found.add(new Branch(begin, farthest, direction > 0));
                begin = farthest;
                farthest = i;
                direction = -direction;
            }
        }
        if (direction != 0) {
            found.add(new Branch(begin, farthest, direction > 0));
        }
        return found;
    }

    /** Row of the highest force of rows {@code from} to {@code to}. */
    int highest(int from, int to) {
        int best = from;
        for (int i = from + 1; i <= to; i++) {
            best = y[i] > y[best] ? i : best;
        }
        return best;
    }

    /**
     * Where the force begins on the way to a peak, along the axis.
     *
     * @param from first row
     * @param peak row of the peak
     */
    double begin(int from, int peak, Slack slack) {
        if (slack == Slack.NONE) {
            return x[from];
        }
        return slack == Slack.TANGENT ? byLine(from, peak) : byStep(from, peak);
    }

    /** How far off that place may be: as far as the two ways of finding it differ, one row at least; one row when a person says there is no slack. */
    double doubt(int from, int peak, Slack slack) {
        double row = peak > from ? Math.abs(x[peak] - x[from]) / (peak - from) : 0;
        return slack == Slack.NONE ? row : Math.max(row, Math.abs(byLine(from, peak) - byStep(from, peak)));
    }

    private double byStep(int from, int peak) {
        return x[begun(from, peak, Math.max(BEGUN * y[peak], SCATTERS * step))];
    }

    private double byLine(int from, int peak) {
        int a = begun(from, peak, TANGENT_FROM * y[peak]);
        int b = begun(from, peak, TANGENT_TO * y[peak]);
        Optional<Line> line = b - a < 2 ? Optional.empty() : line(a, b);
        return line.isEmpty() || !(line.get().slope() > 0) ? byStep(from, peak) : -line.get().intercept() / line.get().slope();
    }

    /** The last row before the peak where the force is not above a level; the first row when it always is. */
    int begun(int from, int peak, double level) {
        int row = peak;
        while (row > from && y[row] > level) {
            row--;
        }
        return row;
    }

    /** Straight line through rows {@code from} to {@code to}; empty when they do not tell one. */
    Optional<Line> line(int from, int to) {
        double[] a = Arrays.copyOfRange(x, from, to + 1);
        if (a.length < 2 || Arrays.stream(a).max().orElse(0) <= Arrays.stream(a).min().orElse(0)) {
            return Optional.empty();
        }
        return LeastSquares.line(a, Arrays.copyOfRange(y, from, to + 1));
    }

    /** First row of {@code from} to {@code to} at which the axis has reached a place; {@code to + 1} when it never does. */
    int reached(int from, int to, double place) {
        int row = from;
        while (row <= to && x[row] < place) {
            row++;
        }
        return row;
    }

    /** The force at a place of an outward branch: by a line through the rows within {@code near} of it, or between the two rows beside it. */
    double at(int from, int to, double place, double near) {
        int row = reached(from, to, place);
        int a = row;
        int b = Math.min(row, to);
        while (a > from && x[a - 1] >= place - near) {
            a--;
        }
        while (b < to && x[b + 1] <= place + near) {
            b++;
        }
        Optional<Line> line = b - a >= 5 ? line(a, b) : Optional.empty();
        if (line.isPresent()) {
            return line.get().at(place);
        }
        if (row == from || row > to) {
            return y[Math.min(row, to)];
        }
        return y[row - 1] + (y[row] - y[row - 1]) * (place - x[row - 1]) / (x[row] - x[row - 1]);
    }

    /** Work under rows {@code from} to {@code to} above the place {@code begin}, trapezoids on their own travel; above 0 outwards. */
    double work(int from, int to, double begin) {
        double sum = 0;
        for (int i = from + 1; i <= to; i++) {
            double a = Math.max(x[i - 1], begin);
            double b = Math.max(x[i], begin);
            sum += (b - a) * (y[i - 1] + y[i]) / 2;
        }
        return sum;
    }
}
