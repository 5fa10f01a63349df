package org.flexwright.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Figures;
import org.flexwright.core.Watch;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.recording.ChannelWish;
import org.flexwright.core.recording.ColumnUse;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.ImportSettings;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFile;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.SoundFile;
import org.flexwright.core.recording.TableGuess;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.model.Specimen;
import org.flexwright.quantity.QuantityException;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.report.PlotFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Files of instruments on a piece: curves and sounds. */
@Command(name = "recording", description = "Curves and sounds of a piece: taken in as they are, looked at, marked, kept as readings.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright recording add T07/P1 press.csv --kind press --instrument \"force gauge\"",
                "         flexwright recording keep C1 --support plate" },
        subcommands = { RecordingNoun.Kinds.class, RecordingNoun.Guess.class, RecordingNoun.Add.class, RecordingNoun.ListAll.class, RecordingNoun.Show.class, RecordingNoun.Mark.class,
                RecordingNoun.SetCall.class, RecordingNoun.Keep.class, RecordingNoun.LeaveOut.class, RecordingNoun.Export.class })
final class RecordingNoun extends Noun {
    private static RecordingKind kind(CliServices services, String typed) {
        return Find.named("recording kind", services.registries().recordingKinds(), RecordingKind::id, RecordingKind::title, typed);
    }

    private static RecordingKind kind(CliServices services, Recording recording) {
        return services.registries().findRecordingKind(recording.getKind()).orElseThrow(() -> new UsageException("The plugin that reads " + recording.getKind() + " is not here: "
                + Recordings.name(recording) + " is kept as it is."));
    }

