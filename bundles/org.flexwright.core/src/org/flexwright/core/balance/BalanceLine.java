package org.flexwright.core.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.core.Message;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/**
 * One line a balance wrote: a reading, or why it is none. Read are lines with one decimal number, point or comma, with or without a sign
 * and blanks around it, a unit of mass behind it, and marks of stability or of a net value before or after it.
 */
public sealed interface BalanceLine {

    /**
     * A reading.
     *
     * @param grams  mass in g; may be negative, as after taking the cup off
     * @param value  the number as written
     * @param unit   its unit
     * @param stable true when the balance says so; null when it says nothing of it
     */
    record Reading(double grams, double value, String unit, Boolean stable) implements BalanceLine {
        public Reading {
            Objects.requireNonNull(unit, "unit");
        }
    }

    /**
     * No reading to go by.
     *
     * @param why      why
     * @param sentence one sentence: what stood there and what is allowed
     * @param grams    mass in g for {@link Why#UNSTABLE}, to be shown and not to be taken; else null
     */
    record Refused(Why why, Message sentence, Double grams) implements BalanceLine {
        public Refused {
            Objects.requireNonNull(why, "why");
            Objects.requireNonNull(sentence, "sentence");
        }
    }

    /** Why a line is no reading. */
    enum Why {
        /** Nothing in it. */
        EMPTY,
        /** Longer than any reading. */
        TOO_LONG,
        /** No number in it, or one that is not finite. */
        NO_NUMBER,
        /** More than one number. */
        TWO_READINGS,
        /** No unit behind the number, and the settings do not say which is meant. */
        NO_UNIT,
        /** Another unit than the one expected, or none of mass. */
        WRONG_UNIT,
        /** The balance says the value still moves. */
        UNSTABLE,
        /** More than the balance carries, or less than it shows. */
        OVERLOAD,
        /** Words no balance line has. */
        GARBLED
    }

    /** Longest line that is looked at. */
    int LONGEST = 120;

    /**
     * Reads a line.
     *
     * @param line   the line, without or with its end
     * @param unit   symbol of the unit that is expected, of kind mass
     * @param bare   true when lines come without a unit and are meant in the expected one
     */
    static BalanceLine parse(String line, String unit, boolean bare) {
        Unit expected = Units.find(QuantityKind.MASS, unit).orElseThrow(() -> new IllegalArgumentException(unit + " is no unit of mass."));
        return Parser.parse(line, expected, bare);
    }

    /** Reads lines. */
    final class Parser {
        private static final Pattern NUMBER = Pattern.compile("(?<!\\d)(?<!\\d[.,])([+\\-\\u2212]?)\\s*(\\d+(?:[.,]\\d+)?|[.,]\\d+)(?!\\d|[.,]\\d)");
        private static final Set<String> STABLE = Set.of("st", "s", "stable");
        private static final Set<String> MOVING = Set.of("us", "sd", "d", "unstable", "dynamic", "?", "~");
        private static final Set<String> OVER = Set.of("ol", "ul", "overload", "underload", "over", "under", "err", "error", "h", "l");
        private static final Set<String> SILENT = Set.of("gs", "nt", "net", "gross", "g/n", "n", "w", "wt", "weight", "tare", "tr", "#", "*");
        private static final Set<String> NOT_FINITE = Set.of("nan", "inf", "infinity");

        private Parser() {
        }

        static BalanceLine parse(String line, Unit expected, boolean bare) {
            String text = line.codePoints().filter(c -> !Character.isISOControl(c) || c == '\t').collect(StringBuilder::new, StringBuilder::appendCodePoint,
                    StringBuilder::append).toString().strip();
            if (text.isEmpty()) {
                return refused(Why.EMPTY, "balance.empty");
            }
            if (text.length() > LONGEST) {
                return refused(Why.TOO_LONG, "balance.long", text.length(), LONGEST);
            }
            if (text.matches("[-\\u2212_^=\\s]{3,}")) {
                return refused(Why.OVERLOAD, "balance.over", text);
            }
            List<String[]> numbers = new ArrayList<>();
            Matcher matcher = NUMBER.matcher(text);
            int end = -1;
            int start = -1;
            while (matcher.find()) {
                numbers.add(new String[] { matcher.group(1), matcher.group(2) });
                start = start < 0 ? matcher.start() : start;
                end = matcher.end();
            }
            if (numbers.size() > 1) {
                return refused(Why.TWO_READINGS, "balance.two", text, numbers.size());
            }
            if (numbers.isEmpty()) {
                return wordsOnly(text);
            }
            return reading(text, text.substring(0, start), numbers.getFirst(), text.substring(end), expected, bare);
        }

