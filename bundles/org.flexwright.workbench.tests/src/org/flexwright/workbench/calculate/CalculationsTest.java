package org.flexwright.workbench.calculate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Trial;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalculationsTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Shell show(String id) {
        CalculationsEditor.show(Ui.window(), id);
        Ui.pump();
        return Ui.window().getShell();
    }

    private static void awaitResult(Shell shell, String words) {
        Ui.await(words, () -> Ui.all(shell, Control.class).stream().anyMatch(c -> org.flexwright.workbench.kit.Kit.nameOf(c).equals(words)));
    }

    @Test
    void resultsFollowWhatIsTypedAndARefusalStandsInTheirPlace() {
        Projects.small(folder);
        Shell shell = show("mixing.batch");
        awaitResult(shell, "Mass of A: 22.88 g");
        Ui.type(Ui.find(shell, Text.class, "Parts"), "6");
        awaitResult(shell, "Mass of A: 45.76 g");
        Ui.picture(shell, "calculation");
        Ui.type(Ui.find(shell, Text.class, "Part volume, ml"), "lots");
        Ui.await("the refusal", () -> Pages.hasNamed(shell, "No result: "));
        assertTrue(Ui.shows(shell, "■ No result"));
        Ui.click(shell, "Go to Part volume");
        Ui.type(Ui.find(shell, Text.class, "Part volume, ml"), "12 ml");
        awaitResult(shell, "Mass of A: 45.76 g");
    }

    @Test
    void theListIsFilteredByWords() {
        Shell shell = show(null);
        Table list = Ui.find(shell, Table.class, "Calculations");
        int all = list.getItemCount();
        Ui.type(Ui.find(shell, Text.class, "Filter the calculations"), "index isocyanate");
        assertTrue(list.getItemCount() > 0 && list.getItemCount() < all);
        Ui.type(Ui.find(shell, Text.class, "Filter the calculations"), "");
        assertEquals(all, list.getItemCount());
    }

    @Test
    void theManualPageIsShownInTheWindow() {
        Shell shell = show("mixing.batch");
        Ui.click(shell, "About (F1)");
        assertTrue(Ui.shows(shell, "mixing.batch"));
        assertTrue(Ui.shows(shell, "name partVolume"), "every input with its name, as the command line takes it");
        Ui.click(shell, "About (F1)");
    }

    @Test
    void aKeptCalculationGoesStaleWhenWhatItWasTakenFromChanges() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        Shell shell = show("mixing.batch");
        awaitResult(shell, "Mass of A: 22.88 g");
        Ui.choose(Ui.find(shell, Combo.class, "Trial to keep it in"), Ui.find(shell, Combo.class, "Trial to keep it in").getItem(0));
        Ui.click(shell, "Take inputs from it");
        assertTrue(Ui.shows(shell, "from Weigh of " + trial.getCode()), "an input says where it was taken from");
        Ui.await("the result of the taken inputs", () -> Pages.hasNamed(shell, "Mass of A: "));
        Ui.click(shell, "Keep in this trial");
        CalculationRun run = trial.getCalculations().getFirst();
        assertEquals("mixing.batch", run.getCalculation());
        assertTrue(run.getInputs().stream().anyMatch(i -> i.getBoundTo() != null));

        Pages.open(trial, "trial.outcome");
        assertTrue(Ui.shows(shell, "Mass of A 22.88 g"));
        assertTrue(!Ui.shows(shell, "▲ stale"));
        Pages.set(Pages.step(trial, "mixing.weigh").getDetails(), "ratioB", 80.0);
        assertTrue(Ui.shows(shell, "▲ stale"), "it says so and is not calculated again");
        assertTrue(Ui.shows(shell, "Mass of A 22.88 g"), "it stands as it was");
        Ui.picture(shell, "outcome-stale");
    }
}
