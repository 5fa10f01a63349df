package org.flexwright.testing.piece;

import static org.flexwright.testsupport.CheckValues.expect;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceChecksTest {

    @Test
    void tensile() {
        String source = "derived; pieces ISO 37, ASTM D412";
        expect("testing/3.TS", Strength.stress(45, 6, 2), source);
        expect("testing/3.TS2", Strength.stress(62.4, 4, 1.95), source);
        expect("testing/3.Eb", Strength.elongation(118, Dumbbell.ASTM_D412_DIE_C.testLength()), source);
        expect("testing/3.M300", Strength.lengthAt(300, Dumbbell.ISO_37_TYPE_1.testLength()), source);
    }

    @Test
    void setAndTear() {
        expect("testing/6.CS", Strength.compressionSet(12.5, 10.9, 9.38), "ISO 815-1, ASTM D395 B");
        expect("testing/6.tear", Strength.tear(38, 1.98), "ISO 34-1");
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void water(int celsius) {
        expect("testing/6.water." + celsius, Water.density(celsius), Water.SOURCE.display());
    }

    @Test
    void density() {
        double water = Water.density(23);
        String source = "ISO 2781, ISO 1183-1, ASTM D792";
        expect("testing/6.dens", Displacement.sinking(10, 1.2, water), source);
        expect("testing/6.dens.air", Displacement.sinkingCorrected(10, 1.2, water), source);
        expect("testing/6.dens.sinker", Displacement.withSinker(3, 8, 7.85, water), source);
    }
}
