package org.flexwright.core.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoundFormTest {
    @TempDir
    Path folder;
    private ProjectSession project;
    private final Session bench = ModelFactory.eINSTANCE.createSession();

    @BeforeEach
    void open() {
        project = OpenProject.in(folder);
        project.execute("session", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__SESSIONS, bench));
    }

    @AfterEach
    void close() {
        project.close();
    }

    @Test
    void whatIsTypedIsInTheModelWithWhatWasTyped() {
        try (FormModel form = FormModel.bound(project, bench)) {
            form.type("roomC", "75 F");
            assertEquals(23.8888888889, bench.getRoomC(), 1e-9);
            assertEquals("75 F", bench.getProvenance().get(0).getTypedAs());
            assertEquals(Origin.TYPED, Provenances.origin(bench, ModelPackage.Literals.SESSION__ROOM_C));
            assertEquals("typed", form.origin("roomC"));
            assertEquals("75 F", form.text("roomC"));
            form.settle("roomC");
            assertEquals("23.8888888889 °C", form.text("roomC"));
            assertTrue(form.isBound("roomC"));
        }
    }

    @Test
    void typingInOneFieldIsOneStepToUndo() {
        try (FormModel form = FormModel.bound(project, bench)) {
            form.type("roomC", "2");
            form.type("roomC", "21");
            form.type("roomC", "21.5");
            form.type("who", "Ada");
            project.undo();
            assertEquals("", form.text("who"));
            assertEquals(21.5, bench.getRoomC());
            project.undo();
            assertNull(bench.getRoomC());
            assertEquals("", form.text("roomC"));
            assertTrue(bench.getProvenance().isEmpty());
            project.redo();
            assertEquals("21.5 °C", form.text("roomC"));
        }
    }

    @Test
    void aTextThatIsNotAcceptedLeavesTheModelAlone() {
        try (FormModel form = FormModel.bound(project, bench)) {
            form.type("roomC", "21");
            form.type("roomC", "210");
            assertEquals(21, bench.getRoomC());
            assertEquals("Room temperature must be from -20 °C to 60 °C; got 210 °C.", form.problem("roomC"));
            form.type("who", "Ada");
            assertEquals("210", form.text("roomC"), "a change elsewhere does not wipe what is being typed");
            form.revert("roomC");
            assertEquals("21 °C", form.text("roomC"));
        }
    }

    @Test
    void aChangeFromElsewhereComesBackAsText() {
        try (FormModel form = FormModel.bound(project, bench)) {
            List<String> heard = new ArrayList<>();
            form.addListener(heard::add);
            project.execute("elsewhere", edit -> edit.set(bench, ModelPackage.Literals.SESSION__ROOM_C, 19.0));
            assertEquals("19 °C", form.text("roomC"));
            assertEquals(List.of("roomC"), heard);
        }
    }

    @Test
    void emptyingAFieldEmptiesTheFeature() {
        try (FormModel form = FormModel.bound(project, bench)) {
            form.type("roomC", "0");
            assertEquals(0.0, bench.getRoomC());
            form.type("roomC", "");
            assertNull(bench.getRoomC());
            assertTrue(bench.getProvenance().isEmpty());
            assertEquals("", form.origin("roomC"));
        }
    }

    @Test
    void choicesWholeNumbersAndTextsAreWrittenToo() {
        Trial trial = project.project().getTrials().get(0);
        try (FormModel form = FormModel.bound(project, trial)) {
            form.type("state", "made");
            form.type("conclusion", "softer than wanted");
            assertEquals("made", trial.getState().getLiteral());
            assertEquals("softer than wanted", trial.getConclusion());
            assertTrue(trial.getProvenance().isEmpty(), "only numbers carry where they came from");
        }
    }

    @Test
    void aScratchFieldMayStandForAFeatureInAnotherUnit() {
        FieldDescriptor inFahrenheit = FieldDescriptor.quantity("room", "Room", QuantityKind.TEMPERATURE, "degF");
        try (FormModel form = FormModel.scratch(project, List.of(inFahrenheit))) {
            project.execute("set", edit -> edit.set(bench, ModelPackage.Literals.SESSION__ROOM_C, 20.0));
            assertFalse(form.isBound("room"));
            form.bind("room", bench, ModelPackage.Literals.SESSION__ROOM_C, FieldDescriptors.of(ModelPackage.Literals.SESSION__ROOM_C));
            assertEquals("68 °F", form.text("room"));
            form.type("room", "77");
            assertEquals(25, bench.getRoomC(), 1e-9);
            form.release("room");
            form.type("room", "50");
            assertEquals(25, bench.getRoomC(), 1e-9);
        }
    }

    @Test
    void aReadOnlyProjectSaysWhyNothingIsTaken() {
        project.save();
        try (ProjectSession second = OpenProject.again(project)) {
            Session same = second.project().getSessions().get(0);
            try (FormModel form = FormModel.bound(second, same)) {
                form.type("roomC", "21");
                assertEquals(second.readOnlyReason(), form.problem("roomC"));
                assertFalse(form.problem("roomC").isEmpty());
                assertNull(same.getRoomC());
            }
        }
    }
}
