package org.flexwright.moulding;

import static org.flexwright.moulding.Bench.step;
import static org.flexwright.moulding.Bench.trial;
import static org.flexwright.moulding.Bench.use;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Estimate;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldingDataFactory;
import org.flexwright.moulding.data.Preparation;
import org.junit.jupiter.api.Test;

class CastProcessTest {
    private static final Map<String, StepKind> KINDS = List.of(new PrepareStep(), new FillStep()).stream()
            .collect(Collectors.toMap(StepKind::id, kind -> kind));

    private static FieldDescriptor field(String kind, String feature) {
        EClass details = KINDS.get(kind).details();
        return FieldDescriptors.ofClass(details).stream().filter(f -> f.name().equals(feature)).findFirst()
                .orElseThrow(() -> new AssertionError(kind + " has no " + feature));
    }

    @Test
    void theRouteGoesFromMouldToReadings() {
        assertEquals(List.of("moulding.prepare", "mixing.weigh", "mixing.mix", "mixing.degas", "moulding.fill", "curing.cure", "curing.demould",
                "testing.read"), new CastProcess().steps().stream().map(ProcessKind.PlannedStep::kind).toList());
    }

    @Test
    void everyOwnDefaultCanBeRead() {
        for (ProcessKind.PlannedStep step : new CastProcess().steps()) {
            if (KINDS.containsKey(step.kind())) {
                assertTrue(!step.defaults().isEmpty(), step.kind());
                step.defaults().forEach((feature, typed) -> assertInstanceOf(FieldInput.Read.class, field(step.kind(), feature).read(typed),
                        step.kind() + " " + feature + " " + typed));
            }
        }
    }

    @Test
    void everyOwnFactorIsAPlannedFeature() {
        for (ProcessKind.Factor factor : new CastProcess().factors()) {
            if (KINDS.containsKey(factor.stepKind())) {
                assertEquals(FieldRole.PLANNED, field(factor.stepKind(), factor.feature()).role(), factor.id());
            }
        }
    }

    @Test
    void everyFieldIsExplainedAndEveryActualBelongsToAPlanned() {
        for (StepKind kind : KINDS.values()) {
            List<FieldDescriptor> fields = FieldDescriptors.ofClass(kind.details());
            for (FieldDescriptor field : fields) {
                assertTrue(field.help().length() > 5 && !field.label().isBlank(), field.name());
                if (field.role() == FieldRole.ACTUAL) {
                    FieldDescriptor planned = field(kind.id(), field.of());
                    assertEquals(FieldRole.PLANNED, planned.role(), field.name());
                    assertEquals(planned.kind(), field.kind(), field.name());
                }
            }
        }
    }

    @Test
    void theEstimateUsesWhatIsPlannedAndBandsForTheRest() {
        Filling filling = MouldingDataFactory.eINSTANCE.createFilling();
        Preparation mould = MouldingDataFactory.eINSTANCE.createPreparation();
        mould.setPlannedDryHours(2.0);
        Step weigh = step("mixing.weigh", null, priced(22.9, 30, 1000), priced(21.6, 40, 1000));
        weigh.setPlannedDuration(8.0);
        Step cure = step("curing.cure", null);
        cure.setPlannedDuration(16 * 60.0);
        Trial plan = trial(step(PrepareStep.ID, mould), weigh, step(FillStep.ID, filling), cure);
        assertEquals(10 + 8 + 2, line(plan, "Time with hands on it").low(), 1e-9);
        assertEquals(60 + 8 + 15, line(plan, "Time with hands on it").high(), 1e-9);
        filling.setPlannedFillMinutes(3.0);
        assertEquals(10 + 8 + 3, line(plan, "Time with hands on it").low(), 1e-9);
        assertEquals((20 + 8 + 3 + 16 * 60 + 120) / 60.0, line(plan, "From start to finished part").likely(), 1e-9);
        assertEquals(44.5, line(plan, "Material").likely(), 1e-9);
        assertEquals(22.9 * 0.03 + 21.6 * 0.04, line(plan, "Cost of material").likely(), 1e-9);
        weigh.getUses().get(0).getLot().setPrice(null);
        assertTrue(new CastProcess().estimate(plan).stream().noneMatch(l -> l.label().equals("Cost of material")));
    }

    /** Stands for the details of the curing plugin, which this bundle does not know. */
    @Test
    void thePlannedCureIsReadByItsName() {
        EAttribute hours = EcoreFactory.eINSTANCE.createEAttribute();
        hours.setName("plannedHours");
        hours.setEType(EcorePackage.Literals.EDOUBLE_OBJECT);
        EClass type = EcoreFactory.eINSTANCE.createEClass();
        type.setName("Cure");
        type.getEStructuralFeatures().add(hours);
        EPackage cures = EcoreFactory.eINSTANCE.createEPackage();
        cures.getEClassifiers().add(type);
        EObject cure = EcoreUtil.create(type);
        Trial plan = trial(step("curing.cure", cure));
        assertEquals(16, line(plan, "From start to finished part").likely(), 1e-9);
        cure.eSet(hours, 8.0);
        assertEquals(8, line(plan, "From start to finished part").high(), 1e-9);
    }

    private static Estimate line(Trial plan, String label) {
        ProcessKind.EstimateLine line = new CastProcess().estimate(plan).stream().filter(l -> l.label().equals(label)).findFirst().orElse(null);
        assertNotNull(line, label);
        return line.value();
    }

    private static MaterialUse priced(double grams, double price, double amount) {
        MaterialUse use = use(PartRole.COMPONENT_A, "pu-60a", grams);
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setPrice(price);
        lot.setAmount(amount);
        use.getGrade().getLots().add(lot);
        use.setLot(lot);
        return use;
    }
}
