package org.flexwright.core.trial;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.session.Edit;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;

/** Planned steps: from a route's usual order, or carried over from another trial. */
final class StepPlans {
    /** What is meant with a material, besides which one it is. */
    private static final List<EAttribute> USE = List.of(ModelPackage.Literals.MATERIAL_USE__PLANNED, ModelPackage.Literals.MATERIAL_USE__PARTS,
            ModelPackage.Literals.MATERIAL_USE__PARTS_BY, ModelPackage.Literals.MATERIAL_USE__PARTS_OF, ModelPackage.Literals.MATERIAL_USE__MOISTURE,
            ModelPackage.Literals.MATERIAL_USE__DRIED);

    private StepPlans() {
    }

    static Step of(Edit edit, ProcessKind route, ProcessKind.PlannedStep planned, Optional<StepKind> kind) {
        Step step = sketch(route, planned, kind);
        if (step.getDetails() != null) {
            planned.defaults().forEach((name, typed) -> step.getProvenance().add(Provenances.create(edit, Provenances.DETAILS + name, Origin.ASSUMED,
                    Trials.words("planned.by.route"), typed)));
        }
        return step;
    }

    /** The step as the route plans it, without saying where its values come from: it belongs to no project. */
    static Step sketch(ProcessKind route, ProcessKind.PlannedStep planned, Optional<StepKind> kind) {
        Step step = kind.map(StepPlans::of).orElseGet(() -> empty(planned.kind()));
        step.setTitle(planned.title());
        for (Map.Entry<String, String> value : planned.defaults().entrySet()) {
            if (step.getDetails() != null) {
                plan(route, step, value.getKey(), value.getValue());
            }
        }
        return step;
    }

    private static void plan(ProcessKind route, Step step, String name, String typed) {
        EStructuralFeature feature = step.getDetails().eClass().getEStructuralFeature(name);
        if (!(feature instanceof EAttribute attribute)) {
            throw PlanException.of("default.unknown", route.id(), name, step.getKind());
        }
        switch (FieldDescriptors.of(attribute).read(typed)) {
            case FieldInput.Rejected no -> throw PlanException.of("default.rejected", route.id(), name, typed, step.getKind(), no.sentence());
            case FieldInput.Read yes -> step.getDetails().eSet(feature, yes.value());
        }
    }

    /** A step with the defaults its fields say. */
    static Step of(StepKind kind) {
        Step step = empty(kind.id());
        step.setTitle(kind.title());
        EClass type = kind.details();
        if (type != null) {
            EObject details = EcoreUtil.create(type);
            for (FieldDescriptor field : FieldDescriptors.ofClass(type)) {
                if (!field.def().isEmpty() && field.role() != FieldRole.ACTUAL && field.read(field.def()) instanceof FieldInput.Read read) {
                    details.eSet(type.getEStructuralFeature(field.name()), read.value());
                }
            }
            step.setDetails(details);
        }
        return step;
    }

    private static Step empty(String kind) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setKind(kind);
        step.setTitle(kind);
        step.setState(StepState.PLANNED);
        return step;
    }

    static Step copy(Edit edit, Step from, String code) {
        String source = Trials.words("copied.from", code);
        Step step = empty(from.getKind());
        step.setTitle(from.getTitle());
        step.setPlannedStart(from.getPlannedStart());
        step.setPlannedDuration(from.getPlannedDuration());
        step.setUnconfirmed(true);
        for (MaterialUse use : from.getUses()) {
            step.getUses().add(copy(edit, use, source));
        }
        if (from.getDetails() instanceof AnyType) {
            step.setNote(Trials.words("step.undetailed", code));
        } else if (from.getDetails() != null) {
            step.setDetails(plan(from.getDetails()));
        }
        for (EAttribute planned : List.of(ModelPackage.Literals.STEP__PLANNED_START, ModelPackage.Literals.STEP__PLANNED_DURATION)) {
            if (step.eIsSet(planned)) {
                step.getProvenance().add(Provenances.create(edit, planned.getName(), Origin.COPIED, source, null));
            }
        }
        if (step.getDetails() != null) {
            copied(edit, step, step.getDetails(), source);
        }
        return step;
    }

    /** Every value in details, tables included, was copied. */
    private static void copied(Edit edit, Step step, EObject owner, String source) {
        for (EAttribute attribute : owner.eClass().getEAllAttributes()) {
            if (owner.eIsSet(attribute)) {
                step.getProvenance().add(Provenances.create(edit, Provenances.path(owner, attribute), Origin.COPIED, source, null));
            }
        }
        owner.eContents().forEach(row -> copied(edit, step, row, source));
    }

    private static MaterialUse copy(Edit edit, MaterialUse from, String source) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(from.getRole());
        use.setGrade(from.getGrade());
        use.setLot(from.getLot());
        use.setPremix(from.getPremix());
        for (EAttribute attribute : USE) {
            if (from.eIsSet(attribute)) {
                use.eSet(attribute, from.eGet(attribute));
                use.getProvenance().add(Provenances.create(edit, attribute.getName(), Origin.COPIED, source, null));
            }
        }
        return use;
    }

    /** A copy of details with only what was meant, tables included; it gets identifiers of its own. */
    private static EObject plan(EObject details) {
        EObject copy = EcoreUtil.copy(details);
        forgetActual(copy);
        return copy;
    }

    private static void forgetActual(EObject object) {
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            boolean actual = FieldRole.ACTUAL.name().equalsIgnoreCase(EcoreUtil.getAnnotation(feature, FieldDescriptors.ANNOTATION, "role"));
            boolean id = feature instanceof EAttribute a && a.isID();
            if (feature.isChangeable() && (actual || id)) {
                object.eUnset(feature);
            }
        }
        object.eContents().forEach(StepPlans::forgetActual);
    }
}
