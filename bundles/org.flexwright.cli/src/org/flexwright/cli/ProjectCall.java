package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;

import picocli.CommandLine.Option;

/** A verb that works on a project: it opens it, does its work, saves when it changed something, and closes it again. */
abstract class ProjectCall extends Call {
    @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
    Path project;

    /** True when the verb changes the project; then it needs the lock. */
    protected boolean writes() {
        return true;
    }

    /** The work itself. */
    protected abstract Reply work(CliServices services, ProjectSession session);

    @Override
    protected final Reply reply(CliServices services) {
        ProjectStore store = services.store();
        Path folder = folder(services, project);
        try (ProjectSession session = writes() ? store.open(folder) : store.openReadOnly(folder)) {
            if (writes() && session.readOnly()) {
                throw new CliException(session.readOnlyReason(), null);
            }
            Reply reply = work(services, session);
            session.notices().forEach(notice -> reply.notice(notice.text()));
            if (writes() && session.dirty()) {
                session.save();
            }
            return reply;
        }
    }

    static Path folder(CliServices services, Path typed) {
        if (typed != null) {
            return services.workingFolder().resolve(typed);
        }
        Path here = services.workingFolder();
        if (here.getFileName() != null && here.getFileName().toString().endsWith(ProjectStore.SUFFIX)) {
            return here;
        }
        try (Stream<Path> inside = Files.list(here)) {
            List<Path> found = inside.filter(p -> p.getFileName().toString().endsWith(ProjectStore.SUFFIX) && Files.isDirectory(p)).sorted().toList();
            if (found.size() == 1) {
                return found.get(0);
            }
            throw new UsageException(found.isEmpty() ? "There is no project in this folder: say which with --project <folder>."
                    : "There are " + found.size() + " projects in this folder: say which with --project <folder>.");
        } catch (IOException e) {
            throw new CliException("This folder cannot be read.", e);
        }
    }
}
