package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Flights between contacts in a list of pictures and heights.
 *
 * @param contacts times of the contacts
 * @param flights  one before the first contact, one between each two, one after the last; empty where too few points lie
 */
record FilmedFlights(List<Double> contacts, List<Optional<Parabola>> flights) {
    /** A turn counts when the height changes by this share of all that is seen. */
    private static final double TURN = 0.05;
    /** While it is still held, the height changes by no more than this share. */
    private static final double HELD = 0.02;
    /** A flight of fewer points keeps those beside the contacts. */
    private static final int ENOUGH = 7;

    FilmedFlights {
        contacts = List.copyOf(contacts);
        flights = List.copyOf(flights);
    }

    /** A contact with the flights beside it, as they cross. */
    record Bounce(double time, double level, double uLevel, Parabola before, Parabola after) {
        /** Share of the height that comes back. */
        double rebound() {
            return (after.top() - level) / (before.top() - level);
        }

        /** Half width of that at about 95 %, from the scatter of the points. */
        double halfWidth() {
            double fallen = before.top() - level;
            double r = rebound();
            double u = Math.sqrt(square(after.uTop()) + square(r * before.uTop()) + square((r - 1) * uLevel)) / fallen;
            return Math.max(before.factor(), after.factor()) * u;
        }

        private static double square(double v) {
            return v * v;
        }
    }

    /** Times at which the height turns from falling to rising by enough. Times rise; heights upwards. */
    static List<Double> turns(double[] times, double[] heights) {
        double range = Arrays.stream(heights).max().orElse(0) - Arrays.stream(heights).min().orElse(0);
        double enough = TURN * range;
        List<Double> turns = new ArrayList<>();
        if (!(range > 0)) {
            return turns;
        }
        int high = 0;
        int low = 0;
        boolean falling = false;
        for (int i = 0; i < heights.length; i++) {
            if (falling) {
                low = heights[i] < heights[low] ? i : low;
                if (heights[i] > heights[low] + enough) {
                    turns.add(times[low]);
                    falling = false;
                    high = i;
                }
            } else {
                high = heights[i] > heights[high] ? i : high;
                if (heights[i] < heights[high] - enough) {
                    falling = true;
                    low = i;
                }
            }
        }
        return turns;
    }

    /**
     * The flights between contacts.
     *
     * @param held whether it may be held still at the beginning
     */
    static FilmedFlights between(double[] times, double[] heights, List<Double> contacts, boolean held) {
        List<Optional<Parabola>> flights = new ArrayList<>();
        int from = 0;
        for (int c = 0; c <= contacts.size(); c++) {
            double end = c == contacts.size() ? Double.POSITIVE_INFINITY : contacts.get(c);
            double begin = c == 0 ? Double.NEGATIVE_INFINITY : contacts.get(c - 1);
            while (from < times.length && times[from] <= begin) {
                from++;
            }
            int to = from;
            while (to < times.length && times[to] < end) {
                to++;
            }
            int first = from;
            int last = to;
            if (last - first >= ENOUGH) {
                first += c > 0 ? 1 : 0;
                last -= c < contacts.size() ? 1 : 0;
            }
            if (c == 0 && held) {
                first = released(heights, first, last);
            }
            flights.add(first < last ? Parabola.fit(Arrays.copyOfRange(times, first, last), Arrays.copyOfRange(heights, first, last)) : Optional.empty());
            from = to;
        }
        return new FilmedFlights(contacts, flights);
    }

    /** The first point that is clearly below where it was held. */
    private static int released(double[] heights, int first, int last) {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (int i = first; i < last; i++) {
            high = Math.max(high, heights[i]);
            low = Math.min(low, heights[i]);
        }
        double still = high - HELD * (high - low);
        int at = first;
        while (at < last && heights[at] >= still) {
            at++;
        }
        return last - at >= Parabola.LEAST ? at : first;
    }

    /** Where the flights beside a contact cross; empty when one of them is missing, opens upwards, or they do not cross near it. */
    Optional<Bounce> bounce(int contact) {
        Optional<Parabola> before = flights.get(contact).filter(p -> p.bend() < 0);
        Optional<Parabola> after = flights.get(contact + 1).filter(p -> p.bend() < 0);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        Parabola a = before.get();
        Parabola b = after.get();
        double time = contacts.get(contact);
        double reach = Math.max(a.times()[a.times().length - 1] - a.times()[0], b.times()[b.times().length - 1] - b.times()[0]);
        double crossing = time;
        for (int i = 0; i < 50; i++) {
            double slope = b.speed(crossing) - a.speed(crossing);
            double step = slope == 0 ? Double.NaN : (b.height(crossing) - a.height(crossing)) / slope;
            crossing -= step;
            if (!(Math.abs(crossing - time) <= reach)) {
                return Optional.empty();
            }
        }
        double down = a.speed(crossing);
        double up = b.speed(crossing);
        if (!(down < 0 && up > 0)) {
            return Optional.empty();
        }
        double uLevel = Math.hypot(up * a.uncertainty(crossing), down * b.uncertainty(crossing)) / (up - down);
        return Optional.of(new Bounce(crossing, a.height(crossing), uLevel, a, b));
    }
}
