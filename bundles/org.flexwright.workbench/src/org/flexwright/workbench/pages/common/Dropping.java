package org.flexwright.workbench.pages.common;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.flexwright.model.Entry;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.project.Attaching;

/** Files dropped on a page, or chosen from it, are copied into the project and belong to the page's subject. */
public final class Dropping {

    private Dropping() {
    }

    /** Lets files be dropped on a control. */
    public static void on(Control control, PageContext context, Entry owner) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = context.session().readOnly() ? DND.DROP_NONE : DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] files) {
                    for (String file : files) {
                        Attaching.attach(control.getShell(), context.projects(), Path.of(file), owner);
                    }
                }
            }
        });
    }

    /** Asks for a file and attaches it. */
    public static void choose(Control control, PageContext context, Entry owner) {
        String chosen = new FileDialog(control.getShell(), SWT.OPEN).open();
        if (chosen != null) {
            Attaching.attach(control.getShell(), context.projects(), Path.of(chosen), owner);
        }
    }
}
