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
import org.flexwright.vatprint.data.Printing;
import org.osgi.service.component.annotations.Component;

/** An exposure that was found for another layer height. */
@Component(service = FindingRule.class)
public final class CopiedExposureRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "vatprint.copied-exposure";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Exposure copied from another layer height";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Printing> print : Steps.of(context.trial(), PrintStep.ID, Printing.class)) {
            Double found = print.details().getExposureForLayer();
            Double layer = print.details().getLayerHeight();
            if (found != null && layer != null && !found.equals(layer)) {
                out.accept(new Finding(ID, Severity.CAUTION, print.step().getId(), "exposureForLayer",
                        Message.of(CopiedExposureRule.class, found < layer ? "copied.thinner" : "copied.thicker", Rounded.text(found, "µm"),
                                Rounded.text(layer, "µm")),
                        List.of("exposureForLayer=" + found, "layerHeight=" + layer), WorkingCurve.SOURCE,
                        Message.of(CopiedExposureRule.class, "copied.remedy")));
            }
        }
    }
}
