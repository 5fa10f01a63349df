package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.osgi.service.component.annotations.Component;

/** Puts the questions about durometer readings to the reference parts and control pieces; findings carry the id of the rule that asks. */
@Component(service = FindingRule.class)
public final class ReferenceReadingsRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "testing.reference-readings";

    private static final List<Pieces.Look> LOOKS = List.of(new ApparentHardnessRule(), new FewReadingsRule(), new DwellRule(), new WindowRule(), new ProtocolRule(), new GaugeScaleRule());

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Durometer readings on reference parts and control pieces";
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        LOOKS.forEach(look -> Pieces.ofProject(context.project(), look, out));
    }
}
