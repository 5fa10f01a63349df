package org.flexwright.filament;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.filament.data.Drying;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Drying that leaves water in the strand, or is hot enough to glue its turns together. */
@Component(service = FindingRule.class)
public final class DryingRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "filament.drying";

    private static final double DRY_ENOUGH = 0.1;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Water left after drying";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Drying> drying : Steps.of(context.trial(), DryStep.ID, Drying.class)) {
            Entered temperature = Entered.of("Temperature", drying.details().getPlannedTemperature(), drying.details().getActualTemperature());
            if (temperature != null) {
                checkSoftening(drying.step(), drying.details(), temperature, out);
                checkWater(context.trial(), drying.step(), drying.details(), temperature, out);
            }
        }
    }

    private static void checkSoftening(Step step, Drying d, Entered temperature, Consumer<Finding> out) {
        if (d.getSoftening() != null && temperature.value() >= d.getSoftening()) {
            out.accept(new Finding(ID, Severity.CAUTION, step.getId(), temperature.feature(),
                    Message.of(DryingRule.class, "drying.sticks", Rounded.text(temperature.value(), "°C"), Rounded.text(d.getSoftening(), "°C")),
                    List.of(temperature.feature() + "=" + temperature.value(), "softening=" + d.getSoftening()),
                    Source.ownRecord("the temperature entered to stay below"), Message.of(DryingRule.class, "drying.sticks-remedy")));
        }
    }

    private static void checkWater(Trial trial, Step step, Drying d, Entered temperature, Consumer<Finding> out) {
        Entered hours = Entered.of("Hours", d.getPlannedHours(), d.getActualHours());
        Estimate left = WaterLeft.of(d, trial).orElse(null);
        if (left == null || left.high() <= DRY_ENOUGH) {
            return;
        }
        boolean surely = left.low() > DRY_ENOUGH;
        out.accept(new Finding(ID, surely ? Severity.CAUTION : Severity.NOTE, step.getId(), hours.feature(),
                Message.of(DryingRule.class, surely ? "drying.wet" : "drying.maybe-wet", Rounded.text(hours.value(), "h"),
                        Rounded.text(temperature.value(), "°C"), Rounded.text(100 * left.low(), ""), Rounded.text(100 * left.high(), "%")),
                List.of(hours.feature() + "=" + hours.value(), temperature.feature() + "=" + temperature.value(), "diffusivity=" + d.getDiffusivity(),
                        "activationEnergy=" + d.getActivationEnergy(), "strandDiameter=" + WaterLeft.diameter(trial)),
                left.source(), Message.of(DryingRule.class, "drying.remedy")));
    }
}
