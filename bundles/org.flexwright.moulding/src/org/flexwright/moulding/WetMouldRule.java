package org.flexwright.moulding;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Step;
import org.flexwright.moulding.data.MouldMaterial;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** Polyurethane into a mould that may hold water: it turns into gas and uses up isocyanate. */
@Component(service = FindingRule.class)
public final class WetMouldRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "moulding.wet-mould";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Damp mould under polyurethane";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        if (Moulds.castsPolyurethane(context.trial())) {
            Moulds.preparations(context.trial()).forEach(mould -> check(mould.step(), mould.details(), out));
        }
    }

    private void check(Step step, Preparation details, Consumer<Finding> out) {
        if (!holdsWater(details.getMouldMaterial())) {
            return;
        }
        Entered dried = Entered.of("DryHours", details.getPlannedDryHours(), details.getActualDryHours());
        if (dried == null) {
            out.accept(finding(step, Severity.NOTE, "plannedDryHours", "wet-mould.not-said", "none"));
        } else if (dried.value() == 0) {
            out.accept(finding(step, Severity.CAUTION, dried.feature(), dried.isActual() ? "wet-mould.not-dried" : "wet-mould.not-planned",
                    "0"));
        }
    }

    /** True for what takes up water from air or washing. */
    static boolean holdsWater(MouldMaterial material) {
        return switch (material) {
            case VAT_PRINT, FILAMENT_PRINT, PLASTER, OTHER -> true;
            case METAL, SILICONE, UNKNOWN -> false;
        };
    }

    private static Finding finding(Step step, Severity severity, String feature, String key, String value) {
        return new Finding(ID, severity, step.getId(), feature, Message.of(WetMouldRule.class, key), List.of(feature + "=" + value),
                Source.commonPractice("a humid mould gives bubbles at the wall of a polyurethane part"),
                Message.of(WetMouldRule.class, "wet-mould.remedy"));
    }
}
