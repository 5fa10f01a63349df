package org.flexwright.workbench.pages.recording;

import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.pages.PageContext;

/** Ways in which a file of an instrument comes to a page. */
final class TakeIn {

    private TakeIn() {
    }

    /** Asks for a file. */
    static void ask(Shell shell, Consumer<Path> file) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText("Take in a recording");
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.tsv;*.dat;*.wav", "*.*"});
        dialog.setFilterNames(new String[] {"Tables and sounds (csv, txt, tsv, dat, wav)", "All files"});
        String chosen = dialog.open();
        if (chosen != null) {
            file.accept(Path.of(chosen));
        }
    }

    /** Lets files be dropped on a control; each is asked about in turn. */
    static void dropped(Control on, PageContext context, Consumer<Path> file) {
        DropTarget target = new DropTarget(on, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = context.session().readOnly() ? DND.DROP_NONE : DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] files) {
                    on.getDisplay().asyncExec(() -> { // the other program waits until the drop is over
                        for (String each : files) {
                            file.accept(Path.of(each));
                        }
                    });
                }
            }
        });
    }
}
