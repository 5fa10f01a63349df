package org.flexwright.core.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PartRole;
import org.flexwright.model.Provenance;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Weighing;
import org.junit.jupiter.api.Test;

class StepCardTest {
    private final Step step = ModelFactory.eINSTANCE.createStep();
    private final EClass curing = curing();

    private static EClass curing() {
        EPackage p = EcoreFactory.eINSTANCE.createEPackage();
        p.setName("t");
        p.setNsPrefix("t");
        p.setNsURI("urn:flexwright:test:1");
        EClass c = EcoreFactory.eINSTANCE.createEClass();
        c.setName("Curing");
        p.getEClassifiers().add(c);
        feature(c, "plannedC", "label", "Oven", "kind", "TEMPERATURE", "unit", "degC", "role", "planned");
        feature(c, "actualC", "label", "Oven read", "kind", "TEMPERATURE", "unit", "degC", "role", "actual", "of", "plannedC", "limit", "5 K");
        feature(c, "plannedDose", "label", "Dose", "kind", "MASS", "unit", "g", "role", "planned");
        feature(c, "actualDose", "label", "Dose used", "kind", "MASS", "unit", "g", "role", "actual", "of", "plannedDose", "limit", "2%");
        feature(c, "former", "label", "Former", "kind", "LENGTH", "unit", "mm");
        return c;
    }

    private static void feature(EClass owner, String name, String... details) {
        EAttribute a = EcoreFactory.eINSTANCE.createEAttribute();
        a.setName(name);
        a.setEType(EcorePackage.Literals.EDOUBLE_OBJECT);
        EAnnotation annotation = EcoreFactory.eINSTANCE.createEAnnotation();
        annotation.setSource("urn:flexwright:field");
        for (int i = 0; i < details.length; i += 2) {
            annotation.getDetails().put(details[i], details[i + 1]);
        }
        a.getEAnnotations().add(annotation);
        owner.getEStructuralFeatures().add(a);
    }

