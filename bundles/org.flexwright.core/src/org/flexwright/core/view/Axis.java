package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * An axis.
 *
 * @param title quantity and unit: "Peak force, N"
 * @param min   where it begins
 * @param max   where it ends, above {@code min}
 * @param ticks marks with round numbers, or the names of categories
 */
public record Axis(String title, double min, double max, List<Tick> ticks) {
    private static final int MOST_TICKS = 7;

    public Axis {
        Objects.requireNonNull(title, "title");
        ticks = List.copyOf(ticks);
        if (!(min < max)) {
            throw new IllegalArgumentException("An axis needs min below max, got " + min + " and " + max + ".");
        }
    }

    /** An axis over such values that ends at round numbers; one value alone gets room on both sides. */
    public static Axis over(String quantity, String unit, double low, double high) {
        double room = low < high ? 0 : Math.max(Math.abs(low) * 0.1, 0.5);
        double[] ends = Ticks.rounded(low - room, high + room, MOST_TICKS);
        return new Axis(title(quantity, unit), ends[0], ends[1], Ticks.of(ends[0], ends[1], MOST_TICKS + 2));
    }

    /** An axis of named places 0, 1, 2, …; with none it is empty. */
    public static Axis of(String title, List<String> names) {
        List<Tick> ticks = new ArrayList<>();
        names.forEach(name -> ticks.add(new Tick(ticks.size(), name)));
        return new Axis(title, -0.5, Math.max(names.size(), 1) - 0.5, ticks);
    }

    /** Quantity and unit as an axis title. */
    public static String title(String quantity, String unit) {
        return unit.isEmpty() ? quantity : quantity + ", " + unit;
    }
}
