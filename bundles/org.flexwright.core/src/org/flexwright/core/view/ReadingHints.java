package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Reading;
import org.flexwright.numerics.Descriptive;

/** What is worth a second look while readings are typed. Nothing of it refuses a reading: a hint is no measurement. */
public final class ReadingHints {
    /** So many readings alike are noted. */
    private static final int ALIKE = 3;
    /** By hand up to 5 points lie between readings of hardness (rubber handbook page, seen). */
    private static final double POINTS = 5;
    /** Another reading twice or half the others is most often a slip of the finger: common practice. */
    private static final double TIMES = 2;
    private static final double ROUNDING = 1e-6;

    private ReadingHints() {
    }

    /**
     * Hints on the readings of one piece.
     *
     * @param instrument the gauge, or null
     * @param readings   those that count, the newest last
     */
    public static List<Message> of(PropertyDef property, Instrument instrument, List<Reading> readings) {
        double[] values = readings.stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE).mapToDouble(Reading::getValue).toArray();
        List<Message> hints = new ArrayList<>();
        if (property.yesNo() || values.length == 0) {
            return hints;
        }
        double step = instrument == null ? 0 : GaugeAmounts.canonical(instrument, instrument.getResolution(), property);
        double last = values[values.length - 1];
        if (step > 0 && Math.abs(last / step - Math.rint(last / step)) > ROUNDING * Math.max(1, Math.abs(last / step))) {
            hints.add(say("hint.between", number(property, last), number(property, step)));
        }
        if (values.length > 1) {
            double others = Descriptive.median(Arrays.copyOf(values, values.length - 1));
            if (far(property, last, others, step)) {
                hints.add(say("hint.far", number(property, last), number(property, Math.abs(last - others))));
            }
        }
        if (values.length >= ALIKE && values.length == readings.size() && Arrays.stream(values).allMatch(v -> v == values[0])) {
            hints.add(step > 0 ? say("hint.alike", String.valueOf(values.length), number(property, last), number(property, step))
                    : say("hint.alikeUnknown", String.valueOf(values.length), number(property, last)));
        }
        return hints;
    }

    private static boolean far(PropertyDef property, double last, double others, double step) {
        double off = Math.abs(last - others);
        if (property.kind().shore()) {
            return off > POINTS + ROUNDING;
        }
        double larger = Math.max(Math.abs(last), Math.abs(others));
        double smaller = Math.min(Math.abs(last), Math.abs(others));
        return off > 2 * step && (last * others < 0 || larger > TIMES * smaller);
    }

    private static String number(PropertyDef property, double value) {
        return FieldText.number(value, property.kind(), "");
    }

    private static Message say(String key, Object... args) {
        return Message.of(ReadingHints.class, key, args);
    }
}
