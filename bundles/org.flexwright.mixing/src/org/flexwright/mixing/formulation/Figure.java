package org.flexwright.mixing.formulation;

import java.util.Objects;

import org.flexwright.core.Source;

/**
 * A figure of a material that a mixture is counted with.
 *
 * @param material what it is of, in words
 * @param name     what it is
 * @param value    in {@code unit}
 * @param unit     symbol; empty for a bare number
 * @param source   own record, sheet, or where it was entered
 */
public record Figure(String material, String name, double value, String unit, Source source) {
    public Figure {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
    }
}
