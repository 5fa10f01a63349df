package org.flexwright.testing.motion;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.testing.motion.LossLoop.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MotionChecksTest {
    private static final double[] TRAVEL = {0, 1, 2, 3, 4, 5};
    private static final double[] LOADING = {0, 2, 4.4, 7.4, 11.2, 16};
    private static final double[] UNLOADING = {0, 1.2, 3, 5.5, 9.4, 16};

    @Test
    void sinusoidalLoop() {
        double delta = 0.2;
        expect("testing/5.dW", LossLoop.sinusoidalLoss(1, 10, delta), "linear viscoelasticity, derived");
        // The same loop drawn point by point: the area between the two branches is the energy lost.
        List<Point> out = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        int n = 20_000;
        for (int i = 0; i <= n; i++) {
            double up = -Math.PI / 2 + Math.PI * i / n;
            double down = 3 * Math.PI / 2 - Math.PI * i / n;
            out.add(new Point(Math.sin(up), 10 * Math.sin(up + delta)));
            back.add(new Point(Math.sin(down), 10 * Math.sin(down + delta)));
        }
        expect("testing/5.dW.loop", LossLoop.work(out) - LossLoop.work(back), "linear viscoelasticity, derived");
    }

    @Test
    void measuredLoop() {
        double in = LossLoop.work(curve(LOADING));
        double out = LossLoop.work(curve(UNLOADING));
        expect("testing/5.WL", in, "trapezoids, derived");
        expect("testing/5.WU", out, "trapezoids, derived");
        expect("testing/5.loss", 100 * (in - out) / in, "trapezoids, derived");
    }

    @Test
    void resilience() {
        expect("testing/5.R.exp.0.1", LossLoop.resilienceApproximate(0.1), "textbook (from memory, unconfirmed)");
        expect("testing/5.R.exact.0.1", LossLoop.resilienceConstantAngle(0.1), "derived for a constant loss angle");
        expect("testing/5.R.exp.0.3", LossLoop.resilienceApproximate(0.3), "textbook (from memory, unconfirmed)");
        expect("testing/5.R.exact.0.3", LossLoop.resilienceConstantAngle(0.3), "derived for a constant loss angle");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1, 0.3, 0.8})
    void tanDeltaInvertsResilience(double tanDelta) {
        assertEquals(tanDelta, LossLoop.tanDeltaOf(LossLoop.resilienceConstantAngle(tanDelta)), 1e-12);
    }

    @Test
    void bouncing() {
        String source = BouncingBall.SOURCE.display();
        double first = 0.6 - 0;
        double second = 1.08 - 0.6;
        double e = BouncingBall.restitution(first, second);
        expect("testing/5.bounce.e", e, source);
        expect("testing/5.bounce.h0", BouncingBall.dropHeight(first, e), source);
        expect("testing/5.bounce.ue", BouncingBall.restitutionUncertainty(first, e, 0.001), source);
        expectSeries("testing/5.bounce.T", source, BouncingBall.flightTime(1, 0.8, 0), BouncingBall.flightTime(1, 0.8, 1), BouncingBall.flightTime(1, 0.8, 2));
    }

    @Test
    void aBallDroppedAndHeardGivesItsHeightBack() {
        double first = BouncingBall.flightTime(0.7, 0.65, 0);
        double second = BouncingBall.flightTime(0.7, 0.65, 1);
        assertEquals(0.7, BouncingBall.dropHeight(first, BouncingBall.restitution(first, second)), 1e-12);
    }

    @Test
    void videoHeights() {
        String source = "free fall, derived";
        expect("testing/8.h", VideoHeight.ofFlight(0.5), source);
        expect("testing/8.u240", 1000 * VideoHeight.flightUncertainty(0.5, 240), source);
        expect("testing/8.u30", 1000 * VideoHeight.flightUncertainty(0.5, 30), source);
        expect("testing/8.fall", VideoHeight.ofFall(0.32), source);
    }

    private static List<Point> curve(double[] force) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < TRAVEL.length; i++) {
            points.add(new Point(TRAVEL[i], force[i]));
        }
        return points;
    }
}
