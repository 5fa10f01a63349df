package org.flexwright.safety.light;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.quantity.Units;
import org.junit.jupiter.api.Test;

class UvChecksTest {
    private static final double TEN_W = 10;

    @Test
    void weights() {
        String source = UvDose.WEIGHTING_SOURCE.display();
        expect("safety/5 S.1", UvDose.weight(365).orElseThrow(), source);
        expect("safety/5 S.2", UvDose.weight(385).orElseThrow(), source);
        expect("safety/5 S vs published ICNIRP points 300/350/400.1", UvDose.weight(300).orElseThrow(), 0.002,
                "the formula fits the published table and is off by 0.4 % there", "ICNIRP 2004, table of S");
        expect("safety/5 S vs published ICNIRP points 300/350/400.2", UvDose.weight(350).orElseThrow(), "ICNIRP 2004, table of S");
        expect("safety/5 S vs published ICNIRP points 300/350/400.3", UvDose.weight(400).orElseThrow(), "ICNIRP 2004, table of S");
    }

    @Test
    void doses() {
        String source = UvDose.SOURCE.display();
        expect("safety/5 row a.1", UvDose.skinDose(365).orElseThrow(), source);
        expect("safety/5 row a.2", UvDose.skinDose(385).orElseThrow(), source);
        expect("safety/5 lens b.1", UvDose.lensSeconds(365, TEN_W).orElseThrow(), source);
        expect("safety/5 lens b.2", UvDose.lensSeconds(385, TEN_W).orElseThrow(), source);
        expect("safety/5 small source c.1", UvDose.blueSeconds(365, TEN_W).orElseThrow(), source);
        expect("safety/5 small source c.2", UvDose.blueSeconds(385, TEN_W).orElseThrow(), source);
        expect("safety/5 small source c.3", UvDose.blueSeconds(405, TEN_W).orElseThrow(), source);
    }

    @Test
    void lensRuleInOtherUnits() {
        double joules = QuantityParser.parse("1 J/cm2", QuantityKind.DOSE).in(Units.find(QuantityKind.DOSE, "J/m2").orElseThrow()).value();
        expect("safety/5 lens rule 1 J/cm2 = J/m2", joules, "ACGIH lens rule (from memory, unconfirmed)");
        assertEquals(UvDose.LENS_DOSE, joules, 1e-9, "the directive has the same dose");
    }

    @Test
    void visibleLightHasNoLensLimitAndShortWavesNoAnswer() {
        assertTrue(UvDose.lensSeconds(405, TEN_W).isEmpty());
        assertTrue(UvDose.skinSeconds(405, TEN_W).isEmpty());
        assertTrue(UvDose.weight(254).isEmpty());
        assertTrue(UvDose.blueSeconds(450, TEN_W).isEmpty());
    }
}
