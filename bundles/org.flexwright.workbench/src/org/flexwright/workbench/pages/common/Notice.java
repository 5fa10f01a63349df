package org.flexwright.workbench.pages.common;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** One sentence on the page about what could not be done; takes no room while there is nothing to say. Its parent lays out as a grid. */
public final class Notice extends Composite {

    private final Prose words;

    /** An empty notice over that many columns of its parent's grid. */
    public Notice(Composite parent, Kit kit, int columns) {
        super(parent, SWT.NONE);
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, new Spacing(3, 2, 0, 0));
        kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
        words = new Prose(this, kit, "", Ink.STOP, Role.BODY);
        words.setLayoutData(Grid.wide());
        GridData data = Grid.wide(columns);
        data.exclude = true;
        setLayoutData(data);
        setVisible(false);
        Kit.name(this, "notice");
    }

    /** Says a sentence; an empty one takes the notice away. Nothing is said once the page was made anew. */
    public void say(String sentence) {
        if (isDisposed() || sentence.equals(sentence())) {
            return;
        }
        words.setWords(sentence.isEmpty() ? "" : "■ " + sentence);
        Kit.describe(this, sentence);
        boolean empty = sentence.isEmpty();
        ((GridData) getLayoutData()).exclude = empty;
        setVisible(!empty);
        ScrollPane.reflowAround(this);
    }

    /** The sentence that stands there; empty when there is none. */
    public String sentence() {
        return words.words().isEmpty() ? "" : words.words().substring(2);
    }
}
