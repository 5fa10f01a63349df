package org.flexwright.workbench.exchange;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.core.exchange.Backup;
import org.flexwright.core.exchange.CsvExport;
import org.flexwright.core.exchange.ProjectJson;
import org.flexwright.core.exchange.Shadow;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.Snapshot;
import org.flexwright.workbench.project.LongJob;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;
import org.osgi.framework.FrameworkUtil;

/** Export, backup and restore of a window's project, off the screen's thread. */
public final class Exchange {
    private final Shell shell;
    private final ProjectService projects;

    /** For a window. */
    public Exchange(Shell shell, ProjectService projects) {
        this.shell = shell;
        this.projects = projects;
    }

    /** Writes the open project as JSON when the name ends in .json, else as tables. */
    public Job export(Path to) {
        Snapshot now = projects.session().orElseThrow().snapshot();
        List<DetailsPackage> packages = projects.registries().packages();
        return start("Exporting", watch -> {
            try (Shadow shadow = Shadow.of(now, packages)) {
                if (to.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
                    ProjectJson.write(shadow.session().project(), shadow.session().unknown(), to, watch);
                } else {
                    new CsvExport(packages).write(shadow.session().project(), shadow.session().unknown(), to, watch);
                }
            }
            return to;
        }, "Exported", "Not exported", "The project is written to ");
    }

    /** Makes an archive of the open project and checks it. */
    public Job backup(Path to) {
        Snapshot now = projects.session().orElseThrow().snapshot();
        String program = FrameworkUtil.getBundle(Exchange.class).getVersion().toString();
        return start("Backing up", watch -> {
            Backup.make(now, program, Instant.now(), to, watch);
            return to;
        }, "Backed up", "Not backed up", "The backup was made and checked: ");
    }

    /** Puts an archive into a new folder and opens it. */
    public Job restore(Path archive, Path folder) {
        List<DetailsPackage> packages = projects.registries().packages();
        return started(new LongJob<>("Restoring", shell.getDisplay(), watch -> {
            try (Backup backup = Backup.open(archive)) {
                return backup.restore(Shadow.store(packages), folder, watch);
            }
        }, made -> Trouble.guard(shell, "Not opened", () -> projects.open(made)), why -> Trouble.tell(shell, "Not restored", why)));
    }

    private Job start(String name, LongJob.Work<Path> work, String done, String failed, String sentence) {
        return started(new LongJob<>(name, shell.getDisplay(), work, to -> {
            if (!shell.isDisposed() && Files.exists(to)) {
                MessageDialog.openInformation(shell, done, sentence + to);
            }
        }, why -> Trouble.tell(shell, failed, why)));
    }

    /** A job of the person: the window shows its progress and lets it be cancelled. */
    private static Job started(Job job) {
        job.setUser(true);
        job.schedule();
        return job;
    }
}
