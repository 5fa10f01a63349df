package org.flexwright.report.pdf;

import org.flexwright.report.doc.Tone;

/** Sizes in points and colours of the printed page. */
final class Look {
    static final double SHORT = 595.28;
    static final double LONG = 841.89;
    /** 15 mm at the left for a binder, 14 mm else. */
    static final double LEFT = 45;
    static final double RIGHT = 40;
    static final double TOP = 40;
    static final double BOTTOM = 48;
    static final double TEXT = 9.5;
    static final double TABLE = 8.5;
    static final double FOOT = 7.5;
    static final double LEADING = 1.32;
    static final double PAD = 3;
    static final double INDENT = 24;
    /** A CSS pixel in points. */
    static final double PIXEL = 0.75;
    static final int NONE = -1;
    static final int INK = 0x1B2126;
    static final int QUIET = 0x59636C;
    static final int LINE = 0xC9CED3;
    static final int PANEL = 0xF4F5F6;
    static final int ACCENT = 0x005A91;
    static final int CAUTION = 0x8A5A00;
    static final int STOP = 0xA3123A;

    private Look() {
    }

    static double heading(int level) {
        return switch (level) {
            case 1 -> 19;
            case 2 -> 14;
            default -> 11;
        };
    }

    static int colour(Tone tone) {
        return switch (tone) {
            case PLAIN, STRONG, BANNER -> INK;
            case QUIET -> QUIET;
            case STOP -> STOP;
            case CAUTION -> CAUTION;
        };
    }

    static boolean bold(Tone tone) {
        return tone != Tone.PLAIN && tone != Tone.QUIET;
    }

    static int colour(String hex) {
        return hex == null ? NONE : Integer.parseInt(hex.substring(1), 16);
    }
}
