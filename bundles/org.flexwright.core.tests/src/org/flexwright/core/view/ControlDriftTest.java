package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Bench;
import org.flexwright.core.verdict.ControlScatter;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.junit.jupiter.api.Test;

class ControlDriftTest {
    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.HARDNESS, Bench.FORCE);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };
    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final ControlPiece control = ModelFactory.eINSTANCE.createControlPiece();
    private final Instrument gauge = ModelFactory.eINSTANCE.createInstrument();

    private void session(String code, int day, double... values) {
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setCode(code);
        session.setAt(Instant.EPOCH.plusSeconds(day * 86_400L));
        session.setControlPiece(control);
        project.getSessions().add(session);
        Measurement read = Bench.read(Bench.part(Bench.trial(), "x"), Bench.HARDNESS, values);
        read.setSession(session);
        read.setInstrument(gauge);
        control.getMeasurements().add(read);
    }

    @Test
    void sessionsStandInTheOrderOfTheirTimeAndThoseThatWereOffApart() {
        control.setCode("K1");
        control.setUsual(61.0);
        control.setUsualSpread(0.5);
        project.getControlPieces().add(control);
        assertTrue(ControlDrift.of(project, control, PROPERTIES).isEmpty());
        session("S2", 2, 58, 57.5, 58.5);
        session("S1", 1, 61, 61, 60.5);
        ControlDrift drift = ControlDrift.of(project, control, PROPERTIES).orElseThrow();
        assertEquals(List.of("S1", "S2"), drift.rows().stream().map(r -> r.session().getCode()).toList());
        PlotModel plot = drift.plot();
        assertEquals(List.of("S1"), plot.series().get(0).points().stream().map(PlotModel.Point::label).toList());
        PlotModel.Point off = plot.series().get(1).points().get(0);
        assertEquals(Doubts.word(), plot.series().get(1).name());
        assertEquals(List.of(58.0, 57.5, 58.5), List.of(off.y(), off.low(), off.high()));
        assertEquals(60, plot.bands().get(0).low());
        assertEquals(62, plot.bands().get(0).high());
        assertTrue(plot.y().min() <= 57.5 && plot.y().max() >= 62);
    }

    /** 61 61 60.5 and 58 57.5 58.5: squares 0.166667 + 0.5 over 4 degrees of freedom: s = 0.408248. What lies between the sessions is no scatter of readings. */
    @Test
    void readingsScatterWithinTheirSession() {
        project.getControlPieces().add(control);
        session("S1", 1, 61, 61, 60.5);
        assertTrue(ControlScatter.of(project, gauge, PROPERTIES).isEmpty(), "two repeats are too few");
        session("S2", 2, 58, 57.5, 58.5);
        ControlScatter scatter = ControlScatter.of(project, gauge, PROPERTIES).orElseThrow();
        assertEquals(0.408248, scatter.sd(), 1e-6);
        assertEquals("6 readings on control pieces in 2 sets, 4 degrees of freedom", scatter.from());
        assertTrue(ControlScatter.of(project, ModelFactory.eINSTANCE.createInstrument(), PROPERTIES).isEmpty(), "another gauge");
    }
}
