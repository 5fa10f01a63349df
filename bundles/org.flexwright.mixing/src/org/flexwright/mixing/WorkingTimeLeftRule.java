package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.WorkingTimeRule;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** A working time needs its definition, and filling must end well before it. */
@Component(service = FindingRule.class)
public final class WorkingTimeLeftRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.working-time";

    private static final Source STANDARD = Source.published("EN 14022:2010, scope: five methods, end of working time freely chosen");
    private static final Source RESERVE = Source.commonPractice("1.3 times the filling time should be left");
    private static final String FILL = "moulding.fill";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Working time: what ends it, and is it enough";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), MixStep.ID, MixDetails.class)) {
            if (found.details().getWorkingTime() != null) {
                definition(found.step(), found.details()).ifPresent(out);
                WorkingTimes.of(context.trial(), context.kinds()).flatMap(time -> enough(context.trial(), found.step(), time)).ifPresent(out);
            }
            if (Boolean.FALSE.equals(found.details().getScraped())) {
                out.accept(new Finding(ID, Severity.CAUTION, found.step().getId(), "scraped", Say.SCRAPED.with(StepNames.of(found.step())),
                        List.of("not scraped"), Source.commonPractice(), Say.SCRAPED_REMEDY.with()));
            }
        }
    }

    private static Optional<Finding> definition(Step step, MixDetails details) {
        List<String> missing = new ArrayList<>();
        String feature = "workingTimeRule";
        if (details.getWorkingTimeC() == null) {
            missing.add(0, "the temperature");
            feature = "workingTimeC";
        }
        if (details.getWorkingTimeMass() == null) {
            missing.add(0, "the mass in the cup");
            feature = "workingTimeMass";
        }
        if (details.getWorkingTimeRule() == WorkingTimeRule.UNSTATED) {
            missing.add(0, "what ends it");
            feature = "workingTimeRule";
        }
        String minutes = Figures.of(details.getWorkingTime(), "min");
        return missing.isEmpty() ? Optional.empty()
                : Optional.of(new Finding(ID, Severity.NOTE, step.getId(), feature,
                        Say.TIME_RULE.with(StepNames.of(step), minutes, String.join(", ", missing)), List.of("working time " + minutes), STANDARD,
                        Say.TIME_RULE_REMEDY.with()));
    }

    /** Only where the plan says when filling starts and how long it takes; counted from first contact, against the time in this room and cup. */
    private static Optional<Finding> enough(Trial trial, Step mix, WorkingTime time) {
        double likely = time.minutes().likely();
        for (Step step : trial.getSteps()) {
            Double start = step.getPlannedStart();
            Double needs = step.getPlannedDuration();
            if (FILL.equals(step.getKind()) && start != null && needs != null
                    && (start + WorkingTime.RESERVE * needs > likely || start + needs > time.minutes().low())) {
                String latest = Figures.of(Math.max(0, Math.min(likely - WorkingTime.RESERVE * needs, time.minutes().low() - needs)), "min", 3);
                return Optional.of(new Finding(ID, start + needs > likely ? Severity.STOP : Severity.CAUTION, mix.getId(), "workingTime",
                        Say.TIME_LEFT.with(StepNames.of(mix), Figures.of(needs, "min"), Figures.of(start, "min"), time.text()),
                        List.of("filling from " + Figures.of(start, "min"), "for " + Figures.of(needs, "min"), "working time " + time.text()),
                        RESERVE, Say.TIME_LEFT_REMEDY.with(latest)));
            }
        }
        return Optional.empty();
    }
}
