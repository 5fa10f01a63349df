package org.flexwright.testing.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.testing.Readings;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Pieces read with a durometer before they took the temperature of the room: at least one hour in it. */
@Component(service = FindingRule.class)
public final class ConditioningRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "testing.conditioning";
    private static final double LEAST_HOURS = 1;
    private static final Source SOURCE = Source.published("ISO 48-4:2018, cl. 8 (ISO 23529): at least 1 h at the temperature of the test");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Pieces read before they took the temperature of the room";
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Session session : read(context.project())) {
            Double hours = session.getConditioningHours();
            List<String> restsOn = List.of("conditioningHours=" + hours);
            String name = session.getCode() == null ? "" : session.getCode();
            if (hours == null) {
                out.accept(finding(Severity.NOTE, session, "conditioning.unknown", restsOn, name));
            } else if (hours < LEAST_HOURS) {
                out.accept(finding(Severity.CAUTION, session, "conditioning.short", restsOn, name, Rounded.text(hours, "h")));
            }
        }
    }

    private Finding finding(Severity severity, Session session, String key, List<String> restsOn, Object... arguments) {
        return new Finding(ID, severity, session.getId() == null ? "" : session.getId(), "conditioningHours", Say.message(key, arguments), restsOn, SOURCE,
                Say.message(key + ".remedy", arguments));
    }

    /** Sessions in which something other than a control piece was read with a durometer: a control piece lives in the room. */
    private static Set<Session> read(Project project) {
        List<Specimen> pieces = new ArrayList<>(project.getReferenceParts());
        project.getTrials().forEach(t -> pieces.addAll(t.getParts()));
        Set<Session> sessions = new LinkedHashSet<>();
        pieces.stream().flatMap(p -> p.getMeasurements().stream())
                .filter(m -> m.getSession() != null && m.getKey() != null && Readings.durometer(m.getKey().getProperty())).forEach(m -> sessions.add(m.getSession()));
        return sessions;
    }
}
