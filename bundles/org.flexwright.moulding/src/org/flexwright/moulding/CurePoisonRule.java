package org.flexwright.moulding;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** Addition-cure silicone into a mould whose face may poison its platinum catalyst. */
@Component(service = FindingRule.class)
public final class CurePoisonRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "moulding.cure-poison";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Mould that may poison the cure of addition silicone";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        if (!Moulds.castsAdditionSilicone(context.trial())) {
            return;
        }
        for (Steps.Detailed<Preparation> mould : Moulds.preparations(context.trial())) {
            if (Moulds.isVatPrinted(mould)) {
                checkVatPrint(mould, out);
            } else if (Moulds.isTinSilicone(mould)) {
                out.accept(finding(mould, Severity.STOP, "cure-poison.tin"));
            }
        }
    }

    private static void checkVatPrint(Steps.Detailed<Preparation> mould, Consumer<Finding> out) {
        switch (Moulds.treatment(mould.details())) {
            case UNKNOWN, NONE, WASHED -> out.accept(finding(mould, Severity.STOP, "cure-poison.fresh-print"));
            case BAKED, BARRIER_COAT -> out.accept(finding(mould, Severity.NOTE, "cure-poison.one-measure"));
            case BAKED_AND_COATED -> {
                // both usual measures were taken: nothing to say
            }
        }
    }

    private static Finding finding(Steps.Detailed<Preparation> mould, Severity severity, String key) {
        Preparation details = mould.details();
        String feature = details.getActualTreatment() == MouldTreatment.UNKNOWN ? "plannedTreatment" : "actualTreatment";
        return new Finding(ID, severity, mould.step().getId(), feature, Message.of(CurePoisonRule.class, key),
                List.of("mouldMaterial=" + details.getMouldMaterial(), feature + "=" + Moulds.treatment(details)),
                Source.commonPractice("sulphur, amines, organotin, phosphorus and fresh photopolymer moulds leave addition silicone tacky"),
                Message.of(CurePoisonRule.class, "cure-poison.remedy"));
    }
}
