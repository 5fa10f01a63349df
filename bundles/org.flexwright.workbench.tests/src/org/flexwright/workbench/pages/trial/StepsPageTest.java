package org.flexwright.workbench.pages.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepsPageTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Shell atStep(Trial trial, String title) {
        Shell shell = Pages.open(trial, "trial.steps");
        Ui.mouse(Pages.named(shell, title + ", "));
        return shell;
    }

    private static void weigh(Shell shell, String letter, String grams) {
        Ui.type(Ui.find(shell, Text.class, "Net of " + letter + ", g"), grams);
        Ui.click(Ui.find(shell, Button.class, "Add " + letter + " to the cup"));
    }

    /** Begins a session, ticks every caution and signs. */
    private static void acknowledge(Shell shell) {
        Ui.click(shell, "Begin a session now");
        Ui.all(shell, Button.class).stream().filter(b -> Kit.nameOf(b).startsWith("I have read: ")).forEach(b -> b.setSelection(true));
        Ui.type(Ui.find(shell, Text.class, "Read by"), "Kim");
        Ui.all(shell, Text.class).stream().filter(t -> Kit.nameOf(t).startsWith("Data sheet dated")).forEach(t -> Ui.type(t, "2026-01-15"));
        Ui.all(shell, Text.class).stream().filter(t -> Kit.nameOf(t).startsWith("Revision of the data sheet")).forEach(t -> Ui.type(t, "4"));
        Ui.click(shell, "I have read what is ticked");
    }

    @Test
    void tooMuchOfAIsSeenAtOnceAndMendedWithB() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Step step = Pages.step(trial, "mixing.weigh");
        Shell shell = atStep(trial, "Weigh");
        assertFalse(Pages.hasNamed(shell, "Target of B now 23.46 g"), "nothing is in the cup yet");

        weigh(shell, "A", "24.88");
        assertEquals(24.88, Weighings.actual(Pages.use(step, PartRole.COMPONENT_A)), 1e-9);
        assertTrue(Pages.hasNamed(shell, "Target of B now 23.46 g"), "B follows the A that is really in the cup");
        assertEquals("", Ui.find(shell, Text.class, "Net of A, g").getText(), "the field is ready for the next reading");

        weigh(shell, "B", "21,57 g");
        assertTrue(Ui.shows(shell, "−8.0 %"));
        assertTrue(Ui.shows(shell, "100 : 86.7"));
        Ui.picture(shell, "steps-too-much-a");

        Ui.click(shell, "Add 1.89 g B now");
        assertEquals(23.46, Weighings.actual(Pages.use(step, PartRole.COMPONENT_B)), 1e-9);
        assertTrue(Pages.use(step, PartRole.COMPONENT_B).getWeighings().getLast().isCorrection());
        assertFalse(Ui.shows(shell, "−8.0 %"));

        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(21.57, Weighings.actual(Pages.use(step, PartRole.COMPONENT_B)), 1e-9);
        assertTrue(Ui.shows(shell, "−8.0 %"), "undo brings it back");
        assertNotNull(Ui.find(shell, Button.class, "Add 1.89 g B now"));
    }

    @Test
    void grossAndTareGiveTheNetAndAContradictionIsToldOnThePage() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Step step = Pages.step(trial, "mixing.weigh");
        Shell shell = atStep(trial, "Weigh");
        Ui.type(Ui.find(shell, Text.class, "Gross of A, g"), "36.88");
        Ui.type(Ui.find(shell, Text.class, "Tare of A, g"), "12");
        Ui.type(Ui.find(shell, Text.class, "Net of A, g"), "20");
        Pages.enter(Ui.find(shell, Text.class, "Net of A, g"));
        assertNull(Weighings.actual(Pages.use(step, PartRole.COMPONENT_A)), "a contradiction is not written down");
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("not 20 g"), "and it is told without a dialog");
        Ui.type(Ui.find(shell, Text.class, "Net of A, g"), "");
        Pages.enter(Ui.find(shell, Text.class, "Tare of A, g"));
        assertEquals(24.88, Weighings.actual(Pages.use(step, PartRole.COMPONENT_A)), 1e-9);
    }

    @Test
    void startWaitsForTheCautionsOfWhichNoneIsTickedBeforehand() {
        Projects.example(folder);
        Trial[] made = new Trial[1];
        Pages.session().execute("copy", edit -> made[0] = Trials.copy(edit, Pages.trial("T05"), null, "again"));
        Step step = Pages.step(made[0], "mixing.weigh");
        Shell shell = atStep(made[0], "Weigh");
        assertTrue(Ui.all(shell, Button.class).stream().filter(b -> Kit.nameOf(b).startsWith("I have read: ")).count() > 0);
        assertTrue(Ui.all(shell, Button.class).stream().filter(b -> Kit.nameOf(b).startsWith("I have read: ")).noneMatch(Button::getSelection));
        Ui.picture(shell, "steps-cautions");

        Ui.click(shell, "Start");
        assertEquals(StepState.PLANNED, step.getState());
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("Read the"), "it says what it waits for");

        Ui.click(shell, "Begin a session now");
        Ui.all(shell, Button.class).stream().filter(b -> Kit.nameOf(b).startsWith("I have read: ")).forEach(b -> b.setSelection(true));
        Ui.type(Ui.find(shell, Text.class, "Read by"), "Kim");
        Ui.all(shell, Text.class).stream().filter(t -> Kit.nameOf(t).startsWith("Data sheet dated")).forEach(t -> Ui.type(t, ""));
        Ui.click(shell, "I have read what is ticked");
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("data sheet"), "the data sheet's date and revision are asked for");
        int before = Pages.project().getAcknowledgements().size();
        Ui.all(shell, Text.class).stream().filter(t -> Kit.nameOf(t).startsWith("Data sheet dated")).forEach(t -> Ui.type(t, "2026-01-15"));
        Ui.all(shell, Text.class).stream().filter(t -> Kit.nameOf(t).startsWith("Revision of the data sheet")).forEach(t -> Ui.type(t, "4"));
        Ui.click(shell, "I have read what is ticked");
        assertTrue(Pages.project().getAcknowledgements().size() > before);
        Acknowledgement last = Pages.project().getAcknowledgements().getLast();
        assertEquals("Kim", last.getWho());
        assertEquals(LocalDate.of(2026, 1, 15), last.getSheetDate());
        assertEquals("4", last.getSheetRevision());

        Ui.click(shell, "Start");
        assertEquals(StepState.RUNNING, step.getState());
        Ui.click(shell, "Done");
        assertEquals(StepState.DONE, step.getState());
    }

    @Test
    void startingAgainstAStopAsksForAReasonAndKeepsIt() {
        Projects.example(folder);
        Trial[] made = new Trial[1];
        Pages.session().execute("copy", edit -> made[0] = Trials.copy(edit, Pages.trial("T03"), null, "again"));
        Ui.await("the stop finding of the copied trial", () -> Ui.projects().findings(made[0]).stream().anyMatch(f -> f.rule().equals("moulding.cure-poison")));
        Step step = Pages.step(made[0], "testing.read");
        Shell shell = atStep(made[0], "Read the parts");
        acknowledge(shell);
        Ui.click(shell, "Start");
        assertEquals(StepState.PLANNED, step.getState(), "a stop stands against it");
        Ui.click(shell, "Start against it");
        assertEquals(StepState.PLANNED, step.getState(), "no reason, no start");
        int before = Pages.project().getOverrides().size();
        Ui.type(Ui.find(shell, Text.class, "Reason for starting against the finding"), "a test piece only, nothing goes to anybody");
        Ui.picture(shell, "steps-against");
        Ui.click(shell, "Start against it");
        assertEquals(StepState.RUNNING, step.getState());
        assertTrue(Pages.project().getOverrides().size() > before);
        assertEquals("a test piece only, nothing goes to anybody", Pages.project().getOverrides().getLast().getReason());
    }

    @Test
    void copiedValuesAreConfirmedByOneAction() {
        Projects.example(folder);
        Trial[] made = new Trial[1];
        Pages.session().execute("copy", edit -> made[0] = Trials.copy(edit, Pages.trial("T05"), null, "again"));
        Step step = Pages.step(made[0], "mixing.mix");
        assertTrue(step.isUnconfirmed());
        Shell shell = atStep(made[0], "Mix");
        Ui.click(shell, "Confirm as planned");
        assertFalse(step.isUnconfirmed());
        assertNotNull(step.getConfirmedAt());
        assertTrue(Ui.all(shell, Button.class).stream().noneMatch(b -> Ui.words(b).equals("Confirm as planned")), "the question is gone");
    }

    @Test
    void whatHappenedStandsBesideWhatWasMeantAndSpeaksUpOutsideItsLimit() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Step step = Pages.step(trial, "mixing.mix");
        Shell shell = atStep(trial, "Mix");
        Ui.type(Ui.find(shell, Text.class, "Mixing time, planned, min"), "2");
        Ui.type(Ui.find(shell, Text.class, "Mixing time, actual, min"), "3 min");
        assertEquals(3.0, Pages.value(step.getDetails(), "minutes").orElseThrow());
        Ui.await("the difference outside the own limit", () -> Ui.all(shell, Label.class).stream().anyMatch(l -> Ui.words(l).contains("+50 %")
                && Ui.words(l).contains("25%")));
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertTrue(Pages.value(step.getDetails(), "minutes").isEmpty(), "typing in one field is one step to undo");
        Ui.click(shell, "As planned");
        assertEquals(2.0, Pages.value(step.getDetails(), "minutes").orElseThrow());
    }

    private static java.util.List<String> kinds(Trial trial) {
        return trial.getSteps().stream().map(Step::getKind).toList();
    }

    @Test
    void aStepIsInsertedMovedAndRemovedAndEachIsUndone() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        java.util.List<String> planned = kinds(trial);
        Shell shell = atStep(trial, "Weigh");
        int at = planned.indexOf("mixing.weigh");

        Ui.click(shell, "Insert the step");
        assertEquals(planned, kinds(trial));
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("Choose what is done"), "it says what is missing");

        Ui.choose(Ui.find(shell, Combo.class, "Kind of the new step"), "Degas");
        Ui.choose(Ui.find(shell, Combo.class, "Where the new step goes"), "before this step");
        Ui.click(shell, "Insert the step");
        assertEquals(planned.size() + 1, trial.getSteps().size());
        assertEquals("mixing.degas", trial.getSteps().get(at).getKind());
        assertTrue(Ui.shows(shell, "step " + (at + 1) + " of " + (planned.size() + 1)), "the new step is shown");

        Ui.click(shell, "Move this step later");
        assertEquals("mixing.degas", trial.getSteps().get(at + 1).getKind());
        assertTrue(Ui.shows(shell, "step " + (at + 2) + " of "));
        Ui.picture(shell, "steps-order");
        Ui.click(shell, "Move this step earlier");
        assertEquals("mixing.degas", trial.getSteps().get(at).getKind());

        Ui.click(shell, "Remove this step");
        assertEquals(planned, kinds(trial));
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("mixing.degas", trial.getSteps().get(at).getKind(), "undo brings it back");
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(planned, kinds(trial), "all the way back");
    }

    @Test
    void aStepInWhichSomethingWasWeighedIsNotRemoved() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Shell shell = atStep(trial, "Weigh");
        weigh(shell, "A", "24.88");
        int steps = trial.getSteps().size();
        Ui.click(shell, "Remove this step");
        assertEquals(steps, trial.getSteps().size());
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("stays in the record"));
    }

    @Test
    void aSofterPartBringsItsCausesToTheOutcome() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.trial("T07"), "trial.outcome");
        assertTrue(Pages.hasNamed(shell, "1, Water on the powder, the record says so"));
        Ui.picture(shell, "outcome-softer");
        shell = Pages.open(Pages.trial("T06"), "trial.outcome");
        assertFalse(Pages.hasNamed(shell, "1, Water on the powder"), "T06 is not softer than the trial before");
    }

    @Test
    void curvesOverFillerStandOnAPageOfATrialWithFillerAlone() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.trial("T07"), "trial.plots");
        assertTrue(Pages.hasNamed(shell, "Stiffness over filler"), "the chart is named by what it shows");
        Ui.picture(shell, "curves-stiffness");
        Ui.choose(Ui.find(shell, Combo.class, "Curve to draw"), "Viscosity over filler");
        assertTrue(Pages.hasNamed(shell, "Viscosity over filler"));
        assertTrue(Ui.shows(shell, "Grains touch at 64 %"));
    }
}
