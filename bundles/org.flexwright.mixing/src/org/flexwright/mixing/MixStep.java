package org.flexwright.mixing;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Stirring A and B together: the clock starts at first contact. */
@Component(service = StepKind.class)
public final class MixStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "mixing.mix";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Mix";
    }

    @Override
    public String summary() {
        return "Stir until streaks are gone, scraping walls and bottom. The clock of the batch starts when A and B touch.";
    }

    @Override
    public EClass details() {
        return MixingDataPackage.Literals.MIX_DETAILS;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("mixing.heat", Say.PROMPT_HEAT.with(), Say.PROMPT_HEAT_CONTROL.with(), Source.commonPractice(), true));
    }
}
