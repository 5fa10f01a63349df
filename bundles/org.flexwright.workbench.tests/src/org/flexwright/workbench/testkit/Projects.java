package org.flexwright.workbench.testkit;

import java.nio.file.Path;

import org.flexwright.example.ExampleProject;
import org.flexwright.model.Importance;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.workbench.project.ProjectService;

/** Projects for tests. */
public final class Projects {

    private Projects() {
    }

    /** A small project with one need, open in the window. */
    public static void small(Path folder) {
        Ui.projects().create(folder.resolve("test.flexwright"), "Bumper for a test", edit -> {
            Need need = ModelFactory.eINSTANCE.createNeed();
            need.setText("gives way softly");
            need.setImportance(Importance.MUST);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__NEEDS, need);
        });
        Ui.pump();
    }

    /** The whole example, open in the window. */
    public static void example(Path folder) {
        ProjectService projects = Ui.projects();
        Path whole = folder.resolve(ExampleProject.FOLDER_NAME);
        new ExampleProject(projects.registries(), "test").build(whole);
        projects.open(whole);
        Ui.await("the findings of the example", () -> !projects.findings().isEmpty());
    }

    /** No project, the start page. */
    public static void none() {
        Ui.projects().close();
        Ui.window().getActivePage().closeAllEditors(false);
        Ui.pump();
    }
}
