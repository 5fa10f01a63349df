package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.flexwright.core.process.GramsOfParts;
import org.flexwright.core.Source;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planned materials of a step. */
class MaterialUsesTest {
    @TempDir
    Path temp;

    @Test
    void aPinchIsNotRoundedAway() throws IOException {
        try (ProjectSession session = new Demo().store().create(temp.resolve("Dome.flexwright"), "Dome")) {
            Step step = ModelFactory.eINSTANCE.createStep();
            session.execute("Plan", edit -> {
                Trial trial = ModelFactory.eINSTANCE.createTrial();
                trial.getSteps().add(step);
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
                for (PartRole role : List.of(PartRole.COMPONENT_A, PartRole.COMPONENT_B, PartRole.CATALYST, PartRole.PIGMENT, PartRole.FILLER)) {
                    MaterialUses.add(edit, step, role);
                }
                MaterialUses.plan(edit, step, new GramsOfParts(List.of(45.6789, 1.0049, 0.034567, 0.0, Double.NaN), null, Source.derived("parts")));
            });
            assertEquals(45.68, step.getUses().get(0).getPlanned());
            assertEquals(1.0, step.getUses().get(1).getPlanned());
            assertEquals(0.0346, step.getUses().get(2).getPlanned());
            assertEquals(0.0, step.getUses().get(3).getPlanned());
            assertNull(step.getUses().get(4).getPlanned());
        }
    }
}
