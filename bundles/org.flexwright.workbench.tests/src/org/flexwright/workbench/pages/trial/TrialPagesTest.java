package org.flexwright.workbench.pages.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.flexwright.model.Part;
import org.flexwright.model.Reading;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Idea, parts and outcome of a trial. */
class TrialPagesTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    @Test
    void aCopiedTrialShowsTheOneThingThatWasChanged() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.trial("T06"), "trial.idea");
        int before = Pages.project().getTrials().size();
        Ui.click(shell, "Copy this trial");
        assertEquals(before + 1, Pages.project().getTrials().size());
        Trial copy = Pages.project().getTrials().getLast();
        assertSame(Pages.trial("T06"), copy.getBasedOn());
        assertSame(copy, ((SubjectEditor) Ui.window().getActivePage().getActiveEditor()).subject(), "the copy is opened");
        Pages.open(copy, "trial.idea");
        assertTrue(Ui.shows(shell, "Nothing in the plan"), "a fresh copy differs in nothing");
        Ui.type(Ui.find(shell, Text.class, "Fill time, min"), "5");
        assertEquals(5.0, Pages.value(Pages.step(copy, "moulding.fill").getDetails(), "plannedFillMinutes").orElseThrow(), "the factor is the step's own field");
        assertTrue(Ui.shows(shell, "Fill the mould: Fill time"), "and the difference stands there");
        assertTrue(Ui.shows(shell, "5 min"));
        Ui.picture(shell, "trial-idea");
        Ui.click(shell, "Confirm every step as planned");
        assertTrue(copy.getSteps().stream().noneMatch(step -> step.isUnconfirmed()));
    }

    @Test
    void aReadingIsLeftOutForAReasonAndStaysInTheRecord() {
        Projects.example(folder);
        Trial trial = Pages.trial("T08");
        Part part = trial.getParts().stream().filter(p -> "P1".equals(p.getCode())).findFirst().orElseThrow();
        Shell shell = Pages.open(trial, "trial.parts");
        Table table = Ui.find(shell, Table.class, "Parts");
        table.setSelection(trial.getParts().indexOf(part));
        table.notifyListeners(SWT.Selection, new Event());
        Ui.pump();
        assertTrue(Ui.shows(shell, "Readings on P1"));
        Button leave = (Button) Pages.named(shell, "Leave out a reading of Apparent hardness");
        Ui.click(leave);
        Ui.click(shell, "Leave it out");
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("reason"), "not without a reason");
        Ui.type(Ui.find(shell, Text.class, "Reason to leave the reading out"), "slipped off the flange");
        Ui.click(shell, "Leave it out");
        Reading left = part.getMeasurements().stream().flatMap(m -> m.getReadings().stream()).filter(r -> r.getLeftOut() != null).findFirst().orElseThrow();
        assertEquals("slipped off the flange", left.getLeftOut());
        assertTrue(Ui.shows(shell, "left out: slipped off the flange"));
    }

    @Test
    void aPartIsAddedAndUndoTakesItBack() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Shell shell = Pages.open(trial, "trial.parts");
        assertTrue(Ui.shows(shell, "No part yet."));
        Ui.click(shell, "Add a part");
        assertEquals("P1", trial.getParts().getFirst().getCode());
        assertTrue(Ui.shows(shell, "Piece P1"));
        assertFalse(Ui.shows(shell, "No part yet."));
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertTrue(trial.getParts().isEmpty());
        assertTrue(Ui.shows(shell, "No part yet."));
    }

    @Test
    void theOutcomeOfWhatIsNotMadeYetOpensAndSaysSo() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.trial("T10"), "trial.outcome");
        assertTrue(Ui.shows(shell, "There is nothing to judge yet"), "planned: no verdicts to show, but the page is there");
        assertTrue(Ui.shows(shell, "What was learned"));
    }

    @Test
    void theOutcomeSaysWhyAndWhatIsMissingForARecipe() {
        Projects.example(folder);
        Trial trial = Pages.trial("T06");
        Shell shell = Pages.open(trial, "trial.outcome");
        assertTrue(Ui.shows(shell, "? cannot tell"));
        assertTrue(Ui.shows(shell, "would settle it"), "the reason says what would help");
        assertTrue(Ui.shows(shell, "Still missing:"));
        assertTrue(Ui.all(shell, Button.class).stream().noneMatch(b -> Ui.words(b).equals("Freeze as a recipe")));
        Ui.choose(Ui.find(shell, Combo.class, "State of the trial"), "✕ discarded");
        Ui.click(shell, "Set");
        assertEquals(TrialState.MADE, trial.getState(), "not without a reason");
        Ui.type(Ui.find(shell, Text.class, "Why it failed or was discarded"), "left in the sun");
        Ui.choose(Ui.find(shell, Combo.class, "State of the trial"), "✕ discarded");
        Ui.click(shell, "Set");
        assertEquals(TrialState.DISCARDED, trial.getState());
        assertEquals("left in the sun", trial.getStateReason());
        Ui.type(Ui.find(shell, Text.class, "Conclusion"), "Keep parts in the dark.");
        assertEquals("Keep parts in the dark.", trial.getConclusion());
    }

    @Test
    void aTrialThatProvedItselfIsFrozenAsTheNextVersion() {
        Projects.example(folder);
        Trial trial = Pages.trial("T08");
        Shell shell = Pages.open(trial, "trial.outcome");
        int before = Pages.project().getRecipes().size();
        Ui.type(Ui.find(shell, Text.class, "Code of the recipe"), "R1");
        Ui.click(shell, "Freeze as a recipe");
        assertEquals(before, Pages.project().getRecipes().size(), "somebody has to sign");
        Ui.type(Ui.find(shell, Text.class, "Who signs it"), "Kim");
        Ui.click(shell, "Freeze as a recipe");
        assertEquals(before + 1, Pages.project().getRecipes().size());
        assertEquals(2, Pages.project().getRecipes().getLast().getVersion());
        assertTrue(Ui.shows(shell, "R1, version 2"), "the recipe is shown");
    }
}
