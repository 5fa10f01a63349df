package org.flexwright.workbench.project;

import java.nio.file.Path;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Item;
import org.flexwright.model.Entry;

/** Files dropped on a control are copied into the project and belong to the line they are dropped on, or else to what the control is about. */
public final class FileDrop extends DropTargetAdapter {

    private final Control target;
    private final ProjectService projects;
    private final Entry about;

    /**
     * Lets files be dropped on a control.
     *
     * @param about what the control is about; null when only its lines are about something
     */
    public FileDrop(Control target, ProjectService projects, Entry about) {
        this.target = target;
        this.projects = projects;
        this.about = about;
        DropTarget drop = new DropTarget(target, DND.DROP_COPY | DND.DROP_DEFAULT);
        drop.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        drop.addDropListener(this);
    }

    @Override
    public void dragEnter(DropTargetEvent event) {
        event.detail = projects.session().filter(session -> !session.readOnly()).isPresent() ? DND.DROP_COPY : DND.DROP_NONE;
    }

    @Override
    public void drop(DropTargetEvent event) {
        if (event.data instanceof String[] files) {
            Entry owner = event.item instanceof Item item && item.getData() instanceof Entry entry ? entry : about;
            for (String file : files) {
                Attaching.attach(target.getShell(), projects, Path.of(file), owner);
            }
        }
    }
}
