package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Amounts beside one another as bars from zero, without pixels: components of a gauge study, contributions to an uncertainty.
 *
 * @param title what is shown, one line
 * @param unit  unit of the amounts; may be empty
 * @param bars  from top to bottom
 */
public record Bars(String title, String unit, List<Bar> bars) {
    /** An interval that reaches further than this many times the longest bar is cut off. */
    private static final double REACH = 2.5;

    public Bars {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        bars = List.copyOf(bars);
    }

    /**
     * One bar.
     *
     * @param label words at its left
     * @param value its length, from 0 up
     * @param low   lower end of its interval; equal to {@code value} when it has none
     * @param high  upper end of its interval; equal to {@code value} when it has none
     * @param words the amount in words at its right, with unit and band
     * @param sum   true when it is made of others above it
     */
    public record Bar(String label, double value, double low, double high, String words, boolean sum) {
        public Bar {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(words, "words");
            if (!(value >= 0 && low <= high)) {
                throw new IllegalArgumentException("A bar needs an amount from 0 up and its interval the right way round.");
            }
        }

        /** A bar without an interval. */
        public static Bar of(String label, double value, String words, boolean sum) {
            return new Bar(label, value, value, value, words, sum);
        }

        /** True when it has an interval. */
        public boolean hasInterval() {
            return high > low;
        }
    }

    /** Where the scale ends: it holds every bar, and intervals up to two and a half times the longest of them. Above 0. */
    public double end() {
        double longest = bars.stream().mapToDouble(Bar::value).max().orElse(0);
        double widest = bars.stream().mapToDouble(Bar::high).max().orElse(0);
        double end = longest > 0 ? Math.min(Math.max(longest, widest), REACH * longest) : widest;
        return end > 0 ? end : 1;
    }

    /** The same as a table, for CSV and for reading aloud. */
    public TableModel table() {
        List<List<String>> rows = new ArrayList<>();
        bars.forEach(bar -> rows.add(List.of(bar.label(), String.valueOf(bar.value()), String.valueOf(bar.low()), String.valueOf(bar.high()), bar.words())));
        return new TableModel(List.of(TableModel.Column.text(title), TableModel.Column.number(Axis.title("amount", unit)), TableModel.Column.number("low"),
                TableModel.Column.number("high"), TableModel.Column.text("words")), rows);
    }

    /** The bars as lines of text, each so many signs long at the most. */
    public List<String> text(int width) {
        int labels = bars.stream().mapToInt(bar -> bar.label().length()).max().orElse(0);
        return bars.stream().map(bar -> {
            int length = (int) Math.round(bar.value() / end() * width);
            String drawn = bar.value() > 0 && length == 0 ? "." : "#".repeat(length);
            return (bar.label() + " ".repeat(labels - bar.label().length()) + "  " + drawn + " ".repeat(Math.max(0, width - drawn.length())) + "  " + bar.words()).stripTrailing();
        }).toList();
    }
}
