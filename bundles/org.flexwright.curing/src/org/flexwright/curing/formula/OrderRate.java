package org.flexwright.curing.formula;

/** n-th order cure: dX/dt = k (1 - X)^n. Times enter as the product k t. */
public final class OrderRate {

    private static final double FIRST = 1e-9;

    private OrderRate() {
    }

    /** Conversion 0..1 after k t; order positive. Orders below 1 end at X = 1. */
    public static double conversion(double order, double kt) {
        if (Math.abs(order - 1) < FIRST) {
            return -Math.expm1(-kt);
        }
        double left = 1 + (order - 1) * kt;
        return left <= 0 ? 1 : 1 - Math.pow(left, 1 / (1 - order));
    }

    /** The product k t that reaches a conversion below 1. */
    public static double progress(double order, double conversion) {
        return Math.abs(order - 1) < FIRST ? -Math.log1p(-conversion) : (Math.pow(1 - conversion, 1 - order) - 1) / (order - 1);
    }
}
