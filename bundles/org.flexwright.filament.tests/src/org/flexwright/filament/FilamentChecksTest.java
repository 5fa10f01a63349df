package org.flexwright.filament;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.find.Severity;
import org.flexwright.core.flow.PowerLaw;
import org.flexwright.filament.FlowCalculation.Convention;
import org.flexwright.filament.MoveTimeCalculation.Move;
import org.flexwright.testsupport.CheckValues;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.filament.BucklingCalculation.KnownBy;
import org.junit.jupiter.api.Test;

/** Printed figures of filament printing. */
class FilamentChecksTest {
    private static final String CRANK = "Crank, The Mathematics of Diffusion, 1975, eqs 4.18, 5.23, 6.20";
    private static final String EULER = "Euler's column, textbook";
    private static final String SCHNEIDER = "Schneider et al. 1968, J. Appl. Polym. Sci. 12(3), abstract, with Crank 1975 eq. 5.23";

    private static FlowCalculation.Results flow(Convention convention) {
        return Ran.done(new FlowCalculation(), new FlowCalculation.Inputs(0.45, 0.2, 20, convention, 1.75));
    }

    private static DryingCalculation.Results dry(double celsius, double diffusivity, double energy) {
        return Ran.done(new DryingCalculation(), new DryingCalculation.Inputs(1.75, celsius, 0, 10, diffusivity, energy));
    }

    private static BucklingCalculation.Results buckle(double modulus, double length, double factor) {
        return Ran.done(new BucklingCalculation(), new BucklingCalculation.Inputs(1.75, modulus, length, factor, null, KnownBy.MODULUS, 85));
    }

    @Test
    void flowAndFeed() {
        CheckValues.expect("processes/D1.1", flow(Convention.RECTANGLE).flow(), "geometry, derived");
        CheckValues.expect("processes/D1.2", flow(Convention.ROUNDED).line(), "geometry, derived");
        CheckValues.expect("processes/D1.3", flow(Convention.ROUNDED).flow(), "geometry, derived");
        CheckValues.expect("processes/D1.4", flow(Convention.RECTANGLE).feed(), "geometry, derived");
        CheckValues.expect("processes/D1.5", flow(Convention.RECTANGLE).strand(), "geometry, derived");
    }

    @Test
    void flowFactorByWeighing() {
        FlowFactorCalculation.Results factor = Ran.done(new FlowFactorCalculation(), new FlowFactorCalculation.Inputs(1.75, 500, 1.2, 1.371, 1));
        CheckValues.expect("processes/D1.6", factor.commanded(), "mass balance, derived");
        CheckValues.expect("processes/D1.7", factor.newFactor(), "mass balance, derived");
        assertEquals(1, Ran.remarks(new FlowFactorCalculation(), new FlowFactorCalculation.Inputs(1.75, 500, 1.2, 1.25, 1)).size());
    }

    @Test
    void timeOfMoves() {
        MoveTimeCalculation calculation = new MoveTimeCalculation();
        CheckValues.expect("processes/D2.1", Ran.done(calculation, new MoveTimeCalculation.Inputs(List.of(new Move(10, 1)), 30, 500, 1)).layer(), "constant acceleration, derived");
        CheckValues.expect("processes/D2.2", Ran.done(calculation, new MoveTimeCalculation.Inputs(List.of(new Move(1, 1)), 30, 500, 1)).layer(), "constant acceleration, derived");
        MoveTimeCalculation.Results layers = Ran.done(calculation, new MoveTimeCalculation.Inputs(List.of(new Move(10, 2), new Move(1, 3)), 30, 500, 4));
        assertEquals(4 * (2 * (10 / 30.0 + 0.06) + 3 * 2 * Math.sqrt(1 / 500.0)), layers.all(), 1e-12);
        // both forms meet where the speed is just reached
        assertEquals(2 * Math.sqrt(1.8 / 500), Ran.done(calculation, new MoveTimeCalculation.Inputs(List.of(new Move(1.8, 1)), 30, 500, 1)).layer(), 1e-12);
    }

    @Test
    void fourierNumbersOfAShareLeft() {
        double[] shares = { 0.5, 0.1, 0.05, 0.01 };
        String[] names = { "0.5", "0.1", "0.05", "0.01" };
        for (int i = 0; i < shares.length; i++) {
            int column = 1;
            for (DryingShape shape : DryingShape.values()) {
                double got = Ran.done(new DiffusionCalculation(), new DiffusionCalculation.Inputs(shape, 1, 1e-12, 0, 100 * shares[i])).fourierWanted();
                CheckValues.expect("processes/D3 Fo residual " + names[i] + "." + column++, got, CRANK);
            }
        }
    }

