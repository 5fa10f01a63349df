package org.flexwright.core.exchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;

/** Values of attributes as plain text, the same in every export: decimal point, all digits, times in UTC, words of choices as in the model. */
final class Values {
    /** What counts as a number; Java's own reader takes more, NaN and 1d among it. */
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

    private Values() {
    }

    /** A text that is no such value; carries the sentence. */
    static final class NotAValue extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Message sentence;

        NotAValue(Message sentence) {
            super(sentence.text());
            this.sentence = sentence;
        }

        NotAValue(String key, Object... args) {
            this(Message.of(Values.class, key, args));
        }

        Message sentence() {
            return sentence;
        }
    }

    static boolean isText(EAttribute a) {
        return a.getEAttributeType().getInstanceClass() == String.class;
    }

    static boolean isNumber(EAttribute a) {
        Class<?> type = a.getEAttributeType().getInstanceClass();
        return type == Double.class || type == double.class;
    }

    /** One value as text. */
    static String print(EAttribute a, Object value) {
        return switch (value) {
            case String s -> s;
            case Double d -> number(d);
            case Instant t -> t.toString();
            default -> EcoreUtil.convertToString(a.getEAttributeType(), value);
        };
    }

    /** All digits of a number; whole ones without a point. */
    static String number(double d) {
        String s = Double.toString(d);
        return s.endsWith(".0") ? s.substring(0, s.length() - 2) : s;
    }

    /** The number in that text, null when it is none. */
    static Double number(String text) {
        return NUMBER.matcher(text).matches() ? finite(Double.valueOf(text)) : null;
    }

    private static Double finite(Double d) {
        return Double.isFinite(d) ? d : null;
    }

    /** Reads one value as {@link #print} writes it. */
    static Object parse(EAttribute a, String text) throws NotAValue {
        if (isText(a)) {
            return text(text);
        }
        String typed = text.strip();
        EDataType type = a.getEAttributeType();
        Class<?> c = type.getInstanceClass();
        if (isNumber(a)) {
            Double d = number(typed);
            if (d == null) {
                throw new NotAValue("notANumber", text);
            }
            return d;
        }
        if (type instanceof EEnum choices) {
            return choice(choices, typed);
        }
        if (c == boolean.class || c == Boolean.class) {
            return switch (typed.toLowerCase(java.util.Locale.ROOT)) {
                case "true", "yes", "1" -> Boolean.TRUE;
                case "false", "no", "0" -> Boolean.FALSE;
                default -> throw new NotAValue("notYesNo", text);
            };
        }
        try {
            if (c == Instant.class) {
                return Instant.parse(typed);
            }
            if (c == LocalDate.class) {
                return LocalDate.parse(typed);
            }
            return EcoreUtil.createFromString(type, typed);
        } catch (DateTimeException e) {
            throw new NotAValue(c == Instant.class ? "notAMoment" : "notADate", text);
        } catch (RuntimeException e) {
            throw new NotAValue(c == int.class || c == Integer.class || c == long.class || c == Long.class ? "notWhole" : "notTaken", text);
        }
    }

    private static Object choice(EEnum choices, String typed) throws NotAValue {
        for (EEnumLiteral l : choices.getELiterals()) {
            if (l.getLiteral().equals(typed)) {
                return l.getInstance();
            }
        }
        for (EEnumLiteral l : choices.getELiterals()) {
            if (l.getLiteral().equalsIgnoreCase(typed.replace(' ', '_').replace('-', '_'))) {
                return l.getInstance();
            }
        }
        throw new NotAValue("notAChoice", typed, choices.getELiterals().stream().map(EEnumLiteral::getLiteral).collect(Collectors.joining(", ")));
    }

    private static String text(String text) throws NotAValue {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
            if (pair) {
                i++;
            } else if (c < ' ' && c != '\t' && c != '\n' && c != '\r' || Character.isSurrogate(c) || c >= '\ufffe') {
                throw new NotAValue("character", String.format(java.util.Locale.ROOT, "U+%04X", (int) c), Integer.toString(i + 1));
            }
        }
        return text;
    }

    /** Refuses a number beyond what its field allows. */
    static void bounds(FieldDescriptor field, Object value) throws NotAValue {
        if (field == null || !(value instanceof Number n)) {
            return;
        }
        double d = n.doubleValue();
        if (d < field.min() || field.minOpen() && d == field.min() || d > field.max()) {
            throw new NotAValue("outside", number(d), field.allowed());
        }
    }

    /** The value of an attribute as one text; null when there is none. A list is joined. */
    static String of(EObject object, EAttribute a) {
        Object value = object.eGet(a);
        if (a.isMany()) {
            List<?> list = (List<?>) value;
            return list.isEmpty() ? null : CellText.join(list.stream().map(v -> print(a, v)).toList());
        }
        return value == null || a.isUnsettable() && !object.eIsSet(a) ? null : print(a, value);
    }

    /** The value in a text as {@link #of} gives it. */
    static Object read(EAttribute a, String text) throws NotAValue {
        if (!a.isMany()) {
            return parse(a, text);
        }
        List<Object> values = new ArrayList<>();
        for (String one : CellText.split(text)) {
            values.add(parse(a, one));
        }
        return values;
    }
}
