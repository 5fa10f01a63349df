package org.flexwright.core.rubber;

import java.util.List;

/**
 * W = c10 (I1 - 3) + c01 (I2 - 3) + c20 (I1 - 3)^2 + c30 (I1 - 3)^3: neo-Hooke with c10 alone, Mooney-Rivlin with c10 and c01, Yeoh with
 * c10, c20 and c30.
 *
 * @param c10 MPa
 * @param c01 MPa
 * @param c20 MPa
 * @param c30 MPa
 */
public record PolynomialLaw(double c10, double c01, double c20, double c30) implements RubberLaw {

    /** W = c10 (I1 - 3). */
    public static PolynomialLaw neoHooke(double c10) {
        return new PolynomialLaw(c10, 0, 0, 0);
    }

    /** W = c10 (I1 - 3) + c01 (I2 - 3). */
    public static PolynomialLaw mooneyRivlin(double c10, double c01) {
        return new PolynomialLaw(c10, c01, 0, 0);
    }

    /** W = c10 (I1 - 3) + c20 (I1 - 3)^2 + c30 (I1 - 3)^3. */
    public static PolynomialLaw yeoh(double c10, double c20, double c30) {
        return new PolynomialLaw(c10, 0, c20, c30);
    }

    @Override
    public double energy(double first, double second) {
        double x = excess(first, second);
        double third = 1 / (first * second);
        double secondExcess = square(1 / first) + square(1 / second) + square(1 / third) - 3;
        return c10 * x + c01 * secondExcess + c20 * x * x + c30 * x * x * x;
    }

    @Override
    public double stress(Loading loading, double stretch) {
        double l2 = stretch * stretch;
        double w1 = slope(excess(stretch, loading.second(stretch)));
        return switch (loading) {
            case UNIAXIAL -> 2 * (stretch - 1 / l2) * (w1 + c01 / stretch);
            case EQUIBIAXIAL -> 2 * (stretch - 1 / (l2 * l2 * stretch)) * (w1 + c01 * l2);
            case PLANAR -> 2 * (stretch - 1 / (l2 * stretch)) * (w1 + c01);
        };
    }

    @Override
    public Tangent tangent(double first, double second) {
        double x = excess(first, second);
        double w = slope(x);
        double bend = 2 * c20 + 6 * c30 * x;
        double s1 = square(first);
        double s2 = square(second);
        double s3 = 1 / (s1 * s2);
        double a = s1 - s3;
        double b = s2 - s3;
        Tangent ofFirst = new Tangent(4 * w * (s1 + s3) + 4 * bend * a * a, 4 * w * (s2 + s3) + 4 * bend * b * b, 4 * w * s3 + 4 * bend * a * b);
        return c01 == 0 ? ofFirst : ofFirst.plus(new OgdenLaw(List.of(new OgdenLaw.Term(-2 * c01, -2))).tangent(first, second));
    }

    @Override
    public double shearModulus() {
        return 2 * (c10 + c01);
    }

    /** dW/dI1 at an excess of I1 over 3. */
    private double slope(double x) {
        return c10 + 2 * c20 * x + 3 * c30 * x * x;
    }

    private static double excess(double first, double second) {
        return square(first) + square(second) + square(1 / (first * second)) - 3;
    }

    private static double square(double x) {
        return x * x;
    }
}
