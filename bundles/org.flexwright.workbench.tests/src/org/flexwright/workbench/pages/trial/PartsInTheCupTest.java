package org.flexwright.workbench.pages.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A formulation in parts, and a premix, on the page of the weighing step. */
class PartsInTheCupTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Trial copy(String code) {
        Trial[] made = new Trial[1];
        Pages.session().execute("copy", edit -> made[0] = Trials.copy(edit, Pages.trial(code), null, "again"));
        return made[0];
    }

    private static Shell at(Trial trial) {
        Shell shell = Pages.open(trial, "trial.steps");
        Ui.mouse(Pages.named(shell, "Weigh, "));
        return shell;
    }

    @Test
    void tenOfFillerIsAskedOfWhatAndPlannedOnDemand() {
        Projects.example(folder);
        Trial trial = copy("T06");
        Step step = Pages.step(trial, "mixing.weigh");
        Shell shell = at(trial);
        assertFalse(Ui.all(shell, Text.class).stream().anyMatch(text -> "A: Parts".equals(Kit.nameOf(text)) && text.isVisible()), "what is rarely needed is out of the way");
        for (String letter : new String[] {"A", "B", "Filler"}) {
            Ui.click(Ui.find(shell, Button.class, "More about " + letter));
        }
        assertTrue(Ui.find(shell, Text.class, "A: Parts").isVisible());
        Ui.type(Ui.find(shell, Text.class, "A: Parts"), "100");
        Ui.type(Ui.find(shell, Text.class, "B: Parts"), "94.3");
        Ui.type(Ui.find(shell, Text.class, "Filler: Parts"), "10");
        MaterialUse filler = Pages.use(step, PartRole.FILLER);
        assertEquals(10, filler.getParts());
        assertTrue(Ui.shows(shell, "those of fine silica powder do not say of what"));
        assertTrue(Ui.shows(shell, "fine silica powder, if counted on all of it"));
        Ui.picture(shell, "steps-parts-of-what");
        Ui.choose(Ui.find(shell, Combo.class, "Filler: Of what"), "of all");
        assertEquals(PartsOf.OF_ALL, filler.getPartsOf());
        double planned = filler.getPlanned();
        Ui.click(shell, "Plan these grams");
        assertTrue(filler.getPlanned() > planned, "ten of all is more than the four on a hundred of before");
        Ui.picture(shell, "steps-parts-planned");
        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(planned, filler.getPlanned());
        Ui.choose(Ui.find(shell, Combo.class, "Lot of B"), "not chosen");
        assertNull(Pages.use(step, PartRole.COMPONENT_B).getLot());
        assertTrue(Ui.find(shell, Text.class, "A: Parts").isVisible(), "choosing a lot leaves the row open");
    }

    @Test
    void aPremixIsChosenInPlaceOfAMaterial() {
        Projects.example(folder);
        Trial trial = copy("T05");
        Step step = Pages.step(trial, "mixing.weigh");
        Shell shell = at(trial);
        Ui.click(Ui.find(shell, Button.class, "More about B"));
        Combo material = Ui.find(shell, Combo.class, "Material of B");
        String premix = Arrays.stream(material.getItems()).filter(line -> line.startsWith("premix X1")).findFirst().orElseThrow();
        Ui.choose(material, premix);
        MaterialUse use = step.getUses().get(1);
        assertEquals("X1", use.getPremix().getCode());
        assertEquals(PartRole.PREMIX, use.getRole());
        Ui.type(Ui.find(shell, Text.class, "Net of A, g"), "22.90");
        Ui.click(Ui.find(shell, Button.class, "Add A to the cup"));
        Ui.type(Ui.find(shell, Text.class, "Net of Premix, g"), "22.00");
        Ui.click(Ui.find(shell, Button.class, "Add Premix to the cup"));
        assertTrue(Ui.shows(shell, "Index, in the cup"));
        Ui.picture(shell, "steps-premix");
        Ui.click(Ui.all(shell, Button.class).stream().filter(b -> b.getText().endsWith(" Premix now")).findFirst().orElseThrow());
        assertTrue(use.getWeighings().getLast().isCorrection());
        assertTrue(Ui.shows(shell, "Go: "));
    }
}
