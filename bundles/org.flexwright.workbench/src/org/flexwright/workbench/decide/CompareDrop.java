package org.flexwright.workbench.decide;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;

/** Files dropped on a trial's column. */
final class CompareDrop {

    private CompareDrop() {
    }

    static void on(Control control, Function<Point, String> trialAt, Consumer<CompareGrid.Dropped> listener) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragOver(DropTargetEvent event) {
                event.detail = trialAt.apply(new Point(event.x, event.y)) == null ? DND.DROP_NONE : DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                String trial = trialAt.apply(new Point(event.x, event.y));
                if (trial != null && event.data instanceof String[] files) {
                    for (String file : files) {
                        listener.accept(new CompareGrid.Dropped(trial, Path.of(file)));
                    }
                }
            }
        });
    }
}
