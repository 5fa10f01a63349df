package org.flexwright.core.find.rules;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.model.Session;
import org.osgi.service.component.annotations.Component;

/** The control piece of a session reads off by three points or more: all of that session's readings are in doubt. */
@Component(service = FindingRule.class)
public final class ControlOffRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.control-off";
    private static final Source SOURCE = Source.commonPractice("3 points or more on a kept piece: gauge, hand or room changed");

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
            for (PropertyDef property : context.properties().all()) {
                ControlReading.of(session, property).filter(c -> c.off(property)).ifPresent(c -> out.accept(finding(session, property, c)));
            }
        }
    }

    private Finding finding(Session session, PropertyDef property, ControlReading control) {
        return Say.finding(this, Severity.CAUTION, session, "controlPiece", control.difference() > 0 ? "control.high" : "control.low",
                List.of("property=" + property.id(), "now=" + control.median(), "before=" + control.before()), SOURCE,
                session.getCode() == null ? Say.words("unnamed") : session.getCode(), Say.name(control.piece()), FieldText.number(control.median(), property.kind(), ""),
                FieldText.number(control.before(), property.kind(), ""), FieldText.digits(Math.abs(control.difference())));
    }
}
