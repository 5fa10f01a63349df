package org.flexwright.moulding;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.process.StepKinds;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Makes trials for the tests of rules. */
final class Bench {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private Bench() {
    }

    static Trial trial(Step... steps) {
        Trial trial = MODEL.createTrial();
        trial.getSteps().addAll(List.of(steps));
        return trial;
    }

    static Step step(String kind, EObject details, MaterialUse... uses) {
        Step step = MODEL.createStep();
        step.setId("s-" + kind);
        step.setKind(kind);
        step.setDetails(details);
        step.getUses().addAll(List.of(uses));
        return step;
    }

    static MaterialUse use(PartRole role, String family, double grams) {
        MaterialGrade grade = MODEL.createMaterialGrade();
        grade.setFamily(family);
        MaterialUse use = MODEL.createMaterialUse();
        use.setRole(role);
        use.setGrade(grade);
        use.setPlanned(grams);
        return use;
    }

    static List<Finding> ask(FindingRule rule, Trial trial) {
        List<Finding> found = new ArrayList<>();
        rule.check(new RuleContext(null, trial, null, StepKinds.of(new FillStep()), Instant.EPOCH), found::add);
        // words of every finding are opened here, so that a missing key fails the test that meets it
        found.forEach(finding -> {
            finding.message().text();
            finding.remedy().text();
        });
        return found;
    }
}
