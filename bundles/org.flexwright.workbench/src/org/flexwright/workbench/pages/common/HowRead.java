package org.flexwright.workbench.pages.common;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.property.Approximation;
import org.flexwright.core.reading.ReadingSummary;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;

/** How a measurement was taken beyond its numbers: the plugin's fields, how it is printed, and on request what it is about on other scales. */
final class HowRead extends Composite {

    private final PageContext context;
    private final Kit kit;
    private final ReadingSummary summary;
    private FormPane form;

    /** Makes the details when there are none yet: whoever opens this is about to say something. */
    HowRead(Composite parent, PageContext context, Measurement measurement, EClass type, ReadingSummary summary, Doing doing) {
        super(parent, SWT.NONE);
        this.context = context;
        this.kit = context.kit();
        this.summary = summary;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, new Spacing(3, 2, 0, 2));
        kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
        summary.prints().ifPresent(print -> Prose.quiet(this, kit, "In print: " + print.both().text() + ".")
                .setLayoutData(Grid.wide()));
        if (measurement.getDetails() != null || doing.edit("say how it was read", edit -> Measurements.details(edit, measurement, type))) {
            EObject details = measurement.getDetails();
            FormModel model = FormModel.bound(context.session(), details, FieldDescriptors.ofClass(details.eClass()));
            form = new FormPane(this, kit, Bindings.of(model, context.session().readOnly()));
            form.setLayoutData(Grid.wide());
            addDisposeListener(event -> model.close());
        }
        List<Measurement> alike = Measurements.alike(measurement);
        if (form != null && !alike.isEmpty() && !context.session().readOnly()) {
            Button same = kit.action(this, "The same for the " + alike.size() + " others read in one go", () -> doing.edit("say how all were read",
                    edit -> Measurements.sayTheSame(edit, measurement, alike)));
            same.setLayoutData(Grid.natural());
        }
        if (summary.median().isPresent() && !context.registries().about(summary.property().id(), summary.median().getAsDouble()).isEmpty()) {
            Button about = kit.action(this, "About on other scales", this::about);
            Kit.name(about, "What " + summary.words() + " is about on other scales");
            about.setLayoutData(Grid.natural());
        }
    }

    private void about() {
        List<Approximation> guides = context.registries().about(summary.property().id(), summary.median().getAsDouble());
        getChildren()[getChildren().length - 1].dispose();
        for (Approximation guide : guides) {
            Prose.text(this, kit, guide.words() + "  [" + guide.value().source().display() + "]").setLayoutData(Grid.wide());
        }
        Prose.quiet(this, kit, guides.getFirst().note().text()).setLayoutData(Grid.wide());
        ScrollPane.reflowAround(this);
    }

    @Override
    public boolean setFocus() {
        return form == null ? super.setFocus() : form.setFocus();
    }
}