    private MaterialUse use(PartRole role, Double planned, Double... nets) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(planned);
        for (Double net : nets) {
            Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
            weighing.setNet(net);
            use.getWeighings().add(weighing);
        }
        step.getUses().add(use);
        return use;
    }

    private record Kind(String id, EClass details) implements StepKind {
        @Override
        public String title() {
            return id;
        }

        @Override
        public String summary() {
            return id;
        }
    }

    private CardLine line(String name) {
        return StepCard.lines(step, new Kind("t.cure", curing)).stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void twoGramsTooMuchOfAShowInTheRatio() {
        use(PartRole.COMPONENT_A, 22.9, 24.9);
        use(PartRole.COMPONENT_B, 21.6, 21.6);
        CardLine ratio = line("ratio");
        assertEquals("100 : 94.32", ratio.planned());
        assertEquals("100 : 86.75", ratio.actual());
        assertEquals("\u22128.0 %", ratio.difference());
        assertEquals("+8.7 %", line("uses/0").difference());
        assertEquals("measured", line("uses/0").origin());
        assertEquals("", line("uses/1").difference());
    }

    @Test
    void whatWasNotWeighedIsNotZero() {
        use(PartRole.COMPONENT_A, 22.9);
        use(PartRole.COMPONENT_B, null, 1.0, 2.0);
        Mixture mixture = Mixtures.of(step);
        assertNull(mixture.actual(PartRole.COMPONENT_A));
        assertNull(mixture.actualRatio());
        assertNull(mixture.planned(PartRole.COMPONENT_B));
        assertEquals(3, mixture.actual(PartRole.COMPONENT_B));
        assertEquals("", line("uses/0").actual());
    }

    @Test
    void netIsGrossLessTareOnlyWhenBothAreThere() {
        MaterialUse use = use(PartRole.SINGLE, 10.0);
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setGross(30.0);
        use.getWeighings().add(weighing);
        assertNull(Mixtures.grams(use));
        weighing.setTare(19.5);
        assertEquals(10.5, Mixtures.grams(use));
    }

    @Test
    void detailsPairPlannedWithActualAndSpeakUpOutsideTheirLimit() {
        EObject details = EcoreUtil.create(curing);
        step.setDetails(details);
        details.eSet(curing.getEStructuralFeature("plannedC"), 60.0);
        details.eSet(curing.getEStructuralFeature("actualC"), 54.0);
        details.eSet(curing.getEStructuralFeature("plannedDose"), 10.0);
        details.eSet(curing.getEStructuralFeature("actualDose"), 10.2);
        CardLine oven = line("plannedC");
        assertEquals("60 °C", oven.planned());
        assertEquals("54 °C", oven.actual());
        assertEquals("\u22126 K", oven.difference());
        assertTrue(oven.outside());
        assertFalse(line("plannedDose").outside(), "2 % off is on the limit, not outside it");
        details.eSet(curing.getEStructuralFeature("actualDose"), 10.21);
        assertTrue(line("plannedDose").outside());
        assertEquals(List.of("plannedC", "plannedDose"), StepCard.lines(step, new Kind("t.cure", curing)).stream().map(CardLine::name).toList());
        details.eSet(curing.getEStructuralFeature("former"), 3.0);
        assertEquals("3 mm", line("former").actual());
    }

    @Test
    void aChoiceNobodyMadeIsNoEntryOutsideThePlan() {
        EClass type = EcoreFactory.eINSTANCE.createEClass();
        type.setName("Treating");
        curing.getEPackage().getEClassifiers().add(type);
        feature(type, "plannedTreatment", "label", "Treatment", "role", "planned");
        feature(type, "actualTreatment", "label", "Treatment done", "role", "actual", "of", "plannedTreatment");
        feature(type, "face", "label", "Face");
        type.getEAttributes().forEach(a -> a.setEType(ModelPackage.Literals.STEP_STATE));
        EObject details = EcoreUtil.create(type);
        step.setDetails(details);
        details.eSet(type.getEStructuralFeature("plannedTreatment"), StepState.DONE);
        List<CardLine> lines = StepCard.lines(step, new Kind("t.treat", type));
        assertEquals(List.of("plannedTreatment"), lines.stream().map(CardLine::name).toList());
        assertEquals("", lines.get(0).actual());
        assertFalse(lines.get(0).outside());
        details.eSet(type.getEStructuralFeature("actualTreatment"), StepState.SKIPPED);
        assertTrue(StepCard.lines(step, new Kind("t.treat", type)).get(0).outside());
    }

    @Test
    void theStepKeepsWhereItsDetailsValuesCameFrom() {
        EObject details = EcoreUtil.create(curing);
        step.setDetails(details);
        details.eSet(curing.getEStructuralFeature("plannedC"), 60.0);
        details.eSet(curing.getEStructuralFeature("actualC"), 60.0);
        assertEquals("typed", line("plannedC").origin());
        Provenance provenance = ModelFactory.eINSTANCE.createProvenance();
        provenance.setFeature("details.actualC");
        provenance.setOrigin(Origin.COPIED);
        step.getProvenance().add(provenance);
        assertEquals("copied", line("plannedC").origin());
    }

    @Test
    void theTimeTakenComesFromTheClock() {
        step.setPlannedDuration(3.0);
        step.setStartedAt(Instant.parse("2025-03-14T10:00:00Z"));
        step.setEndedAt(Instant.parse("2025-03-14T10:04:30Z"));
        assertEquals("4.5 min", line("duration").actual());
        assertEquals("+50 %", line("duration").difference());
    }

    @Test
    void anAbsentPluginLeavesTheSkeleton() {
        use(PartRole.SINGLE, 5.0);
        step.setDetails(EcoreUtil.create(curing));
        assertEquals(1, StepCard.lines(step, null).size());
    }
}
