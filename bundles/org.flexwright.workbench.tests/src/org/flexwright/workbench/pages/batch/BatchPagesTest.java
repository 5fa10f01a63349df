package org.flexwright.workbench.pages.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.trial.Recipes;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Batch;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchPagesTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    @Test
    void tenMoreArePlannedLookedAtAndMade() {
        Projects.example(folder);
        Recipe recipe = Pages.project().getRecipes().getFirst();
        Shell shell = Pages.open(recipe, "recipe.plan");
        Ui.type(Ui.find(shell, Text.class, "From day"), "2027-05-10");
        Ui.type(Ui.find(shell, Text.class, "Good parts wanted"), "0");
        Ui.click(shell, "Plan it");
        assertTrue(Ui.shows(shell, "Good parts wanted must be"), "refused in place");
        Ui.type(Ui.find(shell, Text.class, "Good parts wanted"), "10");
        Ui.click(shell, "Plan it");
        assertTrue(Ui.shows(shell, "A-2511 is good until 2026-11-30 and is left aside"), "the expired lot is named");
        sized(shell, "recipe-make");
        int batches = Pages.project().getBatches().size();
        int trials = Pages.project().getTrials().size();
        Ui.click(shell, "Make the batch");
        assertEquals(batches + 1, Pages.project().getBatches().size());
        assertEquals(trials + 3, Pages.project().getTrials().size());
        Batch made = Pages.project().getBatches().getLast();
        shell = Pages.open(made, "batch.pots");
        assertTrue(Ui.shows(shell, "First part: not made yet"), "the first part is to be checked");
        sized(shell, "batch");
        Ui.click(shell, "Close the batch");
        assertTrue(made.getClosedAt() != null);
        Pages.session().undo();
        Pages.session().undo();
        assertEquals(batches, Pages.project().getBatches().size(), "making is one step that can be undone");
        sized(Pages.open(Pages.project().getMoulds().getFirst(), "mould.casts"), "mould");
        sized(Pages.open(Pages.project(), "stock.shelf"), "stock");
    }

    @Test
    void theNextVersionSaysWhatChanged() {
        Projects.example(folder);
        Recipe first = Pages.project().getRecipes().getFirst();
        Shell shell = Pages.open(first, "recipe.plan");
        int trials = Pages.project().getTrials().size();
        Ui.click(shell, "Edit as new trial");
        assertEquals(trials + 1, Pages.project().getTrials().size());
        Trial edited = Pages.project().getTrials().getLast();
        Pages.set(Pages.step(edited, "mixing.mix").getDetails(), "plannedMinutes", 3.0);
        Recipe[] second = new Recipe[1];
        Pages.session().execute("freeze", edit -> {
            edited.getSteps().forEach(step -> Trials.confirmAsPlanned(edit, step));
            second[0] = Recipes.freeze(edit, edited, "R1", "tester", first.getLimits(), java.util.List.of());
        });
        shell = Pages.open(second[0], "recipe.plan");
        assertTrue(Ui.shows(shell, "Mixing time: 2 min → 3 min"), "the change is in words");
        sized(shell, "recipe-versions");
    }

    private static void sized(Shell shell, String name) {
        org.eclipse.swt.graphics.Point before = shell.getSize();
        for (int[] size : new int[][] { { 1280, 800 }, { 1920, 1080 } }) {
            shell.setSize(size[0], size[1]);
            Ui.rest();
            Ui.picture(shell, "batch-pages-" + name + "-" + size[0]);
        }
        shell.setSize(before);
        Ui.rest();
    }
}
