package org.flexwright.workbench.pages.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Censoring;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingPageTest {

    @TempDir
    Path folder;

    private Session session;

    @AfterEach
    void close() {
        Projects.none();
    }

    private Shell begin() {
        Pages.session().execute("begin", edit -> session = BenchSessions.begin(edit));
        return Pages.open(session, "session.readings");
    }

    private static Text field(Shell shell) {
        return (Text) Pages.named(shell, "Reading of ");
    }

    private static void read(Shell shell, String words) {
        Ui.type(field(shell), words);
        Pages.enter(field(shell));
    }

    static void property(Shell shell, String ending) {
        Combo what = Ui.find(shell, Combo.class, "What is read");
        String words = List.of(what.getItems()).stream().filter(item -> item.endsWith(ending)).findFirst()
                .orElseThrow(() -> new AssertionError(ending + " is not among " + List.of(what.getItems())));
        Ui.choose(what, words);
    }

    private List<Reading> readings(Specimen piece, String property) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == session && property.equals(m.getKey().getProperty()))
                .flatMap(m -> m.getReadings().stream()).toList();
    }

    @Test
    void theControlPieceComesFirstThenPieceByPieceAndUndoByKey() {
        Projects.example(folder);
        Shell shell = begin();
        property(shell, "Hardness, Shore A");
        Specimen control = Pages.project().getControlPieces().getFirst();
        assertTrue(Ui.shows(shell, "Control piece K1, reading 1 of 5"), "the control piece first");
        read(shell, "61");
        read(shell, "abc");
        assertTrue(Kit.descriptionOf(field(shell)).contains("abc"), "one sentence beside the field");
        assertEquals("abc", field(shell).getText(), "what was typed stays");
        read(shell, "61,5");
        assertEquals(List.of(61.0, 61.5), readings(control, "testing.shore-a").stream().map(Reading::getValue).toList());
        assertTrue(Pages.hasNamed(shell, "median 61.25 Shore A, spread 0.5"), "median and spread run along");
        assertTrue(Ui.shows(shell, "61.5 Shore A"));
        Ui.picture(shell, "reading-entry");
        Pages.key(field(shell), SWT.BS);
        assertEquals(1, readings(control, "testing.shore-a").size(), "Backspace in the empty field takes the last one back");
        read(shell, "61; 61; 60.5; 61");
        assertTrue(Ui.shows(shell, "P1, reading 1 of 5"), "with its readings complete the next piece comes up");
        Pages.enter(field(shell));
        assertTrue(Ui.shows(shell, "P2, reading 1 of 5"), "Enter in the empty field goes on");
    }

    @Test
    void aBoundIsABoundAndNotAValue() {
        Projects.example(folder);
        Shell shell = begin();
        property(shell, "Peak force, smooth base, rim free");
        read(shell, ">12");
        Trial newest = Pages.project().getTrials().getLast();
        Reading reading = newest.getParts().stream().flatMap(part -> readings(part, "testing.peak-force").stream()).findFirst()
                .or(() -> Pages.project().getTrials().stream().flatMap(t -> t.getParts().stream()).flatMap(part -> readings(part, "testing.peak-force").stream())
                        .findFirst()).orElseThrow();
        assertEquals(Censoring.MORE_THAN, reading.getCensoring());
        assertEquals(12.0, reading.getValue());
        assertTrue(Ui.shows(shell, "> 12 N"));
    }

    @Test
    void yesAndNoAreOneKey() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Part[] part = new Part[1];
        Pages.session().execute("part", edit -> part[0] = Trials.addPart(edit, trial, null, PieceKind.PART, 1.5, null));
        Shell shell = begin();
        property(shell, "Rests inverted");
        Ui.type(field(shell), "n");
        assertEquals(List.of(false), readings(part[0], "testing.rests-inverted").stream().map(Reading::getYes).toList(), "written down without Enter");
        Ui.click(shell, "Yes");
        assertEquals(List.of(false, true), readings(part[0], "testing.rests-inverted").stream().map(Reading::getYes).toList());
    }

    @Test
    void aThinPieceIsTurnedToApparentHardness() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Part[] part = new Part[1];
        Pages.session().execute("part", edit -> part[0] = Trials.addPart(edit, trial, null, PieceKind.PART, 1.5, null));
        Shell shell = begin();
        property(shell, "Hardness, Shore A");
        read(shell, "48");
        Ui.await("the note about the thin piece", () -> Ui.projects().findings(part[0]).stream().anyMatch(f -> f.rule().equals("testing.apparent")));
        assertTrue(Ui.shows(shell, "P1"), "it stands beside the entry");
        Ui.click(shell, "Read as apparent hardness");
        assertEquals(0, readings(part[0], "testing.shore-a").size());
        assertEquals(List.of(48.0), readings(part[0], "testing.apparent-hardness").stream().map(Reading::getValue).toList());
        read(shell, "49");
        assertEquals(2, readings(part[0], "testing.apparent-hardness").size(), "what follows counts alike");
    }

    @Test
    void withoutAPieceItSaysWhatGoesHere() {
        Projects.small(folder);
        Shell shell = begin();
        assertTrue(Ui.shows(shell, "There is no piece yet"));
    }
}
