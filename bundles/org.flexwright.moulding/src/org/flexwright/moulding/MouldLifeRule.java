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
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** A mould that has seen as many casts as its owner allows. */
@Component(service = FindingRule.class)
public final class MouldLifeRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "moulding.mould-life";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Casts against the own limit of the mould";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Steps.Detailed<Preparation> mould : Moulds.preparations(context.trial())) {
            Integer casts = mould.details().getCastsSoFar();
            Integer limit = mould.details().getCastsLimit();
            if (casts != null && limit != null && casts >= limit) {
                out.accept(new Finding(ID, Severity.CAUTION, mould.step().getId(), "castsSoFar",
                        Message.of(MouldLifeRule.class, "mould-life", casts, limit), List.of("castsSoFar=" + casts, "castsLimit=" + limit),
                        Source.ownRecord("the limit entered for this mould"), Message.of(MouldLifeRule.class, "mould-life.remedy")));
            }
        }
    }
}
