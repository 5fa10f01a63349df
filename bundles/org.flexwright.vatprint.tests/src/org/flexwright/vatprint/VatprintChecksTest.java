package org.flexwright.vatprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Severity;
import org.flexwright.testsupport.CheckValues;
import org.flexwright.vatprint.WorkingCurveCalculation.Film;
import org.junit.jupiter.api.Test;

/** Printed figures of light curing and vat printing. */
class VatprintChecksTest {
    private static final String CURVE = "Jacobs 1992, as given by Gibson, Rosen and Stucker, ch. 4, eqs 4.12-4.16";
    private static final List<Film> FILMS = List.of(new Film(8, 45), new Film(12, 108), new Film(18, 164), new Film(27, 228), new Film(40, 287));

    private static double depth(double dose) {
        return Ran.done(new CureDepthCalculation(), new CureDepthCalculation.Inputs(1, dose, 150, 6, 50)).depth();
    }

    private static WorkingCurveCalculation.Results fit(List<Film> films) {
        return Ran.done(new WorkingCurveCalculation(), new WorkingCurveCalculation.Inputs(films));
    }

    @Test
    void cureDepth() {
        CheckValues.expect("processes/B9 Cd.1", depth(10), CURVE);
        CheckValues.expect("processes/B9 Cd.2", depth(20), CURVE);
        CheckValues.expect("processes/B9 Cd.3", depth(40), CURVE);
        CheckValues.expect("processes/B9 Cd.4", depth(80), CURVE);
    }

    @Test
    void workingCurve() {
        WorkingCurveCalculation.Results fit = fit(FILMS);
        CheckValues.expect("processes/B9 fit.1", fit.penetrationDepth().likely(), "least squares of depth on the logarithm of dose, derived");
        CheckValues.expect("processes/B9 fit.2", fit.slopeError(), "least squares, derived");
        CheckValues.expect("processes/B9 fit.3", fit.criticalDose().likely(), "least squares, derived");
        CheckValues.expect("processes/B9 fit.4", fit.scatter(), "least squares, derived");
    }

    @Test
    void theBandOfTheCriticalDoseIsWhereTheConfidenceBandMeetsZero() {
        Estimate dose = fit(FILMS).criticalDose();
        double[] x = FILMS.stream().mapToDouble(film -> Math.log(film.dose())).toArray();
        double[] y = FILMS.stream().mapToDouble(Film::depth).toArray();
        var line = org.flexwright.numerics.LeastSquares.line(x, y).orElseThrow();
        assertEquals(0, line.interval(Math.log(dose.low()), 0.95).orElseThrow().high(), 1e-6);
        assertEquals(0, line.interval(Math.log(dose.high()), 0.95).orElseThrow().low(), 1e-6);
        assertTrue(dose.low() < dose.likely() && dose.likely() < dose.high());
    }

    @Test
    void filmsOnACurveGiveItBackWithoutABand() {
        WorkingCurve curve = new WorkingCurve(120, 9);
        WorkingCurveCalculation.Results fit = fit(List.of(new Film(15, curve.depth(15)), new Film(30, curve.depth(30)), new Film(60, curve.depth(60))));
        assertEquals(120, fit.penetrationDepth().likely(), 1e-9);
        assertEquals(9, fit.criticalDose().likely(), 1e-9);
        assertEquals(0, fit.criticalDose().high() - fit.criticalDose().low(), 1e-9);
    }

    @Test
    void aCurveThatCannotBeDrawnIsRefused() {
        assertEquals("2 films are given; a curve with errors needs 3 at least.", why(FILMS.subList(0, 2)));
        assertEquals("All films got the same dose, so there is no curve.", why(List.of(new Film(9, 40), new Film(9, 50), new Film(9, 45))));
        assertEquals("Depth does not surely grow with dose: the interval of Dp reaches zero.",
                why(List.of(new Film(8, 100), new Film(12, 60), new Film(18, 140), new Film(27, 90))));
    }

    private static String why(List<Film> films) {
        Outcome.Refused<?> refused = Ran.refused(new WorkingCurveCalculation(), new WorkingCurveCalculation.Inputs(films));
        assertTrue(refused.remedy().text().length() > 10);
        return refused.why().text();
    }

