package org.flexwright.cli;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.view.ReadingHints;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What belongs to readings, wherever they are put: on a trial's part, the reference part, a control piece. */
final class ReadOptions {
    @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a; flexwright plugin list names them.")
    String property;
    @Option(names = "--readings", required = true, description = "All single readings, separated by ;, e.g. \"49;50;48\", \">12N\", \"yes\".")
    String readings;
    @Option(names = "--session", description = "Code of the session.")
    String session;
    @Option(names = "--instrument", description = "Name of the gauge.")
    String instrument;
    @Option(names = "--at", description = "When; the session's time, else now.")
    String at;
    @Option(names = "--age", description = "Age at test, e.g. 24h, when the piece has no made time.")
    String age;
    @Option(names = "--piece-temperature", description = "Temperature of the piece, e.g. 23degC.")
    String pieceC;
    @Option(names = "--set", paramLabel = "FIELD=VALUE", description = "How it was read: a field of the measurement's details, e.g. edge=12mm, plies=2; repeat for more.")
    List<String> details = List.of();
    @Mixin
    TargetNoun.Conditions conditions = new TargetNoun.Conditions();

    private static final Pattern RUN_TOGETHER = Pattern.compile("\\s*[\\d.]+([\\s,/|]+[\\d.]+)+\\s*");

    private PropertyDef def;
    private PropertyKey key;
    private List<Reading> read;
    private Session at0;
    private Instrument gauge;
    private Instant when;
    private Double delay;
    private Double temperature;
    private MeasurementDetails held;
    private String note = "";
    private PropertyCatalogue properties;

    /** Reads all of it; throws UsageException on the first that is not accepted. */
    void read(CliServices services, Project project, Specimen piece) {
        properties = services.registries().properties();
        def = Find.property(properties, property);
        at0 = session == null ? null : Find.session(project, session);
        gauge = instrument == null ? null : Find.instrument(project, instrument);
        key = conditions.key(def, services);
        if (conditions.piece == null) {
            key.setPieceKind(piece.getPieceKind());
        }
        services.registries().redirect(key, piece.getThickness()).ifPresent(to -> {
            key.setProperty(to.property());
            def = Find.property(services.registries().properties(), to.property());
            note = to.note().text();
        });
        held = MeasurementDetails.read(services, def, details);
        Instant moment = services.clock().instant();
        read = switch (ReadingParser.parse(def, key, readings)) {
            case ReadingInput.Rejected no -> throw new UsageException(RUN_TOGETHER.matcher(readings).matches() ? "\"" + readings
                    + "\": several readings are separated by semicolons, like \"46;47;45.5\"." : no.sentence().text());
            case ReadingInput.Understood yes -> {
                if (yes.dwell() != null) {
                    key.setDwell(yes.dwell());
                }
                yield yes.readings().stream().map(r -> r.toReading(moment)).toList();
            }
        };
        Measurement probe = org.flexwright.model.ModelFactory.eINSTANCE.createMeasurement();
        probe.setAt(at0 != null && at0.getAt() != null ? at0.getAt() : moment);
        new Inputs().put("at", at).put("delayHours", age).put("pieceC", pieceC).fill(probe, services.clock());
        when = probe.getAt();
        delay = probe.getDelayHours();
        temperature = probe.getPieceC();
    }

    /** The session named; empty when none was. */
    Optional<Session> session() {
        return Optional.ofNullable(at0);
    }

    /** What was put on the piece, with what to know about it. */
    Reply reply(Reply reply, Specimen piece) {
        if (!note.isEmpty()) {
            reply.notice(note);
        }
        Measurement added = piece.getMeasurements().get(piece.getMeasurements().size() - 1);
        ReadingHints.of(def, gauge, added.getReadings()).forEach(hint -> reply.notice(hint.text()));
        Doubts.sentence(added, properties).ifPresent(doubt -> reply.notice(Doubts.word() + ": " + doubt));
        return ReadingReply.of(reply, def, added);
    }

    PropertyDef property() {
        return def;
    }

    Measurement add(Edit edit, Specimen piece) {
        Measurement measurement = Measurements.add(edit, piece, key, read, at0, gauge, when);
        held.write(edit, measurement);
        if (delay != null) {
            edit.set(measurement, ModelPackage.Literals.MEASUREMENT__DELAY_HOURS, delay);
        }
        if (temperature != null) {
            edit.set(measurement, ModelPackage.Literals.MEASUREMENT__PIECE_C, temperature);
        }
        return measurement;
    }
}
