package org.flexwright.moulding;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.MouldingDataPackage;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** Preparing the mould: treatment of its face, drying, warming, release. */
@Component(service = StepKind.class)
public final class PrepareStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "moulding.prepare";

    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Prepare the mould";
    }

    @Override
    public String summary() {
        return "What the mould is made of, how its face was treated, how long it dried, how warm it is and what releases the part.";
    }

    @Override
    public EClass details() {
        return MouldingDataPackage.Literals.PREPARATION;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        List<HazardPrompt> prompts = new java.util.ArrayList<>();
        if (step.getDetails() instanceof Preparation preparation) {
            MouldTreatment treatment = Moulds.treatment(preparation);
            if (treatment == MouldTreatment.BAKED || treatment == MouldTreatment.BAKED_AND_COATED) {
                prompts.add(prompt("moulding.hot-mould", "prompt.hot-mould", false));
            }
            if (treatment == MouldTreatment.BARRIER_COAT || treatment == MouldTreatment.BAKED_AND_COATED || hasText(preparation.getRelease())) {
                prompts.add(prompt("moulding.spray", "prompt.spray", true));
            }
        }
        return prompts;
    }

    private static boolean hasText(String text) {
        return text != null && !text.isBlank();
    }

    private static HazardPrompt prompt(String id, String key, boolean needsSheet) {
        return new HazardPrompt(id, Message.of(PrepareStep.class, key + ".hazard"), Message.of(PrepareStep.class, key + ".controls"),
                Source.commonPractice(), needsSheet);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double dry = step.getDetails() instanceof Preparation preparation ? preparation.getPlannedDryHours() : null;
        StepTime hands = StepTime.hands(step.getPlannedDuration(), StepTime.usual(10, 20, 60));
        return Optional.of(dry == null ? hands : new StepTime(hands.hands(), MINUTES_AN_HOUR * dry, null));
    }
}
