package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** A finding in place, beside what it is about: word and shape, the sentence, what would help, and where the rule comes from. */
public final class FindingStrip extends Composite {

    private final Kit kit;
    private final Composite words;

    private FindingStrip(Composite parent, Kit kit, Severity severity, String sentence, String remedy, Source source) {
        super(parent, SWT.NONE);
        this.kit = kit;
        Mark mark = Mark.of(severity);
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 2, Spacing.NONE);
        kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
        Composite edge = new Composite(this, SWT.NO_FOCUS);
        kit.dress(edge, null, mark.ink(), Role.BODY);
        GridData edgeData = new GridData(SWT.BEGINNING, SWT.FILL, false, true);
        edgeData.widthHint = 4;
        edgeData.heightHint = 8;
        edge.setLayoutData(edgeData);
        words = kit.pane(this, 2, new Spacing(3, 2, 3, 1), Ink.PANEL);
        words.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Label word = kit.label(words, mark.text(), mark.ink(), Role.STRONG);
        word.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
        line(sentence, Ink.INK);
        if (!remedy.isBlank()) {
            kit.text(words, "");
            line(remedy, Ink.INK);
        }
        kit.text(words, "");
        line("Rests on: " + source.display(), Ink.QUIET);
        Kit.name(this, mark.word() + ": " + sentence + (remedy.isBlank() ? "" : " " + remedy) + " Rests on: " + source.display());
    }

    private void line(String sentence, Ink ink) {
        Prose prose = new Prose(words, kit, sentence, ink, Role.BODY);
        prose.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    }

    /** A finding of a rule. */
    public static FindingStrip of(Composite parent, Kit kit, Finding finding) {
        return new FindingStrip(parent, kit, finding.severity(), finding.message().text(), finding.remedy().text(), finding.source());
    }

    /** A remark of a calculation. */
    public static FindingStrip of(Composite parent, Kit kit, Remark remark) {
        return new FindingStrip(parent, kit, remark.severity(), remark.message().text(), "", remark.source());
    }

    /** Adds an action that mends it; {@code title} is a verb and an object. */
    public void action(String title, Runnable doIt) {
        kit.text(words, "");
        kit.action(words, title, doIt).setLayoutData(Grid.natural());
    }
}
