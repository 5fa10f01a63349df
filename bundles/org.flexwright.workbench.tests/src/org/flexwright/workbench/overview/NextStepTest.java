package org.flexwright.workbench.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.overview.NextStep.Kind;
import org.junit.jupiter.api.Test;

/** From an empty project to the decision, one step after the other. */
class NextStepTest {

    @Test
    void theStepsFollowTheWork() {
        ModelFactory make = ModelFactory.eINSTANCE;
        Project project = make.createProject();
        assertEquals(Kind.ADD_NEED, NextStep.of(project).kind());
        project.getNeeds().add(make.createNeed());
        assertEquals(Kind.ADD_REFERENCE, NextStep.of(project).kind());
        project.getReferenceParts().add(make.createReferencePart());
        assertEquals(Kind.ADD_TARGETS, NextStep.of(project).kind());
        TargetSheet sheet = make.createTargetSheet();
        project.getTargetSheets().add(sheet);
        assertSame(sheet, NextStep.of(project).thing());
        sheet.getTargets().add(make.createTarget());
        assertEquals(Kind.NEW_TRIAL, NextStep.of(project).kind());
        Trial trial = make.createTrial();
        trial.setCode("T01");
        trial.setState(TrialState.PLANNED);
        project.getTrials().add(trial);
        assertSame(trial, NextStep.of(project).thing());
        trial.setState(TrialState.MADE);
        assertEquals("Trial T01 was made and has no conclusion yet.", NextStep.of(project).sentence());
        trial.setConclusion("too soft");
        assertEquals(Kind.COMPARE, NextStep.of(project).kind());
    }

    @Test
    void aTrialBeingMadeComesBeforeAPlannedOne() {
        ModelFactory make = ModelFactory.eINSTANCE;
        Project project = make.createProject();
        project.getNeeds().add(make.createNeed());
        TargetSheet sheet = make.createTargetSheet();
        sheet.getTargets().add(make.createTarget());
        project.getTargetSheets().add(sheet);
        for (TrialState state : new TrialState[] {TrialState.PLANNED, TrialState.MAKING}) {
            Trial trial = make.createTrial();
            trial.setCode(state.getLiteral());
            trial.setState(state);
            project.getTrials().add(trial);
        }
        assertSame(project.getTrials().get(1), NextStep.of(project).thing());
    }
}
