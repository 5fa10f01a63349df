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

    private void check(Step step, Printing d, Consumer<Finding> out) {
        Entered exposure = Entered.of("Exposure", d.getPlannedExposure(), d.getActualExposure());
        if (exposure == null || !positive(d.getIrradiance()) || !positive(d.getPenetrationDepth()) || !positive(d.getCriticalDose())
                || !positive(d.getLayerHeight())) {
            return;
        }
        WorkingCurve curve = new WorkingCurve(d.getPenetrationDepth(), d.getCriticalDose());
        double dose = d.getIrradiance() * exposure.value();
        double overCure = d.getOverCure() == null ? 0 : d.getOverCure();
        double needed = curve.dose(d.getLayerHeight() + overCure) / d.getIrradiance();
        double depth = dose > 0 ? curve.depth(dose) : 0;
        if (dose <= d.getCriticalDose()) {
            out.accept(finding(step, d, exposure, Severity.STOP, "dose.nothing", dose, 0, needed));
        } else if (depth < d.getLayerHeight()) {
            out.accept(finding(step, d, exposure, Severity.STOP, "dose.split", dose, depth, needed));
        } else if (depth < d.getLayerHeight() + overCure) {
            out.accept(finding(step, d, exposure, Severity.CAUTION, "dose.thin", dose, depth, needed));
        }
    }

    private static Finding finding(Step step, Printing d, Entered exposure, Severity severity, String key, double dose, double depth,
            double neededSeconds) {
        return new Finding(ID, severity, step.getId(), exposure.feature(),
                Message.of(DoseRule.class, key, Rounded.text(dose, "mJ/cm2"), Rounded.text(depth, "um"), Rounded.text(d.getLayerHeight(), "um"),
                        Rounded.text(d.getOverCure() == null ? 0 : d.getOverCure(), "um"), Rounded.text(d.getCriticalDose(), "mJ/cm2")),
                List.of(exposure.feature() + "=" + exposure.value(), "irradiance=" + d.getIrradiance(), "penetrationDepth=" + d.getPenetrationDepth(),
                        "criticalDose=" + d.getCriticalDose(), "layerHeight=" + d.getLayerHeight(), "overCure=" + d.getOverCure()),
                WorkingCurve.SOURCE, Message.of(DoseRule.class, "dose.remedy", Rounded.text(neededSeconds, "s")));
    }

    private static boolean positive(Double value) {
        return value != null && value > 0;
    }
}
