package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.flexwright.core.Message;

/**
 * How old pieces were when they were read, from the youngest to the oldest reading. Readings whose ages lie within a factor of
 * {@link #FACTOR} belong together; others do not make one value. The factor is common practice without a source: elastomers change by
 * the decade of time, and the usual ages of 1, 7, 30 and 365 days lie further apart.
 *
 * @param low     age at the youngest reading, hours
 * @param high    age at the oldest reading, hours
 * @param unknown how many readings without a known age are counted with them
 */
public record AgeSpan(double low, double high, int unknown) {
    /** Readings further apart than this factor of age are kept apart. */
    public static final double FACTOR = 3;
    /** Below this age, in hours, everything counts as fresh. */
    private static final double FRESH = 1;
    private static final double HOURS_PER_DAY = 24;
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double HOURS_UP_TO = 48;
    private static final double DAYS_UP_TO = 730;

    public AgeSpan {
        if (!(low <= high)) {
            throw new IllegalArgumentException("The ages are the wrong way round: " + low + ", " + high + ".");
        }
    }

    /** True when that age, in hours, lies within. */
    public boolean contains(double hours) {
        return hours >= low && hours <= high;
    }

    /** True when the two together would still be one age. */
    public boolean near(AgeSpan other) {
        return factor(Math.min(low, other.low), Math.max(high, other.high)) <= FACTOR;
    }

    /** In words: {@code 5 h}, {@code 3 … 4 d}, {@code 12 y}. */
    public String text() {
        String unit = high < HOURS_UP_TO ? "h" : high < DAYS_UP_TO * HOURS_PER_DAY ? "d" : "y";
        double scale = "h".equals(unit) ? 1 : "d".equals(unit) ? HOURS_PER_DAY : HOURS_PER_DAY * DAYS_PER_YEAR;
        String from = number(low / scale);
        String to = number(high / scale);
        return (from.equals(to) ? to : Message.of(AgeSpan.class, "age.range", from, to).text()) + " " + unit;
    }

    /** An age in words. */
    public static String text(double hours) {
        return new AgeSpan(hours, hours, 0).text();
    }

    /** An age that is counted in days, in words. */
    public static String textOfDays(double days) {
        return text(days * HOURS_PER_DAY);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private static double factor(double low, double high) {
        return Math.max(high, FRESH) / Math.max(low, FRESH);
    }

    /**
     * Parts ages into spans that belong together, the youngest first: a span is cut at its widest gap, counted as a factor, until none is
     * wider than {@link #FACTOR}.
     *
     * @param hours ages in hours, in any order
     */
    public static List<AgeSpan> groups(List<Double> hours) {
        List<AgeSpan> spans = new ArrayList<>();
        if (!hours.isEmpty()) {
            split(hours.stream().sorted().toList(), spans);
        }
        return spans;
    }

    private static void split(List<Double> sorted, List<AgeSpan> out) {
        double low = sorted.getFirst();
        double high = sorted.getLast();
        if (factor(low, high) <= FACTOR) {
            out.add(new AgeSpan(low, high, 0));
            return;
        }
        int cut = 1;
        for (int i = 2; i < sorted.size(); i++) {
            if (factor(sorted.get(i - 1), sorted.get(i)) > factor(sorted.get(cut - 1), sorted.get(cut))) {
                cut = i;
            }
        }
        split(sorted.subList(0, cut), out);
        split(sorted.subList(cut, sorted.size()), out);
    }
}
