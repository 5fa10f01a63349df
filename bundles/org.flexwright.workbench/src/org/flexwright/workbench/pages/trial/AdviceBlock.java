package org.flexwright.workbench.pages.trial;

import java.util.List;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;

/** What a step without materials says about itself: figures with their band, sentences below. */
final class AdviceBlock implements StepPart {

    private final StepPlace place;
    private final Kit kit;
    private final Composite pane;
    private List<StepAdvice> shown = List.of();

    AdviceBlock(Composite parent, StepPlace place) {
        this.place = place;
        this.kit = place.kit();
        pane = kit.pane(parent, 1, Spacing.TIGHT);
        pane.setLayoutData(Grid.wide());
        hide();
        refresh();
    }

    /** A line of advice: {@code Working time for 44 g at 22 °C: 16 (15 … 18) min}. */
    static String words(StepAdvice line) {
        return line.label() + ": " + (FieldText.band(line.value().low(), line.value().likely(), line.value().high(), QuantityKind.NUMBER, "") + " " + line.unit()).strip();
    }

    @Override
    public void refresh() {
        List<StepAdvice> now = place.page().registries().advice(place.step(), place.trial());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        for (Control child : pane.getChildren()) {
            child.dispose();
        }
        for (StepAdvice line : now) {
            kit.text(pane, words(line)).setToolTipText(line.value().source().display());
            if (line.remark() != null) {
                FindingStrip.of(pane, kit, line.remark()).setLayoutData(Grid.wide());
            }
        }
        hide();
        ScrollPane.reflowAround(pane);
    }

    private void hide() {
        boolean empty = pane.getChildren().length == 0;
        ((GridData) pane.getLayoutData()).exclude = empty;
        pane.setVisible(!empty);
    }
}
