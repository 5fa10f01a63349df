package org.flexwright.workbench.pages;

import java.util.List;
import java.util.function.Predicate;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.find.Finding;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;

/** The findings about a page's subject, one strip each; takes no room when there are none. */
public final class FindingStrips {

    private final Composite pane;
    private final PageContext context;
    private final Predicate<Finding> which;
    private List<Finding> shown;

    /** All findings about the subject and what is in it, as strips within a grid; call {@link #show} when the findings change. */
    public FindingStrips(Composite parent, PageContext context) {
        this(parent, context, finding -> true);
    }

    /** Some of them. */
    public FindingStrips(Composite parent, PageContext context, Predicate<Finding> which) {
        this.context = context;
        this.which = which;
        this.pane = context.kit().pane(parent, 1, Spacing.FIELDS);
        pane.setLayoutData(Grid.wide());
    }

    /** Shows the present findings. */
    public void show() {
        List<Finding> findings = context.findings().stream().filter(which).toList();
        if (findings.equals(shown)) {
            return;
        }
        shown = findings;
        for (Control old : pane.getChildren()) {
            old.dispose();
        }
        for (Finding finding : findings) {
            FindingStrip.of(pane, context.kit(), finding).setLayoutData(Grid.wide());
        }
        ((GridData) pane.getLayoutData()).exclude = findings.isEmpty();
        pane.setVisible(!findings.isEmpty());
        ScrollPane.reflowAround(pane);
    }
}