    @Command(name = "kinds", description = "What sorts of recordings can be taken in, with the columns they use and what they ask.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording kinds" })
    static final class Kinds extends Call {
        @Override
        protected Reply reply(CliServices services) {
            Reply reply = new Reply(id());
            for (RecordingKind kind : services.registries().recordingKinds()) {
                reply.line(kind.id() + "  " + kind.title() + ": " + kind.summary());
                if (!kind.channels().isEmpty()) {
                    reply.line("    columns: " + kind.channels().stream().map(w -> Names.word(w.role()) + (w.unit().isEmpty() ? "" : " (" + w.unit() + ")")).collect(Collectors.joining(", ")));
                }
                if (kind.details() != null) {
                    reply.line("    asks: " + Inputs.names(FieldDescriptors.ofClass(kind.details())));
                }
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("kind", kind.id());
                row.put("title", kind.title());
                row.put("format", Names.word(kind.format()));
                row.put("columns", kind.channels().stream().map(ChannelWish::role).map(Names::word).toList());
                reply.item(row);
            }
            return reply;
        }
    }

    /** How a table is to be read, where the file does not say it rightly. */
    static final class TableOptions {
        @Option(names = "--separator", description = "What parts two columns: one character, or tab or blanks.")
        String separator;
        @Option(names = "--decimal", description = "comma or point, when the file may mean either.")
        String decimal;
        @Option(names = "--skip", description = "Lines above the first row of figures.")
        Integer skip;
        @Option(names = "--column", paramLabel = "MEANING=COLUMN:UNIT", description = "What a column means, by its number or heading, and its unit: force=2:N, travel=Weg:mm."
                + " A minus before the column turns its sign round. Repeat for more.")
        List<String> columns = List.of();

        TableGuess guess(Path file, RecordingKind kind) {
            if (skip != null && skip < 0) {
                throw new UsageException("--skip takes a number of lines from 0 up, not " + skip + ".");
            }
            return TableGuess.of(file, kind, separator, comma(), skip);
        }

        private Boolean comma() {
            if (decimal == null) {
                return null;
            }
            return switch (decimal.strip().toLowerCase(Locale.ROOT)) {
                case "comma", "," -> true;
                case "point", "dot", "." -> false;
                default -> throw new UsageException("--decimal takes comma or point, not \"" + decimal + "\".");
            };
        }

        /** The columns with what was typed put in. */
        List<ColumnUse> columns(List<ColumnUse> guessed, RecordingKind kind) {
            List<ColumnUse> all = new ArrayList<>(guessed);
            for (String typed : columns) {
                int equals = typed.indexOf('=');
                if (equals < 1 || equals == typed.length() - 1) {
                    throw new UsageException("\"" + typed + "\" is not MEANING=COLUMN:UNIT, such as force=2:N.");
                }
                ChannelRole role = Find.word("meaning", Stream.concat(kind.channels().stream().map(ChannelWish::role), Stream.of(ChannelRole.OTHER)).toList(), typed.substring(0, equals));
                String rest = typed.substring(equals + 1);
                int colon = rest.lastIndexOf(':');
                String unit = colon < 0 ? null : rest.substring(colon + 1).strip();
                String place = (colon < 0 ? rest : rest.substring(0, colon)).strip();
                boolean turned = place.startsWith("-");
                int at = column(all, turned ? place.substring(1).strip() : place);
                ColumnUse former = all.get(at);
                for (int i = 0; i < all.size(); i++) {
                    if (i != at && role != ChannelRole.OTHER && all.get(i).role() == role) {
                        all.set(i, all.get(i).withRole(ChannelRole.OTHER));
                    }
                }
                String plain = plain(role, kind) ? "" : former.unit();
                all.set(at, former.withRole(role).withUnit(unit == null ? plain : unit).withReversed(turned || former.reversed()));
            }
            return all;
        }

        private static boolean plain(ChannelRole role, RecordingKind kind) {
            return kind.channels().stream().anyMatch(w -> w.role() == role && (w.kind() == QuantityKind.NUMBER || w.kind() == QuantityKind.COUNT));
        }

        private static int column(List<ColumnUse> all, String typed) {
            if (typed.matches("\\d{1,5}")) {
                int number = Integer.parseInt(typed);
                if (number < 1 || number > all.size()) {
                    throw new UsageException("There are columns 1 to " + all.size() + ", not " + number + ".");
                }
                return number - 1;
            }
            List<ColumnUse> found = all.stream().filter(c -> c.name().equalsIgnoreCase(typed)).toList();
            if (found.size() != 1) {
                throw new UsageException((found.isEmpty() ? "No column is" : "More than one column is") + " headed \"" + typed + "\": give its number, 1 to " + all.size() + ".");
            }
            return found.getFirst().column() - 1;
        }
    }

    private static void columns(Reply reply, TableGuess guess, List<ColumnUse> uses) {
        String separator = guess.format().separator();
        reply.line("  columns parted by " + (separator.length() == 1 ? "\"" + separator + "\"" : separator) + ", decimal " + (guess.format().decimalComma() ? "comma" : "point")
                + ", " + Words.count(guess.format().skipLines(), "line") + " above the figures");
        for (ColumnUse use : uses) {
            String first = guess.rows().isEmpty() || guess.rows().getFirst().size() < use.column() ? "" : guess.rows().getFirst().get(use.column() - 1);
            reply.line(String.format("  %3d  %-24s %-12s %-8s begins with %s", use.column(), use.name(), use.role() == ChannelRole.OTHER ? "not used" : Names.word(use.role()), use
                    .role() == ChannelRole.OTHER ? "" : use.unit() == null ? "unit?" : use.unit(), first));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("column", use.column());
            row.put("heading", use.name());
            row.put("meaning", use.role() == ChannelRole.OTHER ? null : Names.word(use.role()));
            row.put("unit", use.unit());
            reply.item(row);
        }
    }

    @Command(name = "guess", description = "Look at a file without taking it in: how a table is read, what its columns mean, what has to be said; what a sound holds.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright recording guess press.csv --kind press", "         flexwright recording guess drop.wav --kind bounce" })
    static final class Guess extends Call {
        @Parameters(paramLabel = "FILE", description = "The file.")
        Path file;
        @Option(names = "--kind", required = true, description = "Sort of recording; flexwright recording kinds names them.")
        String kind;
        @Mixin
        TableOptions table = new TableOptions();

        @Override
        protected Reply reply(CliServices services) {
            RecordingKind sort = kind(services, kind);
            Path from = services.workingFolder().resolve(file);
            if (sort.format() == RecordingFormat.SOUND) {
                return heard(services, sort, SoundFile.open(from));
            }
            TableGuess guess = table.guess(from, sort);
            List<ColumnUse> uses = table.columns(guess.columns(), sort);
            Reply reply = new Reply(id()).words("file", from.getFileName().toString()).words("kind", sort.id());
            reply.line(from.getFileName() + " as " + sort.title());
            columns(reply, guess, uses);
            TableGuess.asked(uses, sort).forEach(asked -> reply.notice(asked.text() + " With --column MEANING=COLUMN:UNIT."));
            return reply;
        }

        private Reply heard(CliServices services, RecordingKind sort, SoundFile sound) {
            String name = sound.file().getFileName().toString();
            Reply reply = new Reply(id()).words("file", name).words("kind", sort.id());
            reply.line(name + " as " + sort.title() + ": " + sound.describe());
            if (sound.folded() > 1) {
                reply.notice("A long sound: of each " + sound.folded() + " samples the loudest is looked at.");
            }
            Recording probe = ModelFactory.eINSTANCE.createRecording();
            look(services, reply, probe, sort.look(probe, sound.read(Watch.NONE), Watch.NONE));
            return reply;
        }
    }

    @Command(name = "add", description = "Take a file in as it is, on a piece, and say what it shows. What the kind asks (gauge length, section) is remembered for the next one.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright recording add T07/P1 strip.csv --kind stretch --set gaugeLength=25mm --set width=6mm --set thickness=2.03mm",
                    "         flexwright recording add T07/P2 next.csv --kind stretch --column force=3:N --set thickness=1.98mm" })
    static final class Add extends ProjectCall {
        @Parameters(index = "0", paramLabel = "PIECE", description = "Code of the piece; a part with its trial, e.g. T07/P1.")
        String piece;
        @Parameters(index = "1", paramLabel = "FILE", description = "The file.")
        Path file;
        @Option(names = "--kind", required = true, description = "Sort of recording; flexwright recording kinds names them.")
        String kind;
        @Mixin
        TableOptions table = new TableOptions();
        @Option(names = "--set", paramLabel = "FIELD=VALUE", description = "Something the kind asks, by its name or the words beside it; repeat for more.")
        List<String> set = List.of();
        @Option(names = "--title", description = "A few words.")
        String title;
        @Option(names = "--at", description = "When it was recorded; the session's time, else now.")
        String at;
        @Option(names = "--session", description = "Code of the session.")
        String session;
        @Option(names = "--instrument", description = "Name of the instrument; that of the last recording of this kind when left out.")
        String instrument;
        @Option(names = "--cycle", description = "Which loading of the piece it is, from 1.")
        String cycle;

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            Specimen on = Find.piece(project.project(), piece);
            RecordingKind sort = kind(services, kind);
            Path from = services.workingFolder().resolve(file);
            if (!Files.isRegularFile(from) || !Files.isReadable(from)) {
                throw new CliException("The file " + file + " cannot be read: it is not there, is no file, or may not be read.", null);
            }
            TableGuess guess = sort.format() == RecordingFormat.TABLE ? table.guess(from, sort) : null;
            ImportSettings first = Recordings.defaults(project.project(), sort, guess);
            Recording probe = ModelFactory.eINSTANCE.createRecording();
            new Inputs().put("at", at).put("cycle", cycle).put("title", title).fill(probe, services.clock());
            probe.setSession(session == null ? null : Find.session(project.project(), session));
            Instant when = probe.getAt() != null ? probe.getAt() : probe.getSession() == null ? null : probe.getSession().getAt();
            Inputs inputs = new Inputs();
            Settings.read(set, services.workingFolder()).forEach(inputs::put);
            Map<EStructuralFeature, Object> typed = typed(services, sort, first.details(), inputs);
            Set<String> remembered = new HashSet<>(first.remembered());
            typed.forEach((feature, value) -> {
                first.details().eSet(feature, value);
                remembered.remove(feature.getName());
            });
            ImportSettings settings = first.withColumns(table.columns(first.columns(), sort)).withDetails(first.details(), remembered).withRecord(probe.getTitle(), when, probe
                    .getSession(), instrument == null ? first.instrument() : Find.instrument(project.project(), instrument), probe.getCycle());
            Recordings.Prepared prepared = Recordings.prepare(project.folder(), from, sort, settings, Watch.NONE);
            Recording[] made = new Recording[1];
            project.execute("Add recording " + from.getFileName(), edit -> {
                made[0] = Recordings.add(edit, on, prepared);
                typed.forEach((feature, value) -> Provenances.keep(edit, made[0].getDetails(), feature, Origin.TYPED, null, inputs.typed(feature)));
            });
            Reply reply = new Reply(id()).words("recording", made[0].getCode()).words("piece", piece(made[0])).words("copied to", made[0].getFile().getPath()).words("sha256", made[0]
                    .getFile().getSha256()).result("rows", Value.number(prepared.data().rows(), "1", Reply.OWN_RECORD));
            reply.line(made[0].getCode() + "  " + sort.title() + " of " + piece(made[0]) + ", " + size(prepared.data()) + " of " + from.getFileName() + ", kept as "
                    + made[0].getFile().getPath());
            if (guess != null) {
                columns(reply, guess, settings.columns());
            }
            asked(reply, made[0]);
            try {
                look(services, reply, made[0], RecordingFile.of(project.folder(), made[0], sort).look(prepared.data(), Watch.NONE));
            } catch (RefusedException e) {
                // it is in the project by now, whatever its plugin makes of it
                reply.notice(e.getMessage());
            }
            on.getRecordings().stream().filter(other -> other != made[0] && other.getKind().equals(made[0].getKind()) && Words.tail("", other.getLeftOut()).isEmpty() && other
                    .getFile() != null && made[0].getFile().getSha256().equals(other.getFile().getSha256())).findFirst().ifPresent(other -> reply.notice(other.getCode()
                            + " is the same file on the same piece: keep results of one of them only, and leave the other out."));
            return reply;
        }
    }

    private static Map<EStructuralFeature, Object> typed(CliServices services, RecordingKind kind, EObject details, Inputs inputs) {
        if (inputs.isEmpty()) {
            return Map.of();
        }
        if (details == null) {
            throw new UsageException(kind.title() + " asks nothing: leave --set out.");
        }
        return inputs.read(details, services.clock());
    }

    /** How long a sound lasts, or how many rows a table has; a long sound holds fewer figures than its file has samples. */
    private static String size(RecordingData data) {
        return data.rate() > 0 ? Figures.of(data.rows() / data.rate(), "s") : data.rows() + " rows";
    }

    private static String piece(Recording recording) {
        Specimen piece = Recordings.piece(recording);
        return piece == null ? "" : Names.path(piece);
    }

    /** What was said about it, with what was taken over and nobody said for this one. */
    private static void asked(Reply reply, Recording recording) {
        if (recording.getDetails() == null) {
            return;
        }
        FieldDescriptors.ofClass(recording.getDetails().eClass()).stream().filter(f -> recording.getDetails().eIsSet(feature(recording, f.name()))).forEach(f -> {
            EStructuralFeature feature = feature(recording, f.name());
            Origin origin = Provenances.origin(recording.getDetails(), feature);
            reply.line(String.format("  %-24s %s  %s", f.label(), FieldText.show(f, recording.getDetails().eGet(feature)), origin == Origin.COPIED ? Provenances.of(recording
                    .getDetails(), feature).map(p -> p.getSource()).orElse("") : Provenances.word(origin)));
        });
    }

    private static EStructuralFeature feature(Recording recording, String name) {
        return recording.getDetails().eClass().getEStructuralFeature(name);
    }

    private static void look(CliServices services, Reply reply, Recording recording, Look look) {
        for (FoundMark mark : look.marks()) {
            Optional<RecordingMark> said = Recordings.mark(recording, mark.name());
            String tail = said.map(RecordingMark::getLeftOut).map(why -> ", left out: " + why).orElse(mark.byHand() ? ", set by hand" : mark.movable() ? "" : ", fixed");
            reply.line(String.format("  mark %-14s at %-10s %s%s", mark.name(), mark.place(), mark.title(), tail));
        }
        for (RecordingResult result : look.results()) {
            reply.line("  " + result.title() + ": " + result.words() + (result.halfWidth() == null ? " (band not known)" : "") + "   [" + result.source().display() + "]" + kept(services, recording, result));
            double half = result.halfWidth() == null ? 0 : result.halfWidth();
            reply.result(result.id(), new Value(result.value() - half, result.value(), result.value() + half, result.unit(), result.source().display(), null));
        }
        look.remarks().forEach(reply::remark);
    }

    /** What is kept of a result as a reading: so, or otherwise since a mark was moved. */
    private static String kept(CliServices services, Recording recording, RecordingResult result) {
        List<Reading> kept = Recordings.kept(recording, result);
        Optional<PropertyDef> def = kept.isEmpty() ? Optional.empty() : services.registries().findProperty(result.property());
        return def.map(property -> Recordings.stands(result, property, kept) ? "   kept" : "   kept as " + kept.stream().map(r -> ReadingPrinter.print(property, r)).collect(Collectors
                .joining("; ")) + ": keep it again to take the new value").orElse("");
    }

    @Command(name = "list", description = "All recordings, by piece.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright recording list" })
    static final class ListAll extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<Recording> all = Recordings.all(session.project()).toList();
            for (Recording r : all) {
                String sort = services.registries().findRecordingKind(r.getKind()).map(RecordingKind::title).orElse(r.getKind() + " (its plugin is not here)");
                reply.line(String.format("%-5s %-14s %-18s %s%s%s", r.getCode(), piece(r), sort, Words.moment(r.getAt()), Words.tail("  ", r.getTitle()), r.getLeftOut() == null ? ""
                        : "  left out: " + r.getLeftOut()) + "  kept: " + Recordings.kept(r).size());
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("recording", r.getCode());
                row.put("piece", piece(r));
                row.put("kind", r.getKind());
                row.put("file", r.getFile() == null ? null : r.getFile().getFileName());
                row.put("sha256", r.getFile() == null ? null : r.getFile().getSha256());
                row.put("leftOut", r.getLeftOut());
                row.put("kept", Recordings.kept(r).size());
                reply.item(row);
            }
            if (all.isEmpty()) {
                reply.line("There is no recording yet: flexwright recording add takes one in.");
            }
            return reply;
        }
    }

    /** A verb about one recording. */
    abstract static class One extends ProjectCall {
        @Parameters(index = "0", paramLabel = "RECORDING", description = "Code of the recording.")
        String code;

        protected final Recording recording(Project project) {
            return Find.recording(project, code);
        }

        protected final Reply seen(CliServices services, ProjectSession session, Recording recording, RecordingData data) {
            RecordingKind sort = kind(services, recording);
            RecordingFile file = RecordingFile.of(session.folder(), recording, sort);
            RecordingData figures = data == null ? file.data(Watch.NONE) : data;
            Reply reply = new Reply(id()).words("recording", recording.getCode()).words("piece", piece(recording)).result("rows", Value.number(figures.rows(), "1", Reply.OWN_RECORD));
            reply.line(recording.getCode() + Words.tail(" ", recording.getTitle()) + "  " + sort.title() + " of " + piece(recording) + ", " + recording.getFile().getFileName() + ", "
                    + size(figures) + Words.tail(", left out: ", recording.getLeftOut()));
            asked(reply, recording);
            look(services, reply, recording, file.look(figures, Watch.NONE));
            return reply;
        }
    }

    @Command(name = "show", description = "What a recording shows: marks, results with band and source, what is kept.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording show C1" })
    static final class Show extends One {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            return seen(services, session, recording(session.project()), null);
        }
    }

    @Command(name = "mark", description = "Set a mark by hand, put it back where it is found, or leave it out.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording mark C1 peak 1.85", "         flexwright recording mark C1 peak --back",
            "         flexwright recording mark C4 impact-1580 --leave-out \"a door\"" })
    static final class Mark extends One {
        @Parameters(index = "1", paramLabel = "MARK", description = "Name of the mark, as recording show tells it.")
        String mark;
        @Parameters(index = "2", arity = "0..1", paramLabel = "PLACE", description = "Where, in the unit of the axis: mm, %% or s.")
        String place;
        @Option(names = "--back", description = "Put it back where it is found.")
        boolean back;
        @Option(names = "--leave-out", paramLabel = "REASON", description = "It does not count, and why.")
        String leaveOut;
        @Option(names = "--count", description = "It counts again.")
        boolean count;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            if (Stream.of(place != null, back, leaveOut != null, count).filter(b -> b).count() != 1) {
                throw new UsageException("Say one thing about the mark: a place, --back, --leave-out REASON or --count.");
            }
            Recording recording = recording(session.project());
            RecordingKind sort = kind(services, recording);
            RecordingFile file = RecordingFile.of(session.folder(), recording, sort);
            RecordingData data = file.data(Watch.NONE);
            FoundMark found = Find.one("mark of " + recording.getCode(), file.look(data, Watch.NONE).marks(), FoundMark::name, mark);
            if (place != null && !found.movable()) {
                throw new UsageException("The mark " + found.name() + " follows from the others and cannot be set.");
            }
            if (leaveOut != null && !found.leavable()) {
                throw new UsageException("The results need the mark " + found.name() + ": set it elsewhere, or leave the whole recording out with flexwright recording leave-out.");
            }
            session.execute("Mark " + found.title() + " of " + recording.getCode(), edit -> change(edit, recording, found.name()));
            return seen(services, session, recording, data);
        }

        private void change(Edit edit, Recording recording, String name) {
            if (place != null) {
                Recordings.mark(edit, recording, name, number());
            } else if (back) {
                Recordings.unmark(edit, recording, name);
            } else {
                Recordings.leaveOut(edit, recording, name, leaveOut);
            }
        }

        private double number() {
            try {
                return QuantityParser.parse(place, QuantityKind.NUMBER, QuantityKind.NUMBER.unit()).canonical();
            } catch (QuantityException e) {
                throw new UsageException("\"" + place + "\" is no place: give a plain number in the unit of the axis, such as 1.85.");
            }
        }
    }

    @Command(name = "set", description = "Change what is said about a recording: what its kind asks, its title, cycle, session, instrument.", mixinStandardHelpOptions = true, footer = {
            "", "Example: flexwright recording set C1 --set thickness=1.98mm --set slack=tangent" })
    static final class SetCall extends One {
        @Option(names = "--set", paramLabel = "FIELD=VALUE", description = "Something the kind asks, by its name or the words beside it; repeat for more.")
        List<String> set = List.of();
        @Option(names = "--title", description = "A few words.")
        String title;
        @Option(names = "--cycle", description = "Which loading of the piece it is, from 1.")
        String cycle;
        @Option(names = "--session", description = "Code of the session.")
        String session;
        @Option(names = "--instrument", description = "Name of the instrument.")
        String instrument;

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            Recording recording = recording(project.project());
            RecordingKind sort = kind(services, recording);
            Inputs own = new Inputs().put("title", title).put("cycle", cycle);
            Map<EStructuralFeature, Object> values = own.read(recording, services.clock());
            Inputs inputs = new Inputs();
            Settings.read(set, services.workingFolder()).forEach(inputs::put);
            EObject details = recording.getDetails();
            Map<EStructuralFeature, Object> asked = typed(services, sort, details, inputs);
            if (own.isEmpty() && inputs.isEmpty() && session == null && instrument == null) {
                throw new UsageException("Say what to change: --set FIELD=VALUE, --title, --cycle, --session or --instrument.");
            }
            project.execute("Change recording " + recording.getCode(), edit -> {
                values.forEach((feature, value) -> edit.set(recording, feature, value));
                asked.forEach((feature, value) -> {
                    edit.set(details, feature, value);
                    Provenances.keep(edit, details, feature, Origin.TYPED, null, inputs.typed(feature));
                });
                if (session != null) {
                    edit.set(recording, ModelPackage.Literals.RECORDING__SESSION, Find.session(project.project(), session));
                }
                if (instrument != null) {
                    edit.set(recording, ModelPackage.Literals.RECORDING__INSTRUMENT, Find.instrument(project.project(), instrument));
                }
            });
            return seen(services, project, recording, null);
        }
    }

    @Command(name = "keep", description = "Keep results as readings of the piece; what was kept of the same property before is replaced.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording keep C1 --only \"peak-force;snap-ratio\" --support \"flat plate\"" })
    static final class Keep extends One {
        @Option(names = "--only", description = "Only these results, separated by ;; all that are readings when left out.")
        String only;
        @Mixin
        TargetNoun.Conditions conditions = new TargetNoun.Conditions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Recording recording = recording(session.project());
            RecordingKind sort = kind(services, recording);
            Look look = Recordings.look(session, recording, sort, Watch.NONE);
            List<RecordingResult> chosen = chosen(look, recording);
            PropertyKey key = conditions.on(Recordings.piece(recording), services);
            session.execute("Keep results of " + recording.getCode(), edit -> Recordings.keep(edit, recording, chosen, services.registries().properties(), key));
            Reply reply = new Reply(id()).words("recording", recording.getCode()).words("piece", piece(recording));
            for (RecordingResult r : chosen) {
                double half = r.halfWidth() == null ? 0 : r.halfWidth();
                reply.result(r.id(), new Value(r.value() - half, r.value(), r.value() + half, r.unit(), "measured: " + r.source().display(), null));
                reply.line("kept on " + piece(recording) + "  " + r.title() + ": " + r.words() + "   [measured; " + r.source().display() + "]");
            }
            return reply;
        }

        private List<RecordingResult> chosen(Look look, Recording recording) {
            List<RecordingResult> readings = look.results().stream().filter(r -> r.property() != null).toList();
            if (only == null) {
                return readings;
            }
            List<RecordingResult> chosen = new ArrayList<>();
            for (String one : only.split(";")) {
                if (!one.isBlank()) {
                    chosen.add(Find.one("reading in " + recording.getCode(), readings, RecordingResult::id, one));
                }
            }
            return chosen;
        }
    }

    @Command(name = "leave-out", description = "Leave a recording out, with the reason, or let it count again; it stays in the record. What was kept of it goes.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording leave-out C3 \"slipped in the grip\"", "         flexwright recording leave-out C3 --count" })
    static final class LeaveOut extends One {
        @Parameters(index = "1", arity = "0..1", paramLabel = "REASON", description = "Why it does not count.")
        String reason;
        @Option(names = "--count", description = "It counts again.")
        boolean count;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            if (count == (reason != null && !reason.isBlank())) {
                throw new UsageException("Say in a sentence why the recording does not count, or --count.");
            }
            Recording recording = recording(session.project());
            session.execute((count ? "Count recording " : "Leave out recording ") + recording.getCode(), edit -> Recordings.leaveOut(edit, recording, count ? null : reason.strip()));
            return new Reply(id()).words("recording", recording.getCode()).words("left out", count ? "no" : reason.strip());
        }
    }

    @Command(name = "export", description = "Write a plot of a recording: all its figures as CSV, or a drawing as SVG.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright recording export C1 --out press.svg --from 1 --to 4", "         flexwright recording export C1 --out press.csv" })
    static final class Export extends One {
        private static final int POINTS = 2000;
        @Option(names = "--out", required = true, description = "File to write; its ending says how: .svg or .csv.")
        Path out;
        @Option(names = "--plot", description = "Which plot of the recording, by its id or title; the first when left out.")
        String plot;
        @Option(names = "--from", description = "Where the drawn stretch begins, on the axis across.")
        Double from;
        @Option(names = "--to", description = "Where it ends.")
        Double to;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Recording recording = recording(session.project());
            RecordingKind sort = kind(services, recording);
            RecordingFile file = RecordingFile.of(session.folder(), recording, sort);
            RecordingData data = file.data(Watch.NONE);
            String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
            Path target = services.workingFolder().resolve(out);
            try {
                if (name.endsWith(".csv")) {
                    figures(data, target);
                } else if (name.endsWith(".svg")) {
                    List<RecordingPlot> plots = file.look(data, Watch.NONE).plots();
                    RecordingPlot chosen = plot == null ? plots.getFirst() : Find.named("plot of " + recording.getCode(), plots, RecordingPlot::id, RecordingPlot::title, plot);
                    Files.writeString(target, PlotFile.svg(drawn(chosen)));
                } else {
                    throw new UsageException("\"" + out + "\" says no format: give a name that ends in .svg or .csv.");
                }
            } catch (IOException e) {
                throw new CliException("The file " + out + " cannot be written.", e);
            }
            return new Reply(id()).words("recording", recording.getCode()).words("written", out.toString()).result("rows", Value.number(data.rows(), "1", Reply.OWN_RECORD));
        }

        private PlotModel drawn(RecordingPlot chosen) {
            PlotModel whole = chosen.whole(POINTS);
            if (from == null && to == null) {
                return whole;
            }
            double low = from == null ? whole.x().min() : from;
            double high = to == null ? whole.x().max() : to;
            if (!(low < high)) {
                throw new UsageException("The stretch from " + FieldText.digits(low) + " to " + FieldText.digits(high) + " is empty: --from must be below --to.");
            }
            return chosen.part(low, high, POINTS);
        }

        private static void figures(RecordingData data, Path target) throws IOException {
            try (BufferedWriter w = Files.newBufferedWriter(target)) {
                w.write(data.channels().stream().map(c -> Names.word(c.role()) + (c.unit().isEmpty() ? "" : " [" + c.unit() + "]")).collect(Collectors.joining(",", data.rate() > 0
                        ? "time [s]," : "", "\n")));
                for (int row = 0; row < data.rows(); row++) {
                    StringBuilder line = new StringBuilder(data.rate() > 0 ? row / data.rate() + "," : "");
                    for (int c = 0; c < data.channels().size(); c++) {
                        line.append(c == 0 ? "" : ",").append(data.channels().get(c).values()[row]);
                    }
                    w.write(line.append('\n').toString());
                }
            }
        }
    }
}
