package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.flexwright.core.verdict.Bench;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class MeasurementsTest {

    /** In one go: the same property, session and trial, whatever the piece and the dwell. */
    @Test
    void whatWasReadInOneGo() {
        Trial trial = Bench.trial();
        Session session = ModelFactory.eINSTANCE.createSession();
        Measurement first = Bench.read(Bench.part(trial, "P1"), Bench.HARDNESS, 45);
        Measurement second = Bench.read(Bench.part(trial, "P2"), Bench.HARDNESS, 46);
        Measurement earlier = Bench.read(Bench.part(trial, "P3"), Bench.HARDNESS, 46);
        Measurement force = Bench.read(Bench.part(trial, "P4"), Bench.FORCE, 1);
        List.of(first, second, force).forEach(m -> m.setSession(session));
        Bench.read(Bench.part(Bench.trial(), "P1"), Bench.HARDNESS, 45).setSession(session);
        assertEquals(List.of(second), Measurements.alike(first));
        assertEquals(List.of(), Measurements.alike(earlier));
        assertEquals(List.of(), Measurements.alike(ModelFactory.eINSTANCE.createMeasurement()));
    }
}
