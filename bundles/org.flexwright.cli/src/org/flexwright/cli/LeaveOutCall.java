package org.flexwright.cli;

import java.util.List;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Reading;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A reading that does not count stays in the record, with its reason. */
@Command(name = "leave-out", description = "Leave a single reading out, with the reason; it stays in the record.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright trial leave-out T05 --part P1 --property mass --reading 2 --reason \"typed oz for g\"" })
final class LeaveOutCall extends TrialNoun.OneTrial {
    @Option(names = "--part", required = true, description = "Code of the part.")
    String part;
    @Option(names = "--property", required = true, description = "Id of the property or its title.")
    String property;
    @Option(names = "--reading", required = true, description = "Which one: its number from 1 among all readings of that property on that part.")
    int number;
    @Option(names = "--reason", required = true, description = "Why it does not count.")
    String reason;

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Trial trial = trial(session);
        Part piece = Find.part(trial, part);
        PropertyDef def = Find.property(services.registries().properties(), property);
        List<Measurement> measurements = piece.getMeasurements().stream().filter(m -> def.id().equals(m.getKey().getProperty())).toList();
        List<Reading> readings = measurements.stream().flatMap(m -> m.getReadings().stream()).toList();
        if (reason.isBlank()) {
            throw new UsageException("A reason is needed: say in a sentence why the reading does not count.");
        }
        if (number < 1 || number > readings.size()) {
            throw new UsageException(readings.isEmpty() ? "Nothing was read for " + def.title() + " on " + piece.getCode() + "."
                    : "There are readings 1 to " + readings.size() + " of " + def.title() + " on " + piece.getCode() + ", not " + number + ".");
        }
        Reading reading = readings.get(number - 1);
        session.execute("Leave out a reading of " + piece.getCode(), edit -> edit.set(reading, ModelPackage.Literals.READING__LEFT_OUT, reason.strip()));
        Reply reply = new Reply(id()).words("trial", trial.getCode()).words("part", piece.getCode()).words("left out", ReadingPrinter.print(def, reading));
        return ReadingReply.of(reply, def, (Measurement) reading.eContainer());
    }
}
