package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Session;

/**
 * Sessions whose control piece read off, and with them every reading of those sessions: gauge, hand or room may have been wrong that day.
 * Computed from the model, never stored; it changes no number.
 */
public final class Doubts {
    private final Map<Session, ControlReading> off;

    private Doubts(Map<Session, ControlReading> off) {
        this.off = off;
    }

    /** All doubtful sessions of a project. */
    public static Doubts of(Project project, PropertyCatalogue properties) {
        Map<Session, ControlReading> off = new LinkedHashMap<>();
        project.getSessions().forEach(session -> of(session, properties).ifPresent(control -> off.put(session, control)));
        return new Doubts(off);
    }

    /** How the session's control piece was off, the worst property if there are several; empty when it was not, or was not read. */
    public static Optional<ControlReading> of(Session session, PropertyCatalogue properties) {
        return session == null ? Optional.empty() : ControlReading.all(session, properties).stream().filter(ControlReading::off)
                .max(Comparator.comparingDouble(c -> Math.abs(c.difference()) / c.limit()));
    }

    /** The same for one of the project's sessions; null stands for none. */
    public Optional<ControlReading> of(Session session) {
        return Optional.ofNullable(session).map(off::get);
    }

    /** True when one of these sessions is in doubt. */
    public boolean any(List<Session> sessions) {
        return sessions.stream().anyMatch(off::containsKey);
    }

    /** The word that stands beside what was read in a doubtful session. */
    public static String word() {
        return Case.words("doubt.word");
    }

    /** The word beside a measurement; empty when its session is not in doubt. */
    public String word(Measurement measurement) {
        return of(measurement.getSession()).isPresent() ? word() : "";
    }

    /** What to know of a measurement read in a doubtful session, one sentence; empty when its session is not in doubt. */
    public static Optional<String> sentence(Measurement measurement, PropertyCatalogue properties) {
        return of(measurement.getSession(), properties).map(c -> Case.words("doubt.measurement", name(c.session()), c.sentence()));
    }

    /** A note for each doubtful session in which one of these parts was read. */
    public List<Message> notes(List<PartValue> parts) {
        List<Message> notes = new ArrayList<>();
        off.forEach((session, control) -> {
            List<String> codes = parts.stream().filter(p -> p.sessions().contains(session)).map(PartValue::part).toList();
            if (!codes.isEmpty()) {
                notes.add(Case.message("doubt.parts", String.join(", ", codes), name(session), control.sentence()));
            }
        });
        return notes;
    }

    /** A judgement that says besides which of the parts it rests on were read in doubtful sessions. The verdict stays what it is. */
    public Judgement on(Judgement judgement, List<PartValue> parts) {
        List<Message> doubts = notes(parts);
        if (doubts.isEmpty()) {
            return judgement;
        }
        List<Message> notes = new ArrayList<>(doubts);
        notes.addAll(judgement.notes());
        return new Judgement(judgement.verdict(), judgement.interval(), judgement.n(), judgement.mean(), judgement.difference(), judgement.moreParts(), judgement.reason(),
                notes, judgement.rejected(), judgement.failed());
    }

    private static String name(Session session) {
        return session.getCode() == null ? Case.words("control.unnamed") : session.getCode();
    }
}
