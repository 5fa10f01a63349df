package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;

/** What every step has: session, planned time, another material, a note. */
final class StepFoot implements StepPart {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.STEP__PLANNED_START, ModelPackage.Literals.STEP__PLANNED_DURATION,
            ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final StepPlace place;
    private final SessionBox session;
    private PickBox<PartRole> role;
    private PickBox<Object> material;

    StepFoot(Composite parent, StepPlace place) {
        this.place = place;
        Kit kit = place.kit();
        Block block = new Block(parent, kit, "Session, time, note", 1, Spacing.FIELDS);
        Composite line = kit.pane(block.body(), 2, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        kit.text(line, "Session");
        session = new SessionBox(line, place);
        session.control().setLayoutData(Grid.wide());
        FormModel form = FormModel.bound(place.page().session(), place.step(), FIELDS);
        FormPane pane = new FormPane(block.body(), kit, Bindings.of(form, !place.writable()));
        pane.setLayoutData(Grid.wide());
        pane.addListener(SWT.Dispose, event -> form.close());
        if (place.writable()) {
            Composite body = new Block(parent, kit, "Another material in this step", 1, Spacing.FIELDS).body();
            Composite flowing = Flow.pane(body, kit, Ink.PAPER);
            flowing.setLayoutData(Grid.wide());
            makeMaterial(flowing);
        }
    }

    private void makeMaterial(Composite body) {
        Kit kit = place.kit();
        role = new PickBox<>(body, kit, "Role of the material", null, UseWords::letter);
        role.show(PartRole.VALUES, PartRole.COMPONENT_A);
        material = new PickBox<>(body, kit, "Material and lot", "no material chosen", StepFoot::words);
        material.whenChosen(thing -> gradeOf(thing));
        kit.action(body, "Add the &material", this::add);
        refresh();
    }

    private void gradeOf(Object thing) {
        MaterialGrade grade = thing instanceof Lot lot ? (MaterialGrade) lot.eContainer() : (MaterialGrade) thing;
        if (grade != null && grade.getRole() != null) {
            role.show(PartRole.VALUES, grade.getRole());
        }
    }

    private static String words(Object thing) {
        if (thing instanceof Lot lot) {
            return words(lot.eContainer()) + ", lot " + (lot.getCode() == null ? "without a code" : lot.getCode());
        }
        MaterialGrade grade = (MaterialGrade) thing;
        return grade.getName() == null ? grade.getCode() == null ? "material without a name" : grade.getCode() : grade.getName();
    }

    private void add() {
        Object chosen = material.chosen();
        PartRole as = role.chosen();
        place.doing().edit("add a material", edit -> {
            MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
            use.setRole(as);
            use.setLot(chosen instanceof Lot lot ? lot : null);
            use.setGrade(chosen instanceof Lot lot ? (MaterialGrade) lot.eContainer() : (MaterialGrade) chosen);
            edit.add(place.step(), ModelPackage.Literals.STEP__USES, use);
        });
    }

    @Override
    public void refresh() {
        session.refresh();
        if (material != null) {
            List<Object> things = place.page().session().project().getGrades().stream().flatMap(grade -> Stream.concat(Stream.<Object>of(grade),
                    grade.getLots().stream())).toList();
            material.show(things, material.chosen());
        }
    }
}
