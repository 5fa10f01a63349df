package org.flexwright.core.search;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.core.Message;
import org.flexwright.core.search.Term.Amount;
import org.flexwright.core.search.Term.Range;
import org.flexwright.quantity.Unit;

/**
 * Numbers in a search: {@code 46 A}, {@code 40-44 A}, {@code > 12 N}, {@code at least 4 phr}, {@code 3/8 in}, {@code about 22.9 g}. One number is met
 * by what rounds to its written digits; the ends of a range are met as they stand; "about" is 5 % either way (our own choice).
 */
final class AmountWords {
    private static final String NUMBER = "(\\d{1,4}/\\d{1,4}|\\d{1,12}(?:[.,]\\d{1,9})?)";
    private static final Pattern TYPED = Pattern.compile("([<>~≈]=?)?([+-]?)" + NUMBER + "(?:(?:-|\\.\\.\\.?|…)" + NUMBER + ")?(.*)");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");
    private static final Pattern FRACTION = Pattern.compile("\\d{1,4}/\\d{1,4}");
    private static final double ABOUT = 0.05;

    private final Tokens words;
    private final UnitWords units;
    private final TimeWords times;

    AmountWords(Tokens words, UnitWords units, TimeWords times) {
        this.words = words;
        this.units = units;
        this.times = times;
    }

    private enum How {
        ONE, ABOUT, OVER, FROM, UNDER, TO
    }

    /** A number as typed with half a unit of its last digit; of a fraction, half of the next finer one. */
    private record Typed(String text, double value, double half) {
        static Typed of(String sign, String text) {
            int slash = text.indexOf('/');
            double minus = sign.equals("-") ? -1 : 1;
            if (slash > 0) {
                double below = Double.parseDouble(text.substring(slash + 1));
                return new Typed(sign + text, minus * Double.parseDouble(text.substring(0, slash)) / below, 0.25 / below);
            }
            String plain = text.replace(',', '.');
            int point = plain.indexOf('.');
            int places = point < 0 ? 0 : plain.length() - point - 1;
            return new Typed(sign + plain, minus * Double.parseDouble(plain), 0.5 * Math.pow(10, -places));
        }

        /** 1 and 3/8. */
        Typed and(Typed fraction) {
            return new Typed(text + " " + fraction.text, value + fraction.value, fraction.half);
        }
    }

    /** A unit as typed, what it can be, and how many words it took. */
    private record Units(String text, List<Unit> units, int words) {
        static final Units NONE = new Units("", List.of(), 0);
    }

    /** The number or range whose words begin there; empty when there is none. */
    Optional<Parsed> at(int i) {
        String word = words.small(i);
        String two = word + " " + words.small(i + 1);
        return switch (word) {
            case ">", "over", "above" -> number(i + 1, How.OVER);
            case ">=" -> number(i + 1, How.FROM);
            case "<", "under", "below" -> number(i + 1, How.UNDER);
            case "<=" -> number(i + 1, How.TO);
            case "~", "≈", "about", "around" -> number(i + 1, How.ABOUT);
            case "more", "less", "at", "up" -> switch (two) {
                case "more than" -> number(i + 2, How.OVER);
                case "less than" -> number(i + 2, How.UNDER);
                case "at least" -> number(i + 2, How.FROM);
                case "at most", "up to" -> number(i + 2, How.TO);
                default -> Optional.empty();
            };
            case "between" -> number(i + 1, How.ONE);
            default -> number(i, How.ONE);
        };
    }

    private Optional<Parsed> number(int i, How asked) {
        Matcher typed = TYPED.matcher(words.raw(i));
        if (words.raw(i).isEmpty() || !typed.matches() || zero(typed.group(3)) || typed.group(4) != null && zero(typed.group(4))) {
            return Optional.empty();
        }
        How how = how(typed.group(1), asked);
        Typed low = Typed.of(typed.group(2), typed.group(3));
        Typed high = typed.group(4) == null ? null : Typed.of("", typed.group(4));
        String rest = typed.group(5);
        int next = i + 1;
        Units unit = Units.NONE;
        if (rest.isEmpty()) {
            if (high == null && WHOLE.matcher(words.raw(i)).matches() && FRACTION.matcher(words.raw(next)).matches() && !zero(words.raw(next))) {
                low = low.and(Typed.of("", words.raw(next)));
                next++;
            }
            unit = unit(next);
            next += unit.words();
        } else {
            unit = attached(rest, next);
            if (unit == Units.NONE) {
                return Optional.empty();
            }
            next += unit.words() - 1;
        }
        String joint = words.small(next);
        if (high == null && how == How.ONE && (joint.equals("to") || joint.equals("-") || joint.equals("and") && words.small(i - 1).equals("between"))) {
            Matcher second = TYPED.matcher(words.raw(next + 1));
            if (second.matches() && second.group(1) == null && second.group(4) == null && !zero(second.group(3))) {
                Units other = second.group(5).isEmpty() ? unit(next + 2) : attached(second.group(5), next + 2);
                boolean fits = second.group(5).isEmpty() || other != Units.NONE;
                if (fits && (unit == Units.NONE || other == Units.NONE || unit.units().equals(other.units()))) {
                    high = Typed.of(second.group(2), second.group(3));
                    next += 2 + (second.group(5).isEmpty() ? other.words() : other.words() - 1);
                    unit = unit == Units.NONE ? other : unit;
                }
            }
        }
        String code = unit == Units.NONE && how == How.ONE ? Plain.word(words.between(i, next)) : "";
        return Optional.of(new Parsed(amount(how, low, high, unit, code), next));
    }

