package org.flexwright.mixing;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.cause.Softer;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.SofterCauses;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.osgi.service.component.annotations.Component;

/** Softer although there is more filler in it: what the trial's own record makes likeliest. */
@Component(service = FindingRule.class)
public final class SofterRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.softer";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Softer with more filler";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Softer.of(context.trial(), context.properties()).ifPresent(softer -> {
            List<SofterCause> causes = SofterCauses.of(softer.trial(), softer.than(), context.kinds(), context.properties());
            if (!causes.isEmpty()) {
                SofterCause first = causes.getFirst();
                out.accept(new Finding(ID, Severity.CAUTION, context.trial().getId(), "", Say.SOFTER.with(softer.trial().getCode(), Figures.of(softer.hardness(), "", 3),
                        Figures.of(softer.before(), "", 3), softer.than().getCode(), Figures.of(softer.load(), "", 2), Figures.of(softer.loadBefore(), "", 2),
                        lower(first.title().text())),
                        List.of("hardness " + Figures.of(softer.hardness(), "", 4), "before " + Figures.of(softer.before(), "", 4), "cause " + first.id()), first.source(),
                        first.check()));
            }
        });
    }

    private static String lower(String title) {
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }
}
