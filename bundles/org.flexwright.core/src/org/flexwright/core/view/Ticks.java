package org.flexwright.core.view;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis: steps of 1, 2 or 5 times a power of ten. */
public final class Ticks {

    private Ticks() {
    }

    /**
     * Ticks inside a range, ends included.
     *
     * @param low  lower end, finite
     * @param high upper end, finite and above the lower
     * @param most how many at the most, 2 or more
     */
    public static List<Tick> of(double low, double high, int most) {
        BigDecimal step = step(low, high, most);
        List<Tick> ticks = new ArrayList<>();
        BigDecimal at = BigDecimal.valueOf(low).divide(step, 0, RoundingMode.CEILING).multiply(step);
        for (; at.doubleValue() <= high; at = at.add(step)) {
            ticks.add(new Tick(at.doubleValue(), label(at, step)));
        }
        return List.copyOf(ticks);
    }

    /** The range widened to whole steps, so that an axis ends at round numbers. */
    public static double[] rounded(double low, double high, int most) {
        BigDecimal step = step(low, high, most);
        return new double[] {BigDecimal.valueOf(low).divide(step, 0, RoundingMode.FLOOR).multiply(step).doubleValue(),
            BigDecimal.valueOf(high).divide(step, 0, RoundingMode.CEILING).multiply(step).doubleValue()};
    }

    private static BigDecimal step(double low, double high, int most) {
        if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high) || most < 2) {
            throw new IllegalArgumentException("Ticks need a finite range and room for two, not " + low + " to " + high + " and " + most + ".");
        }
        BigDecimal least = BigDecimal.valueOf((high - low) / (most - 1)).round(new MathContext(12, RoundingMode.HALF_UP));
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(least.precision() - least.scale() - 1);
        for (int factor : new int[] {1, 2, 5}) {
            BigDecimal step = power.multiply(BigDecimal.valueOf(factor));
            if (step.compareTo(least) >= 0) {
                return step;
            }
        }
        return power.scaleByPowerOfTen(1);
    }

    private static String label(BigDecimal value, BigDecimal step) {
        int places = Math.max(0, step.stripTrailingZeros().scale());
        return value.signum() == 0 ? BigDecimal.ZERO.setScale(places).toPlainString() : value.setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}
