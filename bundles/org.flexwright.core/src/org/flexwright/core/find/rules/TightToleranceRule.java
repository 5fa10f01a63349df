package org.flexwright.core.find.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Limits;
import org.flexwright.model.Project;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.numerics.Interval;
import org.osgi.service.component.annotations.Component;

/** A target tighter than its gauge can see: than a display step, than the gauge's own error, or than readings on one piece spread. */
@Component(service = FindingRule.class)
public final class TightToleranceRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.tight-tolerance";
    /** Readings on one piece lie within twice their standard deviation about 19 times in 20. */
    private static final double COVERAGE = 2;
    private static final Source SOURCE = Source.commonPractice("a tolerance should be wider than what the gauge itself adds");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("tight.title");
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        List<TargetSheet> sheets = context.project().getTargetSheets();
        if (sheets.isEmpty()) {
            return;
        }
        for (Target target : sheets.get(sheets.size() - 1).getTargets()) {
            Interval limits = Limits.of(target);
            if (limits == null || target.getKey() == null || target.getKey().getProperty() == null || Double.isInfinite(limits.halfWidth())) {
                continue;
            }
            context.properties().find(target.getKey().getProperty()).flatMap(p -> finding(context.project(), target, p, limits.halfWidth())).ifPresent(out);
        }
    }

    private Optional<Finding> finding(Project project, Target target, PropertyDef property, double halfWidth) {
        GaugeRecord gauge = GaugeRecord.of(project, property);
        List<Double> sizes = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        add(sizes, keys, gauge.resolution(), "tight.resolution");
        add(sizes, keys, gauge.accuracy(), "tight.accuracy");
        add(sizes, keys, gauge.spread() * COVERAGE, "tight.spread");
        int worst = -1;
        for (int i = 0; i < sizes.size(); i++) {
            if (halfWidth < sizes.get(i) && (worst < 0 || sizes.get(i) > sizes.get(worst))) {
                worst = i;
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        String tolerance = FieldText.number(halfWidth, property.kind(), "");
        String size = FieldText.number(sizes.get(worst), property.kind(), "");
        return Optional.of(Say.finding(this, Severity.CAUTION, target, target.getRule() == TargetRule.NOMINAL ? "tolerance" : "low", keys.get(worst),
                List.of("tolerance=" + halfWidth, keys.get(worst) + "=" + sizes.get(worst)), SOURCE, property.title(), tolerance, size));
    }

    private static void add(List<Double> sizes, List<String> keys, double size, String key) {
        if (size > 0) {
            sizes.add(size);
            keys.add(key);
        }
    }
}
