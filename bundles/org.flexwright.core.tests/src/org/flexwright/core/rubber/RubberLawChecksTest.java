package org.flexwright.core.rubber;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.flexwright.testsupport.CheckValues.expectText;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.flexwright.core.rubber.RubberFit.Point;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.junit.jupiter.api.Test;

class RubberLawChecksTest {
    private static final String DERIVED = "derived";
    private static final String TRELOAR = "L. R. G. Treloar 1944, Trans. Faraday Soc. 40, 59 (copies); fit derived";
    private static final String OGDEN = "R. W. Ogden 1972, Proc. R. Soc. A 326, 565";
    private static final double[] STRETCHES = {0.6, 0.9, 1.3, 2.0, 3.5};

    @Test
    void stresses() {
        PolynomialLaw neoHooke = PolynomialLaw.neoHooke(0.2);
        expectSeries("testing/4.NH", DERIVED, inAll(neoHooke, 2));
        expect("testing/4.NH.07", neoHooke.stress(Loading.UNIAXIAL, 0.7), DERIVED);
        expectSeries("testing/4.MR", DERIVED, inAll(PolynomialLaw.mooneyRivlin(0.15, 0.05), 2));
        expectSeries("testing/4.Yeoh", DERIVED, inAll(PolynomialLaw.yeoh(0.18, -0.0015, 4e-5), 4));
    }

    /** The stress is the slope of the energy along the loading; two sides work in equibiaxial stretching. */
    @Test
    void stressesAreSlopesOfTheEnergy() {
        String[] names = {"UT", "ET", "PS"};
        for (Loading loading : Loading.values()) {
            for (RubberLaw law : List.of(PolynomialLaw.mooneyRivlin(0.15, 0.05), PolynomialLaw.yeoh(0.18, -0.0015, 4e-5), ogden())) {
                for (double stretch : STRETCHES) {
                    double h = 1e-5;
                    double slope = (energy(law, loading, stretch + h) - energy(law, loading, stretch - h)) / (2 * h);
                    double sides = loading == Loading.EQUIBIAXIAL ? 2 : 1;
                    assertEquals(slope / sides, law.stress(loading, stretch), 1e-8 * Math.max(1, Math.abs(slope)), loading + " " + stretch + " " + law);
                }
            }
            expectText("testing/4.formula." + names[loading.ordinal()], "P formulas = dW/dlambda (MR, Yeoh)", DERIVED);
        }
    }

    @Test
    void tangentsAreSecondSlopesOfTheEnergy() {
        PolynomialLaw yeoh = PolynomialLaw.yeoh(0.1845, -0.00147, 4.0e-5);
        expect("testing/4.drucker.Y.D11", yeoh.tangent(2, 2).d11(), DERIVED);
        expect("testing/4.drucker.Y.D12", yeoh.tangent(2, 2).d12(), DERIVED);
        assertHessian(yeoh);
        expectText("testing/4.drucker.Y.hess", "closed form = Hessian in log strain", DERIVED);
        assertHessian(ogden());
        expectText("testing/4.drucker.og.hess", "closed form = Hessian in log strain", DERIVED);
        assertHessian(PolynomialLaw.mooneyRivlin(0.3, -0.05));
    }

    @Test
    void whereMooneyRivlinGivesWay() {
        PolynomialLaw law = PolynomialLaw.mooneyRivlin(0.3, -0.05);
        expectSeries("testing/4.drucker.MR", DERIVED, Stability.towards(law, Loading.UNIAXIAL, 8).orElseThrow(),
                Stability.towards(law, Loading.EQUIBIAXIAL, 8).orElseThrow(), Stability.towards(law, Loading.PLANAR, 8).orElseThrow());
        expect("testing/4.drucker.rule", Stability.towards(law, Loading.UNIAXIAL, 8).orElseThrow(), "sqrt(C10/|C01|), derived");
        assertEquals(Math.sqrt(0.3 / 0.05), Stability.towards(law, Loading.UNIAXIAL, 8).orElseThrow(), 1e-9);
        assertEquals(Loading.EQUIBIAXIAL, Stability.limit(law, 0.5, 8).orElseThrow().loading());
    }

    @Test
    void treloarsCounts() {
        int uniaxial = Treloar.points(Loading.UNIAXIAL).size();
        int equibiaxial = Treloar.points(Loading.EQUIBIAXIAL).size();
        int planar = Treloar.points(Loading.PLANAR).size();
        expectText("testing/4.treloar.n", uniaxial + "+" + equibiaxial + "+" + planar + "=" + Treloar.points().size() + " points", TRELOAR);
        expectText("testing/4.UT9.n", firstNine().size() + " points", TRELOAR);
    }

    @Test
    void fitsOfTheFirstNinePoints() {
        expect("testing/4.UT9.NH", polynomial(RubberForm.NEO_HOOKE, firstNine()).c10(), TRELOAR);
        RubberFit two = fit(RubberForm.MOONEY_RIVLIN, firstNine());
        expectSeries("testing/4.UT9.MR", TRELOAR, two.coefficients().get(0).value(), two.coefficients().get(1).value());
        expect("testing/4.UT9.MR.rms", two.rms(), TRELOAR);
    }