    @Test
    void sharesGoneAtAFourierNumber() {
        for (String fourier : List.of("0.01", "0.05", "0.1", "0.2")) {
            int column = 1;
            for (DryingShape shape : DryingShape.values()) {
                // 1 mm and 1e-6 m2/s: Fourier number = time in s
                double got = Ran.done(new DiffusionCalculation(), new DiffusionCalculation.Inputs(shape, 1, 1e-6, Double.parseDouble(fourier), 10)).gone();
                CheckValues.expect("processes/D3 removed Fo " + fourier + "." + column++, got / 100, CRANK);
            }
        }
    }

    @Test
    void shortAndLongTimeFormsMeet() {
        for (DryingShape shape : DryingShape.values()) {
            // between the forms the share changes by its slope times the step of 2e-9, below 1e-6
            assertEquals(shape.residual(1e-4 - 1e-9), shape.residual(1e-4 + 1e-9), 1e-6, shape.name());
            assertEquals(1, shape.residual(0), 0);
            assertEquals(0, shape.residual(15), 1e-12);
            assertEquals(0.37, shape.residual(shape.fourier(0.37)), 1e-9);
        }
        assertThrows(IllegalArgumentException.class, () -> DryingShape.CYLINDER.fourier(1.5));
    }

    @Test
    void gainByHeat() {
        CheckValues.expect("processes/D3 11 kcal", WaterBand.DRY_ENERGY, "11 kcal/mol at 4.184 kJ/kcal, derived");
        CheckValues.expect("processes/D3 Ea 46.024 factor; rounded 46.1", dry(65, 3.4e-12, WaterBand.DRY_ENERGY).gain().likely(), SCHNEIDER);
        CheckValues.expect("processes/D3 Ea 46.024 factor; rounded 46.2", dry(65, 3.4e-12, 46).gain().likely(), SCHNEIDER);
        CheckValues.expect("processes/D3 half Ea.1", dry(65, 3.4e-12, WaterBand.WET_ENERGY).gain().likely(), SCHNEIDER);
    }

    @Test
    void dryingTimes() {
        double day = 86400;
        double hour = 3600;
        CheckValues.expect("processes/D3 drying.1", dry(23, WaterBand.FASTEST, WaterBand.DRY_ENERGY).time().likely() / day, SCHNEIDER);
        CheckValues.expect("processes/D3 drying.2", dry(65, WaterBand.FASTEST, WaterBand.DRY_ENERGY).time().likely() / hour, SCHNEIDER);
        CheckValues.expect("processes/D3 drying.3", dry(23, WaterBand.SLOWEST, WaterBand.DRY_ENERGY).time().likely() / day, SCHNEIDER);
        CheckValues.expect("processes/D3 drying.4", dry(65, WaterBand.SLOWEST, WaterBand.DRY_ENERGY).time().likely() / hour, SCHNEIDER);
        CheckValues.expect("processes/D3 half Ea.2", dry(65, WaterBand.FASTEST, WaterBand.WET_ENERGY).time().likely() / hour, SCHNEIDER);
        CheckValues.expect("processes/D3 half Ea.3", dry(65, WaterBand.SLOWEST, WaterBand.WET_ENERGY).time().likely() / hour, SCHNEIDER);
    }

    @Test
    void withoutOwnValuesTheBandHoldsBothEnds() {
        DryingCalculation.Results band = Ran.done(new DryingCalculation(), new DryingCalculation.Inputs(1.75, 65, 6 * 3600, 10, null, null));
        assertEquals(dry(65, WaterBand.FASTEST, WaterBand.DRY_ENERGY).time().likely(), band.time().low(), 1e-6);
        assertEquals(dry(65, WaterBand.SLOWEST, WaterBand.WET_ENERGY).time().likely(), band.time().high(), 1e-6);
        assertTrue(band.time().low() < band.time().likely() && band.time().likely() < band.time().high());
        assertTrue(band.left().source().display().contains("preprint"));
        DryingCalculation.Results cold = Ran.done(new DryingCalculation(), new DryingCalculation.Inputs(1.75, 5, 6 * 3600, 10, null, null));
        assertTrue(cold.gain().low() < cold.gain().high() && cold.gain().high() < 1);
    }

    @Test
    void buckling() {
        CheckValues.expect("processes/D4.1", buckle(12, 10, 0.5).inertia(), EULER);
        CheckValues.expect("processes/D4.2", buckle(12, 10, 0.5).force().likely(), EULER);
        CheckValues.expect("processes/D4.3", buckle(12, 10, 0.5).pressure().likely(), EULER);
        CheckValues.expect("processes/D4.4", buckle(12, 10, 1).force().likely(), EULER);
        CheckValues.expect("processes/D4.5", buckle(100, 20, 0.7).force().likely(), EULER);
        BucklingCalculation.Results soft = Ran.done(new BucklingCalculation(), new BucklingCalculation.Inputs(1.75, 12, 10, 0.7, null, KnownBy.HARDNESS, 85));
        assertEquals(ModulusBand.of(85), soft.modulus(), "which modulus was used stands in the result");
        assertEquals(4 * soft.modulus().high() / soft.modulus().low(), soft.band().high() / soft.band().low(), 1e-9);
        assertEquals(4, buckle(12, 10, 0.7).band().high() / buckle(12, 10, 0.7).band().low(), 1e-9);
    }

