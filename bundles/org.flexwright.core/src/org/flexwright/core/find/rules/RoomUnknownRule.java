package org.flexwright.core.find.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Session;
import org.osgi.service.component.annotations.Component;

/** A session in which something was made or read, without its room temperature. */
@Component(service = FindingRule.class)
public final class RoomUnknownRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.room-unknown";
    private static final Source SOURCE = Source.commonPractice("pot life, cure and hardness all change with the room");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("room.title");
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Set<Session> used = new HashSet<>();
        context.project().getTrials().forEach(trial -> {
            trial.getSteps().forEach(step -> used.add(step.getSession()));
            trial.getParts().forEach(part -> part.getMeasurements().forEach(m -> used.add(m.getSession())));
        });
        for (Session session : context.project().getSessions()) {
            if (session.getRoomC() == null && used.contains(session)) {
                out.accept(Say.finding(this, Severity.NOTE, session, "roomC", "room", List.of("roomC"), SOURCE,
                        session.getCode() == null ? Say.words("unnamed") : session.getCode()));
            }
        }
    }
}
