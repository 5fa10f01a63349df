package org.flexwright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Times of one thing done several times, in ns. */
final class Series {

    private final List<Long> nanos = new ArrayList<>();

    void add(long taken) {
        nanos.add(taken);
    }

    /** The times, parted by blanks: what {@link #read} reads. */
    @Override
    public String toString() {
        return nanos.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** Times that another program printed. */
    static Series read(String line) {
        Series series = new Series();
        for (String each : line.strip().split(" ")) {
            series.add(Long.parseLong(each));
        }
        return series;
    }

    int count() {
        return nanos.size();
    }

    /** The middle one, or the mean of the two in the middle. */
    double median() {
        if (nanos.isEmpty()) {
            throw new IllegalStateException("Nothing was measured.");
        }
        List<Long> sorted = nanos.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2.0;
    }

    /** The time within which that share of them was done: the smallest one with at least as many not above it; {@code 0 < share <= 1}. */
    long within(double share) {
        return nanos.stream().sorted().toList().get((int) Math.ceil(share * nanos.size()) - 1);
    }

    long least() {
        return Collections.min(nanos);
    }

    long most() {
        return Collections.max(nanos);
    }
}
