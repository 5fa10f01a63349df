package org.flexwright.vatprint;

import static org.flexwright.vatprint.Bench.step;
import static org.flexwright.vatprint.Bench.trial;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.model.PartRole;
import org.flexwright.model.Trial;
import org.flexwright.vatprint.data.PostCuring;
import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.VatprintDataFactory;
import org.junit.jupiter.api.Test;

class VatProcessTest {
    private static final Map<String, StepKind> KINDS = List.of(new PrintStep(), new WashStep(), new PostCureStep()).stream()
            .collect(Collectors.toMap(StepKind::id, kind -> kind));

    private static FieldDescriptor field(String kind, String feature) {
        EClass details = KINDS.get(kind).details();
        return FieldDescriptors.ofClass(details).stream().filter(f -> f.name().equals(feature)).findFirst()
                .orElseThrow(() -> new AssertionError(kind + " has no " + feature));
    }

    @Test
    void theRouteEndsWithReadings() {
        assertEquals(List.of("vatprint.print", "vatprint.wash", "vatprint.postcure",
                "testing.read"), new VatProcess().steps().stream().map(ProcessKind.PlannedStep::kind).toList());
    }

    @Test
    void everyOwnDefaultCanBeRead() {
        for (ProcessKind.PlannedStep step : new VatProcess().steps()) {
            if (KINDS.containsKey(step.kind())) {
                assertTrue(!step.defaults().isEmpty(), step.kind());
                step.defaults().forEach((feature, typed) -> assertInstanceOf(FieldInput.Read.class, field(step.kind(), feature).read(typed),
                        step.kind() + " " + feature + " " + typed));
            }
        }
    }

    @Test
    void everyFactorIsAPlannedFeature() {
        for (ProcessKind.Factor factor : new VatProcess().factors()) {
            FieldDescriptor field = field(factor.stepKind(), factor.feature());
            assertEquals(FieldRole.PLANNED, field.role(), factor.id());
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
        Printing printing = VatprintDataFactory.eINSTANCE.createPrinting();
        Trial plan = trial(step(PrintStep.ID, printing));
        assertEquals(3, line(plan, "Time at the machine").likely(), 1e-9);
        printing.setPartHeight(40.0);
        printing.setLayerHeight(50.0);
        printing.setPlannedExposure(4.0);
        printing.setMoveTime(6.0);
        printing.setBaseLayers(5);
        printing.setBaseExposure(30.0);
        assertEquals(8130 / 3600.0, line(plan, "Time at the machine").likely(), 1e-9);
        assertTrue(line(plan, "Time at the machine").high() > line(plan, "Time at the machine").likely());
        PostCuring cure = VatprintDataFactory.eINSTANCE.createPostCuring();
        cure.setPlannedDryMinutes(60.0);
        cure.setPlannedMinutes(20.0);
        double before = line(plan, "From start to finished part").likely();
        plan.getSteps().add(step(PostCureStep.ID, cure));
        assertEquals(before + (10 + 80) / 60.0, line(plan, "From start to finished part").likely(), 1e-9);
        assertTrue(new VatProcess().estimate(plan).stream().noneMatch(l -> l.label().equals("Material")));
        plan.getSteps().get(0).getUses().add(Bench.use(PartRole.SINGLE, "photopolymer-50a", 14.3));
        assertEquals(14.3, line(plan, "Material").likely(), 1e-9);
    }

    private static Estimate line(Trial plan, String label) {
        ProcessKind.EstimateLine line = new VatProcess().estimate(plan).stream().filter(l -> l.label().equals(label)).findFirst().orElse(null);
        assertNotNull(line, label);
        return line.value();
    }
}
