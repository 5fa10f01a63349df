package org.flexwright.core.search;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.quantity.Unit;

/** Numbers with a unit in what people write. */
final class WrittenNumbers {
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\p{L}\\p{N}.,/-])(-?\\d{1,9}(?:[.,]\\d{1,6})?) ?([\\p{L}°%µ\"²³/]{1,12}(?: (?:A|D|00|s))?)(?![\\p{N}])");

    /** Takes what was found. */
    interface Found {
        /** A number in the canonical unit of its kind. */
        void amount(double canonical, Unit unit);
    }

    private final UnitWords units;

    WrittenNumbers(UnitWords units) {
        this.units = units;
    }

    List<Unit> units(String text) {
        return units.of(text);
    }

    /** Each number with a unit in a text; once for each kind the unit can be of. "5 in the pot" is none: the word must end the number's own. */
    void in(String text, Found found) {
        boolean digit = false;
        for (int i = 0; i < text.length() && !digit; i++) {
            digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        if (!digit) {
            return;
        }
        Matcher amount = AMOUNT.matcher(text);
        while (amount.find()) {
            String word = amount.group(2);
            List<Unit> of = units.of(word);
            int space = word.indexOf(' ');
            if (of.isEmpty() && space > 0) {
                of = units.of(word.substring(0, space));
            }
            double value = Double.parseDouble(amount.group(1).replace(',', '.'));
            if (!word.equals("in") && !word.equals("a")) {
                of.forEach(unit -> found.amount(unit.toCanonical(value), unit));
            }
        }
    }
}
