package org.flexwright.mixing.formula;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.flexwright.core.rubber.Network;
import org.flexwright.core.process.CupClock;
import org.junit.jupiter.api.Test;

/** Printed figures of mixing, with their sources. */
class MixingFiguresTest {

    private static final String ALGEBRA = "derived: mass balance, ideal volumes";
    private static final String PMA = "Polyurethane Manufacturers Association, technical library, section 5";
    private static final String MAKERS = "calculation notes of two isocyanate makers, names withheld";

    @Test
    void ratioByWeightAndVolume() {
        expect("processes/A2.1", 100 * WeightRatio.ofVolume(100, 50, 1.05, 1.21).bPerA(), ALGEBRA);
        expect("processes/A2.2", 100 * WeightRatio.ofVolume(1, 1, 1.05, 1.21).bPerA(), ALGEBRA);
        expect("processes/A2.3", 100 * WeightRatio.ofWeight(100, 40).volumeBPerA(1.05, 1.21), ALGEBRA);
    }

    @Test
    void densityOfAMixture() {
        var parts = List.of(new MixDensity.Component(60, 1.05), new MixDensity.Component(40, 1.21));
        expect("processes/A3.1", MixDensity.of(parts), ALGEBRA);
        expect("processes/A3.2", MixDensity.arithmeticMean(parts), ALGEBRA);
        assertEquals(MixDensity.of(parts), MixDensity.of(WeightRatio.ofWeight(60, 40), 1.05, 1.21), 1e-12);
    }

    @Test
    void equivalentsOfPolyurethane() {
        expect("processes/A4 constants NCO, KOH(old weights), EWwater.1", Polyurethane.NCO, PMA);
        expect("processes/A4 constants NCO, KOH(old weights), EWwater.3", Polyurethane.waterEquivalent(), PMA);
        expect("processes/A4 pub.1", Polyurethane.isocyanateEquivalent(31.0), PMA);
        expect("processes/A4 pub 136", Polyurethane.isocyanateEquivalent(31.0), MAKERS);
        expect("processes/A4 pub.2", Polyurethane.hydroxylEquivalent(1810), PMA);
        expect("processes/A4 pub.3", Polyurethane.molarMass(2, Polyurethane.hydroxylEquivalent(1810)), PMA);
        double oh80 = Polyurethane.isocyanateFor(100, 23.1, 100 / Polyurethane.hydroxylEquivalent(80));
        expect("processes/A4 pub.4", oh80, MAKERS);
        expect("processes/A4 pub rounded 26 pbw", oh80, MAKERS);
        expect("processes/A4.1", Polyurethane.isocyanateEquivalent(33.6), PMA);
        expect("processes/A4.2", Polyurethane.hydroxylEquivalent(56), PMA);
        double others = 100 / Polyurethane.hydroxylEquivalent(56) + 10 / 45.06;
        expect("processes/A4.3", Polyurethane.isocyanateFor(105, 33.6, others), "derived from the equivalent weights of " + PMA);
        expect("processes/A4.4", Polyurethane.isocyanateFor(105, 33.6, others + 0.1 / Polyurethane.waterEquivalent()),
                "derived from the equivalent weights of " + PMA);
    }

    @Test
    void prepolymerAndIndex() {
        String derived = "derived from the equivalent weights of " + PMA;
        expect("processes/A4 prepolymer, index, index+water.1", Polyurethane.prepolymerNco(2, 1, 250.25 + 1000), derived);
        double hydroxyl = 100 / Polyurethane.hydroxylEquivalent(120);
        expect("processes/A4 prepolymer, index, index+water.2", Polyurethane.index(100, 9.0, hydroxyl), derived);
        expect("processes/A4 prepolymer, index, index+water.3", Polyurethane.index(100, 9.0, hydroxyl + 0.05 / Polyurethane.waterEquivalent()), derived);
    }

