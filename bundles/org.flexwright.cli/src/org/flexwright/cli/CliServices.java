package org.flexwright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.BiFunction;

import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;

/**
 * What the commands work with.
 *
 * @param registries    everything the plugins brought
 * @param clock         tells now; dates after it are refused
 * @param workingFolder where a project is looked for when none is named
 * @param who           name put into records when none is typed
 * @param programVersion version written into files
 * @param nouns         nouns plugins added
 * @param log           takes what people need not see and says where it was written
 */
public record CliServices(Registries registries, Clock clock, Path workingFolder, String who, String programVersion, List<CliNoun> nouns,
        BiFunction<String, Throwable, String> log) {
    public CliServices {
        nouns = List.copyOf(nouns);
    }

    /** A store that knows the plugins' packages. */
    ProjectStore store() {
        return new ProjectStore(new StoreContext(ModelThread.current(), clock, who, programVersion, registries.packages()));
    }
}
