package org.flexwright.workbench.pages.common;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** A part of a page: a heading with room for actions at its right, a hairline, and a body. Its parent lays out as a grid. */
public final class Block extends Composite {

    private final Kit kit;
    private final Composite head;
    private final Label heading;
    private final Composite body;

    /** A block over all columns of its parent, its body a grid of {@code columns}. */
    public Block(Composite parent, Kit kit, String title, int columns, Spacing spacing) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, new Spacing(0, 0, 0, 1));
        kit.dress(this, Ink.INK, null, Role.BODY);
        head = kit.pane(this, 1, Spacing.FIELDS);
        head.setLayoutData(Grid.wide());
        heading = kit.label(head, title, Ink.INK, Role.STRONG);
        heading.setLayoutData(Grid.wide());
        kit.hairline(this);
        body = kit.pane(this, columns, new Spacing(0, 1, spacing.gapX(), spacing.gapY()));
        body.setLayoutData(Grid.fill());
        setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, columnsOf(parent), 1));
        Kit.name(this, title);
    }

    private static int columnsOf(Composite parent) {
        return parent.getLayout() instanceof GridLayout layout ? layout.numColumns : 1;
    }

    /** Where the block's controls go. */
    public Composite body() {
        return body;
    }

    /** Puts an action at the right of the heading. */
    public org.eclipse.swt.widgets.Button action(String words, Runnable doIt) {
        ((GridLayout) head.getLayout()).numColumns++;
        var button = kit.action(head, words, doIt);
        button.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        return button;
    }

    /** Takes everything out of the body, to be filled again. */
    public Composite emptied() {
        for (var child : body.getChildren()) {
            child.dispose();
        }
        return body;
    }

    /** Other words over the block. */
    public void setTitle(String title) {
        heading.setText(Kit.plain(title));
        Kit.name(this, title);
    }

    /** Shows the block or takes it away with its room. */
    public void setShown(boolean shown) {
        ((GridData) getLayoutData()).exclude = !shown;
        setVisible(shown);
    }
}