    @Test
    void fillerCountedThreeWays() {
        WeightRatio twoToOne = WeightRatio.ofWeight(100, 50);
        Filler phr = Filler.of(10, Filler.On.PHR, twoToOne);
        expect("processes/A5 10 phr.1", phr.percentOfTotal(), ALGEBRA);
        expect("processes/A5 10 phr.2", phr.volumeFraction(1.80, 1.05), ALGEBRA);
        Filler total = Filler.of(10, Filler.On.TOTAL, twoToOne);
        expect("processes/A5 10% of total.1", total.phr(), ALGEBRA);
        expect("processes/A5 10% of total.2", total.volumeFraction(1.80, 1.05), ALGEBRA);
        Filler partB = Filler.of(10, Filler.On.PART_B, twoToOne);
        expect("processes/A5 10% of B.1", partB.phr(), ALGEBRA);
        expect("processes/A5 10% of B.2", partB.percentOfTotal(), ALGEBRA);
        expect("processes/A5 10% of B.3", partB.volumeFraction(1.80, 1.05), ALGEBRA);
    }

    @Test
    void countingFillerOtherwiseNeverChangesItsGrams() {
        WeightRatio ratio = WeightRatio.ofWeight(100, 37);
        Filler filler = Filler.of(7.5, Filler.On.PHR, ratio);
        assertEquals(7.5, Filler.of(filler.percentOfTotal(), Filler.On.TOTAL, ratio).phr(), 1e-12);
        assertEquals(7.5, Filler.of(filler.percentOfA(ratio), Filler.On.PART_A, ratio).phr(), 1e-12);
        assertEquals(7.5, Filler.of(filler.percentOfB(ratio), Filler.On.PART_B, ratio).phr(), 1e-12);
    }

    @Test
    void balance() {
        String gum = "JCGM 100:2008, 4.3.7 (from memory, unconfirmed)";
        expect("processes/A6.1", 100 * ScaleReading.ofRatio(0.1, 10, 10), gum);
        expect("processes/A6.2", 100 * ScaleReading.ofRatio(0.1, 20, 2), gum);
        expect("processes/A6.3", 100 * ScaleReading.ofRatio(0.01, 20, 2), gum);
        expect("processes/A6.4", 100 * ScaleReading.worstRatio(0.1, 20, 2), "derived");
        expect("processes/A6.5", ScaleReading.ofNet(1), gum);
        expect("processes/A6.6", ScaleReading.smallestMass(0.1, 0.01), gum);
    }

    @Test
    void fillerStiffness() {
        String guth = "Guth and Gold 1938, Guth 1945, Smallwood 1944 (from memory, unconfirmed)";
        String krieger = "Krieger-Dougherty with [eta] 2.5 of Entropy 2021 23:979 table 6, packing 0.64 own choice";
        double[] phis = { 0.05, 0.10, 0.20, 0.30 };
        String[] names = { "0.05", "0.10", "0.20", "0.30" };
        for (int i = 0; i < phis.length; i++) {
            String id = "processes/A7 phi " + names[i] + ".";
            expect(id + 1, FillerStiffness.smallwood(phis[i]), guth);
            expect(id + 2, FillerStiffness.guthGold(phis[i]), guth);
            expect(id + 3, FillerStiffness.guthRods(phis[i], 4), guth);
            expect(id + 4, FillerStiffness.guthRods(phis[i], 6), guth);
            expect(id + 5, FillerStiffness.kriegerDougherty(phis[i], 0.64), krieger);
        }
        expect("processes/A7 KD .40 .50.1", FillerStiffness.kriegerDougherty(0.40, 0.64), krieger);
        expect("processes/A7 KD .40 .50.2", FillerStiffness.kriegerDougherty(0.50, 0.64), krieger);
    }

    @Test
    void carbonBlackStructure() {
        String medalia = "Medalia 1972 (from memory, unconfirmed)";
        expect("processes/A7 clamp DBP", FillerStiffness.structureThreshold(), medalia);
        expect("processes/A7 DBP100.1", FillerStiffness.occluded(0.10, 100), medalia);
        expect("processes/A7 DBP100.2", FillerStiffness.effective(0.10, 100), medalia);
        expect("processes/A7 DBP100.3", FillerStiffness.guthGold(FillerStiffness.effective(0.10, 100)), medalia);
        expect("processes/A7 DBP72.1", FillerStiffness.effective(0.10, 72), medalia);
        expect("processes/A7 DBP72.2", FillerStiffness.guthGold(FillerStiffness.effective(0.10, 72)), medalia);
        expect("processes/A7 DBP102.1", FillerStiffness.effective(0.10, 102), medalia);
        expect("processes/A7 DBP102.2", FillerStiffness.guthGold(FillerStiffness.effective(0.10, 102)), medalia);
        assertEquals(0.10, FillerStiffness.occluded(0.10, 5), 0, "structure never lowers the filler");
    }

