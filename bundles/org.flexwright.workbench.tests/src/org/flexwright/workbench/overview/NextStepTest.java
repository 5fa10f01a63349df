package org.flexwright.workbench.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.Instant;

import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.overview.NextStep.Kind;
import org.flexwright.workbench.testkit.Ui;
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

    @Test
    void aReadingThatIsDueComesFirst() {
        ModelFactory make = ModelFactory.eINSTANCE;
        Project project = make.createProject();
        Part part = make.createPart();
        part.setCode("P1");
        Instant made = Instant.parse("2026-01-01T08:00:00Z");
        part.setMadeAt(made);
        AgeingPlan plan = make.createAgeingPlan();
        plan.setTitle("over age");
        PropertyKey key = make.createPropertyKey();
        key.setProperty("testing.mass");
        plan.setKey(key);
        plan.getSpecimens().add(part);
        AgeingPoint point = make.createAgeingPoint();
        point.setDays(7.0);
        plan.getPoints().add(point);
        project.getAgeingPlans().add(plan);
        var properties = Ui.projects().registries().properties();
        assertEquals(Kind.ADD_NEED, NextStep.of(project, properties, made.plusSeconds(86_400)).kind());
        NextStep due = NextStep.of(project, properties, made.plusSeconds(7 * 86_400));
        assertSame(plan, due.thing());
        assertEquals("To be read now, at an age of 7 d, give or take 25 h: P1 (over age).", due.sentence());
    }
}
