package org.flexwright.workbench.pages.trial;

import java.util.List;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Spacing;

/** Findings about the step that belong beside no single field. */
final class StepFindings implements StepPart {

    private final StepPlace place;
    private final Composite body;
    private List<Finding> shown = List.of();

    StepFindings(Composite parent, StepPlace place) {
        this.place = place;
        body = place.kit().pane(parent, 1, Spacing.TIGHT);
        body.setLayoutData(Grid.wide());
        refresh();
    }

    @Override
    public void refresh() {
        List<Finding> now = place.page().projects().findings(place.step()).stream().filter(finding -> !DetailsBlock.shows(place.step(), finding))
                .filter(finding -> FindingService.overridden(finding, place.page().session().project()).isEmpty()).toList();
        if (!now.equals(shown)) {
            shown = now;
            for (Control old : body.getChildren()) {
                old.dispose();
            }
            now.forEach(finding -> FindingStrip.of(body, place.kit(), finding).setLayoutData(Grid.wide()));
        }
        ((GridData) body.getLayoutData()).exclude = now.isEmpty();
        body.setVisible(!now.isEmpty());
    }

    @Override
    public void findingsChanged() {
        refresh();
    }
}
