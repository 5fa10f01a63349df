package org.flexwright.testing.motion;

import java.util.List;

/** Energy of a loading and unloading loop. */
public final class LossLoop {

    /**
     * A point of a force curve.
     *
     * @param travel travel in mm
     * @param force  force in N
     */
    public record Point(double travel, double force) {
    }

    private LossLoop() {
    }

    /** Work in N mm (mJ) under a curve, trapezoids on its own travel; at least two points, travel rising. */
    public static double work(List<Point> curve) {
        double sum = 0;
        for (int i = 1; i < curve.size(); i++) {
            Point a = curve.get(i - 1);
            Point b = curve.get(i);
            sum += (b.travel() - a.travel()) * (a.force() + b.force()) / 2;
        }
        return sum;
    }

    /** Energy in mJ lost in one cycle of a linear material: amplitude in mm and N, loss angle in rad. */
    public static double sinusoidalLoss(double travelAmplitude, double forceAmplitude, double lossAngle) {
        return Math.PI * travelAmplitude * forceAmplitude * Math.sin(lossAngle);
    }

    /** Rebound energy share of a half cycle, textbook approximation exp(-pi tan delta). */
    public static double resilienceApproximate(double tanDelta) {
        return Math.exp(-Math.PI * tanDelta);
    }

    /** Rebound energy share of a half cycle at a constant loss angle, exp(-2 pi tan(delta/2)); rough for impacts. */
    public static double resilienceConstantAngle(double tanDelta) {
        return Math.exp(-2 * Math.PI * Math.tan(Math.atan(tanDelta) / 2));
    }

    /** tan delta that gives a rebound energy share between 0 and 1 at a constant loss angle. */
    public static double tanDeltaOf(double resilience) {
        return Math.tan(2 * Math.atan(-Math.log(resilience) / (2 * Math.PI)));
    }
}
