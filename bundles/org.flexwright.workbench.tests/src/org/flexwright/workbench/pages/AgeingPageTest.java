package org.flexwright.workbench.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.model.AgeingPlan;
import org.flexwright.workbench.calculate.CalculationsEditor;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The domes of the example as they grow older; a plan made in the window; a density kept on a piece. */
class AgeingPageTest {
    private static final String PAGE = "ageing.plan";

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    @Test
    void whatAgeDidIsDrawnAndAPlanIsMade() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.project().getAgeingPlans().getFirst(), PAGE);
        ChartPane chart = Ui.all(shell, ChartPane.class).stream().filter(ChartPane::isVisible).findFirst().orElseThrow();
        assertEquals(3, chart.plot().series().size());
        assertTrue(Ui.shows(shell, "went up"), "the change is said");
        Table ages = Ui.find(shell, Table.class, "Ages of the plan", t -> "Ages of the plan".equals(Kit.nameOf(t)));
        assertEquals(4, ages.getItemCount());
        assertTrue(ages.getItem(0).getText(3).contains("the workshop was closed"), ages.getItem(0).getText(3));
        for (int[] size : new int[][] {{1280, 800}, {1920, 1080}}) {
            shell.setSize(size[0], size[1]);
            Ui.rest();
            Ui.picture(shell, "ageing-" + size[0]);
        }

        AgeingPlan[] made = new AgeingPlan[1];
        Pages.session().execute("begin", e -> made[0] = AgeingPlans.begin(e));
        Pages.open(made[0], PAGE);
        Combo what = Ui.find(shell, Combo.class, "what is read", c -> c.isVisible() && Kit.nameOf(c).startsWith("What is read"));
        Ui.choose(what, java.util.Arrays.stream(what.getItems()).filter(i -> i.startsWith("Return time")).findFirst().orElseThrow());
        Combo whose = Ui.find(shell, Combo.class, "whose parts", c -> c.isVisible() && Kit.nameOf(c).startsWith("Trial whose"));
        Ui.choose(whose, java.util.Arrays.stream(whose.getItems()).filter(i -> i.startsWith("T05")).findFirst().orElseThrow());
        assertEquals("testing.return-time", made[0].getKey().getProperty());
        assertEquals(3, made[0].getSpecimens().size(), "the domes, not the button");
        Ui.picture(shell, "ageing-new");
        Pages.session().undo();
        assertEquals(0, made[0].getSpecimens().size(), "one step back");

        CalculationsEditor.show(Ui.window(), "testing.density");
        Ui.rest();
        Ui.picture(shell, "ageing-density");
    }
}
