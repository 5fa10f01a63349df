package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.settings.Themes;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every stage in both themes, at 100 and 200 % text: named, whole, readable. */
class LookTest {

    private static final List<Ink> TEXTS = List.of(Ink.INK, Ink.QUIET, Ink.ACCENT, Ink.IN, Ink.OUT, Ink.UNSURE, Ink.CAUTION, Ink.STOP);
    private static final List<Ink> GROUNDS = List.of(Ink.PAPER, Ink.PANEL, Ink.FIELD);

    private static final List<Stage> WALKED = List.of(Stage.PLAN, Stage.DECIDE);

    @TempDir
    Path folder;

    @AfterEach
    void back() {
        theme(Settings.Theme.LIGHT);
        Ui.kit().type().setPercent(100);
        Stages.go(Ui.window(), Stage.PLAN);
        Projects.none();
    }

    private static void theme(Settings.Theme theme) {
        Themes.apply(PlatformUI.getWorkbench(), theme);
        boolean dark = theme == Settings.Theme.DARK;
        Ui.await("the theme " + theme, () -> Ui.kit().palette().dark() == dark);
    }

    @Test
    void everyTextColourCanBeReadOnEveryGroundInBothThemes() {
        for (Settings.Theme theme : List.of(Settings.Theme.LIGHT, Settings.Theme.DARK)) {
            theme(theme);
            Kit kit = Ui.kit();
            for (Ink text : TEXTS) {
                for (Ink ground : GROUNDS) {
                    double contrast = Palette.contrast(kit.color(text).getRGB(), kit.color(ground).getRGB());
                    assertTrue(contrast >= 4.5, theme + ": " + text + " on " + ground + " has only " + contrast);
                }
            }
            assertTrue(Palette.contrast(kit.color(Ink.INK).getRGB(), kit.color(Ink.BAND).getRGB()) >= 4.5, theme + ": text on the band");
            for (int i = 0; i < 4; i++) { // the further ones of the set are told by marker and dash
                double contrast = Palette.contrast(kit.color(Palette.series(i)).getRGB(), kit.color(Ink.PAPER).getRGB());
                assertTrue(contrast >= 3, theme + ": series " + i + " has only " + contrast);
            }
        }
    }

    @Test
    void contrastIsThatOfTheGuidelines() {
        assertEquals(21.0, Palette.contrast(new RGB(0, 0, 0), new RGB(255, 255, 255)), 1e-9);
        // #767676 is known as the lightest grey that passes on white, at 4.54 : 1
        assertEquals(4.54, Palette.contrast(new RGB(0x76, 0x76, 0x76), new RGB(255, 255, 255)), 0.005);
    }

    @Test
    void theOpenWindowFollowsTheTheme() {
        Projects.small(folder);
        Text need = Ui.find(Ui.window().getShell(), Text.class, "Need 1");
        theme(Settings.Theme.DARK);
        assertEquals(Ui.kit().color(Ink.FIELD).getRGB(), need.getBackground().getRGB());
        assertEquals(Ui.kit().color(Ink.INK).getRGB(), need.getForeground().getRGB());
        theme(Settings.Theme.LIGHT);
        assertEquals(Ui.kit().color(Ink.FIELD).getRGB(), need.getBackground().getRGB());
    }

    @Test
    void theOpenWindowFollowsTheSizeOfText() {
        Projects.small(folder);
        Text need = Ui.find(Ui.window().getShell(), Text.class, "Need 1");
        int before = need.getFont().getFontData()[0].getHeight();
        int high = need.getSize().y;
        Ui.kit().type().setPercent(200);
        Ui.pump();
        assertEquals(2.0 * before, need.getFont().getFontData()[0].getHeight(), 1);
        Ui.await("the field grows with its text", () -> need.getSize().y > high && need.getSize().y >= need.computeSize(-1, -1).y);
        assertEquals(Ui.kit().type().font(Role.BODY), need.getFont());
        Ui.kit().type().setPercent(1000);
        assertEquals(200, Ui.kit().type().percent(), "the scale ends at 200 %");
    }

    @Test
    void everythingIsNamedWholeAndReadable() {
        Projects.example(folder);
        Shell shell = Ui.window().getShell();
        List<String> complaints = new ArrayList<>();
        for (int percent : List.of(100, 200)) {
            Ui.kit().type().setPercent(percent);
            Ui.rest();
            for (Settings.Theme theme : List.of(Settings.Theme.LIGHT, Settings.Theme.DARK)) {
                theme(theme);
                for (Stage stage : WALKED) {
                    Stages.go(Ui.window(), stage);
                    Ui.pump();
                    String name = stage.word().toLowerCase(Locale.ROOT) + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + percent;
                    Ui.picture(shell, name);
                    Walker.look(shell).forEach(complaint -> complaints.add(name + " " + complaint));
                }
            }
        }
        assertEquals("", String.join("\n", complaints));
    }
}
