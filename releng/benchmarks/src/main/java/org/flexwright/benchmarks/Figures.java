package org.flexwright.benchmarks;

import java.io.PrintStream;
import java.util.Locale;

/** Prints the figures, a line each. */
final class Figures {

    private static final double NANOS_PER_MS = 1e6;
    private static final String ROW = "%-46s %10s %10s %10s %5s   %s%n";

    private final PrintStream out;

    Figures(PrintStream out) {
        this.out = out;
    }

    /** Names the machine by nothing but its cores and its Java. */
    void head() {
        out.printf(Locale.ROOT, "%d cores, Java %s; times in ms%n%n", Runtime.getRuntime().availableProcessors(), Runtime.version().feature());
        out.printf(Locale.ROOT, ROW, "", "median", "least", "most", "runs", "");
    }

    void line(String what, Series series) {
        line(what, series, "");
    }

    /** A line with how it compares with a yardstick and what is aimed at. */
    void line(String what, Series series, Series yardstick, double aim) {
        line(what, series, String.format(Locale.ROOT, "%.2f times the line above (aim: at most %s)", series.median() / yardstick.median(), plain(aim)));
    }

    /** A line with what is aimed at, in ms. */
    void line(String what, Series series, double aim) {
        line(what, series, String.format(Locale.ROOT, "aim: at most %s", plain(aim)));
    }

    /** A line with the time within which 99 of 100 were done, and what is aimed at for the median and for that, in ms. */
    void shares(String what, Series series, double medianAim, double aim99) {
        line(what, series, String.format(Locale.ROOT, "99 %% within %s (aim: median at most %s, 99 %% within %s)", ms(series.within(0.99)), plain(medianAim), plain(aim99)));
    }

    private void line(String what, Series series, String remark) {
        out.println(String.format(Locale.ROOT, ROW, what, ms(series.median()), ms(series.least()), ms(series.most()), series.count(), remark).stripTrailing());
    }

    void note(String sentence) {
        out.println(sentence);
    }

    private static String ms(double nanos) {
        return String.format(Locale.ROOT, "%.1f", nanos / NANOS_PER_MS);
    }

    private static String plain(double aim) {
        return aim == Math.rint(aim) ? Long.toString((long) aim) : Double.toString(aim);
    }
}
