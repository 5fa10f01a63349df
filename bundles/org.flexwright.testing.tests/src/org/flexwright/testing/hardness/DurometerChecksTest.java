package org.flexwright.testing.hardness;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.flexwright.testsupport.CheckValues.expectText;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;

import org.flexwright.testing.GaugeScale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DurometerChecksTest {
    private static final String D2240 = "ASTM D2240 (from memory, unconfirmed)";

    @ParameterizedTest
    @CsvSource({"A,A", "D,D", "00,SHORE_00", "M,AM"})
    void springs(String printed, GaugeScale scale) {
        expectSeries("testing/1.spring." + printed, D2240, scale.springForce(0), scale.springForce(50), scale.springForce(100));
    }

    @Test
    void preloadAndTravel() {
        expect("testing/1.preload_gf", GaugeScale.A.preloadGramForce(), "preload of type A, copy of ASTM D2240 seen");
        expect("testing/1.depth.A35", GaugeScale.A.indentation(35), "derived from 2.5 mm travel");
        expect("testing/1.depth.perpoint", GaugeScale.A.millimetresPerPoint(), "derived from 2.5 mm travel");
        expect("testing/1.depth.inch", GaugeScale.millimetresPerPointOfInchInstrument(), "derived from 0.1 in travel");
    }

    @Test
    void entropicRubber() {
        expect("testing/1.entropic", 100 * EntropicDrift.modulusPerKelvin(23), "derived: E proportional to absolute temperature, 23 degC");
        expect("testing/1.point_per_K_HA50", EntropicDrift.pointsPerKelvin(GaugeScale.A, 50, 23), "derived from spring and travel of type A");
    }

    @Test
    void chartHasAsManyColumnsInEachRow() {
        String counts = CrossScaleChart.scales().stream().map(s -> Integer.toString(CrossScaleChart.columns(s))).distinct().collect(Collectors.joining(" or "));
        expectText("testing/1.chart.len", counts + " columns in each chart row", "two handbook pages that agree");
    }

    @ParameterizedTest
    @EnumSource(GaugeScale.class)
    void theIndentorIsFlushAtHundred(GaugeScale scale) {
        assertEquals(0, scale.indentation(100), 1e-12);
    }

    /** The closed form must be the slope of ln(force/indentation). */
    @ParameterizedTest
    @EnumSource(GaugeScale.class)
    void stiffnessPerPointIsTheSlopeOfItsLogarithm(GaugeScale scale) {
        double h = 1e-4;
        double above = Math.log(scale.springForce(50 + h) / scale.indentation(50 + h));
        double below = Math.log(scale.springForce(50 - h) / scale.indentation(50 - h));
        assertEquals((above - below) / (2 * h), scale.relativeStiffnessPerPoint(50), 1e-7);
    }
}
