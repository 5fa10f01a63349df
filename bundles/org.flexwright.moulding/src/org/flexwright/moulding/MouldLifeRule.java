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
import org.flexwright.model.Mould;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** A mould that has seen as many casts as its owner allows, or nearly. */
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

    /** The mould's own count wins over the one typed at the step that prepares it. A trial that is over is left alone: its mould has gone on since. */
    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        Mould mould = trial.getMould();
        if (mould != null && mould.getCastsLimit() != null) {
            boolean ahead = trial.getState() == TrialState.PLANNED || trial.getState() == TrialState.MAKING;
            int casts = org.flexwright.core.trial.Moulds.casts(mould);
            int left = mould.getCastsLimit() - casts;
            if (ahead && left <= org.flexwright.core.trial.Moulds.FEW) {
                String subject = Moulds.preparations(trial).stream().map(found -> found.step().getId()).findFirst().orElse(trial.getId());
                out.accept(new Finding(ID, Severity.CAUTION, subject, "castsSoFar",
                        left > 0 ? Message.of(MouldLifeRule.class, "mould-near", mould.getCode(), casts, mould.getCastsLimit(), left)
                                : Message.of(MouldLifeRule.class, "mould-over", mould.getCode(), casts, mould.getCastsLimit()),
                        List.of("mould=" + mould.getCode(), "casts=" + casts, "castsLimit=" + mould.getCastsLimit()), Source.ownRecord("casts counted and the limit entered for this mould"),
                        Message.of(MouldLifeRule.class, "mould-life.remedy")));
            }
            return;
        }
        for (Steps.Detailed<Preparation> preparation : Moulds.preparations(trial)) {
            Integer casts = preparation.details().getCastsSoFar();
            Integer limit = preparation.details().getCastsLimit();
            if (casts != null && limit != null && casts >= limit) {
                out.accept(new Finding(ID, Severity.CAUTION, preparation.step().getId(), "castsSoFar",
                        Message.of(MouldLifeRule.class, "mould-life", casts, limit), List.of("castsSoFar=" + casts, "castsLimit=" + limit),
                        Source.ownRecord("the limit entered for this mould"), Message.of(MouldLifeRule.class, "mould-life.remedy")));
            }
        }
    }
}
