package org.flexwright.core.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.quantity.QuantityKind;

/** Values as people read them: numbers rounded to what is known of them. */
public final class FieldText {
    /** Digits of a number nothing more is known of: as many as a good bench balance gives. */
    private static final int DIGITS = 4;
    /** Two ends this much alike, against the band's width, count as a symmetric band. */
    private static final double SYMMETRIC = 1e-6;

    private FieldText() {
    }

    /** The value as shown beside its label; empty for null. It need not be read again: {@link FieldDescriptor#print} is for that. */
    public static String show(FieldDescriptor field, Object value) {
        if (value == null) {
            return "";
        }
        return switch (field.type()) {
            case QUANTITY -> value instanceof Estimate e ? band(e.low(), e.likely(), e.high(), field.kind(), field.unit())
                    : number(((Number) value).doubleValue(), field.kind(), field.unit());
            case LIST -> ((Collection<?>) value).stream().map(v -> show(field.columns().get(0), v)).collect(Collectors.joining("; "));
            case TABLE -> ((Collection<?>) value).stream().map(row -> row(field, row)).collect(Collectors.joining("\n"));
            default -> field.print(value);
        };
    }

    private static String row(FieldDescriptor table, Object row) {
        var cells = Rows.cells(table.columns(), row);
        return table.columns().stream().map(c -> show(c, cells.get(c.name()))).collect(Collectors.joining("; "));
    }

    /** A number of which nothing more is known, four digits at least before it is cut. */
    public static String number(double value, QuantityKind kind, String unit) {
        return (digits(value) + " " + FieldUnits.unit(kind, unit).display()).strip();
    }

    /** The number alone, four digits at least before it is cut. */
    public static String digits(double value) {
        BigDecimal all = BigDecimal.valueOf(value);
        int whole = value == 0 ? 1 : all.precision() - all.scale();
        return QuantityFormat.plain(all.round(new MathContext(Math.max(DIGITS, whole), RoundingMode.HALF_UP)).doubleValue());
    }

    /** A value with its band, in the unit: {@code 61 ± 2 Shore A}, or {@code 0.79 (0.70 … 0.95) N} when the band is lopsided. */
    public static String band(double low, double likely, double high, QuantityKind kind, String unit) {
        if (!(high > low)) {
            return number(likely, kind, unit);
        }
        String symbol = FieldUnits.unit(kind, unit).display();
        int places = places((high - low) / 2);
        String middle = fixed(likely, places);
        boolean symmetric = Math.abs((high - likely) - (likely - low)) <= SYMMETRIC * (high - low);
        String text = symmetric ? Message.of(FieldText.class, "plusMinus", middle, fixed((high - low) / 2, places), symbol).text()
                : Message.of(FieldText.class, "lowHigh", middle, fixed(low, places), fixed(high, places), symbol).text();
        return text.strip();
    }

    /** Low and high ends alone, rounded to the width between them: {@code 0.70 … 0.95}. */
    public static String range(double low, double high) {
        int places = places((high - low) / 2);
        return Message.of(FieldText.class, "range", fixed(low, places), fixed(high, places)).text();
    }

    /** A number rounded to the place its uncertainty tells. {@code halfWidth} positive. */
    public static String rounded(double value, double halfWidth) {
        return fixed(value, places(halfWidth));
    }

    /** Decimal places that show one digit of the half width, two when it starts with 1 or is 10 and more: a share of 28 to 99 % is not one of 30 to 100 %. */
    private static int places(double halfWidth) {
        if (!(halfWidth > 0) || Double.isInfinite(halfWidth)) {
            return DIGITS - 1;
        }
        BigDecimal two = BigDecimal.valueOf(halfWidth).round(new MathContext(2, RoundingMode.HALF_UP));
        int exponent = two.precision() - two.scale() - 1;
        boolean one = two.unscaledValue().toString().startsWith("1");
        return (one || exponent >= 1 ? 1 : 0) - exponent;
    }

    /** A number with that many places; negative ones round to tens and hundreds. */
    public static String fixed(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().setScale(Math.max(places, 0), RoundingMode.HALF_UP).toPlainString()
                : rounded.setScale(Math.max(places, 0), RoundingMode.HALF_UP).toPlainString();
    }
}
