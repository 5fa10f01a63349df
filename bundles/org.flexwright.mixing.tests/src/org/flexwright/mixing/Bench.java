package org.flexwright.mixing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.process.StepKinds;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;

/** Makes steps and asks rules, for tests. */
final class Bench {

    private Bench() {
    }

    static WeighDetails ratio(double a, double b) {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setRatioA(a);
        details.setRatioB(b);
        return details;
    }

    static Step step(String kind, EObject details, MaterialUse... uses) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setId("s-" + kind);
        step.setKind(kind);
        step.setTitle("Weigh the batch");
        step.setDetails(details);
        step.getUses().addAll(List.of(uses));
        return step;
    }

    static MaterialUse use(PartRole role, Double planned, double... weighed) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(planned);
        for (double net : weighed) {
            Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
            weighing.setNet(net);
            use.getWeighings().add(weighing);
        }
        return use;
    }

    static List<Finding> ask(FindingRule rule, Step... steps) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.getSteps().addAll(List.of(steps));
        List<Finding> found = new ArrayList<>();
        rule.check(new RuleContext(null, trial, null, StepKinds.of(new MixStep()), Instant.EPOCH), found::add);
        return found;
    }
}
