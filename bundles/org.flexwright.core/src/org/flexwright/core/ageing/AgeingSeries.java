package org.flexwright.core.ageing;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.flexwright.model.Specimen;

/**
 * One piece as it grew older.
 *
 * @param piece  the piece
 * @param name   what it is called
 * @param values one for each session it was read in, the youngest first
 */
public record AgeingSeries(Specimen piece, String name, List<AgedValue> values) {
    public AgeingSeries {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(name, "name");
        values = values.stream().sorted(Comparator.comparingDouble(AgedValue::days)).toList();
    }
}
