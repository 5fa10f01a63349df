package org.flexwright.workbench.pages.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker with a gauge in one hand: a control piece and five parts, five readings each, by the keys of the keyboard alone. */
class SessionByKeysTest {
    private static final Duration ALLOWED = Duration.ofSeconds(60);
    private static final int EACH = 5;

    @TempDir
    Path folder;
    private final Display display = Display.getCurrent();
    private Session session;
    private Trial trial;
    private ControlPiece control;
    private Instrument gauge;

    @AfterEach
    void close() {
        Projects.none();
    }

    private void begin() {
        Projects.small(folder);
        trial = Pages.cast();
        control = ModelFactory.eINSTANCE.createControlPiece();
        control.setCode("K1");
        control.setThickness(8.0);
        control.setUsual(61.0);
        control.setUsualSpread(0.5);
        control.setUsualFrom("certificate");
        gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("hand durometer");
        gauge.setUnit("Shore A");
        gauge.setResolution(0.5);
        gauge.setCheckEveryDays(365.0);
        Pages.session().execute("pieces", edit -> {
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, control);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__INSTRUMENTS, gauge);
            for (int i = 0; i < 5; i++) {
                Trials.addPart(edit, trial, null, PieceKind.TEST_PIECE, 8.0, null);
            }
            session = BenchSessions.begin(edit);
            edit.set(session, ModelPackage.Literals.SESSION__INSTRUMENTS, List.of(gauge));
        });
    }

    /** A key of the keyboard, down and up, wherever the focus is. */
    private void press(char character, int code) {
        Event key = new Event();
        key.character = character;
        key.keyCode = code;
        key.type = SWT.KeyDown;
        boolean taken = display.post(key);
        key.type = SWT.KeyUp;
        if (!taken || !display.post(key)) {
            throw new AssertionError("The display does not take keys that are posted to it.");
        }
        Ui.pump();
    }

    private void typed(Text field, String words) {
        for (char c : words.toCharArray()) {
            String before = field.getText();
            press(c, c);
            Ui.await("the key " + c + " in the field", () -> !field.getText().equals(before));
        }
        press(SWT.CR, SWT.CR);
        Ui.await("the reading " + words + " is written down", () -> field.getText().isEmpty());
    }

    private int count() {
        return control.getMeasurements().stream().mapToInt(m -> m.getReadings().size()).sum()
                + trial.getParts().stream().flatMap(p -> p.getMeasurements().stream()).mapToInt(m -> m.getReadings().size()).sum();
    }

    @Test
    void fivePartsFiveReadingsEach() {
        begin();
        Shell shell = Pages.open(session, "session.readings");
        ReadingPageTest.property(shell, "Hardness, Shore A");
        shell.forceActive();
        Text field = (Text) Pages.named(shell, "Reading of ");
        field.forceFocus();
        Ui.await("the field has the focus", field::isFocusControl);
        long start = System.nanoTime();
        for (int i = 0; i < EACH; i++) {
            typed(field, i % 2 == 0 ? "63" : "62.5");
        }
        assertTrue(Ui.shows(shell, "63 Shore A, 2 Shore A above its usual 61 Shore A"), "what the control piece says stands there before the first part is read");
        for (Part part : trial.getParts()) {
            for (int i = 0; i < EACH; i++) {
                typed(field, String.valueOf(47 + (i + trial.getParts().indexOf(part)) % 3));
            }
        }
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        System.out.println("30 readings by keys: " + took.toMillis() / 1000.0 + " s, of which 5 on the control piece");
        assertTrue(took.compareTo(ALLOWED) < 0, () -> "30 readings took " + took);
        for (Part part : trial.getParts()) {
            assertEquals(1, part.getMeasurements().size(), "readings on one part are one measurement");
            assertEquals(EACH, part.getMeasurements().getFirst().getReadings().size());
        }
        assertEquals(List.of("63", "62.5", "63", "62.5", "63"), control.getMeasurements().getFirst().getReadings().stream().map(Reading::getTypedAs).toList());
        press(SWT.BS, SWT.BS);
        Ui.await("the last one is taken back", () -> count() == 29);
        typed(field, "48");
        Ui.picture(shell, "session-read");
        Pages.open(session, "session.bench");
        assertTrue(Ui.shows(shell, "allowed: ± 1 Shore A, twice its usual spread of 0.5 Shore A (certificate)"));
        Ui.picture(shell, "session-room");
        Pages.open(trial, "trial.parts");
        assertTrue(Ui.shows(shell, "In doubt, session " + session.getCode()), "the word stands beside every reading");
        Pages.open(gauge, "gauge.instrument");
        assertTrue(Ui.shows(shell, "Check overdue"));
        Ui.click(shell, "Checked today");
        assertTrue(Ui.shows(shell, "holds until "));
        Ui.click(shell, "Take it as own spread");
        assertEquals(0.27, gauge.getSpread(), 1e-9, "s of 63, 62.5, 63, 62.5, 63");
        Ui.picture(shell, "gauge");
        Pages.open(control, "gauge.control");
        Ui.picture(shell, "control-piece");
    }
}
