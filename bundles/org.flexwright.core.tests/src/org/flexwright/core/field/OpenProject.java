package org.flexwright.core.field;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;

/** Opens projects for tests. */
public final class OpenProject {
    public static final Instant NOW = Instant.parse("2026-03-01T09:30:00Z");

    private OpenProject() {
    }

    private static ProjectStore store() {
        return new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "who", "test", List.of()));
    }

    /** The saved project once more, to look at. */
    public static ProjectSession again(ProjectSession first) {
        return store().openReadOnly(first.folder());
    }

    /** A new project in that folder with one trial T1. */
    public static ProjectSession in(Path folder) {
        ProjectSession session = store().create(folder.resolve("demo.flexwright"), "Demo");
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode("T1");
        session.execute("trial", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial));
        return session;
    }
}
