package org.flexwright.vatprint;

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
import org.flexwright.model.Step;
import org.flexwright.vatprint.data.WashSolvent;
import org.flexwright.vatprint.data.Washing;
import org.osgi.service.component.annotations.Component;

/** Washing too short, too long, or in a bath that leaves resin on the part. */
@Component(service = FindingRule.class)
public final class WashRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "vatprint.wash";

    private static final double SHORTEST_MINUTES = 1;
    private static final double LONGEST_MINUTES = 10;
    private static final double MOST_CARRIED_PER_CENT = 1;
    private static final Source SOAK = Source.commonPractice("short soak: solvent swells soft resin, and a hurried wash leaves it sticky");
    private static final Source RINSE = Source.derived("dilution over baths, (v / (v + V))^n; the limit of 1 % is common practice, no source");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Washing time and what the wash leaves";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Washing> wash : Steps.of(context.trial(), WashStep.ID, Washing.class)) {
            checkTime(wash.step(), wash.details(), out);
            checkCarryOver(wash.step(), wash.details(), out);
        }
    }

    private static void checkTime(Step step, Washing d, Consumer<Finding> out) {
        Entered minutes = Entered.of("Minutes", d.getPlannedMinutes(), d.getActualMinutes());
        if (minutes == null || d.getSolvent() == WashSolvent.WATER) {
            return;
        }
        if (minutes.value() < SHORTEST_MINUTES) {
            out.accept(finding(step, minutes, SOAK, Message.of(WashRule.class, "wash.short", Rounded.text(minutes.value(), "min"),
                    Rounded.text(SHORTEST_MINUTES, "min")), "wash.short-remedy"));
        } else if (minutes.value() > LONGEST_MINUTES) {
            out.accept(finding(step, minutes, SOAK, Message.of(WashRule.class, "wash.long", Rounded.text(minutes.value(), "min"),
                    Rounded.text(LONGEST_MINUTES, "min")), "wash.long-remedy"));
        }
    }

    private static void checkCarryOver(Step step, Washing d, Consumer<Finding> out) {
        if (d.getBaths() == null || d.getBathVolume() == null || d.getCarriedVolume() == null || !(d.getBathVolume() > 0)) {
            return;
        }
        double left = 100 * CarryOver.share(d.getCarriedVolume(), d.getBathVolume(), d.getBaths());
        if (left > MOST_CARRIED_PER_CENT) {
            out.accept(finding(step, new Entered("baths", d.getBaths()), RINSE,
                    Message.of(WashRule.class, "wash.carried", Rounded.text(left, "%"), Rounded.text(MOST_CARRIED_PER_CENT, "%")),
                    "wash.carried-remedy"));
        }
    }

    private static Finding finding(Step step, Entered value, Source source, Message message, String remedy) {
        return new Finding(ID, Severity.CAUTION, step.getId(), value.feature(), message, List.of(value.feature() + "=" + value.value(), message.key()),
                source, Message.of(WashRule.class, remedy));
    }
}
