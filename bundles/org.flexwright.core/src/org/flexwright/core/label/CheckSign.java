package org.flexwright.core.label;

/**
 * The last sign of a code: a sum over a prime field in which each place weighs differently, so that one wrong sign or two neighbours
 * that changed places never go unnoticed (weights are powers of a primitive root, neighbours always differ; plain algebra).
 */
final class CheckSign {
    /** Signs of a code; their number is a prime. All of them are in the compact alphabet of a QR code (ISO/IEC 18004). */
    static final String SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-./%:";
    /** A primitive root of 41. */
    private static final int ROOT = 6;

    private CheckSign() {
    }

    static boolean known(String text) {
        return text.chars().allMatch(c -> SIGNS.indexOf(c) >= 0);
    }

    static char of(String text) {
        int sum = 0;
        int weight = ROOT;
        for (int i = 0; i < text.length(); i++) {
            sum = (sum + weight * SIGNS.indexOf(text.charAt(i))) % SIGNS.length();
            weight = weight * ROOT % SIGNS.length();
        }
        return SIGNS.charAt(sum);
    }
}