    @Test
    void unfinishedNetwork() {
        String macosko = "Miller and Macosko 1976 (from memory, unconfirmed)";
        double[] alphas = { 0.98, 0.95, 0.9025, 0.75 };
        for (int i = 0; i < alphas.length; i++) {
            expect("processes/A8 closed form." + (i + 1), Network.relativeStiffness(alphas[i]), macosko);
            double deadEnd = 0;
            for (int k = 0; k < 500; k++) {
                deadEnd = alphas[i] * deadEnd * deadEnd + 1 - alphas[i];
            }
            assertEquals(deadEnd, Network.deadEnd(alphas[i]), 1e-9, "the recursion of the paper ends at the closed form");
            expect("processes/A8 alpha .98 .95 .9025 .75 (recursion)." + (i + 1), Network.relativeStiffness(alphas[i]), macosko);
        }
        assertEquals(0.95, Network.alpha(95, 1), 1e-12);
        assertEquals(0.9025, Network.alpha(100, 0.95), 1e-12);
        assertEquals(0, Network.relativeStiffness(0.5), 0);
    }

    @Test
    void workingTimeWithTemperature() {
        String arrhenius = "derived: Arrhenius";
        double[] energies = { 40, 50, 60, 80 };
        for (int i = 0; i < energies.length; i++) {
            expect("processes/A9 23->33." + (i + 1), 1 / CupClock.temperatureFactor(energies[i], 23, 33), arrhenius);
        }
        expect("processes/A9 23->13.1", CupClock.temperatureFactor(40, 23, 13), arrhenius);
        expect("processes/A9 23->13.2", CupClock.temperatureFactor(50, 23, 13), arrhenius);
        assertEquals(2 * 20, CupClock.timeTo(4, CupClock.growthTime(20, 2)), 1e-12, "fourfold takes twice as long as doubling");
    }

    @Test
    void bubblesUnderVacuum() {
        String gas = "derived: Boyle, Stokes";
        expect("processes/A11 ratios.1", Bubbles.growth(101.325, 5), gas);
        expect("processes/A11 ratios.2", Bubbles.growth(1013.25, 1013.25 - 950), gas);
        expect("processes/A11 ratios.3", Bubbles.growth(1013.25, 1013.25 - 990), gas);
        double swell = Bubbles.radiusGrowth(101.325, 5);
        expect("processes/A11 ratios.4", swell, gas);
        double before = Bubbles.rise(0.5e-3, 1050, 2);
        expect("processes/A11 ratios.5", Bubbles.rise(0.5e-3 * swell, 1050, 2) / before, gas);
        expect("processes/A11 Stokes mm/s (g 9.81)", 1000 * before, gas);
        expect("processes/A11 water 20 C kPa (Antoine)", Bubbles.waterBoils(20), "Buck 1981 (from memory, unconfirmed); the sheet used Antoine");
    }

    @Test
    void gasFromWater() {
        String gas = "derived: one mole of gas to one of water";
        expect("processes/A12.1", MoistureFoam.co2Grams(1), gas);
        expect("processes/A12.2", MoistureFoam.co2Volume(1), gas);
        expect("processes/A12.3", MoistureFoam.co2Grams(0.05), gas);
        expect("processes/A12.4", MoistureFoam.co2Volume(0.05), gas);
    }

    @Test
    void aRatioNeedsBothSides() {
        assertThrows(IllegalArgumentException.class, () -> WeightRatio.ofWeight(100, 0));
        assertThrows(IllegalArgumentException.class, () -> WeightRatio.ofWeight(0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Weighed(new WeightRatio(1), 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Filler(-1));
    }
}
