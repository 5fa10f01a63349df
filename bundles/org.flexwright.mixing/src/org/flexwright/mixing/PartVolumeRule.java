package org.flexwright.mixing;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.PartVolume;
import org.osgi.service.component.annotations.Component;

/** The volume of a part from the drawing and as measured: which of them is meant, when they lie apart. */
@Component(service = FindingRule.class)
public final class PartVolumeRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.part-volume";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Volume of a part: drawing and measurement disagree";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), WeighStep.ID, WeighDetails.class)) {
            Double drawn = found.details().getPartVolume();
            Double measured = found.details().getMeasuredVolume();
            if (drawn != null && measured != null && drawn > 0 && PartVolume.apart(drawn, measured)) {
                out.accept(new Finding(ID, Severity.CAUTION, found.step().getId(), "measuredVolume",
                        Say.VOLUME_APART.with(StepNames.of(found.step()), Figures.of(drawn, "ml"), Figures.of(measured, "ml"), Figures.percent(measured / drawn - 1)),
                        List.of("drawing " + Figures.of(drawn, "ml", 6), "measured " + Figures.of(measured, "ml", 6)),
                        Source.commonPractice("5 % apart is more than a workshop measures wrong"), Say.VOLUME_APART_REMEDY.with()));
            }
        }
    }
}
