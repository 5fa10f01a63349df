package org.flexwright.workbench.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.workbench.calculate.CalculationsEditor;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.settings.Themes;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page of every editor, looked at as a careful reader would, in both themes and two sizes of text. */
class PagesLookTest {

    @TempDir
    Path folder;

    @AfterEach
    void back() {
        Ui.kit().type().setPercent(100);
        theme(Settings.Theme.LIGHT);
        Projects.none();
    }

    private static void theme(Settings.Theme theme) {
        Themes.apply(PlatformUI.getWorkbench(), theme);
        Ui.pump();
    }

    private static Map<String, Runnable> places() {
        Project project = Pages.project();
        Trial trial = Pages.trial("T06");
        Session session = project.getSessions().getLast();
        Map<String, Runnable> places = new LinkedHashMap<>();
        page(places, trial, "trial.idea");
        page(places, trial, "trial.steps");
        places.put("trial.steps-weigh", () -> {
            Pages.open(trial, "trial.steps");
            Ui.all(Ui.window().getShell(), Control.class).stream().filter(c -> org.flexwright.workbench.kit.Kit.nameOf(c).startsWith("Weigh, ")).findFirst()
                    .ifPresent(Ui::mouse);
        });
        page(places, trial, "trial.parts");
        page(places, trial, "trial.outcome");
        page(places, trial, "trial.sure");
        page(places, trial, "recordings");
        page(places, session, "session.readings");
        page(places, session, "session.bench");
        page(places, project.getInstruments().getFirst(), "gauge.instrument");
        page(places, project.getControlPieces().getFirst(), "gauge.control");
        page(places, project.getTargetSheets().getLast(), "target.sheet");
        page(places, project.getReferenceParts().getFirst(), "reference.part");
        page(places, project.getGrades().getFirst(), "material.grade");
        page(places, project.getGrades().getFirst().getLots().getFirst(), "material.lot");
        page(places, project.getRecipes().getFirst(), "recipe.plan");
        page(places, project.getBatches().getFirst(), "batch.pots");
        page(places, project.getMoulds().getFirst(), "mould.casts");
        page(places, project.getAgeingPlans().getFirst(), "ageing.plan");
        page(places, project, "stock.shelf");
        page(places, project, "decide.comparison");
        page(places, project, "decide.plot");
        places.put("calculations", () -> CalculationsEditor.show(Ui.window(), "mixing.batch"));
        return places;
    }

    private static void page(Map<String, Runnable> places, EObject thing, String page) {
        places.put(page, () -> Pages.open(thing, page));
    }

    @Test
    void everyPageIsNamedWholeAndReadable() {
        Projects.example(folder);
        Shell shell = Ui.window().getShell();
        List<String> complaints = new ArrayList<>();
        boolean every = Boolean.getBoolean("flexwright.pictures.all"); // each theme in each size; else each of them once
        for (int percent : List.of(100, 200)) {
            Ui.kit().type().setPercent(percent);
            Ui.rest();
            for (Settings.Theme theme : every ? List.of(Settings.Theme.LIGHT, Settings.Theme.DARK)
                    : List.of(percent == 100 ? Settings.Theme.LIGHT : Settings.Theme.DARK)) {
                theme(theme);
                places().forEach((name, go) -> {
                    go.run();
                    String picture = "page-" + name + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + percent;
                    Ui.picture(shell, picture);
                    Walker.look(shell).forEach(complaint -> complaints.add(picture + " " + complaint));
                });
            }
        }
        assertEquals("", String.join("\n", complaints));
    }
}
