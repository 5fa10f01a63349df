package org.flexwright.core.session;

import java.time.Instant;
import java.time.LocalDate;

/** Moments as text, exactly as {@link Instant} prints and parses them; the usual form is done directly, since a project has one for every reading. */
final class InstantText {
    private static final int SECONDS_FORM = "2026-01-01T00:00:00Z".length();
    private static final long DAY = 86_400;
    /** 0001-01-01 to 9999-12-31: years of four digits. */
    private static final long FIRST = LocalDate.of(1, 1, 1).toEpochDay() * DAY;
    private static final long LAST = LocalDate.of(9999, 12, 31).toEpochDay() * DAY;

    private InstantText() {
    }

    static Instant parse(String s) {
        if (s.length() != SECONDS_FORM || s.charAt(4) != '-' || s.charAt(7) != '-' || s.charAt(10) != 'T' || s.charAt(13) != ':'
                || s.charAt(16) != ':' || s.charAt(19) != 'Z') {
            return Instant.parse(s);
        }
        int hour = digits(s, 11, 13);
        int minute = digits(s, 14, 16);
        int second = digits(s, 17, 19);
        int year = digits(s, 0, 4);
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59 || year < 0) {
            return Instant.parse(s);
        }
        long day = LocalDate.of(year, digits(s, 5, 7), digits(s, 8, 10)).toEpochDay();
        return Instant.ofEpochSecond(day * DAY + hour * 3600L + minute * 60L + second);
    }

    static String print(Instant t) {
        long seconds = t.getEpochSecond();
        if (t.getNano() != 0 || seconds < FIRST || seconds >= LAST) {
            return t.toString();
        }
        LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(seconds, DAY));
        int rest = (int) Math.floorMod(seconds, DAY);
        byte[] b = new byte[SECONDS_FORM];
        put(b, 0, day.getYear() / 100);
        put(b, 2, day.getYear() % 100);
        b[4] = '-';
        put(b, 5, day.getMonthValue());
        b[7] = '-';
        put(b, 8, day.getDayOfMonth());
        b[10] = 'T';
        put(b, 11, rest / 3600);
        b[13] = ':';
        put(b, 14, rest / 60 % 60);
        b[16] = ':';
        put(b, 17, rest % 60);
        b[19] = 'Z';
        return new String(b, java.nio.charset.StandardCharsets.ISO_8859_1);
    }

    private static void put(byte[] b, int at, int twoDigits) {
        b[at] = (byte) ('0' + twoDigits / 10);
        b[at + 1] = (byte) ('0' + twoDigits % 10);
    }

    private static int digits(String s, int from, int to) {
        int n = 0;
        for (int i = from; i < to; i++) {
            int d = s.charAt(i) - '0';
            if (d < 0 || d > 9) {
                return -1;
            }
            n = n * 10 + d;
        }
        return n;
    }
}
