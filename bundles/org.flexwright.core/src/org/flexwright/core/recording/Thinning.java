package org.flexwright.core.recording;

import java.util.Arrays;

/** Fewer points of a long curve without losing a peak: of each stretch of rows the lowest and the highest stay. */
public final class Thinning {
    private Thinning() {
    }

    /**
     * The rows to draw of rows {@code from} to before {@code to}, in order: all of them when there are no more than asked for, else the first
     * and the last one and of each of {@code points / 2} stretches the lowest and the highest. Values that are no numbers are passed over.
     *
     * @param points about how many rows are wanted, at least 2
     */
    public static int[] rows(double[] y, int from, int to, int points) {
        int n = to - from;
        if (n <= Math.max(points, 2)) {
            int[] all = new int[Math.max(n, 0)];
            Arrays.setAll(all, i -> from + i);
            return all;
        }
        int stretches = Math.max(points / 2, 1);
        int[] kept = new int[2 * stretches + 2];
        int count = 0;
        kept[count++] = from;
        for (int s = 0; s < stretches; s++) {
            int begin = from + (int) ((long) n * s / stretches);
            int end = from + (int) ((long) n * (s + 1) / stretches);
            int low = -1;
            int high = -1;
            for (int i = begin; i < end; i++) {
                if (y[i] == y[i]) {
                    low = low < 0 || y[i] < y[low] ? i : low;
                    high = high < 0 || y[i] > y[high] ? i : high;
                }
            }
            count = put(kept, count, Math.min(low, high));
            count = put(kept, count, Math.max(low, high));
        }
        count = put(kept, count, to - 1);
        return Arrays.copyOf(kept, count);
    }

    private static int put(int[] kept, int count, int row) {
        if (row > kept[count - 1]) {
            kept[count] = row;
            return count + 1;
        }
        return count;
    }
}