    /** A fraction over nothing is no number. */
    private static boolean zero(String text) {
        return text.matches("\\d+/0+");
    }

    private static How how(String sign, How asked) {
        return sign == null ? asked : switch (sign) {
            case ">" -> How.OVER;
            case ">=" -> How.FROM;
            case "<" -> How.UNDER;
            case "<=" -> How.TO;
            default -> How.ABOUT;
        };
    }

    /** The unit in the words there; "in" before a time is no inch. */
    private Units unit(int i) {
        String one = words.raw(i);
        if (one.isEmpty() || one.equalsIgnoreCase("in") && times.at(i).isPresent()) {
            return Units.NONE;
        }
        if (!words.raw(i + 1).isEmpty()) {
            List<Unit> two = units.of(one + " " + words.raw(i + 1));
            if (!two.isEmpty()) {
                return new Units(two.get(0).display(), two, 2);
            }
        }
        List<Unit> single = units.of(one);
        return single.isEmpty() ? Units.NONE : new Units(single.get(0).display(), single, 1);
    }

    /** The unit behind the number without a space, which may go on in the next word. */
    private Units attached(String rest, int next) {
        List<Unit> two = words.raw(next).isEmpty() ? List.of() : units.of(rest + " " + words.raw(next));
        if (!two.isEmpty()) {
            return new Units(two.get(0).display(), two, 2);
        }
        List<Unit> single = units.of(rest);
        return single.isEmpty() ? Units.NONE : new Units(single.get(0).display(), single, 1);
    }

    private static Amount amount(How how, Typed one, Typed two, Units unit, String code) {
        Typed low = two != null && two.value() < one.value() ? two : one;
        Typed high = two == null ? null : low == one ? two : one;
        List<Range> ranges = unit.units().isEmpty() ? List.of(range(how, low, high, null)) : unit.units().stream().map(u -> range(how, low, high, u)).toList();
        String key = high != null ? "amount.range" : switch (how) {
            case ONE -> "amount.one";
            case ABOUT -> "amount.about";
            case OVER -> "amount.over";
            case FROM -> "amount.from";
            case UNDER -> "amount.under";
            case TO -> "amount.to";
        };
        String said = (high == null ? Message.of(AmountWords.class, key, low.text(), unit.text()) : Message.of(AmountWords.class, key, low.text(), high.text(), unit.text()))
                .text().strip().replaceAll(" {2,}", " ");
        return new Amount(said, List.of(), ranges, high == null && how == How.ONE, code, high == null);
    }

    private static Range range(How how, Typed low, Typed high, Unit unit) {
        double none = Double.NEGATIVE_INFINITY;
        double all = Double.POSITIVE_INFINITY;
        if (high != null) {
            return range(unit, low.value(), high.value(), false, false);
        }
        double value = low.value();
        double five = Math.abs(value) * ABOUT;
        return switch (how) {
            case ONE -> range(unit, value - low.half(), value + low.half(), false, false);
            case ABOUT -> range(unit, value - five, value + five, false, false);
            case OVER -> range(unit, value, all, true, false);
            case FROM -> range(unit, value, all, false, false);
            case UNDER -> range(unit, none, value, false, true);
            case TO -> range(unit, none, value, false, false);
        };
    }

    private static Range range(Unit unit, double low, double high, boolean lowOpen, boolean highOpen) {
        return unit == null ? new Range(null, low, high, lowOpen, highOpen)
                : new Range(unit.kind(), Double.isFinite(low) ? unit.toCanonical(low) : low, Double.isFinite(high) ? unit.toCanonical(high) : high, lowOpen, highOpen);
    }
}
