package org.flexwright.core.calc;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.Rows;

/** Results as they are shown and kept. */
final class ResultValues {

    private ResultValues() {
    }

    static ResultValue of(FieldDescriptor field, Object value, Source source) {
        String text = FieldText.show(field, value);
        if (value instanceof Estimate e) {
            return new ResultValue(field, value, e.low(), e.likely(), e.high(), text, field.unit(), e.source());
        }
        if (value instanceof Number n) {
            double number = n.doubleValue();
            return new ResultValue(field, value, number, number, number, text, field.unit(), source);
        }
        return new ResultValue(field, value, null, null, null, text, field.unit(), source);
    }

    /** False when there is a number in it that is none. */
    static boolean finite(Object value) {
        return switch (value) {
            case null -> true;
            case Double d -> Double.isFinite(d);
            case Estimate e -> Double.isFinite(e.low()) && Double.isFinite(e.likely()) && Double.isFinite(e.high());
            case List<?> list -> list.stream().allMatch(ResultValues::finite);
            case Record row -> {
                for (var component : row.getClass().getRecordComponents()) {
                    if (!finite(Rows.component(row, component.getName()))) {
                        yield false;
                    }
                }
                yield true;
            }
            default -> true;
        };
    }
}
