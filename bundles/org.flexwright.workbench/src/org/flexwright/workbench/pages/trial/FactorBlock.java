package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.process.ProcessKind.Factor;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;

/** What is usually varied on the trial's route, to be changed in one place: the fields are the steps' own. */
final class FactorBlock {

    private final PageContext context;
    private final Trial trial;
    private final Block block;
    private List<Object> shown = List.of();
    private FormModel form;

    private record Place(Factor factor, EObject details, EAttribute feature) {
    }

    FactorBlock(Composite parent, PageContext context, Trial trial) {
        this.context = context;
        this.trial = trial;
        block = new Block(parent, context.kit(), "Usually varied", 1, Spacing.FIELDS);
        block.addDisposeListener(event -> close());
    }

    private void close() {
        if (form != null) {
            form.close();
            form = null;
        }
    }

    void show() {
        List<Place> places = places();
        List<Object> now = new ArrayList<>(places);
        block.setShown(!places.isEmpty());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        close();
        Composite body = block.emptied();
        List<FieldDescriptor> fields = places.stream().map(FactorBlock::field).toList();
        form = FormModel.scratch(context.session(), fields);
        places.forEach(place -> form.bind(place.factor().id(), place.details(), place.feature(), FieldDescriptors.of(place.feature())));
        Control pane = new FormPane(body, context.kit(), Bindings.of(form, context.session().readOnly()));
        pane.setLayoutData(Grid.wide());
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        Optional.ofNullable(trial.getRoute()).flatMap(context.registries()::findProcessKind).ifPresent(route -> route.factors()
                .forEach(factor -> trial.getSteps().stream().filter(step -> factor.stepKind().equals(step.getKind())).findFirst()
                        .map(Step::getDetails).filter(details -> !(details instanceof AnyType))
                        .filter(details -> details.eClass().getEStructuralFeature(factor.feature()) instanceof EAttribute)
                        .ifPresent(details -> places.add(new Place(factor, details, (EAttribute) details.eClass().getEStructuralFeature(factor.feature()))))));
        return places;
    }

    /** The field of the feature under the factor's name and label. */
    private static FieldDescriptor field(Place place) {
        FieldDescriptor f = FieldDescriptors.of(place.feature());
        return new FieldDescriptor(place.factor().id(), place.factor().label(), f.type(), f.kind(), f.unit(), f.min(), f.max(), f.minOpen(), "", f.optional(),
                f.help(), f.choices(), f.columns(), f.role(), f.of(), f.limit());
    }
}
