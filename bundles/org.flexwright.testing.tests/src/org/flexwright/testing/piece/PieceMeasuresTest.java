package org.flexwright.testing.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.flexwright.core.Estimate;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.calc.Outcome;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.SoakDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.Test;

/** Bands of density, compression set and tear against simulated weighings; swelling against the solution it rests on. */
class PieceMeasuresTest {

    /** 20 000 draws of each input within its limits: the band must hold 95 % of them, at least; half of it does not. */
    @Test
    void theBandOfADensityHoldsWhatTheWeighingsCanDo() {
        Estimate band = density(2.345, 0.31, null);
        Random random = new Random(11);
        int inside = 0;
        int half = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double air = 2.345 + 0.005 * (2 * random.nextDouble() - 1);
            double water = 0.31 + 0.01 * (2 * random.nextDouble() - 1);
            double density = Displacement.sinking(air, water, Water.density(23 + 0.5 * (2 * random.nextDouble() - 1)));
            inside += density >= band.low() && density <= band.high() ? 1 : 0;
            half += Math.abs(density - band.likely()) <= (band.high() - band.low()) / 4 ? 1 : 0;
        }
        assertTrue(inside >= 0.95 * n, inside + " of " + n);
        assertTrue(half < 0.85 * n, "half the band would not hold them: " + half + " of " + n);
        assertEquals(Displacement.sinking(2.345, 0.31, Water.density(23)), band.likely(), 1e-9);
    }

    @Test
    void aSinkerMakesItLessSureNotMore() {
        double plain = width(density(3, 0.15, null));
        double sunk = width(density(3, 8.15, 8.0));
        assertTrue(sunk > plain, sunk + " and " + plain);
    }

    /** The volume rests on the difference of two weighings, and the band of a density on the buoyancy of air that was left out. */
    @Test
    void theVolumeHasItsOwnBandAndAirLeftOutIsInBoth() {
        Random random = new Random(12);
        DensityCalculation.Results got = results(new DensityCalculation.Inputs(10, 1.2, null, 40, false, null, 0.01, 0.002, 0.5));
        int inside = 0;
        int half = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double displaced = 8.8 + 0.01 * (2 * random.nextDouble() - 1) - 0.002 * (2 * random.nextDouble() - 1);
            double volume = 1000 * displaced / Water.density(40 - 0.5 * random.nextDouble());
            inside += volume >= got.volume().low() && volume <= got.volume().high() ? 1 : 0;
            half += Math.abs(volume - got.volume().likely()) <= width(got.volume()) / 4 ? 1 : 0;
        }
        assertTrue(inside >= 0.95 * n, inside + " of " + n);
        assertTrue(half < 0.85 * n, half + " of " + n);
        DensityCalculation.Results fine = results(new DensityCalculation.Inputs(10, 1.2, null, 23, false, null, 0.0001, 0.0001, 0.01));
        double corrected = results(new DensityCalculation.Inputs(10, 1.2, null, 23, true, null, 0.0001, 0.0001, 0.01)).density().likely();
        assertTrue(corrected > fine.density().low() && corrected < fine.density().high(), "a fine balance does not make up for air left out");
        assertTrue(width(results(new DensityCalculation.Inputs(10, 1.2, null, 40, true, null, 0, 0, 0.5)).density()) > 0.1, "water at the end of its table is no surer");
        assertTrue(width(results(new DensityCalculation.Inputs(10, 1.3, null, 23, true, 0.1, 0.005, 0.01, 0.5)).density()) > width(results(new DensityCalculation.Inputs(10, 1.2, null, 23, true,
                null, 0.005, 0.01, 0.5)).density()), "a wire is weighed too");
    }

    private static DensityCalculation.Results results(DensityCalculation.Inputs inputs) {
        return ((Outcome.Done<DensityCalculation.Results>) new DensityCalculation().run(inputs)).results();
    }

    private static double width(Estimate band) {
        return band.high() - band.low();
    }

    private static Estimate density(double air, double water, Double sinker) {
        return switch (new DensityCalculation().run(new DensityCalculation.Inputs(air, water, sinker, 23, false, null, 0.005, 0.01, 0.5))) {
            case Outcome.Done<DensityCalculation.Results> done -> done.results().density();
            case Outcome.Refused<DensityCalculation.Results> no -> throw new AssertionError(no.why().text());
        };
    }

    /** At the end of the formula's range a doubtful temperature counts as much as before it, and a wire is one weighing more. */
    @Test
    void nothingThatIsWeighedOrReadDropsOutOfTheBand() {
        double sure = width(atWarmth(40, null, 0));
        double doubtful = width(atWarmth(40, null, 2));
        assertTrue(doubtful > 1.05 * sure, doubtful + " and " + sure);
        assertTrue(width(atWarmth(23, 0.02, 0.5)) > 1.2 * width(atWarmth(23, null, 0.5)));
    }

    private static Estimate atWarmth(double celsius, Double wire, double temperatureGood) {
        return switch (new DensityCalculation().run(new DensityCalculation.Inputs(10, 1.2, null, celsius, false, wire, 0.005, 0.01, temperatureGood))) {
            case Outcome.Done<DensityCalculation.Results> done -> done.results().density();
            case Outcome.Refused<DensityCalculation.Results> no -> throw new AssertionError(no.why().text());
        };
    }

    @Test
    void whatFloatsOrDisplacesNothingIsRefusedInOneSentence() {
        for (Map<String, String> typed : List.of(Map.of("inWater", "-0.3 g"), Map.of("inWater", "10 g"), Map.of("inWater", "11 g"), Map.of("inWater", "0.01 g", "wire", "0.02 g"))) {
            CalculationResult result = CalculationRunner.run(new DensityCalculation(), typed);
            assertEquals("inWater", result.refused().input(), typed.toString());
        }
        assertEquals("volumeGood", CalculationRunner.run(new VolumeDensityCalculation(), Map.of("volumeGood", "20 cm3")).refused().input());
        assertEquals("weighings", CalculationRunner.run(new SoakCalculation(), Map.of("weighings", "0 h; 1 g | 5 h; 1.1 g | 3 h; 1.2 g")).refused().input());
    }

    /** Weighings of a sheet by the whole series solution (J. Crank, from memory): the diffusivity put in lies in the band that comes out. */
    @Test
    void theDiffusivityPutInComesOut() {
        double d = 2e-5;
        double thickness = 2;
        List<SoakCalculation.Row> rows = new ArrayList<>();
        for (double hours : new double[] { 0, 0.25, 0.5, 1, 1.5, 2, 3, 4, 8, 24, 150, 300 }) {
            rows.add(new SoakCalculation.Row(hours, 1 + 0.05 * share(d * hours * 3600 / (thickness * thickness))));
        }
        SoakCalculation.Results results = run(rows, thickness);
        assertEquals(5, results.change().likely(), 0.001);
        assertTrue(results.settled().startsWith("settled"), results.settled());
        assertTrue(results.diffusivity().low() <= d && d <= results.diffusivity().high(), results.diffusivity().toString());
        assertEquals(d, results.diffusivity().likely(), 0.03 * d);
    }

    private static double share(double t) {
        if (t == 0) {
            return 0;
        }
        double sum = 0;
        for (int k = 0; k < 200; k++) {
            double odd = 2 * k + 1;
            sum += 8 / (odd * odd * Math.PI * Math.PI) * Math.exp(-odd * odd * Math.PI * Math.PI * t);
        }
        return 1 - sum;
    }

    private static SoakCalculation.Results run(List<SoakCalculation.Row> rows, Double thickness) {
        return switch (new SoakCalculation().run(new SoakCalculation.Inputs(rows, 0.0005, thickness))) {
            case Outcome.Done<SoakCalculation.Results> done -> done.results();
            case Outcome.Refused<SoakCalculation.Results> no -> throw new AssertionError(no.why().text());
        };
    }

    @Test
    void nothingIsSaidOfTheEndWhileItStillChanges() {
        SoakCalculation.Results results = run(List.of(new SoakCalculation.Row(0, 1), new SoakCalculation.Row(1, 1.01), new SoakCalculation.Row(4, 1.02), new SoakCalculation.Row(9, 1.03)), 2.0);
        assertTrue(results.settled().startsWith("still changing"), results.settled());
        assertNull(results.halfTime());
        assertNull(results.diffusivity());
        assertFalse(Soak.settled(List.of(new Soak.Weighing(0, 1), new Soak.Weighing(23.9, 1.1), new Soak.Weighing(24, 1.1)), 0.001), "two weighings in one breath");
    }

    @Test
    void theWeighingsOfAPieceAreTakenFromIt() {
        Part part = ModelFactory.eINSTANCE.createPart();
        weigh(part, "2026-01-01T08:00:00Z", 1.200, false);
        weigh(part, "2026-01-05T08:00:00Z", 1.201, false);
        weigh(part, "2026-01-05T10:30:00Z", 1.230, true);
        weigh(part, "2026-01-06T08:00:00Z", 1.250, true);
        assertEquals("0.000 h; 1.2010 g | 2.500 h; 1.2300 g | 24.000 h; 1.2500 g", new SoakCalculation().inputsFrom(part).get("weighings"));
        assertEquals(Map.of(), new SoakCalculation().inputsFrom(ModelFactory.eINSTANCE.createPart()));
    }

    private static void weigh(Part part, String at, double grams, boolean soaked) {
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(TestingProperties.MASS);
        measurement.setKey(key);
        measurement.setAt(Instant.parse(at));
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(grams);
        measurement.getReadings().add(reading);
        if (soaked) {
            SoakDetails details = TestingDataFactory.eINSTANCE.createSoakDetails();
            details.setLiquid("white oil");
            measurement.setDetails(details);
        }
        part.getMeasurements().add(measurement);
    }
}
