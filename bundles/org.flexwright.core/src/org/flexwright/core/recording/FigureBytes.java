package org.flexwright.core.recording;

import java.nio.charset.StandardCharsets;

/** Figures as instruments write them, read from bytes without making a text of each. */
final class FigureBytes {
    /** What a cell without a number gives. An instrument's own NaN is refused likewise, so the two need not be told apart. */
    static final double NONE = Double.NaN;
    private static final long EXACT = 1L << 53;
    private static final int MOST_DIGITS = 18;
    private static final double[] TENS = { 1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20,
            1e21, 1e22 };
    private static final double MINUTE = 60;

    private FigureBytes() {
    }

    /**
     * The number in {@code from} to before {@code to}; blanks and quotes round it are passed over. {@link #NONE} when it is no finite number. Times of
     * the clock, {@code 1:02:03.5}, are seconds when {@code clock} allows it.
     */
    static double read(byte[] b, int from, int to, boolean decimalComma, boolean clock) {
        int i = from;
        int end = to;
        while (i < end && outside(b[i])) {
            i++;
        }
        while (end > i && outside(b[end - 1])) {
            end--;
        }
        int begin = i;
        if (i == end) {
            return NONE;
        }
        boolean minus = b[i] == '-';
        if (minus || b[i] == '+') {
            i++;
        }
        byte point = (byte) (decimalComma ? ',' : '.');
        long digits = 0;
        int count = 0;
        int scale = 0;
        boolean behind = false;
        boolean any = false;
        for (; i < end; i++) {
            int digit = b[i] - '0';
            if (digit >= 0 && digit <= 9) {
                any = true;
                if (count < MOST_DIGITS) {
                    digits = digits * 10 + digit;
                    count += digits == 0 ? 0 : 1;
                    scale -= behind ? 1 : 0;
                } else {
                    scale += behind ? 0 : 1;
                }
            } else if (b[i] == point && !behind) {
                behind = true;
            } else {
                break;
            }
        }
        if (!any) {
            return NONE;
        }
        if (i < end) {
            if ((b[i] | 0x20) != 'e') {
                return clock && b[i] == ':' ? clock(new String(b, begin, end - begin, StandardCharsets.ISO_8859_1), decimalComma) : NONE;
            }
            i++;
            boolean down = i < end && b[i] == '-';
            if (down || i < end && b[i] == '+') {
                i++;
            }
            int exponent = 0;
            if (i == end) {
                return NONE;
            }
            for (; i < end; i++) {
                int digit = b[i] - '0';
                if (digit < 0 || digit > 9 || exponent > 9999) {
                    return NONE;
                }
                exponent = exponent * 10 + digit;
            }
            scale += down ? -exponent : exponent;
        }
        double value;
        if (digits < EXACT && count < MOST_DIGITS && scale >= -22 && scale <= 22) {
            value = scale < 0 ? digits / TENS[-scale] : digits * TENS[scale];
        } else {
            // rare: many digits, or far from one; the text is known to be a number now
            value = Math.abs(Double.parseDouble(new String(b, begin, end - begin, StandardCharsets.ISO_8859_1).replace(',', '.')));
        }
        return Double.isInfinite(value) ? NONE : minus ? -value : value;
    }

    private static boolean outside(byte b) {
        return b == ' ' || b == '\t' || b == '"';
    }

    /** Hours, minutes and seconds; or minutes and seconds. */
    private static double clock(String text, boolean decimalComma) {
        String[] parts = text.split(":", -1);
        if (parts.length > 3) {
            return NONE;
        }
        double seconds = 0;
        for (int i = 0; i < parts.length; i++) {
            boolean last = i == parts.length - 1;
            if (!parts[i].matches(last ? "\\d{1,2}([.,]\\d+)?" : "\\d{1,5}")) {
                return NONE;
            }
            byte[] bytes = parts[i].getBytes(StandardCharsets.ISO_8859_1);
            double part = read(bytes, 0, bytes.length, decimalComma, false);
            if (i > 0 && !(part < MINUTE)) {
                return NONE;
            }
            seconds = seconds * MINUTE + part;
        }
        return seconds;
    }
}
