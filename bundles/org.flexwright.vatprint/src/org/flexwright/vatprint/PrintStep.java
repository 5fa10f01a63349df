package org.flexwright.vatprint;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.VatprintDataPackage;
import org.osgi.service.component.annotations.Component;

/** Printing in a vat of light-cured resin. */
@Component(service = StepKind.class)
public final class PrintStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "vatprint.print";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Print in the vat";
    }

    @Override
    public String summary() {
        return "Layer by layer in light-cured resin: layer height, exposure, the lamp's irradiance and the resin's own working curve.";
    }

    @Override
    public EClass details() {
        return VatprintDataPackage.Literals.PRINTING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(
                new HazardPrompt("vatprint.resin", Message.of(PrintStep.class, "prompt.resin.hazard"), Message.of(PrintStep.class, "prompt.resin.controls"),
                        Source.fromMemory("hazard statements usual for photopolymer resins; your resin's data sheet counts"), true),
                new HazardPrompt("vatprint.lamp", Message.of(PrintStep.class, "prompt.lamp.hazard"), Message.of(PrintStep.class, "prompt.lamp.controls"),
                        Source.commonPractice(), false));
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        List<StepAdvice> advice = new ArrayList<>();
        if (step.getDetails() instanceof Printing printing) {
            LayerDose.of(printing).ifPresent(dose -> {
                advice.add(line("dose", "Dose of a layer", dose.dose(), "mJ/cm2"));
                advice.add(line("depth", "Cures", dose.depth(), "um"));
                advice.add(line("needed", "Exposure for layer and over-cure", dose.neededSeconds(), "s"));
            });
        }
        return advice;
    }

    private static StepAdvice line(String name, String label, double value, String unit) {
        return new StepAdvice(name, label, Estimate.exact(value, WorkingCurve.SOURCE), unit, null);
    }
}
