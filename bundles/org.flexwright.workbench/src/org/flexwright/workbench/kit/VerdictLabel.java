package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A verdict as shape and word. */
public final class VerdictLabel extends Composite {

    private final Kit kit;
    private final Label label;

    /** An empty verdict in that size of text. */
    public VerdictLabel(Composite parent, Kit kit, Role role) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setLayout(new FillLayout());
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.dress(this, Ink.INK, null, role);
        label = kit.label(this, "", Ink.QUIET, role);
    }

    /**
     * Shows a verdict.
     *
     * @param verdict the verdict
     * @param subject what it is about, for people who hear the screen
     */
    public void show(Verdict verdict, String subject) {
        Mark mark = Mark.of(verdict);
        label.setText(mark.text());
        kit.ink(label, mark.ink());
        Kit.name(label, subject + ": " + mark.word());
        requestLayout();
    }
}
