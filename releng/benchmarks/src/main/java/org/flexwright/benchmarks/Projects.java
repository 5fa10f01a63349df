package org.flexwright.benchmarks;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.example.ExampleProject;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;

/** Projects to measure with: the example, and one that holds its trials many times over. */
final class Projects {

    private Projects() {
    }

    static ProjectStore store(Registries registries) {
        return new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "bench", "bench", registries.packages()));
    }

    /** Builds the example with its trials copied until there are {@code trials} or a few more. */
    static Path example(Registries registries, Path folder, int trials) {
        Path project = folder.resolve(ExampleProject.FOLDER_NAME);
        new ExampleProject(registries, "bench").build(project);
        try (ProjectSession session = store(registries).open(project)) {
            List<Trial> told = List.copyOf(session.project().getTrials());
            while (session.project().getTrials().size() < trials) {
                session.execute("Copy", edit -> {
                    for (Trial trial : told) {
                        Trial copy = EcoreUtil.copy(trial);
                        copy.setCode(trial.getCode() + "-" + edit.project().getTrials().size());
                        copy.eAllContents().forEachRemaining(part -> {
                            if (part.eClass().getEIDAttribute() != null) {
                                part.eSet(part.eClass().getEIDAttribute(), edit.newId());
                            }
                        });
                        copy.setId(edit.newId());
                        edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, copy);
                    }
                });
            }
            session.save();
        }
        return project;
    }
}
