package org.flexwright.core.rubber;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Exponents from which the search for an Ogden law begins. */
public final class OgdenStarts {
    /** How many there are. */
    public static final int COUNT = 50;

    /** Starts lie between these exponents (common practice). */
    private static final double FROM = -6;
    private static final double TO = 12;
    /** Starts whose exponents lie nearer than this, or nearer to 0, are moved apart. */
    private static final double APART = 0.4;
    private static final int[] BASES = {2, 3, 5};

    private OgdenStarts() {
    }

    /** All of them, one exponent a term, rising; the same each time. */
    public static List<double[]> all(int terms) {
        return IntStream.range(0, COUNT).mapToObj(number -> start(number, terms)).toList();
    }

    /** Evenly spread exponents (J. H. Halton 1960, from memory), the same each time. */
    private static double[] start(int number, int terms) {
        double[] at = new double[terms];
        for (int j = 0; j < terms; j++) {
            double share = 0;
            double place = 1.0 / BASES[j];
            for (int n = number + 1; n > 0; n /= BASES[j]) {
                share += place * (n % BASES[j]);
                place /= BASES[j];
            }
            at[j] = FROM + (TO - FROM) * share;
        }
        Arrays.sort(at);
        for (int j = 0; j < terms; j++) {
            at[j] = Math.abs(at[j]) < APART ? Math.copySign(APART, at[j]) : at[j];
            at[j] = j > 0 && at[j] - at[j - 1] < APART ? at[j - 1] + APART : at[j];
            at[j] = Math.abs(at[j]) < APART / 2 ? APART : at[j];
        }
        return at;
    }
}
