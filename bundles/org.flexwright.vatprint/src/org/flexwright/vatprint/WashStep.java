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
import org.flexwright.vatprint.data.WashSolvent;
import org.flexwright.vatprint.data.Washing;
import org.osgi.service.component.annotations.Component;

/** Washing uncured resin off. */
@Component(service = StepKind.class)
public final class WashStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "vatprint.wash";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Wash";
    }

    @Override
    public String summary() {
        return "Uncured resin comes off in one or more baths, quickly: solvent swells a soft part.";
    }

    @Override
    public EClass details() {
        return VatprintDataPackage.Literals.WASHING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        boolean alcohol = step.getDetails() instanceof Washing washing && washing.getSolvent() != WashSolvent.WATER;
        String key = alcohol ? "prompt.solvent" : "prompt.wash-water";
        return List.of(new HazardPrompt(alcohol ? "vatprint.solvent" : "vatprint.wash-water", Message.of(WashStep.class, key + ".hazard"),
                Message.of(WashStep.class, key + ".controls"), Source.commonPractice(), alcohol));
    }
}