        private static BalanceLine wordsOnly(String text) {
            for (String word : words(text)) {
                if (OVER.contains(word)) {
                    return refused(Why.OVERLOAD, "balance.over", text);
                }
                if (NOT_FINITE.contains(word)) {
                    return refused(Why.NO_NUMBER, "balance.finite", text);
                }
            }
            return text.chars().anyMatch(Character::isDigit) ? refused(Why.GARBLED, "balance.garbled", text, text) : refused(Why.NO_NUMBER, "balance.number", text);
        }

        private static BalanceLine reading(String text, String before, String[] number, String after, Unit expected, boolean bare) {
            Boolean stable = null;
            Unit unit = null;
            List<String> around = new ArrayList<>(words(before));
            List<String> behind = behind(after);
            if (!behind.isEmpty() && Units.find(QuantityKind.MASS, behind.getFirst()).isPresent()) {
                unit = Units.find(QuantityKind.MASS, behind.removeFirst()).orElseThrow();
            }
            around.addAll(behind.stream().map(w -> w.toLowerCase(Locale.ROOT)).toList());
            for (String word : around) {
                if (OVER.contains(word)) {
                    return refused(Why.OVERLOAD, "balance.over", text);
                }
                if (NOT_FINITE.contains(word)) {
                    return refused(Why.NO_NUMBER, "balance.finite", text);
                }
                if (MOVING.contains(word)) {
                    stable = false;
                } else if (STABLE.contains(word)) {
                    stable = stable == null ? Boolean.TRUE : stable;
                } else if (!SILENT.contains(word)) {
                    boolean unknownUnit = unit == null && !behind.isEmpty() && behind.getFirst().toLowerCase(Locale.ROOT).equals(word);
                    return unknownUnit ? refused(Why.WRONG_UNIT, "balance.unit", text, word, expected.symbol()) : refused(Why.GARBLED, "balance.garbled", text, word);
                }
            }
            if (unit == null && !bare) {
                return refused(Why.NO_UNIT, "balance.noUnit", text, expected.symbol());
            }
            if (unit != null && !unit.symbol().equals(expected.symbol())) {
                return refused(Why.WRONG_UNIT, "balance.unit", text, unit.symbol(), expected.symbol());
            }
            double value = Double.parseDouble(number[1].replace(',', '.')) * (number[0].isEmpty() || number[0].equals("+") ? 1 : -1);
            double grams = expected.toCanonical(value);
            return Boolean.FALSE.equals(stable) ? new Refused(Why.UNSTABLE, Message.of(BalanceLine.class, "balance.moves", text), grams)
                    : new Reading(grams, value + 0.0, expected.symbol(), stable);
        }

        private static List<String> words(String text) {
            List<String> words = new ArrayList<>();
            for (String word : text.toLowerCase(Locale.ROOT).split("[\\s,;:=()\\[\\]]+")) {
                if (!word.isEmpty()) {
                    words.add(word);
                }
            }
            return words;
        }

        private static List<String> behind(String after) {
            List<String> words = new ArrayList<>();
            for (String word : after.split("[\\s,;:=()\\[\\]]+")) {
                if (!word.isEmpty()) {
                    words.add(word);
                }
            }
            return words;
        }

        private static Refused refused(Why why, String key, Object... args) {
            return new Refused(why, Message.of(BalanceLine.class, key, args), null);
        }
    }

    /** The reading, when it is one. */
    default Optional<Reading> reading() {
        return this instanceof Reading r ? Optional.of(r) : Optional.empty();
    }
}
