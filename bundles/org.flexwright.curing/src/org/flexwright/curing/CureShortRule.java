package org.flexwright.curing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.curing.data.CureBy;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.formula.Schedule;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** A cure that came to less than 80 % of the planned one, by equivalent time. Lamp cures are not judged by temperature. */
@Component(service = FindingRule.class)
public final class CureShortRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "curing.short";

    private static final double ENOUGH = 0.8;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Cured less than planned";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), CureStep.ID, CureDetails.class)) {
            CureDetails details = found.details();
            Optional<Schedule> planned = CureSchedules.planned(details).filter(s -> s.minutes() > 0);
            Optional<Schedule> actual = CureSchedules.actual(details);
            if (details.getBy() != CureBy.LAMP && planned.isPresent() && actual.isPresent()) {
                check(found.step(), details, planned.get(), actual.get()).ifPresent(out);
            }
        }
    }

    private static Optional<Finding> check(Step step, CureDetails details, Schedule planned, Schedule actual) {
        Estimate share = CureSchedules.share(actual, planned, details);
        if (share.likely() >= ENOUGH) {
            return Optional.empty();
        }
        double end = actual.stretches().get(actual.stretches().size() - 1).toC();
        double missing = CureSchedules.hours(planned, details, end).likely() - CureSchedules.hours(actual, details, end).likely();
        return Optional.of(new Finding(ID, Severity.CAUTION, step.getId(), "hours",
                Say.CURE_SHORT.with(StepNames.of(step), Figures.percent(share.likely()), Figures.percent(share.low()), Figures.percent(share.high())),
                List.of("planned " + text(planned), "actual " + text(actual)), share.source(),
                Say.CURE_SHORT_REMEDY.with(Figures.of(missing, "h", 2), Figures.of(end, "\u00b0C", 3))));
    }

    private static String text(Schedule schedule) {
        return schedule.stretches().stream().map(s -> Figures.of(s.minutes(), "min") + " to " + Figures.of(s.toC(), "\u00b0C")).toList().toString();
    }
}
