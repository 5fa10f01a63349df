package org.flexwright.workbench.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

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
        copy(Built.EXAMPLE, whole);
        projects.open(whole);
        Ui.await("the findings of the example", () -> !projects.findings().isEmpty());
    }

    /** The example, built once for all tests: most of its time goes into drawing its photos. */
    private static final class Built {
        static final Path EXAMPLE = build();

        private static Path build() {
            try {
                Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "example");
                Path whole = folder.resolve(ExampleProject.FOLDER_NAME);
                new ExampleProject(Ui.projects().registries(), "test").build(whole);
                return whole;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** No project, the start page. */
    public static void none() {
        Ui.projects().close();
        Ui.window().getActivePage().closeAllEditors(false);
        Ui.pump();
    }
}
