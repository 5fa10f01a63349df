package org.flexwright.core.find.rules;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.flexwright.core.Source;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.AgeingState;
import org.flexwright.core.ageing.Drift;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.osgi.service.component.annotations.Component;

/** A reading of an ageing plan is due, or its time went by. */
@Component(service = FindingRule.class)
public final class AgeingDueRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.ageing-due";
    private static final Source SOURCE = Source.ownRecord("the ageing plan of this project");
    private static final double HOURS_PER_DAY = 24;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("ageing.title");
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (AgeingPlan plan : context.project().getAgeingPlans()) {
            if (Boolean.FALSE.equals(plan.getRemind()) || plan.getKey() == null || plan.getKey().getProperty() == null) {
                continue;
            }
            context.properties().find(plan.getKey().getProperty()).ifPresent(property -> check(context, plan, property, out));
        }
    }

    private void check(RuleContext context, AgeingPlan plan, PropertyDef property, Consumer<Finding> out) {
        List<AgeingCheck> checks = AgeingPlans.checks(plan, property, context.now());
        Map<AgeingPoint, List<AgeingCheck>> due = at(checks, AgeingState.DUE);
        Map<AgeingPoint, List<AgeingCheck>> missed = at(checks, AgeingState.MISSED);
        due.forEach((point, at) -> out.accept(finding(plan, property, point, at, Severity.CAUTION, "ageing.due")));
        missed.forEach((point, at) -> out.accept(finding(plan, property, point, at, Severity.NOTE, "ageing.missed")));
    }

    private static Map<AgeingPoint, List<AgeingCheck>> at(List<AgeingCheck> checks, AgeingState state) {
        return checks.stream().filter(c -> c.state() == state).collect(Collectors.groupingBy(AgeingCheck::point, LinkedHashMap::new, Collectors.toList()));
    }

    private Finding finding(AgeingPlan plan, PropertyDef property, AgeingPoint point, List<AgeingCheck> checks, Severity severity, String key) {
        String pieces = String.join(", ", checks.stream().map(c -> Names.piece(c.piece())).toList());
        List<String> rests = checks.stream().map(c -> "piece=" + c.piece().getId()).toList();
        return Say.finding(this, severity, plan, "points", key, rests, SOURCE, Drift.title(plan, property), pieces, AgeSpan.text(point.getDays() * HOURS_PER_DAY), AgeSpan.text(
                AgeingPlans.give(point) * HOURS_PER_DAY), checks.getFirst().due().atZone(ZoneOffset.UTC).toLocalDate().toString());
    }
}
