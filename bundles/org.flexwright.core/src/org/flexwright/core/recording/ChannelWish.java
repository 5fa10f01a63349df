package org.flexwright.core.recording;

import java.util.Objects;

import org.flexwright.model.ChannelRole;
import org.flexwright.quantity.QuantityKind;

/**
 * A column a recording kind can use.
 *
 * @param role     what it means
 * @param title    words for people
 * @param kind     its quantity
 * @param unit     symbol of the unit in which the figures reach the kind, whatever the file holds
 * @param required false when the kind can do without it
 */
public record ChannelWish(ChannelRole role, String title, QuantityKind kind, String unit, boolean required) {
    public ChannelWish {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
    }
}
