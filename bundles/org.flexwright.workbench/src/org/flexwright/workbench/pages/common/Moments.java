package org.flexwright.workbench.pages.common;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments and spans of time as a maker reads them; moments in the zone of the screen. */
public final class Moments {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double MINUTES_AN_HOUR = 60;
    private static final double HOURS_A_DAY = 24;

    private Moments() {
    }

    /** {@code 2026-03-21}; empty for null. */
    public static String day(Instant moment) {
        return moment == null ? "" : DAY.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** {@code 2026-03-21 10:00}; empty for null. */
    public static String minute(Instant moment) {
        return moment == null ? "" : MINUTE.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** {@code 10:00}; empty for null. */
    public static String clock(Instant moment) {
        return moment == null ? "" : CLOCK.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** An age in hours as a maker says it: {@code 45 min}, {@code 18 h}, {@code 3 d}, {@code 12 a}; empty for null. */
    public static String age(Double hours) {
        if (hours == null) {
            return "";
        }
        if (hours < 1) {
            return Math.round(hours * MINUTES_AN_HOUR) + " min";
        }
        if (hours < 3 * HOURS_A_DAY) {
            return Math.round(hours) + " h";
        }
        double days = hours / HOURS_A_DAY;
        return days < 730 ? Math.round(days) + " d" : Math.round(days / 365.25) + " a";
    }
}
