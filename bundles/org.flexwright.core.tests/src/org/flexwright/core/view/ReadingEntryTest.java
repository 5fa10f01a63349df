package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.field.OpenProject;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.Bench;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingEntryTest {
    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.HARDNESS, APPARENT, Bench.INVERTED);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };
    private static final PropertyDef APPARENT = new PropertyDef("t.apparent", "Apparent hardness", QuantityKind.SHORE_A, false, Set.of(), "", Source.commonPractice());

    @TempDir
    Path folder;
    private ProjectSession project;
    private Trial trial;
    private final Session bench = ModelFactory.eINSTANCE.createSession();
    private final Session earlier = ModelFactory.eINSTANCE.createSession();
    private final ControlPiece control = ModelFactory.eINSTANCE.createControlPiece();
    private final Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
    private ReadingEntry entry;

    @BeforeEach
    void open() {
        project = OpenProject.in(folder);
        trial = project.project().getTrials().get(0);
        control.setCode("K1");
        bench.setControlPiece(control);
        project.execute("set up", edit -> {
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__INSTRUMENTS, gauge);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, control);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__SESSIONS, earlier);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__SESSIONS, bench);
            for (String code : List.of("1", "2")) {
                Part part = ModelFactory.eINSTANCE.createPart();
                part.setCode(code);
                edit.add(trial, ModelPackage.Literals.TRIAL__PARTS, part);
            }
        });
        entry = new ReadingEntry(project, bench, Bench.HARDNESS, Bench.key(Bench.HARDNESS), gauge, trial.getParts(), 3, PROPERTIES);
    }

    @AfterEach
    void close() {
        project.close();
    }

    private void type(String... texts) {
        for (String text : texts) {
            assertEquals("", entry.type(text));
        }
    }

    @Test
    void theControlPieceComesFirstAndThePartsFollow() {
        assertTrue(entry.isControl());
        assertEquals("Control piece K1, reading 1 of 3", entry.prompt());
        type("50", "51");
        assertEquals("Control piece K1, reading 3 of 3", entry.prompt());
        type("50");
        assertFalse(entry.isControl());
        assertEquals("Part 1, reading 1 of 3", entry.prompt());
        type("48", "49", "47", "48", "48");
        assertFalse(entry.complete());
        type("48");
        assertTrue(entry.complete());
        assertEquals(3, trial.getParts().get(1).getMeasurements().get(0).getReadings().size());
        assertEquals(gauge, trial.getParts().get(0).getMeasurements().get(0).getInstrument());
    }

    @Test
    void medianSpreadAndTheLastFiveRunAlong() {
        entry = new ReadingEntry(project, bench, Bench.HARDNESS, Bench.key(Bench.HARDNESS), gauge, trial.getParts().subList(0, 1), 7, PROPERTIES);
        entry.goTo(1);
        assertEquals("", entry.summary());
        type("48");
        assertEquals("median 48 Shore A", entry.summary());
        type("50", "47", "48", "49", "48");
        assertEquals("median 48 Shore A, spread 3 Shore A", entry.summary());
        assertEquals(List.of("50 Shore A", "47 Shore A", "48 Shore A", "49 Shore A", "48 Shore A"), entry.lastFive());
        entry.leaveOutLast("slipped");
        assertEquals("49 Shore A", entry.lastFive().get(4));
        assertEquals(6, trial.getParts().get(0).getMeasurements().get(0).getReadings().size(), "a reading left out stays");
    }

    @Test
    void aReadingThatIsNotUnderstoodChangesNothing() {
        String sentence = entry.type("soft");
        assertFalse(sentence.isEmpty());
        assertTrue(control.getMeasurements().isEmpty());
        assertEquals("Control piece K1, reading 1 of 3", entry.prompt());
    }

    @Test
    void undoTakesOneReadingBackAndReturnsToItsPiece() {
        type("50", "51", "50");
        assertFalse(entry.isControl());
        entry.undo();
        assertTrue(entry.isControl());
        assertEquals(List.of("50 Shore A", "51 Shore A"), entry.lastFive());
        entry.undo();
        entry.undo();
        assertTrue(control.getMeasurements().isEmpty());
        assertEquals("Control piece K1, reading 1 of 3", entry.prompt());
    }

    @Test
    void aControlPieceThatDriftedIsSaid() {
        type("50", "51", "50");
        assertEquals("", entry.controlNote(), "one session alone cannot drift");
        Session later = ModelFactory.eINSTANCE.createSession();
        later.setControlPiece(control);
        project.execute("later", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__SESSIONS, later));
        entry = new ReadingEntry(project, later, Bench.HARDNESS, Bench.key(Bench.HARDNESS), gauge, trial.getParts(), 3, PROPERTIES);
        type("52.5", "52.5", "52.5");
        assertEquals("", entry.controlNote(), "less than 3 points");
        entry.undo();
        entry.undo();
        type("54", "54");
        assertEquals("All readings of this session are in doubt: control piece K1 read 54 Shore A, 4 Shore A above its usual 50 Shore A; allowed: less than 3 points, "
                + "common practice while too few sessions show its own spread.", entry.controlNote());
    }

    @Test
    void severalReadingsInOneLineAreOneStep() {
        type("50; 51; 50");
        assertEquals("Part 1, reading 1 of 3", entry.prompt());
        project.undo();
        assertTrue(control.getMeasurements().isEmpty());
    }

    @Test
    void yesNoPropertiesNeedNoControlPiece() {
        entry = new ReadingEntry(project, bench, Bench.INVERTED, Bench.key(Bench.INVERTED), null, trial.getParts(), 1, PROPERTIES);
        assertFalse(entry.isControl());
        type("no", "yes");
        assertTrue(entry.complete());
        assertEquals("", entry.summary());
        assertEquals(true, trial.getParts().get(1).getMeasurements().get(0).getReadings().get(0).getYes());
    }

    @Test
    void theReadingThatCompletedAPieceStaysInSight() {
        type("50", "51", "50");
        assertEquals(List.of("K1 50 Shore A", "K1 51 Shore A", "K1 50 Shore A"), entry.recent().stream().map(r -> r.piece() + " " + r.text()).toList());
        assertEquals("K1: median 50 Shore A, spread 1 Shore A", entry.before());
        assertEquals("3/3", entry.progress(control));
        type("48");
        assertEquals("", entry.before(), "the piece at hand is summed up beside the field");
        assertEquals("48 Shore A", entry.recent().getLast().text());
    }

    @Test
    void whenAllAreReadNothingMoreIsTakenUnlessAPieceIsChosen() {
        type("50; 51; 50", "48; 49; 47", "48; 48; 48");
        assertTrue(entry.complete());
        assertEquals("Every piece has its readings: choose a piece to read it once more.", entry.type("49"));
        entry.goTo(1);
        type("49");
        assertEquals(4, trial.getParts().get(0).getMeasurements().get(0).getReadings().size());
    }

    @Test
    void nothingButReadingsIsTakenBack() {
        type("50");
        assertEquals("", entry.undo());
        assertEquals("There is no reading to take back; what was done before this entry stays.", entry.undo());
        assertEquals(2, trial.getParts().size(), "setting up was not taken back");
    }

    @Test
    void theControlPieceIsReadAsItAlwaysIs() {
        type("50; 51; 50");
        entry = new ReadingEntry(project, earlier, APPARENT, Bench.key(APPARENT), gauge, trial.getParts(), 2, PROPERTIES);
        assertFalse(entry.isControl(), "this session has no control piece");
        project.execute("control", edit -> edit.set(earlier, ModelPackage.Literals.SESSION__CONTROL_PIECE, control));
        entry = new ReadingEntry(project, earlier, APPARENT, Bench.key(APPARENT), gauge, trial.getParts(), 2, PROPERTIES);
        assertTrue(entry.isControl(), "the same scale");
        type("54; 54", "40; 41");
        assertEquals(List.of("t.hardness", "t.hardness"), control.getMeasurements().stream().map(m -> m.getKey().getProperty()).toList());
        assertEquals("t.apparent", trial.getParts().get(0).getMeasurements().get(0).getKey().getProperty());
    }
}
