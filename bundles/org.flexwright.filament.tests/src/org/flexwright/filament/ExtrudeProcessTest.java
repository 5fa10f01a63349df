package org.flexwright.filament;

import static org.flexwright.filament.Bench.step;
import static org.flexwright.filament.Bench.trial;
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
import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.FilamentDataFactory;
import org.flexwright.filament.data.Printing;
import org.flexwright.model.PartRole;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class ExtrudeProcessTest {
    private static final Map<String, StepKind> KINDS = List.of(new DryStep(), new PrintStep()).stream()
            .collect(Collectors.toMap(StepKind::id, kind -> kind));

    private static FieldDescriptor field(String kind, String feature) {
        EClass details = KINDS.get(kind).details();
        return FieldDescriptors.ofClass(details).stream().filter(f -> f.name().equals(feature)).findFirst()
                .orElseThrow(() -> new AssertionError(kind + " has no " + feature));
    }

    @Test
    void theRouteEndsWithReadings() {
        assertEquals(List.of("filament.dry", "filament.print", "testing.read"), new ExtrudeProcess().steps().stream().map(ProcessKind.PlannedStep::kind).toList());
    }

    @Test
    void everyOwnDefaultCanBeRead() {
        for (ProcessKind.PlannedStep step : new ExtrudeProcess().steps()) {
            if (KINDS.containsKey(step.kind())) {
                assertTrue(!step.defaults().isEmpty(), step.kind());
                step.defaults().forEach((feature, typed) -> assertInstanceOf(FieldInput.Read.class, field(step.kind(), feature).read(typed),
                        step.kind() + " " + feature + " " + typed));
            }
        }
    }

    @Test
    void everyFactorIsAPlannedFeature() {
        for (ProcessKind.Factor factor : new ExtrudeProcess().factors()) {
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
        Printing printing = FilamentDataFactory.eINSTANCE.createPrinting();
        Trial plan = trial(step(PrintStep.ID, printing));
        assertEquals(3, line(plan, "Time at the machine").likely(), 1e-9);
        printing.setPlannedMass(11.5);
        printing.setPlannedSpeed(10.0);
        printing.setLineWidth(0.5);
        printing.setLayerHeight(0.2);
        // 10 cm3 at 1 mm3/s, and a quarter more for travel
        assertEquals(12500 / 3600.0, line(plan, "Time at the machine").likely(), 1e-9);
        assertEquals(11.5, line(plan, "Material").likely(), 1e-9);
        plan.getSteps().get(0).getUses().add(Bench.use(PartRole.SINGLE, "tpu-70a", 14.0));
        assertEquals(14.0, line(plan, "Material").likely(), 1e-9);
        Drying drying = FilamentDataFactory.eINSTANCE.createDrying();
        drying.setPlannedHours(6.0);
        double before = line(plan, "From start to finished part").likely();
        plan.getSteps().add(step(DryStep.ID, drying));
        assertEquals(before + 6 + 5 / 60.0, line(plan, "From start to finished part").likely(), 1e-9);
    }

    private static Estimate line(Trial plan, String label) {
        ProcessKind.EstimateLine line = new ExtrudeProcess().estimate(plan).stream().filter(l -> l.label().equals(label)).findFirst().orElse(null);
        assertNotNull(line, label);
        return line.value();
    }
}
