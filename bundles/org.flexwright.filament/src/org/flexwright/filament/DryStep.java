package org.flexwright.filament;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.FilamentDataPackage;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Drying a spool before the print. */
@Component(service = StepKind.class)
public final class DryStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "filament.dry";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Dry the spool";
    }

    @Override
    public String summary() {
        return "Warm dry air takes water out of the strand, hot enough to be done in hours and cool enough that turns do not stick.";
    }

    @Override
    public EClass details() {
        return FilamentDataPackage.Literals.DRYING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("filament.dryer", Message.of(DryStep.class, "prompt.dryer.hazard"),
                Message.of(DryStep.class, "prompt.dryer.controls"), Source.commonPractice(), false));
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        return step.getDetails() instanceof Drying drying
                ? WaterLeft.of(drying, trial).map(left -> List.of(new StepAdvice("left", "Water left in the strand", left.times(100), "%", null))).orElse(List.of())
                : List.of();
    }
}
