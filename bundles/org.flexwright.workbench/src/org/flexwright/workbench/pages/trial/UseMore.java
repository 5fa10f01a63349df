package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.trial.MaterialUses;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Unlabelled;

/** What else there is to say of a material in the cup: which one it is, its parts and of what, the water in it. Shown on demand. */
final class UseMore {

    private static final List<EAttribute> FIELDS = List.of(ModelPackage.Literals.MATERIAL_USE__PARTS, ModelPackage.Literals.MATERIAL_USE__PARTS_BY,
            ModelPackage.Literals.MATERIAL_USE__PARTS_OF, ModelPackage.Literals.MATERIAL_USE__MOISTURE, ModelPackage.Literals.MATERIAL_USE__DRIED);
    private static final int FIELD = 7;

    private final StepPlace place;
    private final MaterialUse use;
    private final Composite pane;
    private final PickBox<Entry> material;
    private final PickBox<Lot> lot;

    UseMore(Composite parent, StepPlace place, MaterialUse use) {
        this.place = place;
        this.use = use;
        Kit kit = place.kit();
        String letter = UseWords.letter(use);
        pane = Flow.pane(parent, kit, Ink.PAPER);
        pane.setLayoutData(Grid.wide());
        material = new PickBox<>(labelled("material"), kit, "Material of " + letter, "not chosen", UseMore::words);
        material.whenChosen(this::choose);
        material.control().setEnabled(place.writable());
        lot = new PickBox<>(labelled("lot"), kit, "Lot of " + letter, "not chosen", Names::code);
        lot.whenChosen(this::choose);
        lot.control().setEnabled(place.writable());
        List<FieldDescriptor> fields = FIELDS.stream().map(FieldDescriptors::of).toList();
        FormModel form = FormModel.bound(place.page().session(), use, fields);
        for (FieldDescriptor field : fields) {
            FieldControl control = new FieldControl(labelled(field.label().toLowerCase(Locale.ROOT)), kit, new Unlabelled(Bindings.of(form, field, !place.writable())));
            Kit.name(control.input(), letter + ": " + field.label() + (field.unit().isEmpty() ? "" : ", " + field.unit()));
            if (control.input() instanceof Text && control.input().getLayoutData() instanceof GridData) {
                kit.chars(control.input(), FIELD);
            }
        }
        pane.addListener(SWT.Dispose, event -> form.close());
        refresh();
        show(false);
    }

    private Composite labelled(String words) {
        Composite pair = place.kit().pane(pane, 2, Spacing.TIGHT);
        place.kit().quiet(pair, words);
        return pair;
    }

    private static String words(Entry thing) {
        return thing instanceof Premix ? "premix " + Names.of(thing) : Names.of(thing);
    }

    private void choose(Entry chosen) {
        place.doing().edit("choose the material of " + UseWords.letter(use), edit -> {
            if (chosen instanceof Premix premix) {
                MaterialUses.choose(edit, use, premix);
            } else {
                MaterialUses.choose(edit, use, (MaterialGrade) chosen, null);
            }
        });
    }

    private void choose(Lot chosen) {
        place.doing().edit("choose the lot of " + UseWords.letter(use), edit -> MaterialUses.choose(edit, use, use.getGrade(), chosen));
    }

    /** Grades of the same role first, then premixes and all others. */
    void refresh() {
        Project project = place.page().session().project();
        List<Entry> offered = new ArrayList<>();
        project.getGrades().stream().filter(g -> g.getRole() == use.getRole()).forEach(offered::add);
        offered.addAll(project.getPremixes());
        project.getGrades().stream().filter(g -> g.getRole() != use.getRole()).forEach(offered::add);
        material.show(offered, use.getPremix() != null ? use.getPremix() : use.getGrade());
        lot.show(use.getGrade() == null ? List.of() : use.getGrade().getLots(), use.getLot());
    }

    boolean shown() {
        return pane.getVisible();
    }

    void show(boolean shown) {
        Grid.shown(pane, shown);
        ScrollPane.reflowAround(pane);
    }
}
