package org.flexwright.core.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Censoring;
import org.flexwright.model.PropertyKey;
import org.flexwright.numerics.Interval;
import org.flexwright.quantity.QuantityException;
import org.flexwright.quantity.QuantityParser;

/**
 * Reads readings as people type them. A semicolon separates readings. A number without a unit is meant in the property's canonical
 * unit. {@code >12 N}, {@code more than 12 N} and {@code no snap up to 12 N} are bounds. Yes/no properties take yes and no for one
 * piece; {@code 4 of 5} tells about several pieces and is refused.
 */
public final class ReadingParser {
    private static final Set<String> YES = Set.of("yes", "y", "true");
    private static final Set<String> NO = Set.of("no", "n", "false");
    private static final Pattern SHARE = Pattern.compile("\\d+\\s*(?:of|out of|in)\\s*\\d+", Pattern.CASE_INSENSITIVE);
    private static final Pattern MORE = Pattern.compile("(?:>=?|≥|more than|over|above|at least)\\s*(.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern LESS = Pattern.compile("(?:<=?|≤|less than|under|below|at most)\\s*(.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE_UP_TO = Pattern.compile("(?:no|none|not)\\b.*\\bup to\\s+(.*)", Pattern.CASE_INSENSITIVE);
    /** Dwells closer than this, in seconds, are the same. */
    private static final double SAME_DWELL = 1e-6;

    private ReadingParser() {
    }

    /** Reads one or more readings of a property. */
    public static ReadingInput parse(PropertyDef property, String text) {
        List<ParsedReading> readings = new ArrayList<>();
        for (String part : text.split(";")) {
            String typed = part.strip();
            if (!typed.isEmpty()) {
                try {
                    readings.add(one(property, typed));
                } catch (Unreadable e) {
                    return new ReadingInput.Rejected(e.sentence);
                }
            }
        }
        List<Double> dwells = readings.stream().map(ParsedReading::dwell).filter(Objects::nonNull).distinct().toList();
        if (dwells.size() > 1) {
            return new ReadingInput.Rejected(say("print.mixed", FieldText.digits(dwells.get(0)), FieldText.digits(dwells.get(1))));
        }
        return readings.isEmpty() ? new ReadingInput.Rejected(say("nothing", property.title())) : new ReadingInput.Understood(readings);
    }

    /**
     * Reads readings that are to be kept under a key. One typed with a dwell ({@code A/15:45}) must have the key's; where the key has none,
     * {@link ReadingInput.Understood#dwell} says what it is to be.
     */
    public static ReadingInput parse(PropertyDef property, PropertyKey key, String text) {
        ReadingInput input = parse(property, text);
        if (input instanceof ReadingInput.Understood understood && understood.dwell() != null && key.getDwell() != null
                && Math.abs(understood.dwell() - key.getDwell()) > SAME_DWELL) {
            return new ReadingInput.Rejected(say("print.dwell", text.strip(), FieldText.digits(understood.dwell()), FieldText.digits(key.getDwell())));
        }
        return input;
    }

    private static ParsedReading one(PropertyDef property, String typed) throws Unreadable {
        if (SHARE.matcher(typed).matches()) {
            throw new Unreadable(say("share", typed));
        }
        return property.yesNo() ? yesNo(property, typed) : number(property, typed);
    }

    private static ParsedReading yesNo(PropertyDef property, String typed) throws Unreadable {
        String word = typed.toLowerCase(Locale.ROOT);
        if (YES.contains(word) || NO.contains(word)) {
            return new ParsedReading(null, Censoring.NONE, YES.contains(word), typed);
        }
        throw new Unreadable(say("not-yes-or-no", typed, property.title()));
    }

    private static ParsedReading number(PropertyDef property, String typed) throws Unreadable {
        String word = typed.toLowerCase(Locale.ROOT);
        if (YES.contains(word) || NO.contains(word)) {
            throw new Unreadable(say("not-a-number", typed, property.title()));
        }
        Matcher noneUpTo = NONE_UP_TO.matcher(typed);
        Matcher more = MORE.matcher(typed);
        Matcher less = LESS.matcher(typed);
        if (noneUpTo.matches()) {
            return value(property, noneUpTo.group(1), Censoring.MORE_THAN, typed);
        }
        if (more.matches()) {
            return value(property, more.group(1), Censoring.MORE_THAN, typed);
        }
        if (less.matches()) {
            return value(property, less.group(1), Censoring.LESS_THAN, typed);
        }
        return value(property, typed, Censoring.NONE, typed);
    }

    private static ParsedReading value(PropertyDef property, String number, Censoring censoring, String typed) throws Unreadable {
        Optional<HardnessText> print = property.kind().shore() ? HardnessText.read(number) : Optional.empty();
        if (print.isPresent()) {
            return switch (print.get()) {
                case HardnessText.Unclear unclear -> throw new Unreadable(unclear.sentence());
                case HardnessText.Read read when read.scale() != property.kind() -> throw new Unreadable(say("print.scale", typed, read.scale().unit().display(),
                        property.title()));
                case HardnessText.Read read -> new ParsedReading(read.value(), censoring, null, typed, read.seconds());
            };
        }
        double value;
        try {
            value = QuantityParser.parse(number, property.kind(), property.kind().unit()).canonical();
        } catch (QuantityException e) {
            throw new Unreadable(say("quantity", e.getMessage()));
        }
        if (property.kind().shore() && !property.possible().contains(value)) {
            throw new Unreadable(say("beyond-scale", typed, property.title()));
        }
        if (!property.possible().contains(value)) {
            throw new Unreadable(impossible(property, typed));
        }
        return new ParsedReading(value, censoring, null, typed);
    }

    private static Message impossible(PropertyDef property, String typed) {
        Interval possible = property.possible();
        String low = FieldText.number(possible.low(), property.kind(), "");
        return Double.isInfinite(possible.high()) ? say("impossible.below", typed, property.title(), low)
                : say("impossible", typed, property.title(), FieldText.digits(possible.low()), FieldText.number(possible.high(), property.kind(), ""));
    }

    private static Message say(String key, Object... arguments) {
        return Message.of(ReadingParser.class, key, arguments);
    }

    /** Carries the sentence out of the parsing of one part. */
    private static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Message sentence;

        Unreadable(Message sentence) {
            super(sentence.key(), null, false, false);
            this.sentence = sentence;
        }
    }
}
