package org.flexwright.workbench.pages.recording;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.Look;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Block;

/** What belongs to a recording, and why something cannot be had. */
final class RemarksBlock {

    private final Kit kit;
    private final Block block;
    private List<Object> shown = List.of();

    RemarksBlock(Composite parent, Kit kit) {
        this.kit = kit;
        block = new Block(parent, kit, "To know", 1, Spacing.FIELDS);
        block.setShown(false);
    }

    void show(Look look, String trouble) {
        List<Remark> remarks = look == null ? List.of() : look.remarks();
        List<Object> now = List.of(remarks, trouble);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Composite body = block.emptied();
        if (!trouble.isEmpty()) {
            new Prose(body, kit, "■ " + trouble, Ink.STOP, Role.BODY).setLayoutData(Grid.wide());
        }
        remarks.forEach(remark -> FindingStrip.of(body, kit, remark).setLayoutData(Grid.wide()));
        block.setShown(!remarks.isEmpty() || !trouble.isEmpty());
    }
}
