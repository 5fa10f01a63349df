package org.flexwright.materials.formula;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.core.rubber.HardnessModel;
import org.flexwright.core.Estimate;
import org.junit.jupiter.api.Test;

/** Printed figures of hardness and modulus, with their sources. */
class ModulusFiguresTest {

    private static final String GENT = "Gent 1958, IRI Trans. 34, 46";
    private static final String QI = "Qi, Joyce and Boyce 2003, Rubber Chem. Technol. 76, 419";
    private static final String IRHD = "ISO 48-2 (from memory, unconfirmed)";
    private static final String LINDLEY = "Lindley 1978, Engineering Design with Natural Rubber, 4th ed., table 3";
    private static final double[] HARDNESS = { 20, 30, 40, 50, 60, 70, 80, 90, 95 };

    private static double[] all(HardnessModel model) {
        return Arrays.stream(HARDNESS).map(model::modulus).toArray();
    }

    @Test
    void theThreeFormulasSideBySide() {
        expectSeries("testing/2.cmp.gent", GENT, all(HardnessModel.GENT));
        expectSeries("testing/2.cmp.qi", QI, all(HardnessModel.QI));
        expectSeries("testing/2.cmp.irhd", IRHD, all(HardnessModel.IRHD));
        expect("testing/2.2.base10_HA70", HardnessModel.QI.modulus(70), QI);
    }

    @Test
    void gentIsAFlatPunch() {
        expect("testing/2.1.a", HardnessModel.punchRadius(), "derived from " + GENT);
        expect("testing/2.1.punch_const", HardnessModel.punchRadius() * 8 / 30, GENT);
        assertEquals(0.0981 * (56 + 7.62336 * 50) / (0.137505 * (254 - 2.54 * 50)), HardnessModel.GENT.modulus(50), 1e-12, "the formula as Gent wrote it");
    }

    @Test
    void irhdCurve() {
        expect("testing/2.3.sigma", HardnessModel.Irhd.spread(), IRHD);
        double middle = Math.pow(10, 0.364);
        double step = 1e-4;
        double slope = (HardnessModel.Irhd.hardness(middle * Math.pow(10, step)) - HardnessModel.Irhd.hardness(middle * Math.pow(10, -step))) / (2 * step);
        expect("testing/2.3.maxslope", slope, IRHD);
        assertEquals(63, HardnessModel.Irhd.hardness(HardnessModel.Irhd.modulus(63)), 1e-9, "there and back");
    }

    @Test
    void ballDepths() {
        double[] hardness = { 40, 60, 80 };
        double[] depths = Arrays.stream(hardness).map(h -> 100 * HardnessModel.Irhd.depth(1.25, 0.3, 5.7, HardnessModel.Irhd.modulus(h))).toArray();
        expectSeries("testing/2.depthN", IRHD, depths);
        expect("testing/2.depthL10", 100 * HardnessModel.Irhd.depth(2.5, 0.3, 5.7, HardnessModel.Irhd.modulus(10)), IRHD);
    }

    @Test
    void ballGauge() {
        String hertz = "derived: Hertz contact with the spring of ASTM D2240 type 00 (from memory)";
        expect("testing/2.4.hertz00.70", BallGauge.modulus(70), hertz);
        expect("testing/2.4.hertz00.80", BallGauge.modulus(80), hertz);
        expect("testing/2.4.hertz00.45", BallGauge.modulus(45), hertz);
        expect("testing/2.4.gentA20", HardnessModel.GENT.modulus(20), GENT);
        expect("testing/2.4.gentA30", HardnessModel.GENT.modulus(30), GENT);
        expect("testing/2.4.gentA5", HardnessModel.GENT.modulus(5), GENT);
    }

    @Test
    void whatAPointOfHardnessIsWorth() {
        double[] hardness = { 30, 50, 70, 90 };
        String derived = "derived from " + GENT;
        expectSeries("testing/2.dlnE", derived, Arrays.stream(hardness).map(HardnessModel::perPoint).toArray());
        expectSeries("testing/2.pm3", derived, Arrays.stream(hardness).map(h -> 300 * HardnessModel.perPoint(h)).toArray());
        for (double h : hardness) {
            double step = 1e-3;
            double numeric = Math.log(HardnessModel.GENT.modulus(h + step) / HardnessModel.GENT.modulus(h - step)) / (2 * step);
            expect("testing/2.dlnE.numeric." + (int) h, numeric, 1e-8, "central difference over 0.002 points: its own error is some 1e-9", derived);
        }
    }

    @Test
    void bondedDisc() {
        double shape = RubberBlock.discShape(25, 10);
        expect("testing/2.lindley.S", shape, "derived: d/4t of " + LINDLEY);
        expect("testing/2.lindley.Ec", RubberBlock.compression(RubberBlock.at(40).orElseThrow(), shape), LINDLEY);
        assertEquals((1.50 + 1.80) / 2, RubberBlock.at(42.5).orElseThrow().e0(), 1e-12);
        assertEquals(9.40, RubberBlock.at(75).orElseThrow().e0(), 0);
        assertTrue(RubberBlock.at(29.9).isEmpty() && RubberBlock.at(75.1).isEmpty());
    }

    @Test
    void theBandHoldsEveryModelAtThreePointsToEitherSide() {
        for (double h = ModulusBand.LOWEST; h <= ModulusBand.HIGHEST; h += 0.5) {
            Estimate band = ModulusBand.of(h);
            for (HardnessModel model : HardnessModel.values()) {
                assertTrue(band.low() <= model.modulus(h - 3) && band.high() >= model.modulus(h + 3), model + " at " + h);
                assertTrue(band.low() < model.modulus(h) && band.high() > model.modulus(h), model + " at " + h);
            }
        }
        assertEquals(ModulusBand.of(45).low(), ModulusBand.between(45, 55).low(), 0);
        assertEquals(ModulusBand.of(55).high(), ModulusBand.between(45, 55).high(), 0);
    }

    @Test
    void atFiftyTheBandIsFromTheLowestToTheHighestFormula() {
        Estimate band = ModulusBand.of(50);
        assertEquals(HardnessModel.IRHD.modulus(47), band.low(), 0);
        assertEquals(HardnessModel.QI.modulus(53), band.high(), 0);
        assertEquals(Math.cbrt(2.456 * 3.425 * 2.312), band.likely(), 0.001);
    }

    @Test
    void outsideTenToNinetyFiveThereIsNone() {
        assertThrows(IllegalArgumentException.class, () -> ModulusBand.of(9.9));
        assertThrows(IllegalArgumentException.class, () -> ModulusBand.of(95.1));
        assertThrows(IllegalArgumentException.class, () -> ModulusBand.of(Double.NaN));
    }
}
