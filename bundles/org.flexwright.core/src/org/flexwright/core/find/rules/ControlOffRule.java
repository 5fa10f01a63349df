package org.flexwright.core.find.rules;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.model.Session;
import org.osgi.service.component.annotations.Component;

/** The control piece of a session reads off by more than it may: all of that session's readings are in doubt. */
@Component(service = FindingRule.class)
public final class ControlOffRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.control-off";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("control.title");
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Session session : context.project().getSessions()) {
            ControlReading.all(session, context.properties()).stream().filter(ControlReading::off).forEach(c -> out.accept(finding(session, c)));
        }
    }

    private Finding finding(Session session, ControlReading control) {
        return Say.finding(this, Severity.CAUTION, session, "controlPiece", "control",
                List.of("property=" + control.property().id(), "now=" + control.median(), "before=" + control.before(), "limit=" + control.limit()), control.source(),
                session.getCode() == null ? Say.words("unnamed") : session.getCode(), control.sentence(), Say.name(control.piece()));
    }
}
