package org.flexwright.curing.formula;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Printed figures of heat conduction in parts that cure, with their sources. */
class HeatFiguresTest {

    private static final String ROOTS = "Incropera table 5.1 (from memory, unconfirmed); roots solved";

    @Test
    void firstRootsAndCoefficients() {
        String[] names = { "0.01", "0.1", "0.5", "1", "2", "5", "10", "100", "None" };
        for (String name : names) {
            double biot = name.equals("None") ? Double.POSITIVE_INFINITY : Double.parseDouble(name);
            int column = 1;
            for (Body body : Body.values()) {
                double z = body.root(1, biot);
                expect("processes/B6 Bi " + name + "." + column++, z, ROOTS);
                expect("processes/B6 Bi " + name + "." + column++, body.coefficient(z), ROOTS);
            }
        }
    }

    @Test
    void oneTermIsNotEnoughEarly() {
        expect("processes/B6 slab Bi1 Fo.1, one term.1", Body.SLAB.left(1, 0.1, 0), "derived: full series");
        expect("processes/B6 slab Bi1 Fo.1, one term.2", Body.SLAB.oneTerm(1, 0.1, 0), "derived: one term, invalid there");
    }

    /** At the start everything is still as it was: the coefficients sum to one. */
    @ParameterizedTest
    @EnumSource(Body.class)
    void theSeriesStartsAtOneAndFades(Body body) {
        assertEquals(1, body.left(3, 1e-3, 0), 1e-6);
        assertEquals(1, body.left(Double.POSITIVE_INFINITY, 1e-3, 0), 1e-6);
        double fourier = body.fourierFor(3, 0.1);
        assertEquals(0.1, body.left(3, fourier, 0), 1e-6);
        assertEquals(0, body.left(Double.POSITIVE_INFINITY, 0.3, 1), 1e-9);
    }

    @Test
    void evenSource() {
        expect("processes/B6 source.1", Body.SLAB.sourceRise(5e4, 0.010, 0.2), "derived: steady conduction");
        expect("processes/B6 source.2", Body.CYLINDER.sourceRise(5e4, 0.010, 0.2), "derived: steady conduction");
        expect("processes/B6 source.3", Body.SPHERE.sourceRise(5e4, 0.010, 0.2), "derived: steady conduction");
    }

    @Test
    void runaway() {
        String frank = "Frank-Kamenetskii (from memory, unconfirmed); equation solved";
        expect("processes/B6 Frank-Kamenetskii (own ODE).1", Body.SLAB.criticalNumber(), frank);
        expect("processes/B6 Frank-Kamenetskii (own ODE).2", Body.CYLINDER.criticalNumber(), frank);
        expect("processes/B6 Frank-Kamenetskii (own ODE).3", Body.SPHERE.criticalNumber(), frank);
    }

    @Test
    void curingSlab() {
        String source = "derived: finite volumes and spectral solution agree to 1e-4 K; a third, explicit run lies 0.003 K away";
        ReactiveBody slab = new ReactiveBody(Body.SLAB, CuringFiguresTest.testResin(), 0.010, 296.15, 333.15);
        ReactiveBody.Centre[] at = slab.centre(600, 1800);
        expect("processes/B6 RC slab10 T600.1", at[0].kelvin(), source);
        expect("processes/B6 RC slab10 X600.1", at[0].conversion(), source);
        expect("processes/B6 RC slab10 X1800.1", at[1].conversion(), source);
        double[] times = new double[41];
        for (int i = 0; i < times.length; i++) {
            times[i] = 909 + i;
        }
        ReactiveBody.Centre hottest = java.util.Arrays.stream(slab.centre(times)).max(java.util.Comparator.comparingDouble(ReactiveBody.Centre::kelvin)).orElseThrow();
        expect("processes/B6 RC slab10 peak.1", hottest.kelvin(), source);
        expect("processes/B6 RC slab10 peak.2", hottest.seconds(), 1.0, "the top is flat: 0.001 K over 4 s, times looked at are whole seconds", source);
    }

    /** Without reaction the cells must give the series. */
    @ParameterizedTest
    @EnumSource(Body.class)
    void withoutReactionTheCellsGiveTheSeries(Body body) {
        Resin dead = new Resin(new Arrhenius(0, 55), 2, 0, 1800, 1080, 0.20, Resin.NONE);
        double half = 0.010;
        double seconds = 400;
        double left = body.left(Double.POSITIVE_INFINITY, dead.diffusivity() * seconds / (half * half), 0);
        assertEquals(333.15 - 37 * left, new ReactiveBody(body, dead, half, 296.15, 333.15).centre(seconds)[0].kelvin(), 0.01);
    }
}
