package org.flexwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.gauge.GaugeAnalysis;
import org.flexwright.core.gauge.GaugeOutcome;
import org.flexwright.core.gauge.GaugeResult;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.gauge.GaugeTable;
import org.flexwright.core.gauge.GaugeViews;
import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Reading;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gauge studies. */
@Command(name = "gauge", description = "Gauge studies: how much of the spread of readings is the gauge, the hands that hold it, the pieces.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright gauge add --property shore-a --instrument \"hand durometer\" --pieces \"P1;P2;P3\" --persons \"Ana;Ben\"" },
        subcommands = { GaugeNoun.Add.class, GaugeNoun.Read.class, GaugeNoun.Fill.class, GaugeNoun.TakeBack.class, GaugeNoun.LeaveOut.class, GaugeNoun.Show.class, GaugeNoun.Keep.class })
final class GaugeNoun extends Noun {
    private static final int BAR = 30;
    /** Longer files are no gauge study. */
    private static final int MOST_LINES = 5000;

    /** A verb about one study. */
    abstract static class OneStudy extends ProjectCall {
        @Parameters(paramLabel = "STUDY", description = "Code of the gauge study.")
        String code;

        protected final GaugeStudy study(ProjectSession session) {
            return Find.gaugeStudy(session.project(), code);
        }
    }

    @Command(name = "add", description = "Begin a gauge study.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge add --property shore-a --instrument \"hand durometer\" --pieces \"P1;P2;P3\" --persons \"Ana;Ben\" --tolerance 6" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", description = "Short code; the next free one when left out.")
        String code;
        @Option(names = "--title", description = "What it is about.")
        String title;
        @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a; flexwright plugin list names them.")
        String property;
        @Option(names = "--instrument", description = "Name of the gauge.")
        String instrument;
        @Option(names = "--pieces", description = "Names of the pieces, separated by ;. They may come later, with their readings.")
        String pieces = "";
        @Option(names = "--persons", description = "Names or initials of those who read, separated by ;.")
        String persons = "";
        @Option(names = "--tolerance", description = "Upper less lower limit the readings are to tell apart.")
        String tolerance;
        @Option(names = "--at", description = "When; now when left out.")
        String at;
        @Mixin
        TargetNoun.Conditions conditions = new TargetNoun.Conditions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            PropertyDef def = Find.property(services.registries().properties(), property);
            Instrument gauge = instrument == null ? null : Find.instrument(session.project(), instrument);
            GaugeStudy study = ModelFactory.eINSTANCE.createGaugeStudy();
            new Inputs().put("code", code).put("title", title).put("at", at).fill(study, services.clock());
            Double width = Typed.number(def, tolerance);
            if (width != null && !(width > 0)) {
                throw new UsageException("The width of the target must be above 0, not " + tolerance + ".");
            }
            study.setTolerance(width);
            study.setInstrument(gauge);
            study.setKey(conditions.key(def, services));
            session.execute("Begin a gauge study", edit -> {
                GaugeStudies.add(edit, study);
                names(persons).forEach(who -> GaugeStudies.addPerson(edit, study, who));
                names(pieces).forEach(piece -> GaugeStudies.addPiece(edit, study, piece));
            });
            return new Reply(id()).words("study", study.getCode()).words("property", def.id());
        }

