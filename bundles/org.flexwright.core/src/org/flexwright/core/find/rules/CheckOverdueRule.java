package org.flexwright.core.find.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.trial.Instruments;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.osgi.service.component.annotations.Component;

/** A gauge whose check no longer holds, with the sessions in which it was read nevertheless. */
@Component(service = FindingRule.class)
public final class CheckOverdueRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.check-overdue";
    private static final Source SOURCE = Source.commonPractice("a gauge is checked against something known as often as its keeper decided");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("check.title");
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        LocalDate today = Instruments.day(context.now());
        for (Instrument gauge : context.project().getInstruments()) {
            if (gauge.getCheckEveryDays() == null) {
                continue;
            }
            Set<String> sessions = new LinkedHashSet<>();
            used(context.project(), gauge).stream().filter(s -> s.getAt() != null && Instruments.overdue(gauge, Instruments.day(s.getAt())))
                    .forEach(s -> sessions.add(s.getCode() == null ? Say.words("unnamed") : s.getCode()));
            if (Instruments.overdue(gauge, today)) {
                out.accept(finding(gauge, sessions));
            }
        }
    }

    private Finding finding(Instrument gauge, Set<String> sessions) {
        String name = Say.blank(gauge.getName()) ? Say.words("unnamed") : gauge.getName();
        String since = sessions.isEmpty() ? "" : Say.words("check.since", String.join(", ", sessions));
        List<String> restsOn = List.of("checkedOn=" + gauge.getCheckedOn(), "checkEveryDays=" + gauge.getCheckEveryDays(), "sessions=" + sessions);
        Severity severity = sessions.isEmpty() ? Severity.NOTE : Severity.CAUTION;
        return gauge.getCheckedOn() == null ? Say.finding(this, severity, gauge, "checkedOn", "check.never", restsOn, SOURCE, name, since)
                : Say.finding(this, severity, gauge, "checkedOn", "check.over", restsOn, SOURCE, name, since, gauge.getCheckedOn().toString(),
                        Instruments.due(gauge).orElseThrow().toString());
    }

    private static Set<Session> used(Project project, Instrument gauge) {
        List<Specimen> pieces = new ArrayList<>(project.getControlPieces());
        pieces.addAll(project.getReferenceParts());
        project.getTrials().forEach(t -> pieces.addAll(t.getParts()));
        Set<Session> used = new LinkedHashSet<>();
        for (Specimen piece : pieces) {
            for (Measurement m : piece.getMeasurements()) {
                if (m.getInstrument() == gauge && m.getSession() != null) {
                    used.add(m.getSession());
                }
            }
        }
        return used;
    }
}
