package org.flexwright.workbench.handover;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.session.RefusedException;
import org.flexwright.report.PackFiles;
import org.flexwright.report.doc.Document;

/** Makes a document and writes it, off the screen's thread; it can be cancelled until the files are moved into their place. */
public final class Printing extends Job {

    /** What came of it, told on the screen's thread. */
    public interface Outcome {
        /** Both files are there. */
        void written(List<Path> files);

        /** It did not work, in one sentence. */
        void failed(String sentence);
    }

    private final Display display;
    private final Supplier<Document> document;
    private final Path folder;
    private final String name;
    private final Outcome outcome;

    /**
     * Prints.
     *
     * @param document makes the document; it must not read what the screen may change
     * @param folder   where to
     * @param name     name of the files, without ending
     */
    public Printing(Display display, Supplier<Document> document, Path folder, String name, Outcome outcome) {
        super("Writing " + name);
        this.display = display;
        this.document = document;
        this.folder = folder;
        this.name = name;
        this.outcome = outcome;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, 4);
        try {
            Document made = document.get();
            progress.worked(1);
            List<Path> files = PackFiles.write(made, folder, name, () -> {
                progress.worked(1);
                return monitor.isCanceled();
            });
            tell(o -> o.written(files));
            return Status.OK_STATUS;
        } catch (PackFiles.Stopped e) {
            return Status.CANCEL_STATUS;
        } catch (RefusedException e) {
            tell(o -> o.failed(e.getMessage()));
        } catch (IOException e) {
            ILog.get().warn("The pack cannot be written to " + folder + ".", e);
            tell(o -> o.failed("Nothing was written to " + folder + ": it is read-only, full, or no folder."));
        }
        return Status.OK_STATUS;
    }

    private void tell(Consumer<Outcome> what) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> what.accept(outcome));
        }
    }
}
