package org.flexwright.core.view;

import java.util.Objects;

/**
 * A mark on an axis.
 *
 * @param value where
 * @param label what stands beside it
 */
public record Tick(double value, String label) {
    public Tick {
        Objects.requireNonNull(label, "label");
    }
}
