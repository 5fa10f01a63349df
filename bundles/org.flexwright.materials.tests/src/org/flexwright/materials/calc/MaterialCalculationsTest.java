package org.flexwright.materials.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.find.Severity;
import org.junit.jupiter.api.Test;

/** What the forms say, typed as a person would. */
class MaterialCalculationsTest {

    private static CalculationResult run(Calculation<?, ?> calculation, String... typed) {
        Map<String, String> map = new HashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return CalculationRunner.run(calculation, map);
    }

    private static boolean says(CalculationResult result, Severity severity, String words) {
        return result.findings().stream().anyMatch(f -> f.severity() == severity && f.message().text().contains(words));
    }

    @Test
    void fiftyShoreAIsTwoToFourMegapascals() {
        var band = run(new ModulusCalculation(), "hardness", "50").results().get("modulus");
        assertEquals(2.04, band.low(), 0.02);
        assertEquals(4.03, band.high(), 0.02);
        assertTrue(band.source().display().contains("Gent"));
    }

    @Test
    void itNamesTheFormulasUsedAndThoseLeftOut() {
        CalculationResult result = run(new ModulusCalculation());
        assertEquals(3, ((List<?>) result.results().get("models").value()).size());
        assertTrue(says(result, Severity.NOTE, "Not used"));
    }

    @Test
    void outsideTwentyToNinetyItWarnsAndOutsideTenToNinetyFiveItRefuses() {
        assertTrue(says(run(new ModulusCalculation(), "hardness", "15"), Severity.CAUTION, "20 to 90"));
        assertTrue(says(run(new ModulusCalculation(), "hardness", "92"), Severity.CAUTION, "20 to 90"));
        assertFalse(says(run(new ModulusCalculation(), "hardness", "20"), Severity.CAUTION, "20 to 90"));
        assertEquals("hardness", run(new ModulusCalculation(), "hardness", "9").refused().input());
        assertEquals("hardness", run(new ModulusCalculation(), "hardness", "96").refused().input());
    }

    @Test
    void theSofterScaleHasItsOwnFormulaAndAWiderBand() {
        var band = run(new ModulusCalculation(), "hardness", "70", "scale", "shore-00").results().get("modulus");
        assertEquals(0.66, band.likely(), 0.005);
        assertTrue(band.high() / band.low() >= 2.25);
        assertFalse(run(new ModulusCalculation(), "hardness", "95", "scale", "shore-00").done());
    }

    @Test
    void theWorkedDisc() {
        CalculationResult result = run(new BondedBlockCalculation());
        assertEquals(2.496, result.results().get("compression").likely(), 0.0005);
        assertTrue(says(run(new BondedBlockCalculation(), "thickness", "1 mm"), Severity.CAUTION, "bulk"));
    }

    @Test
    void aBallOutsideItsRangeIsRefused() {
        assertEquals("method", run(new IrhdCalculation(), "method", "soft").refused().input());
        assertEquals(0.706, run(new IrhdCalculation(), "modulus", "3.478 MPa").results().get("depth").likely(), 0.0005);
    }

    @Test
    void familiesAgainstLimits() {
        CalculationResult result = run(new FamilyTableCalculation(), "limits", "hardness; 46; 52 | elongation; 300; ");
        List<?> rows = (List<?>) result.results().get("families").value();
        assertEquals(14, rows.size());
        assertEquals("unknown", ((FamilyTableCalculation.Verdict) rows.get(0)).reply());
        assertEquals("Natural rubber, vulcanised or latex film", ((FamilyTableCalculation.Verdict) rows.get(0)).family());
        assertEquals("1", result.results().get("left").text());
    }

    @Test
    void limitsThatLeaveNothingAreRefused() {
        assertEquals("limits", run(new FamilyTableCalculation(), "limits", "hardness; 55; 45").refused().input());
    }
}
