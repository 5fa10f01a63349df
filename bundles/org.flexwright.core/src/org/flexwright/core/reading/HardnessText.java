package org.flexwright.core.reading;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityKind;

/**
 * A hardness as the standards print it. ISO style puts type, seconds, value ({@code A/15:45}), ASTM style type, value, seconds
 * ({@code A/45/15}; its order from memory, unconfirmed). Here the three are kept apart once. With two slashes the order is taken for sure
 * only where one number is a usual dwell and the other is not, or one carries an {@code s}; all else is asked, never guessed.
 */
public sealed interface HardnessText {

    /**
     * It was understood.
     *
     * @param scale   the durometer's scale
     * @param value   points, 0 to 100
     * @param seconds from contact to reading
     */
    record Read(QuantityKind scale, double value, double seconds) implements HardnessText {

        /** {@code A/15:45}: type, seconds, value. */
        public String iso() {
            return type() + "/" + FieldText.digits(seconds) + ":" + FieldText.digits(value);
        }

        /** {@code A/45/15}: type, value, seconds (order from memory, unconfirmed). */
        public String astm() {
            return type() + "/" + FieldText.digits(value) + "/" + FieldText.digits(seconds);
        }

        /** Both prints, each with the order of its figures. */
        public Message both() {
            return Message.of(HardnessText.class, "print.both", iso(), astm());
        }

        private String type() {
            return scale.unit().display().replaceFirst("Shore ", "");
        }
    }

    /**
     * It looks like such a print and cannot be taken for sure.
     *
     * @param sentence what it may mean and how to write it
     */
    record Unclear(Message sentence) implements HardnessText {
    }

    /** Dwells in common use, s (common practice). */
    Set<Double> USUAL_DWELLS = Set.of(1.0, 3.0, 5.0, 10.0, 15.0, 30.0, 60.0);

    /** The scales as written. */
    Map<String, QuantityKind> SCALES = Map.ofEntries(Map.entry("A", QuantityKind.SHORE_A), Map.entry("B", QuantityKind.SHORE_B),
            Map.entry("C", QuantityKind.SHORE_C), Map.entry("D", QuantityKind.SHORE_D), Map.entry("DO", QuantityKind.SHORE_DO),
            Map.entry("E", QuantityKind.SHORE_E), Map.entry("O", QuantityKind.SHORE_O), Map.entry("00", QuantityKind.SHORE_00),
            Map.entry("OO", QuantityKind.SHORE_00), Map.entry("000", QuantityKind.SHORE_000), Map.entry("OOO", QuantityKind.SHORE_000),
            Map.entry("M", QuantityKind.SHORE_AM), Map.entry("AM", QuantityKind.SHORE_AM), Map.entry("AO", QuantityKind.SHORE_AO));

    /** Type, two numbers, a colon or slash between them. */
    Pattern PRINT = Pattern.compile("(?:shore\\s*|sh\\s*)?(AM|AO|A|B|C|DO|D|E|000|00|OOO|OO|O|M)\\s*/\\s*(\\d+(?:[.,]\\d+)?)\\s*(s)?\\s*([:/])\\s*(\\d+(?:[.,]\\d+)?)\\s*(s)?",
            Pattern.CASE_INSENSITIVE);

    /** Reads such a print; empty when the text is none, and is to be read as a plain number. */
    static Optional<HardnessText> read(String text) {
        Matcher print = PRINT.matcher(text.strip());
        if (!print.matches()) {
            return Optional.empty();
        }
        String type = print.group(1).toUpperCase(Locale.ROOT);
        double first = number(print.group(2));
        double second = number(print.group(5));
        boolean firstTimed = print.group(3) != null;
        boolean secondTimed = print.group(6) != null;
        if (firstTimed && secondTimed || ":".equals(print.group(4)) && secondTimed) {
            return Optional.of(new Unclear(say("print.twoTimes", text.strip(), type)));
        }
        if (":".equals(print.group(4)) || firstTimed) {
            return Optional.of(read(text, type, second, first));
        }
        if (secondTimed || usual(second) && !usual(first)) {
            return Optional.of(read(text, type, first, second));
        }
        return Optional.of(new Unclear(say("print.unclear", text.strip(), type, FieldText.digits(first), FieldText.digits(second))));
    }

    private static HardnessText read(String text, String type, double value, double seconds) {
        if (value > 100) {
            return new Unclear(say("print.beyond", text.strip(), FieldText.digits(value)));
        }
        return seconds > 0 && seconds <= 3600 ? new Read(SCALES.get(type), value, seconds) : new Unclear(say("print.time", text.strip(), FieldText.digits(seconds)));
    }

    private static boolean usual(double seconds) {
        return USUAL_DWELLS.contains(seconds);
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    private static Message say(String key, Object... arguments) {
        return Message.of(HardnessText.class, key, arguments);
    }
}