        private static List<String> names(String typed) {
            return Stream.of(typed.split(";")).map(String::strip).filter(name -> !name.isEmpty()).toList();
        }
    }

    @Command(name = "read", description = "Put readings of one person on one piece.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge read G1 --piece P1 --who Ana --readings \"49;50;48.5\"" })
    static final class Read extends OneStudy {
        @Option(names = "--piece", required = true, description = "Name of the piece.")
        String piece;
        @Option(names = "--who", description = "Who read it.")
        String who = "";
        @Option(names = "--readings", required = true, description = "All readings, separated by ;.")
        String readings;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            GaugeStudy study = study(session);
            PropertyDef def = property(services, study);
            List<Reading> read = readings(services, def, readings, piece + (who.isBlank() ? "" : " by " + who));
            session.execute("Read " + piece + " for " + study.getCode(), edit -> GaugeStudies.read(edit, study, piece, who, read));
            return shown(new Reply(id()).words("study", study.getCode()), study, def);
        }
    }

    @Command(name = "fill", description = "Put in a whole table of readings: a line for each piece and person, piece;who;reading;reading...", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge fill G1 readings.csv", "A file called - is what comes in at standard input." })
    static final class Fill extends OneStudy {
        @Parameters(paramLabel = "FILE", description = "The file, separated by ; or tabs or, where there is neither, by commas.")
        Path file;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            GaugeStudy study = study(session);
            PropertyDef def = property(services, study);
            record Row(String piece, String who, List<Reading> readings) {
            }
            List<Row> rows = new ArrayList<>();
            int number = 0;
            for (String line : TypedLines.of(services, Cli.of(spec).in(), file.toString(), MOST_LINES, "a gauge study has one for each piece and person")) {
                number++;
                if (line.isBlank()) {
                    continue;
                }
                String separator = line.contains(";") ? ";" : line.contains("\t") ? "\t" : ",";
                String[] cells = line.split(separator);
                if (cells.length < 3) {
                    throw new UsageException("Line " + number + " of " + file + " has " + Words.count(cells.length, "column") + ": there must be three or more, piece;who;reading;reading.");
                }
                String typed = Stream.of(cells).skip(2).map(String::strip).filter(cell -> !cell.isEmpty()).collect(Collectors.joining(";"));
                rows.add(new Row(cells[0].strip(), cells[1].strip(), readings(services, def, typed, "line " + number + " of " + file)));
            }
            if (rows.isEmpty()) {
                throw new UsageException("There is no line in " + file + ": one for each piece and person is needed, piece;who;reading;reading.");
            }
            session.execute("Fill " + study.getCode(), edit -> rows.forEach(row -> GaugeStudies.read(edit, study, row.piece, row.who, row.readings)));
            return shown(new Reply(id()).words("study", study.getCode()), study, def);
        }
    }

    @Command(name = "take-back", description = "Take the last reading of one person on one piece back.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge take-back G1 --piece P1 --who Ana" })
    static final class TakeBack extends OneStudy {
        @Option(names = "--piece", required = true, description = "Name of the piece.")
        String piece;
        @Option(names = "--who", description = "Who read it.")
        String who = "";

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            GaugeStudy study = study(session);
            GaugeCell cell = GaugeTable.of(study).cell(piece, who).filter(c -> !c.getReadings().isEmpty()).orElseThrow(() -> new UsageException("Nothing was read on " + piece + (who
                    .isBlank() ? "" : " by " + who) + " in " + study.getCode() + "."));
            session.execute("Take a reading of " + piece + " back", edit -> GaugeStudies.takeBack(edit, cell));
            return shown(new Reply(id()).words("study", study.getCode()), study, property(services, study));
        }
    }

    @Command(name = "leave-out", description = "Leave a single reading out, with the reason; it stays in the record.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge leave-out G1 --piece P1 --who Ana --reading 2 --reason \"slipped\"" })
    static final class LeaveOut extends OneStudy {
        @Option(names = "--piece", required = true, description = "Name of the piece.")
        String piece;
        @Option(names = "--who", description = "Who read it.")
        String who = "";
        @Option(names = "--reading", required = true, description = "Which one: its number from 1 among all readings of that person on that piece.")
        int number;
        @Option(names = "--reason", required = true, description = "Why it does not count.")
        String reason;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            GaugeStudy study = study(session);
            List<Reading> all = GaugeTable.of(study).readings(piece, who);
            if (number < 1 || number > all.size()) {
                throw new UsageException(all.isEmpty() ? "Nothing was read on " + piece + (who.isBlank() ? "" : " by " + who) + " in " + study.getCode() + "." : "There are readings 1 to " + all.size()
                        + " on " + piece + (who.isBlank() ? "" : " by " + who) + ", not " + number + ".");
            }
            session.execute("Leave out a reading of " + piece, edit -> GaugeStudies.leaveOut(edit, all.get(number - 1), reason));
            return shown(new Reply(id()).words("study", study.getCode()), study, property(services, study));
        }
    }

    @Command(name = "show", aliases = "list", description = "Show a gauge study with its result, or all studies.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright gauge show G1" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "STUDY", arity = "0..1", description = "Code of the gauge study.")
        String code;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<GaugeStudy> all = code == null ? session.project().getGaugeStudies() : List.of(Find.gaugeStudy(session.project(), code));
            all.forEach(study -> shown(reply, study, property(services, study)));
            if (all.isEmpty()) {
                reply.line("There is no gauge study yet: flexwright gauge add begins one.");
            }
            return reply;
        }
    }

    @Command(name = "keep", description = "Keep the study's repeatability as the own spread of its gauge; verdicts and budgets use it and name it.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright gauge keep G1" })
    static final class Keep extends OneStudy {
        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            GaugeStudy study = study(session);
            switch (GaugeAnalysis.of(study, property(services, study))) {
                case GaugeOutcome.Refused no -> throw new UsageException(no.sentence().text());
                case GaugeResult result -> {
                    session.execute("Keep the spread of " + study.getCode(), edit -> GaugeStudies.keepWithGauge(edit, result));
                    Instrument gauge = study.getInstrument();
                    String unit = gauge.getUnit() == null ? "" : gauge.getUnit();
                    return new Reply(id()).words("gauge", gauge.getName()).result("spread", Value.number(gauge.getSpread(), unit, gauge.getSpreadFrom())).line(gauge.getName()
                            + ": own spread " + FieldText.digits(gauge.getSpread()) + Words.tail(" ", unit) + ", from " + gauge.getSpreadFrom() + ".");
                }
            }
        }
    }

    private static PropertyDef property(CliServices services, GaugeStudy study) {
        String id = study.getKey() == null ? null : study.getKey().getProperty();
        if (id == null) {
            throw new UsageException(study.getCode() + " does not say what was read: give its property in the window, or begin another study.");
        }
        return services.registries().findProperty(id).orElseThrow(() -> new UsageException("The plugin that knows " + id + " is not here: " + study.getCode() + " can only be kept."));
    }

    private static List<Reading> readings(CliServices services, PropertyDef def, String typed, String where) {
        return switch (ReadingParser.parse(def, typed)) {
            case ReadingInput.Understood yes -> yes.readings().stream().map(r -> r.toReading(services.clock().instant())).toList();
            case ReadingInput.Rejected no -> throw new UsageException(where + ": " + no.sentence().text());
        };
    }

    private static Reply shown(Reply reply, GaugeStudy study, PropertyDef def) {
        GaugeTable table = GaugeTable.of(study);
        reply.line(study.getCode() + Words.tail("  ", study.getTitle()) + ": " + def.title() + (study.getInstrument() == null ? ", no gauge named" : ", " + study.getInstrument().getName()) + Words.tail(", in ", def.kind().unit().display()) + ", "
                + Words.count(table.pieces().size(), "piece") + ", " + Words.count(table.persons().size(), "person"));
        int widest = table.pieces().stream().mapToInt(String::length).max().orElse(0);
        for (String piece : table.pieces()) {
            reply.line("  " + piece + " ".repeat(widest - piece.length()) + "  " + table.persons().stream().map(who -> (who.isEmpty() ? "" : who + ": ") + (table.readings(piece, who).isEmpty() ? "–" : table.readings(
                    piece, who).stream().map(r -> number(def, r) + (r.getLeftOut() == null ? "" : " (left out)")).collect(Collectors.joining("; ")))).collect(Collectors.joining("   ")));
        }
        switch (GaugeAnalysis.of(study, def)) {
            case GaugeOutcome.Refused no -> reply.line(no.sentence().text());
            case GaugeResult result -> result(reply, result);
        }
        return reply;
    }

    /** A reading without its unit, which stands above the table. */
    private static String number(PropertyDef def, Reading reading) {
        String unit = def.kind().unit().display();
        String printed = ReadingPrinter.print(def, reading);
        return !unit.isEmpty() && printed.endsWith(unit) ? printed.substring(0, printed.length() - unit.length()).strip() : printed;
    }

    private static void result(Reply reply, GaugeResult result) {
        var bars = GaugeViews.components(result);
        reply.line(bars.title() + ":");
        bars.text(BAR).forEach(line -> reply.line("  " + line));
        GaugeViews.sentences(result).forEach(reply::line);
        reply.line("[" + GaugeResult.SOURCE.display() + "; " + GaugeResult.INTERVALS.display() + "]");
        if (GaugeStudies.keptWithGauge(result)) {
            reply.line("Its repeatability stands with the gauge as its own spread.");
        } else if (result.table().study().getInstrument() != null) {
            reply.line("flexwright gauge keep " + result.table().study().getCode() + " puts its repeatability with the gauge.");
        }
        String unit = CompareCall.unit(result.property());
        for (GaugeResult.Component c : result.components()) {
            double low = c.interval() == null ? c.sd() : c.interval().low();
            double high = c.interval() == null ? c.sd() : c.interval().high();
            reply.result(result.table().study().getCode() + "." + Words.of(c.kind()), new Value(low, c.sd(), high, unit, GaugeResult.SOURCE.display(), null));
        }
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("study", result.table().study().getCode());
        row.put("property", result.property().id());
        row.put("unit", unit);
        row.put("df", result.errorDf());
        row.put("studyPercent", result.studyPercent().isPresent() ? result.studyPercent().getAsDouble() : null);
        row.put("tolerancePercent", result.tolerancePercent().isPresent() ? result.tolerancePercent().getAsDouble() : null);
        row.put("kinds", result.kinds().isPresent() ? result.kinds().getAsInt() : null);
        reply.item(row);
    }
}
