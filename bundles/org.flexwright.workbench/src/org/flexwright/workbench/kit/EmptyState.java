package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** What an empty view shows: one line that says what goes there, and the one action that fills it. */
public final class EmptyState extends Composite {

    private final Button button;

    /**
     * An empty state in the middle of its parent.
     *
     * @param sentence what goes here
     * @param words    the action, a verb first; null when nothing can be done here
     * @param action   what the button does; may be null only with {@code words}
     */
    public EmptyState(Composite parent, Kit kit, String sentence, String words, Runnable action) {
        super(parent, SWT.NONE);
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, Spacing.PANEL);
        kit.dress(this, Ink.QUIET, Ink.PAPER, Role.BODY);
        Prose prose = Prose.quiet(this, kit, sentence);
        prose.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        if (words == null) {
            button = null;
        } else {
            button = kit.action(this, words, action);
            button.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
        }
    }

    @Override
    public boolean setFocus() {
        return button != null && !button.isDisposed() && button.setFocus();
    }
}
