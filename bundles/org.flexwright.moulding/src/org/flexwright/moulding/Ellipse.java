package org.flexwright.moulding;

/** Geometry of an ellipse. */
final class Ellipse {
    private static final double PRECISION = 1e-15;

    private Ellipse() {
    }

    /** Perimeter from both semi-axes, above 0, by the arithmetic-geometric mean; exact to rounding. */
    static double perimeter(double semiAxis, double otherSemiAxis) {
        double a = Math.max(semiAxis, otherSemiAxis);
        double b = Math.min(semiAxis, otherSemiAxis);
        double sum = a * a;
        double weight = 0.5;
        double c = Math.sqrt(a * a - b * b);
        sum -= weight * c * c;
        while (c > PRECISION * a) {
            c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            weight *= 2;
            sum -= weight * c * c;
        }
        return 2 * Math.PI * sum / a;
    }
}