    @Test
    void exposure() {
        ExposureCalculation.Results layer = Ran.done(new ExposureCalculation(), new ExposureCalculation.Inputs(50, 25, 150, 6, 2.5));
        CheckValues.expect("processes/B9 layer.1", layer.dose(), CURVE);
        CheckValues.expect("processes/B9 layer.2", layer.time(), CURVE);
        CureDepthCalculation.Results through = Ran.done(new CureDepthCalculation(), new CureDepthCalculation.Inputs(2, 10, 150, 6, 50));
        CheckValues.expect("processes/B9 layer.3", through.printThrough(), "geometric sum over later layers, derived");
        // the sum itself, layer by layer
        double sum = 0;
        for (int later = 1; later < 200; later++) {
            sum += 20 * Math.exp(-later * 50 / 150.0);
        }
        assertEquals(sum, through.printThrough(), 1e-9);
    }

    @Test
    void postCureDepth() {
        PostCureDepthCalculation calculation = new PostCureDepthCalculation();
        CheckValues.expect("processes/B9 post-cure.1", Ran.done(calculation, new PostCureDepthCalculation.Inputs(150, 10)).inDepths(), "Beer and Lambert, derived");
        CheckValues.expect("processes/B9 post-cure.2", Ran.done(calculation, new PostCureDepthCalculation.Inputs(150, 1)).inDepths(), "Beer and Lambert, derived");
        CheckValues.expect("processes/B9 post-cure.3", Ran.done(calculation, new PostCureDepthCalculation.Inputs(50, 1)).depth(), "Beer and Lambert, derived");
    }

    @Test
    void layersAndTime() {
        PrintTimeCalculation.Results time = Ran.done(new PrintTimeCalculation(), new PrintTimeCalculation.Inputs(40, 50, 5, 30, 4, 6));
        CheckValues.expect("processes/E.1", time.layers(), "derived");
        CheckValues.expect("processes/E.2", time.time(), "derived");
        assertEquals(801, PrintTime.of(40.01, 0.05, 5).layers());
        assertEquals(3, PrintTime.of(0.3, 0.1, 5).layers(), "0.3 / 0.1 is a little less than 3 in binary fractions");
        assertEquals(3, PrintTime.of(0.3, 0.1, 5).baseLayers(), "no more base layers than layers");
    }

    @Test
    void carryOver() {
        CarryOverCalculation calculation = new CarryOverCalculation();
        CheckValues.expect("processes/E.3", Ran.done(calculation, new CarryOverCalculation.Inputs(5, 500, 1, 0)).left(), "dilution over baths, derived");
        CheckValues.expect("processes/E.4", Ran.done(calculation, new CarryOverCalculation.Inputs(5, 500, 2, 0)).left(), "dilution over baths, derived");
        assertTrue(Ran.remarks(calculation, new CarryOverCalculation.Inputs(5, 500, 2, 0)).isEmpty());
        assertEquals(1, Ran.remarks(calculation, new CarryOverCalculation.Inputs(5, 500, 2, 10)).size());
    }

    @Test
    void liftForce() {
        CheckValues.expect("processes/E.5", Ran.done(new PeelCalculation(), new PeelCalculation.Inputs(1, 10, 1, 0.1)).force(), "Stefan, from memory, unconfirmed");
    }

    @Test
    void resinAndItsPrice() {
        assertEquals(14.3, Ran.done(new ResinCalculation(), new ResinCalculation.Inputs(8, 2, 3, 1.1, null)).mass(), 1e-9);
        assertEquals(0.858, Ran.done(new ResinCalculation(), new ResinCalculation.Inputs(8, 2, 3, 1.1, 60.0)).cost(), 1e-9);
    }

    @Test
    void noLightNoDepth() {
        assertEquals("time", Ran.refused(new CureDepthCalculation(), new CureDepthCalculation.Inputs(2, 3, 150, 6, 50)).input());
        assertEquals(Severity.STOP, Ran.remarks(new CureDepthCalculation(), new CureDepthCalculation.Inputs(2, 4, 150, 6, 50)).get(0).severity());
    }
}