    @Test
    void stiffnessForTheViscosity() {
        double fixed = Ran.done(new FeedLimitCalculation(), new FeedLimitCalculation.Inputs(2, 1, 0.2, 10, 0.875, 0.5, 1)).ratio();
        double pinned = Ran.done(new FeedLimitCalculation(), new FeedLimitCalculation.Inputs(2, 1, 0.2, 10, 0.875, 1, 1)).ratio();
        CheckValues.expect("processes/D4 E/eta.1", fixed, "Euler against Hagen-Poiseuille, derived");
        CheckValues.expect("processes/D4 E/eta.2", pinned, "Euler against Hagen-Poiseuille, derived");
    }

    /** The same ratio from the two laws themselves: the modulus at which Euler's load just carries the push of a melt of 1 Pa s. */
    @Test
    void stiffnessFromFirstPrinciples() {
        Strand strand = new Strand(1.75);
        double push = strand.push(Nozzle.landPressure(PowerLaw.newtonian(1), 0.4, 1, 2));
        CheckValues.expect("processes/D4 E/eta first principles.1", 1e6 * push / strand.bucklingForce(1, 10, 0.5), "Euler against Hagen-Poiseuille, derived");
        CheckValues.expect("processes/D4 E/eta first principles.2", 1e6 * push / strand.bucklingForce(1, 10, 1), "Euler against Hagen-Poiseuille, derived");
    }

    @Test
    void nozzlePressure() {
        NozzleCalculation.Results nozzle = Ran.done(new NozzleCalculation(), new NozzleCalculation.Inputs(5000, 0.5, 2, 0.4, 1, 1.2, 1.75));
        CheckValues.expect("processes/D5.1", nozzle.landPressure(), "power-law tube flow, derived");
        CheckValues.expect("processes/D5.2", nozzle.landPush(), "power-law tube flow, derived");
        CheckValues.expect("processes/D5.3", nozzle.conePressure(), "power-law cone flow, lubrication, derived");
        assertEquals("nozzle", Ran.refused(new NozzleCalculation(), new NozzleCalculation.Inputs(5000, 0.5, 2, 2, 1, 1.2, 1.75)).input());
    }

    @Test
    void aConeIsARowOfShortTubes() {
        PowerLaw melt = new PowerLaw(5000, 0.5);
        double sum = 0;
        int slices = 20000;
        for (int i = 0; i < slices; i++) {
            double radius = 0.2 + (i + 0.5) * (0.875 - 0.2) / slices;
            sum += Nozzle.landPressure(melt, 2 * radius, 1.2 / slices, 2);
        }
        // midpoint sum over 20000 slices: off by less than 1e-6 of the whole
        assertEquals(sum, Nozzle.conePressure(melt, 0.2, 0.875, 1.2, 2), 1e-6);
    }

    @Test
    void frictionAndSwell() {
        CheckValues.expect("processes/D6.1", Ran.done(new GuideCalculation(), new GuideCalculation.Inputs(0.2, 90, 1)).factor(), "capstan equation, textbook");
        CheckValues.expect("processes/D6.2", Ran.done(new GuideCalculation(), new GuideCalculation.Inputs(0.2, 180, 1)).factor(), "capstan equation, textbook");
        CheckValues.expect("processes/D6.3", Ran.done(new SwellCalculation(), new SwellCalculation.Inputs(2, 0.6)).ratio(), "Tanner 1970, from memory, unconfirmed");
        CheckValues.expect("processes/D6.4", Ran.done(new SwellCalculation(), new SwellCalculation.Inputs(1, 0.6)).ratio(), "Tanner 1970, from memory, unconfirmed");
    }

    @Test
    void remarksSpeakAtTheirLimits() {
        BucklingCalculation buckling = new BucklingCalculation();
        assertTrue(Ran.remarks(buckling, new BucklingCalculation.Inputs(1.75, 12, 10, 0.7, 0.54, KnownBy.MODULUS, 85)).isEmpty());
        assertEquals(Severity.CAUTION, Ran.remarks(buckling, new BucklingCalculation.Inputs(1.75, 12, 10, 0.7, 0.55, KnownBy.MODULUS, 85)).get(0).severity());
        assertEquals(Severity.STOP, Ran.remarks(buckling, new BucklingCalculation.Inputs(1.75, 12, 10, 0.7, 2.19, KnownBy.MODULUS, 85)).get(0).severity());
        assertEquals("width", Ran.refused(new FlowCalculation(), new FlowCalculation.Inputs(0.1, 0.2, 20, Convention.ROUNDED, 1.75)).input());
    }
}
