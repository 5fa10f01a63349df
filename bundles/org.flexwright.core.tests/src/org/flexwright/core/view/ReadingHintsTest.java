package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Bench;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.junit.jupiter.api.Test;

class ReadingHintsTest {
    private final Instrument gauge = ModelFactory.eINSTANCE.createInstrument();

    private List<String> hints(PropertyDef property, Instrument instrument, double... values) {
        return ReadingHints.of(property, instrument, Arrays.stream(values).mapToObj(v -> Bench.reading(v, Censoring.NONE)).toList()).stream().map(Message::text).toList();
    }

    @Test
    void readingsAllAlikeAreNotedWithTheStepThatHidesTheirSpread() {
        gauge.setUnit("Shore A");
        gauge.setResolution(0.5);
        assertEquals(List.of(), hints(Bench.HARDNESS, gauge, 61, 61));
        assertEquals(List.of("All 3 readings are 61 Shore A: one step of the gauge (0.5 Shore A) hides any smaller spread."), hints(Bench.HARDNESS, gauge, 61, 61, 61));
        assertEquals(List.of("All 3 readings are 61 Shore A: the gauge hides any spread smaller than its step, which is not noted."), hints(Bench.HARDNESS, null, 61, 61, 61));
        assertEquals(List.of(), hints(Bench.HARDNESS, gauge, 61, 61, 61.5));
    }

    @Test
    void aReadingBetweenTwoStepsIsNoted() {
        gauge.setUnit("kN");
        gauge.setResolution(0.0001);
        assertEquals(List.of(), hints(Bench.FORCE, gauge, 12.3), "0.1 N steps");
        assertEquals(List.of("12.35 N lies between two steps of the gauge (0.1 N)."), hints(Bench.FORCE, gauge, 12.35));
    }

    @Test
    void aSlipOfTheFingerIsAskedAbout() {
        assertEquals(List.of(), hints(Bench.HARDNESS, null, 61, 61, 66), "5 points are the hand");
        assertEquals(List.of("16 Shore A lies 44.5 Shore A from the median of the other readings on this piece: was it read and typed right?"),
                hints(Bench.HARDNESS, null, 61, 60, 16));
        assertEquals(1, hints(Bench.FORCE, null, 12, 120).size());
        assertEquals(List.of(), hints(Bench.FORCE, null, 12, 20));
    }

    @Test
    void whatIsNoNumberHasNoHints() {
        assertEquals(List.of(), hints(Bench.HARDNESS, null));
        assertEquals(List.of(), ReadingHints.of(Bench.INVERTED, null, List.of(Bench.reading(1, Censoring.NONE))));
        assertEquals(List.of(), ReadingHints.of(Bench.FORCE, null, List.of(Bench.reading(12, Censoring.MORE_THAN), Bench.reading(12, Censoring.MORE_THAN),
                Bench.reading(12, Censoring.MORE_THAN))), "bounds alike say nothing");
    }
}
