package org.flexwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.view.ReadingEntry;
import org.flexwright.model.Instrument;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Readings typed one after the other, as fast as a dial is read, or taken from lines that are there already. */
@Command(name = "read", description = { "Type readings one after the other: the control piece first, then part by part; each is kept when it is typed.",
        "A line is one reading, or several separated by ; - an empty line goes on to the next piece, u takes the last one back, q ends.",
        "With --from all lines are read first: when one is wrong nothing is kept. There a line may name its piece, like P2: 61;60.5;61." }, mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright session read S1 --trial T05 --property shore-a --each 5 --dwell 3s --instrument \"bench durometer\"",
                "Example: flexwright session read S1 --trial T05 --property shore-a --from readings.txt" })
final class SessionRead extends ProjectCall {
    private static final int MOST_EACH = 100;
    private static final int MOST_LINES = 100_000;

    @Parameters(paramLabel = "SESSION", description = "Code of the session.")
    String code;
    @Option(names = "--trial", description = "Its parts are read; only the control piece when left out.")
    String trial;
    @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a; flexwright plugin list names them.")
    String property;
    @Option(names = "--instrument", description = "Name of the gauge; the session's only one when left out.")
    String instrument;
    @Option(names = "--each", description = "Readings on each piece; ${DEFAULT-VALUE} when left out.")
    int each = 5;
    @Option(names = "--from", paramLabel = "FILE", description = "Take the lines of a file, or of what is piped in: -.")
    String from;
    @Mixin
    TargetNoun.Conditions conditions = new TargetNoun.Conditions();

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        if (each < 1 || each > MOST_EACH) {
            throw new UsageException("--each is a whole number from 1 to " + MOST_EACH + "; got " + each + ".");
        }
        Session at = Find.session(session.project(), code);
        PropertyDef def = Find.property(services.registries().properties(), property);
        Reply reply = new Reply(id());
        List<Specimen> pieces = pieces(session);
        PropertyKey key = conditions.key(def, services);
        if (conditions.piece == null) {
            key.setPieceKind(pieces.isEmpty() ? PieceKind.TEST_PIECE : pieces.getFirst().getPieceKind());
        }
        var redirect = pieces.isEmpty() ? null : services.registries().redirect(key, pieces.getFirst().getThickness()).orElse(null);
        if (redirect != null) {
            key.setProperty(redirect.property());
            def = Find.property(services.registries().properties(), redirect.property());
            reply.notice(redirect.note().text());
        }
        if (pieces.isEmpty() && at.getControlPiece() == null) {
            throw new UsageException("The session " + at.getCode() + " has no control piece: name one with session change --control, or a trial with --trial.");
        }
        if (pieces.isEmpty()) {
            pieces = List.of(at.getControlPiece());
        }
        ReadingEntry entry = new ReadingEntry(session, at, def, key, gauge(session, at), pieces, each, services.registries().properties());
        if (from == null) {
            type(def, entry);
        } else {
            take(services, def, entry);
        }
        return said(services, reply, at, def, entry);
    }

    private List<Specimen> pieces(ProjectSession session) {
        if (trial == null) {
            return List.of();
        }
        Trial of = Find.trial(session.project(), trial);
        PieceKind asked = conditions.piece == null ? PieceKind.PART : Find.word("piece", List.of(PieceKind.values()), conditions.piece);
        List<Part> sound = of.getParts().stream().filter(p -> !p.isFailed()).toList();
        List<Part> suiting = sound.stream().filter(p -> p.getPieceKind() == asked).toList();
        List<Part> read = suiting.isEmpty() ? sound : suiting;
        if (read.isEmpty()) {
            throw new UsageException("The trial " + of.getCode() + " has no part to read yet: add one with trial part.");
        }
        return List.copyOf(read);
    }

    private Instrument gauge(ProjectSession session, Session at) {
        return instrument != null ? Find.instrument(session.project(), instrument) : at.getInstruments().size() == 1 ? at.getInstruments().getFirst() : null;
    }

    /** One line at a time: a line that is not understood is said, and the same reading is asked for again. */
    private void type(PropertyDef def, ReadingEntry entry) {
        Cli cli = Cli.of(spec);
        PrintWriter out = json ? new PrintWriter(PrintWriter.nullWriter()) : cli.out();
        try {
            out.println(def.title() + ": a line is a reading; empty: next piece, u: take the last one back, q: end.");
            while (!entry.complete()) {
                out.print(entry.prompt() + ": ");
                out.flush();
                String line = cli.in().readLine();
                if (line == null || line.strip().equalsIgnoreCase("q")) {
                    out.println();
                    return;
                }
                String typed = line.strip();
                String trouble = "";
                Specimen piece = entry.piece();
                if (typed.isEmpty()) {
                    entry.goTo((entry.place() + 1) % entry.pieces().size());
                } else if (typed.toLowerCase(Locale.ROOT).equals("u")) {
                    trouble = entry.undo();
                } else {
                    trouble = entry.type(typed);
                }
                if (!trouble.isEmpty()) {
                    out.println("  ✕ " + trouble);
                } else if (!typed.isEmpty()) {
                    echo(out, entry, piece);
                }
            }
        } catch (IOException e) {
            throw new CliException("What is typed cannot be read any further; the readings before it are kept.", e);
        }
    }

    private static void echo(PrintWriter out, ReadingEntry entry, Specimen piece) {
        String last = entry.recent().isEmpty() ? "" : entry.recent().getLast().piece() + "  " + entry.recent().getLast().text();
        out.println("  " + (piece == entry.piece() ? last + Words.tail("   ", entry.summary()) : last + Words.tail("   ", entry.before())));
        entry.hints().forEach(hint -> out.println("  note  " + hint));
        if (piece != entry.piece() && !entry.controlNote().isEmpty()) {
            out.println("  ▲ " + entry.controlNote());
        }
    }

    private record Line(int number, Specimen piece, String text) {
    }

    /** All lines first: nothing is kept when one of them is wrong. */
    private void take(CliServices services, PropertyDef def, ReadingEntry entry) {
        List<Line> lines = new ArrayList<>();
        List<String> all = TypedLines.of(services, Cli.of(spec).in(), from, MOST_LINES, "that is no session of readings");
        for (int i = 0; i < all.size(); i++) {
            String text = all.get(i).strip();
            if (text.isEmpty() || text.startsWith("#")) {
                continue;
            }
            int colon = text.indexOf(':');
            Specimen piece = colon < 0 ? null : named(entry, text.substring(0, colon).strip());
            String readings = piece == null ? text : text.substring(colon + 1).strip();
            if (ReadingParser.parse(def, readings) instanceof ReadingInput.Rejected no) {
                throw new UsageException("Line " + (i + 1) + ": " + no.sentence().text());
            }
            lines.add(new Line(i + 1, piece, readings));
        }
        if (lines.isEmpty()) {
            throw new UsageException("There is no reading in " + (from.equals(TypedLines.PIPED) ? "what was piped in" : from) + ": a line is one reading, or several separated by ;.");
        }
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            if (line.piece() != null) {
                entry.goTo(entry.pieces().indexOf(line.piece()));
            }
            String trouble = entry.type(line.text());
            if (!trouble.isEmpty()) {
                for (int kept = 0; kept < i; kept++) {
                    entry.undo();
                }
                throw new UsageException("Line " + line.number() + ": " + trouble);
            }
        }
    }

    private static Specimen named(ReadingEntry entry, String typed) {
        return entry.pieces().stream().filter(p -> typed.equalsIgnoreCase(p.getCode())).findFirst().orElse(null);
    }

    private static Reply said(CliServices services, Reply reply, Session at, PropertyDef def, ReadingEntry entry) {
        reply.words("session", Objects.toString(at.getCode(), "")).words("property", def.id());
        for (Specimen piece : entry.pieces()) {
            entry.goTo(entry.pieces().indexOf(piece));
            String code = Objects.toString(piece.getCode(), "");
            reply.line(code + "  " + entry.progress(piece) + Words.tail("  ", entry.summary()));
            entry.hints().forEach(hint -> reply.notice(code + ": " + hint));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("piece", code);
            row.put("progress", entry.progress(piece));
            row.put("median", entry.median().isPresent() ? entry.median().getAsDouble() : null);
            row.put("spread", entry.spread().isPresent() ? entry.spread().getAsDouble() : null);
            row.put("unit", def.yesNo() ? "" : def.kind().unit().symbol());
            reply.item(row);
        }
        Doubts.of(at, services.registries().properties()).ifPresent(c -> reply.notice(Doubts.word() + ": all readings of session " + at.getCode() + " are in doubt: "
                + c.sentence() + "."));
        return reply;
    }
}
