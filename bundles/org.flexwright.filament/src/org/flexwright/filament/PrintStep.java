package org.flexwright.filament;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.filament.data.FilamentDataPackage;
import org.flexwright.filament.data.Printing;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Printing with soft filament. */
@Component(service = StepKind.class)
public final class PrintStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "filament.print";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Print the filament";
    }

    @Override
    public String summary() {
        return "Settings of the print, the strand's way from the drive wheel to the nozzle, and the mass that came out.";
    }

    @Override
    public EClass details() {
        return FilamentDataPackage.Literals.PRINTING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("filament.hot-end", Message.of(PrintStep.class, "prompt.hot-end.hazard"),
                Message.of(PrintStep.class, "prompt.hot-end.controls"), Source.commonPractice(), false),
                new HazardPrompt("filament.fumes", Message.of(PrintStep.class, "prompt.fumes.hazard"),
                        Message.of(PrintStep.class, "prompt.fumes.controls"),
                        Source.published("Azimi 2016 for particles and vapours of several filaments, soft ones not among the confirmed; NIOSH 2023 "
                                + "makerspace guide for controls"),
                        false));
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        List<StepAdvice> advice = new ArrayList<>();
        if (step.getDetails() instanceof Printing printing) {
            PushNeeded.of(printing).ifPresent(push -> advice.add(new StepAdvice("push", "Push needed",
                    Estimate.exact(push, printing.getPushForce() == null ? BucklingRule.SOURCE : Source.ownRecord("measured push")), "N", null)));
            BucklingRule.carried(printing).ifPresent(band -> advice.add(new StepAdvice("carried", "Free strand carries", band, "N", null)));
        }
        return advice;
    }
}
