package org.flexwright.workbench.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.example.ExampleProject;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;
import org.osgi.framework.FrameworkUtil;

/** Opens the example; the first time it is built, off the screen's thread. */
public final class OpenExampleHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        Path folder = folder();
        if (Files.exists(folder)) {
            open(window, projects, folder);
            return;
        }
        String version = FrameworkUtil.getBundle(OpenExampleHandler.class).getVersion().toString();
        ExampleProject example = new ExampleProject(projects.registries(), version);
        if (!example.possible()) {
            Trouble.tell(window.getShell(), "No example here", "The example tells of casting, resin printing and filament printing; one of these"
                    + " plugins is not installed.");
            return;
        }
        Job job = Job.create("Building the example", (IProgressMonitor monitor) -> {
            build(example, folder);
            window.getShell().getDisplay().asyncExec(() -> open(window, projects, folder));
        });
        job.schedule();
    }

    private static void build(ExampleProject example, Path folder) {
        try {
            Files.createDirectories(folder.getParent());
            example.build(folder);
        } catch (IOException | RuntimeException e) {
            ILog.get().error("The example cannot be built in " + folder + ".", e); // opening it says so on the screen
        }
    }

    private static void open(IWorkbenchWindow window, ProjectService projects, Path folder) {
        if (window.getShell() != null && !window.getShell().isDisposed()) {
            Trouble.guard(window.getShell(), "Not opened", () -> projects.open(folder));
        }
    }

    /** Where the person's own copy of the example is kept. */
    private static Path folder() {
        String data = System.getenv("XDG_DATA_HOME");
        Path base = data == null || data.isBlank() ? Path.of(System.getProperty("user.home"), ".local", "share") : Path.of(data);
        return base.resolve("flexwright").resolve(ExampleProject.FOLDER_NAME);
    }
}
