package org.flexwright.vatprint;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.model.Step;
import org.flexwright.vatprint.data.Printing;
import org.osgi.service.component.annotations.Component;

/** Light that does not cure a layer through, or not far enough into the one below. */
@Component(service = FindingRule.class)
public final class DoseRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "vatprint.dose";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Dose against what a layer needs";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Steps.of(context.trial(), PrintStep.ID, Printing.class).forEach(print -> check(print.step(), print.details(), out));
    }

    private static void check(Step step, Printing d, Consumer<Finding> out) {
        LayerDose light = LayerDose.of(d).orElse(null);
        if (light == null) {
            return;
        }
        if (light.depth() == 0) {
            out.accept(finding(step, d, light, Severity.STOP, "dose.nothing"));
        } else if (light.depth() < d.getLayerHeight()) {
            out.accept(finding(step, d, light, Severity.STOP, "dose.split"));
        } else if (light.depth() < d.getLayerHeight() + light.overCure()) {
            out.accept(finding(step, d, light, Severity.CAUTION, "dose.thin"));
        }
    }

    private static Finding finding(Step step, Printing d, LayerDose light, Severity severity, String key) {
        String feature = light.exposure().feature();
        return new Finding(ID, severity, step.getId(), feature,
                Message.of(DoseRule.class, key, Rounded.text(light.dose(), "mJ/cm²"), Rounded.text(light.depth(), "µm"),
                        Rounded.text(d.getLayerHeight(), "µm"), Rounded.text(light.overCure(), "µm"), Rounded.text(d.getCriticalDose(), "mJ/cm²")),
                List.of(feature + "=" + light.exposure().value(), "irradiance=" + d.getIrradiance(), "penetrationDepth=" + d.getPenetrationDepth(),
                        "criticalDose=" + d.getCriticalDose(), "layerHeight=" + d.getLayerHeight(), "overCure=" + d.getOverCure()),
                WorkingCurve.SOURCE, Message.of(DoseRule.class, "dose.remedy", Rounded.text(light.neededSeconds(), "s")));
    }
}
