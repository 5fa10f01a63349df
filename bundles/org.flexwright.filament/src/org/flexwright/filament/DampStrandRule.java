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
import org.flexwright.filament.data.Printing;
import org.osgi.service.component.annotations.Component;

/** A strand that has been out of the dry box too long. */
@Component(service = FindingRule.class)
public final class DampStrandRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "filament.damp-strand";

    private static final double USUAL_HOURS = 8;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Strand out of the dry box";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Printing> print : Steps.of(context.trial(), PrintStep.ID, Printing.class)) {
            Printing d = print.details();
            if (d.getHoursOut() != null && d.getHoursOut() > USUAL_HOURS) {
                double diameter = d.getStrandDiameter() == null ? WaterLeft.USUAL_DIAMETER : d.getStrandDiameter();
                double seconds = 3600 * d.getHoursOut();
                Estimate taken = WaterBand.published().of(rate -> 100 * (1 - rate.residual(diameter, WaterBand.ROOM, seconds)));
                out.accept(new Finding(ID, Severity.CAUTION, print.step().getId(), "hoursOut",
                        Message.of(DampStrandRule.class, "damp-strand", Rounded.text(d.getHoursOut(), "h"), Rounded.text(USUAL_HOURS, "h"),
                                Rounded.text(taken.low(), ""), Rounded.text(taken.high(), "%")),
                        List.of("hoursOut=" + d.getHoursOut(), "strandDiameter=" + diameter),
                        Source.commonPractice("8 h out of the dry box; uptake after " + WaterBand.DIFFUSIVITY_SOURCE),
                        Message.of(DampStrandRule.class, "damp-strand.remedy")));
            }
        }
    }
}
