package org.flexwright.vatprint;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.model.Step;
import org.flexwright.vatprint.data.PostCureMedium;
import org.flexwright.vatprint.data.PostCuring;
import org.osgi.service.component.annotations.Component;

/** Light on a part that still holds solvent, or in air. */
@Component(service = FindingRule.class)
public final class PostCureRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "vatprint.postcure";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Dry before post-cure, and out of the air";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<PostCuring> cure : Steps.of(context.trial(), PostCureStep.ID, PostCuring.class)) {
            checkDry(cure.step(), cure.details(), out);
            if (cure.details().getMedium() == PostCureMedium.AIR) {
                out.accept(finding(cure.step(), Severity.NOTE, "medium", "AIR", "postcure.air",
                        Source.commonPractice("oxygen leaves a tacky skin on some photopolymers"), "postcure.air-remedy"));
            }
        }
    }

    private static void checkDry(Step step, PostCuring d, Consumer<Finding> out) {
        Source source = Source.commonPractice("dry fully first: trapped solvent cracks or softens the part");
        Entered dried = Entered.of("DryMinutes", d.getPlannedDryMinutes(), d.getActualDryMinutes());
        if (Boolean.FALSE.equals(d.getMassSteady())) {
            out.accept(finding(step, Severity.CAUTION, "massSteady", "false", "postcure.mass-falls", source, "postcure.dry-remedy"));
        } else if (d.getMassSteady() == null && (dried == null || dried.value() == 0)) {
            out.accept(finding(step, Severity.CAUTION, dried == null ? "plannedDryMinutes" : dried.feature(), dried == null ? "none" : "0",
                    "postcure.no-drying", source, "postcure.dry-remedy"));
        }
    }

    private static Finding finding(Step step, Severity severity, String feature, String value, String key, Source source, String remedy) {
        return new Finding(ID, severity, step.getId(), feature, Message.of(PostCureRule.class, key), List.of(feature + "=" + value), source,
                Message.of(PostCureRule.class, remedy));
    }
}
