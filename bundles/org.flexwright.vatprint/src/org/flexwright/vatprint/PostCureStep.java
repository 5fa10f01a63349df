package org.flexwright.vatprint;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.vatprint.data.VatprintDataPackage;
import org.osgi.service.component.annotations.Component;

/** Drying and post-curing a printed part. */
@Component(service = StepKind.class)
public final class PostCureStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "vatprint.postcure";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Dry and post-cure";
    }

    @Override
    public String summary() {
        return "The part dries fully, then gets light and warmth from all sides, out of the air where air leaves it tacky.";
    }

    @Override
    public EClass details() {
        return VatprintDataPackage.Literals.POST_CURING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(
                new HazardPrompt("vatprint.lamp", Message.of(PostCureStep.class, "prompt.lamp.hazard"),
                        Message.of(PostCureStep.class, "prompt.lamp.controls"), Source.commonPractice(), false),
                new HazardPrompt("vatprint.wet-lamp", Message.of(PostCureStep.class, "prompt.wet-lamp.hazard"),
                        Message.of(PostCureStep.class, "prompt.wet-lamp.controls"), Source.commonPractice(), false));
    }
}
