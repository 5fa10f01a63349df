package org.flexwright.workbench.pages.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TargetSheetPageTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    @Test
    void targetsAreAddedAgreedOnAndThenOnlyRead() {
        Projects.small(folder);
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.setVersion(1);
        Pages.session().execute("sheet", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__TARGET_SHEETS, sheet));
        Shell shell = Pages.open(sheet, "target.sheet");
        assertTrue(Ui.shows(shell, "No target yet."));
        Ui.click(shell, "Freeze this sheet");
        assertNull(sheet.getFrozenAt(), "an empty sheet cannot be agreed on");

        Ui.choose(Ui.find(shell, Combo.class, "Property of the new target"), "Peak force");
        Ui.click(shell, "Add a target");
        Target target = sheet.getTargets().getFirst();
        assertEquals(TargetRule.BETWEEN, target.getRule());
        Ui.type(Ui.find(shell, Text.class, "At least, N"), "0.7 N");
        Ui.type(Ui.find(shell, Text.class, "At most, N"), "0,9");
        assertEquals(0.7, target.getLow());
        assertEquals(0.9, target.getHigh());
        Ui.choose(Ui.find(shell, Combo.class, "Rule of the target"), "at most");
        assertTrue(Ui.all(shell, Text.class).stream().noneMatch(t -> Kit.nameOf(t).equals("At least, N")), "only what the rule asks for");
        Ui.picture(shell, "target-sheet");

        Ui.type(Ui.find(shell, Text.class, "Agreed by"), "Kim");
        Ui.click(shell, "Freeze this sheet");
        assertNotNull(sheet.getFrozenAt());
        assertFalse(Ui.find(shell, Text.class, "At most, N").getEditable(), "a frozen sheet is only read");
        assertTrue(Ui.all(shell, Button.class).stream().noneMatch(b -> Ui.words(b).equals("Add a target")));

        Ui.click(shell, "Make the next version");
        assertEquals(1, Pages.project().getTargetSheets().size(), "not without a reason");
        assertTrue(Kit.descriptionOf(Ui.find(shell, Control.class, "notice")).contains("reason"));
        Ui.type(Ui.find(shell, Text.class, "Why a new version"), "the gauge cannot see so little");
        Ui.click(shell, "Make the next version");
        assertEquals(2, Pages.project().getTargetSheets().size());
        TargetSheet next = Pages.project().getTargetSheets().getLast();
        assertEquals("the gauge cannot see so little", next.getReason());
        assertEquals(0.9, next.getTargets().getFirst().getHigh());
        assertTrue(Ui.shows(shell, "Target sheet version 2"), "the new one is shown");
    }
}
