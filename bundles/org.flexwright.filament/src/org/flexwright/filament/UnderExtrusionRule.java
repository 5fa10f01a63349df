package org.flexwright.filament;

import java.util.List;
import java.util.function.Consumer;

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

/** A print that weighs less, or more, than the strands it should be made of. */
@Component(service = FindingRule.class)
public final class UnderExtrusionRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "filament.extrusion";

    private static final double USUAL_SHARE = 0.05;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Mass of the print against what was to be laid";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Printing> print : Steps.of(context.trial(), PrintStep.ID, Printing.class)) {
            Double planned = print.details().getPlannedMass();
            Double actual = print.details().getActualMass();
            if (planned == null || actual == null || !(planned > 0) || !(actual > 0)) {
                continue;
            }
            double difference = actual / planned - 1;
            if (Math.abs(difference) > USUAL_SHARE) {
                boolean under = difference < 0;
                out.accept(new Finding(ID, under ? Severity.CAUTION : Severity.NOTE, print.step().getId(), "actualMass",
                        Message.of(UnderExtrusionRule.class, under ? "extrusion.under" : "extrusion.over", Rounded.text(actual, "g"),
                                Rounded.text(100 * Math.abs(difference), "%"), Rounded.text(planned, "g")),
                        List.of("plannedMass=" + planned, "actualMass=" + actual),
                        Source.commonPractice("a print within 5 % of the mass that was to be laid"),
                        Message.of(UnderExtrusionRule.class, under ? "extrusion.under-remedy" : "extrusion.over-remedy",
                                Rounded.text(planned / actual, ""))));
            }
        }
    }
}
