package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.Settling;

/** The chosen step: what can be done now, cautions, materials and what they come to, planned beside actual. */
final class StepForm extends Composite {

    private final PageContext context;
    private final Kit kit;
    private final ScrollPane pane;
    private final Consumer<Step> choose;
    private final List<StepPart> parts = new ArrayList<>();
    private StepPlace place;
    private List<Object> shape = List.of();
    private DetailsBlock details;

    StepForm(Composite parent, PageContext context, Consumer<Step> choose) {
        super(parent, SWT.NONE);
        this.context = context;
        this.kit = context.kit();
        this.choose = choose;
        setLayout(new FillLayout());
        pane = new ScrollPane(this, kit, 1, new Spacing(6, 4, 4, 4));
    }

    /** Shows a step. */
    void show(Step step) {
        if (place != null && place.step() == step) {
            return;
        }
        build(step);
    }

    private void build(Step step) {
        for (Control child : pane.body().getChildren()) {
            child.dispose();
        }
        parts.clear();
        Notice notice = new Notice(pane.body(), kit, 1);
        place = new StepPlace(context, step, new Doing(context.session(), notice::say));
        shape = shape(step);
        parts.add(new StepHead(pane.body(), place, choose));
        notice.moveBelow(pane.body().getChildren()[1]);
        parts.add(new PromptBlock(pane.body(), place));
        if (!step.getUses().isEmpty()) {
            parts.add(new UsesBlock(pane.body(), place));
        } else {
            parts.add(new AdviceBlock(pane.body(), place));
        }
        parts.add(new StepFindings(pane.body(), place));
        details = new DetailsBlock(pane.body(), place);
        parts.add(details);
        parts.add(new StepFoot(pane.body(), place));
        if (place.writable()) {
            parts.add(new StepOrder(pane.body(), context, step, place.doing(), choose));
        }
        pane.reflow();
        Settling.later(kit, pane);
    }

    /** When this changes the form is made anew; everything else its parts follow by themselves. */
    private static List<Object> shape(Step step) {
        List<Object> shape = new ArrayList<>();
        shape.add(step);
        shape.addAll(step.getUses());
        step.getUses().forEach(use -> shape.add(use.getRole()));
        shape.add(Objects.requireNonNullElse(step.getDetails(), ""));
        return shape;
    }

    void changed(Set<EObject> touched) {
        boolean ours = touched.stream().anyMatch(thing -> EcoreUtil.isAncestor(place.trial(), thing) || thing.eContainer() instanceof Project
                || thing instanceof Project);
        if (!ours && touched.stream().allMatch(thing -> thing.eContainer() != null)) {
            return;
        }
        if (!shape.equals(shape(place.step()))) {
            build(place.step());
            return;
        }
        parts.forEach(StepPart::refresh);
        pane.reflow();
    }

    void findingsChanged() {
        parts.forEach(StepPart::findingsChanged);
        pane.reflow();
    }

    void reveal(String feature) {
        if (!details.reveal(feature)) {
            setFocus();
        }
    }

    @Override
    public boolean setFocus() {
        return !pane.isDisposed() && pane.body().getChildren().length > 0 && (parts.stream().anyMatch(StepPart::takeFocus) || pane.setFocus());
    }
}
