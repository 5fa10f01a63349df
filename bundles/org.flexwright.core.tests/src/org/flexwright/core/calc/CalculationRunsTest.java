package org.flexwright.core.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.field.OpenProject;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalculationRunsTest {
    record In(@Field(help = "asked", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true) double time,
            @Field(help = "how often", def = "2") int times) {
    }

    record Out(@Field(help = "in all", kind = QuantityKind.DURATION, unit = "s") Estimate total, @Field(help = "plain") double number) {
    }

    private record Times(int version) implements Calculation<In, Out> {
        @Override
        public CalculationInfo info() {
            return new CalculationInfo("test.times", "Times", version, "t n", Source.derived("algebra"), "Any.");
        }

        @Override
        public Class<In> inputType() {
            return In.class;
        }

        @Override
        public Class<Out> resultType() {
            return Out.class;
        }

        @Override
        public Outcome<Out> run(In in) {
            double total = in.time() * in.times();
            return Outcome.done(new Out(new Estimate(total * 0.9, total, total * 1.1, Source.commonPractice("stopwatch")), 7));
        }
    }

    @TempDir
    Path folder;
    private ProjectSession project;
    private Trial trial;
    private final Step step = ModelFactory.eINSTANCE.createStep();
    private final Times times = new Times(1);

    @BeforeEach
    void open() {
        project = OpenProject.in(folder);
        trial = project.project().getTrials().get(0);
        step.setPlannedDuration(3.0);
        project.execute("step", edit -> edit.add(trial, ModelPackage.Literals.TRIAL__STEPS, step));
    }

    @AfterEach
    void close() {
        project.close();
    }

    private CalculationRun keepBound() {
        try (FormModel form = FormModel.scratch(project, CalculationRunner.inputs(times))) {
            form.bind("time", step, ModelPackage.Literals.STEP__PLANNED_DURATION, FieldDescriptors.of(ModelPackage.Literals.STEP__PLANNED_DURATION));
            return CalculationRuns.keep(project, trial, times, CalculationRunner.run(times, form.typed()), form);
        }
    }

    @Test
    void aRunIsKeptInOneStepWithItsInputsAndResults() {
        CalculationRun run = keepBound();
        assertEquals("1", run.getVersion());
        assertEquals(OpenProject.NOW, run.getAt());
        assertEquals(180, run.getInputs().get(0).getValue());
        assertEquals("s", run.getInputs().get(0).getUnit());
        assertEquals(Origin.TYPED, run.getInputs().get(0).getOrigin());
        assertNull(run.getInputs().get(1).getBoundTo());
        assertEquals(360, run.getResults().get(0).getLikely());
        assertEquals(324, run.getResults().get(0).getLow());
        assertEquals("stopwatch (common practice, no source)", run.getResults().get(0).getSource());
        assertEquals(List.of(), CalculationRuns.stale(project, run, times));
        project.undo();
        assertTrue(trial.getCalculations().isEmpty());
    }

    @Test
    void aDefaultIsAnAssumption() {
        CalculationRun run = CalculationRuns.keep(project, trial, times, CalculationRunner.run(times, Map.of("time", "3 min")), Map.of());
        assertEquals(Origin.ASSUMED, run.getInputs().get(1).getOrigin());
        assertEquals("3 min", run.getInputs().get(0).getText());
        assertEquals(180, run.getInputs().get(0).getValue());
    }

    @Test
    void aRefusalIsKeptToo() {
        CalculationRun run = CalculationRuns.keep(project, trial, times, CalculationRunner.run(times, Map.of("time", "-1")), Map.of());
        assertEquals("Time must be above 0 s; got -1 s. Enter Time above 0 s.", run.getRefusal());
        assertTrue(run.getResults().isEmpty());
    }

    @Test
    void aChangedInputANewVersionOrAGonePlaceMakeItStale() {
        CalculationRun run = keepBound();
        project.execute("change", edit -> edit.set(step, ModelPackage.Literals.STEP__PLANNED_DURATION, 4.0));
        assertEquals(List.of("The input time is 4 min now."), CalculationRuns.stale(project, run, times));
        assertEquals(180, run.getInputs().get(0).getValue(), "never computed again by itself");
        project.undo();
        assertEquals(List.of(), CalculationRuns.stale(project, run, times));
        assertEquals(List.of("It was made by version 1 of the calculation; there is version 2 now."), CalculationRuns.stale(project, run, new Times(2)));
        assertEquals(List.of("The calculation test.times is not here any more."), CalculationRuns.stale(project, run, null));
        project.execute("empty", edit -> edit.set(step, ModelPackage.Literals.STEP__PLANNED_DURATION, null));
        assertEquals(List.of("The input time is empty now."), CalculationRuns.stale(project, run, times));
        project.execute("gone", edit -> edit.remove(step));
        assertEquals(List.of("What the input time was taken from is not there any more."), CalculationRuns.stale(project, run, times));
    }

    @Test
    void aResultCanBeUsedWithItsOriginAndBand() {
        CalculationRun run = keepBound();
        CalculationRuns.useValue(project, run, "total", step, ModelPackage.Literals.STEP__PLANNED_DURATION);
        assertEquals(6, step.getPlannedDuration(), 1e-12);
        assertEquals(Origin.CALCULATED, Provenances.origin(step, ModelPackage.Literals.STEP__PLANNED_DURATION));
        assertEquals(0.6, step.getProvenance().get(0).getUncertainty(), 1e-12);
        assertTrue(step.getProvenance().get(0).getSource().startsWith("test.times, total"));
        project.undo();
        assertEquals(3, step.getPlannedDuration());
        assertTrue(step.getProvenance().isEmpty());
    }

    @Test
    void aResultThatDoesNotFitIsRefusedInOneSentence() {
        CalculationRun run = keepBound();
        assertEquals("The result total is in s, which Cost cannot take.",
                assertThrows(IllegalArgumentException.class, () -> CalculationRuns.useValue(project, run, "total", trial, ModelPackage.Literals.TRIAL__COST)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> CalculationRuns.useValue(project, run, "colour", step, ModelPackage.Literals.STEP__PLANNED_DURATION));
    }
}
