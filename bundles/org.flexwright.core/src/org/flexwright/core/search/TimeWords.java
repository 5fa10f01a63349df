package org.flexwright.core.search;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.core.Message;

/** Words for a time: today, last year, 2025, March 2026, 14 March 2026, 2026-03-14, before and after any of them. A week begins on Monday. */
final class TimeWords {
    private static final List<String> MONTHS = List.of("january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november",
            "december");
    private static final int SHORT = 3;
    private static final String TO = " to ";
    private static final Pattern YEAR = Pattern.compile("(19[5-9]\\d|20\\d\\d)");
    private static final Pattern YEARS = Pattern.compile("(19[5-9]\\d|20\\d\\d)-(19[5-9]\\d|20\\d\\d)");
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})(?:-(\\d{2}))?");
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern DAY = Pattern.compile("(\\d{1,2})(?:st|nd|rd|th|\\.)?");
    private static final Pattern COUNT = Pattern.compile("\\d{1,3}");

    private final Tokens words;
    private final UnitWords units;
    private final LocalDate today;

    TimeWords(Tokens words, UnitWords units, LocalDate today) {
        this.words = words;
        this.units = units;
        this.today = today;
    }

    /** Days from and to, how they are called, and where the words behind begin. */
    private record Span(LocalDate from, LocalDate to, String said, int next) {
    }

    /** The time whose words begin there, with a word such as before or in; empty when there is none. */
    Optional<Parsed> at(int i) {
        String word = words.small(i);
        return switch (word) {
            case "in", "on", "of", "from", "during", "made", "dated" -> span(i + 1, true).or(() -> word.equals("made") ? inner(i + 1) : Optional.empty()).map(this::within);
            case "before", "until" -> span(i + 1, true).map(s -> new Parsed(new Term.Time(say("time.before", s.said), null, s.from.minusDays(1)), s.next));
            case "after" -> span(i + 1, true).map(s -> new Parsed(new Term.Time(say("time.after", s.said), s.to.plusDays(1), null), s.next));
            case "since" -> span(i + 1, true).map(s -> new Parsed(new Term.Time(say("time.since", s.said), s.from, null), s.next));
            default -> span(i, false).map(this::within);
        };
    }

    private Optional<Span> inner(int i) {
        return List.of("in", "on", "during").contains(words.small(i)) ? span(i + 1, true) : Optional.empty();
    }

    private Parsed within(Span s) {
        int to = s.said.indexOf(TO);
        String said = s.from.equals(s.to) ? say("time.on", s.said) : to < 0 ? say("time.in", s.said) : say("time.between", s.said.substring(0, to), s.said.substring(to + TO
                .length()));
        return new Parsed(new Term.Time(said, s.from, s.to), s.next);
    }

    private static String say(String key, Object... args) {
        return Message.of(TimeWords.class, key, args).text();
    }

    /** A time; a month without its year only where a word before it shows that a month is meant. */
    private Optional<Span> span(int i, boolean shown) {
        String word = words.small(i);
        try {
            return switch (word) {
                case "today" -> Optional.of(day(today, i + 1));
                case "yesterday" -> Optional.of(day(today.minusDays(1), i + 1));
                case "this" -> relative(i, 0);
                case "last" -> last(i);
                default -> dates(i, shown);
            };
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<Span> last(int i) {
        if (COUNT.matcher(words.small(i + 1)).matches()) {
            int count = Integer.parseInt(words.small(i + 1));
            Optional<ChronoUnit> unit = unit(words.small(i + 2));
            return unit.map(u -> range(today.minus(count, u), today, i + 3));
        }
        return relative(i, 1);
    }

    private static Optional<ChronoUnit> unit(String word) {
        return switch (word) {
            case "day", "days" -> Optional.of(ChronoUnit.DAYS);
            case "week", "weeks" -> Optional.of(ChronoUnit.WEEKS);
            case "month", "months" -> Optional.of(ChronoUnit.MONTHS);
            case "year", "years" -> Optional.of(ChronoUnit.YEARS);
            default -> Optional.empty();
        };
    }

    private Optional<Span> relative(int i, int back) {
        return switch (words.small(i + 1)) {
            case "week" -> {
                LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(back);
                yield Optional.of(range(monday, monday.plusDays(6), i + 2));
            }
            case "month" -> Optional.of(month(YearMonth.from(today).minusMonths(back), i + 2));
            case "year" -> Optional.of(year(today.getYear() - back, i + 2));
            default -> {
                int month = month(words.small(i + 1));
                yield month < 0 ? Optional.empty() : Optional.of(month(newest(month, back == 1), i + 2));
            }
        };
    }

    /** The newest such month up to now; of "last March", before this one. */
    private YearMonth newest(int month, boolean before) {
        YearMonth now = YearMonth.from(today);
        YearMonth own = YearMonth.of(now.getYear(), month);
        return own.isAfter(now) || before && own.equals(now) ? own.minusYears(1) : own;
    }

    private static int month(String word) {
        for (int m = 0; m < MONTHS.size(); m++) {
            if (word.length() >= SHORT && MONTHS.get(m).startsWith(word) || word.equals("sept") && m == 8) {
                return m + 1;
            }
        }
        return -1;
    }

    private Optional<Span> dates(int i, boolean shown) {
        String word = words.small(i);
        Matcher years = YEARS.matcher(word);
        if (years.matches()) {
            int one = Integer.parseInt(years.group(1));
            int other = Integer.parseInt(years.group(2));
            return Optional.of(new Span(LocalDate.of(Math.min(one, other), 1, 1), LocalDate.of(Math.max(one, other), 12, 31), Math.min(one, other) + TO + Math.max(one,
                    other), i + 1));
        }
        Matcher iso = ISO.matcher(word);
        if (iso.matches()) {
            YearMonth month = YearMonth.of(Integer.parseInt(iso.group(1)), Integer.parseInt(iso.group(2)));
            return Optional.of(iso.group(3) == null ? month(month, i + 1) : day(month.atDay(Integer.parseInt(iso.group(3))), i + 1));
        }
        Matcher points = POINTS.matcher(word);
        if (points.matches()) {
            return Optional.of(day(LocalDate.of(Integer.parseInt(points.group(3)), Integer.parseInt(points.group(2)), Integer.parseInt(points.group(1))), i + 1));
        }
        return YEAR.matcher(word).matches() && !behindIsAUnit(i) ? Optional.of(year(Integer.parseInt(word), i + 1)) : named(i, shown);
    }

    /** "2000 g" is no year. */
    private boolean behindIsAUnit(int i) {
        return !words.raw(i + 1).isEmpty() && !units.of(words.raw(i + 1)).isEmpty();
    }

    /** 14 March 2026, March 14 2026, March 2026, and March where it is shown that a month is meant. */
    private Optional<Span> named(int i, boolean shown) {
        Matcher day = DAY.matcher(words.small(i));
        int first = month(words.small(i));
        if (day.matches() && month(words.small(i + 1)) > 0 && YEAR.matcher(words.small(i + 2)).matches()) {
            return Optional.of(day(LocalDate.of(Integer.parseInt(words.small(i + 2)), month(words.small(i + 1)), Integer.parseInt(day.group(1))), i + 3));
        }
        if (first < 0) {
            return Optional.empty();
        }
        Matcher behind = DAY.matcher(words.small(i + 1));
        if (behind.matches() && YEAR.matcher(words.small(i + 2)).matches()) {
            return Optional.of(day(LocalDate.of(Integer.parseInt(words.small(i + 2)), first, Integer.parseInt(behind.group(1))), i + 3));
        }
        if (YEAR.matcher(words.small(i + 1)).matches()) {
            return Optional.of(month(YearMonth.of(Integer.parseInt(words.small(i + 1)), first), i + 2));
        }
        return shown ? Optional.of(month(newest(first, false), i + 1)) : Optional.empty();
    }

    private static Span day(LocalDate day, int next) {
        return new Span(day, day, day.toString(), next);
    }

    private static Span month(YearMonth month, int next) {
        String name = MONTHS.get(month.getMonthValue() - 1);
        return new Span(month.atDay(1), month.atEndOfMonth(), Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + month.getYear(), next);
    }

    private static Span year(int year, int next) {
        return new Span(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31), String.valueOf(year), next);
    }

    private static Span range(LocalDate from, LocalDate to, int next) {
        return new Span(from, to, from + TO + to, next);
    }
}
