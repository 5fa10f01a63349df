package org.flexwright.workbench.handover;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.project.Trouble;

/** Asks for a folder, writes a document into it and opens it. */
public final class Asking {

    private Asking() {
    }

    /** Asks and writes; the writing goes on behind the screen. */
    public static void write(Shell shell, HandOver printed) {
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
        dialog.setText("Where to write " + printed.name());
        dialog.setMessage("Two files are written there, one for the screen and one for paper.");
        String folder = dialog.open();
        if (folder != null) {
            new Printing(shell.getDisplay(), printed.document(), Path.of(folder), printed.name(), outcome(shell)).schedule();
        }
    }

    private static Printing.Outcome outcome(Shell shell) {
        return new Printing.Outcome() {
            @Override
            public void written(List<Path> files) {
                Program.launch(files.getLast().toString());
            }

            @Override
            public void failed(String sentence) {
                if (!shell.isDisposed()) {
                    Trouble.tell(shell, "Not written", sentence);
                }
            }
        };
    }
}
