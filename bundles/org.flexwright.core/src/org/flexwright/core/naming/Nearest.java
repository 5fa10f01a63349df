package org.flexwright.core.naming;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What a mistyped name may have meant. */
public final class Nearest {
    private static final int MOST = 3;
    private static final int LETTERS_A_SLIP = 4;

    private Nearest() {
    }

    /** The known names closest to what was typed, the best first, three at most; empty when none is close. */
    public static List<String> of(String typed, List<String> known) {
        String wanted = plain(typed);
        String end = tail(typed);
        return known.stream().filter(name -> close(wanted, name) || close(end, name)).sorted(Comparator.comparingInt((String name) -> distance(end, tail(name)))
                .thenComparing(Comparator.naturalOrder())).limit(MOST).toList();
    }

    private static boolean close(String wanted, String name) {
        String whole = plain(name);
        String end = tail(name);
        return wanted.length() > 2 && (whole.contains(wanted) || wanted.contains(end) && end.length() > 2) || Math.min(distance(wanted, whole), distance(
                wanted, end)) <= Math.max(1, wanted.length() / LETTERS_A_SLIP);
    }

    /** What stands behind the last point of an id: people leave out the plugin's name. */
    private static String tail(String name) {
        return plain(name.substring(name.lastIndexOf('.') + 1));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }

    /** Letters to change, add, leave out or swap with their neighbour to make one word of the other. */
    private static int distance(String one, String other) {
        int[][] d = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + same);
                if (i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[one.length()][other.length()];
    }
}
