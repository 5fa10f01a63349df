package org.flexwright.safety.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.safety.Say;
import org.flexwright.safety.SheetTicks;
import org.osgi.service.component.annotations.Component;

/**
 * Materials whose data sheet nobody ticked in this session. A stop for the step that runs or comes next, a caution for one that was done
 * without; a plan without a session is left alone.
 */
@Component(service = FindingRule.class)
public final class SheetRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "safety.sheet-not-read";

    private static final Source SOURCE = Source.commonPractice("data sheet read and ticked with date and revision before work starts");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Data sheet not read in this session";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        if (trial.getState() == TrialState.DISCARDED) {
            return;
        }
        Step next = next(trial);
        Set<SheetTicks.Missing> said = new HashSet<>();
        for (Step step : trial.getSteps()) {
            Severity severity = severity(step, next);
            if (severity != null) {
                SheetTicks.missing(context.project(), step).stream().filter(said::add).forEach(missing -> out.accept(finding(trial, step, missing, severity)));
            }
        }
    }

    private static Severity severity(Step step, Step next) {
        return switch (step.getState()) {
            case RUNNING -> Severity.STOP;
            case PLANNED -> step == next ? Severity.STOP : null;
            case DONE -> Severity.CAUTION;
            case SKIPPED -> null;
        };
    }

    /** The first step still to do, once work is about to begin: the trial is being made or the step has its session. */
    private static Step next(Trial trial) {
        for (Step step : trial.getSteps()) {
            if (step.getState() == StepState.PLANNED) {
                return trial.getState() == TrialState.MAKING || step.getSession() != null ? step : null;
            }
        }
        return null;
    }

    private static Finding finding(Trial trial, Step step, SheetTicks.Missing missing, Severity severity) {
        String name = missing.lot() == null ? missing.grade().getCode() : missing.grade().getCode() + "/" + missing.lot().getCode();
        String key = severity == Severity.STOP ? "sheet.stop" : "sheet.done";
        String remedy = missing.session() == null ? "sheet.remedy.session" : missing.lot() == null ? "sheet.remedy.lot" : "sheet.remedy";
        String session = missing.session() == null ? "" : missing.session().getCode();
        return new Finding(ID, severity, step.getId(), "uses", Say.message(key, trial.getCode(), step.getTitle(), name),
                List.of("step=" + step.getState(), "material=" + name, "session=" + session), SOURCE, Say.message(remedy, name, session));
    }
}