    @Test
    void fitsOfWholeCurves() {
        expect("testing/4.UT.NH", polynomial(RubberForm.NEO_HOOKE, Treloar.points(Loading.UNIAXIAL)).c10(), TRELOAR);
        PolynomialLaw yeoh = polynomial(RubberForm.YEOH, Treloar.points(Loading.UNIAXIAL));
        expectSeries("testing/4.UT.Yeoh", TRELOAR, yeoh.c10(), yeoh.c20(), yeoh.c30());
        PolynomialLaw unstable = polynomial(RubberForm.MOONEY_RIVLIN, Treloar.points(Loading.UNIAXIAL));
        expectSeries("testing/4.UT.MR", TRELOAR, unstable.c10(), unstable.c01());
        expect("testing/4.UT.MR.E", unstable.youngsModulus(), TRELOAR);
        assertTrue(Stability.limit(unstable, 0.5, 7).isPresent(), "a law with a negative modulus must be found out");
        PolynomialLaw biaxial = polynomial(RubberForm.MOONEY_RIVLIN, Treloar.points(Loading.EQUIBIAXIAL));
        expectSeries("testing/4.ET.MR", TRELOAR, biaxial.c10(), biaxial.c01());
        RubberFit all = fit(RubberForm.YEOH, Treloar.points());
        expectSeries("testing/4.all.Yeoh", TRELOAR, all.coefficients().stream().mapToDouble(RubberFit.Coefficient::value).toArray());
        expect("testing/4.all.Yeoh.R2", all.r2().orElseThrow(), TRELOAR);
        expectSeries("testing/4.ours.NHmu", TRELOAR, fit(RubberForm.NEO_HOOKE, Treloar.points(Loading.UNIAXIAL)).law().shearModulus(), fit(RubberForm.NEO_HOOKE, Treloar.points(Loading.PLANAR)).law().shearModulus(),
                fit(RubberForm.NEO_HOOKE, Treloar.points(Loading.EQUIBIAXIAL)).law().shearModulus());
    }

    @Test
    void ogdensOwnLaw() {
        OgdenLaw law = ogden();
        expectSeries("testing/4.ogden.MPa", OGDEN, law.terms().stream().mapToDouble(OgdenLaw.Term::mu).toArray());
        expect("testing/4.ogden.G", law.shearModulus(), OGDEN);
        expect("testing/4.ogden.E", law.youngsModulus(), OGDEN);
        expectSeries("testing/4.ogden.P2", OGDEN, inAll(law, 2));
        expectSeries("testing/4.ogden.P4", OGDEN, inAll(law, 4));
        assertTrue(Stability.limit(law, 0.2, 8).isEmpty());
        expectText("testing/4.ogden.stable", "trace, det > 0 for 0.2..8 in all modes", OGDEN);
    }

    @Test
    void pointsThatDoNotDetermineTheCoefficients() {
        assertTrue(RubberFit.of(RubberForm.YEOH, firstNine().subList(0, 2)).isEmpty());
    }

    private static double energy(RubberLaw law, Loading loading, double stretch) {
        return law.energy(stretch, loading.second(stretch));
    }

    private static void assertHessian(RubberLaw law) {
        double h = 1e-3;
        for (double first : new double[] {0.7, 1.2, 2.5}) {
            for (double second : new double[] {0.8, 1.0, 2.0}) {
                Tangent tangent = law.tangent(first, second);
                double size = Math.abs(tangent.d11()) + Math.abs(tangent.d22());
                double up = Math.exp(h);
                double here = law.energy(first, second);
                double d11 = (law.energy(first * up, second) - 2 * here + law.energy(first / up, second)) / (h * h);
                double d22 = (law.energy(first, second * up) - 2 * here + law.energy(first, second / up)) / (h * h);
                double d12 = (law.energy(first * up, second * up) - law.energy(first * up, second / up) - law.energy(first / up, second * up)
                        + law.energy(first / up, second / up)) / (4 * h * h);
                // Second differences with this step are off by about h^2.
                assertEquals(d11, tangent.d11(), 2e-5 * size);
                assertEquals(d22, tangent.d22(), 2e-5 * size);
                assertEquals(d12, tangent.d12(), 2e-5 * size);
            }
        }
    }

    private static OgdenLaw ogden() {
        return new OgdenLaw(Stream.of(new OgdenLaw.Term(mpa("6.3"), 1.3), new OgdenLaw.Term(mpa("0.012"), 5), new OgdenLaw.Term(mpa("-0.1"), -2)).toList());
    }

    private static double mpa(String kilogramsForce) {
        return QuantityParser.parse(kilogramsForce + " kgf/cm2", QuantityKind.STRESS).canonical();
    }

    private static double[] inAll(RubberLaw law, double stretch) {
        return Stream.of(Loading.values()).mapToDouble(loading -> law.stress(loading, stretch)).toArray();
    }

    private static PolynomialLaw polynomial(RubberForm form, List<Point> points) {
        return (PolynomialLaw) fit(form, points).law();
    }

    private static List<Point> firstNine() {
        return Treloar.points(Loading.UNIAXIAL).stream().filter(p -> p.stretch() < 3.1).toList();
    }

    private static RubberFit fit(RubberForm form, List<Point> points) {
        return RubberFit.of(form, points).orElseThrow();
    }
}
