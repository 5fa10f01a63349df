package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.view.ControlDrift;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Kept pieces that are read at the start of each session, to see the gauge drift. */
@Command(name = "control", description = "Kept pieces read at the start of each session, to see the gauge drift.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright control add --code K1 --thickness 8mm" }, subcommands = { ControlNoun.Add.class, ControlNoun.Change.class, ControlNoun.Read.class, ControlNoun.Show.class })
final class ControlNoun extends Noun {

    /** What it reads when all is well. */
    static final class Usual {
        @Option(names = "--usual", description = "What it reads when all is well, in the unit of its gauge.")
        String usual;
        @Option(names = "--usual-spread", description = "Standard deviation of its reading from session to session; off by more than twice that puts a session in doubt.")
        String spread;
        @Option(names = "--usual-from", description = "Where these come from: a certificate, its marking, own sessions.")
        String from;

        Inputs inputs() {
            return new Inputs().put("usual", usual).put("usualSpread", spread).put("usualFrom", from);
        }
    }

    @Command(name = "change", description = "Say what a control piece reads when all is well.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright control change K1 --usual 61 --usual-spread 0.5 --usual-from \"12 own sessions\"" })
    static final class Change extends ProjectCall {
        @Parameters(paramLabel = "PIECE", description = "Code of the control piece.")
        String code;
        @Mixin
        Usual usual = new Usual();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            ControlPiece piece = Find.controlPiece(session.project(), code);
            Inputs inputs = usual.inputs();
            if (inputs.isEmpty()) {
                throw new UsageException("Say what to change: --usual, --usual-spread or --usual-from.");
            }
            var values = inputs.read(piece, services.clock());
            session.execute("Change control piece " + piece.getCode(), edit -> values.forEach((feature, value) -> edit.set(piece, feature, value)));
            return new Reply(id()).words("control", piece.getCode());
        }
    }

    @Command(name = "add", description = "Add a control piece.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright control add --code K1 --thickness 8mm --made-at 2025-11-03T10:00" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", required = true, description = "Short code.")
        String code;
        @Option(names = "--thickness", description = "Thickness at the spot that is measured.")
        String thickness;
        @Option(names = "--made-at", description = "From when its age counts.")
        String madeAt;
        @Mixin
        Usual usual = new Usual();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            StockNouns.refuseTwice("control piece", session.project().getControlPieces(), ControlPiece::getCode, code);
            ControlPiece piece = ModelFactory.eINSTANCE.createControlPiece();
            piece.setPieceKind(PieceKind.TEST_PIECE);
            usual.inputs().put("code", code).put("thickness", thickness).put("madeAt", madeAt).fill(piece, services.clock());
            session.execute("Add control piece " + code, edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, piece));
            return new Reply(id()).words("control", code);
        }
    }

    @Command(name = "show", aliases = "list", description = "Show how a control piece read over the sessions, and in which it was off.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright control show K1" })
    static final class Show extends ProjectCall {
        @Parameters(arity = "0..1", paramLabel = "PIECE", description = "Code of the control piece; all when left out.")
        String code;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<ControlPiece> pieces = code == null ? session.project().getControlPieces() : List.of(Find.controlPiece(session.project(), code));
            if (pieces.isEmpty()) {
                reply.line("No control piece is in the project yet.");
            }
            for (ControlPiece piece : pieces) {
                ControlDrift drift = ControlDrift.of(session.project(), piece, services.registries().properties()).orElse(null);
                reply.line(piece.getCode() + (drift == null ? ": not read in two sessions yet that can be compared" : ": " + drift.property().title() + ", "
                        + drift.property().kind().unit().display()));
                if (drift != null) {
                    drift.rows().forEach(row -> row(piece, row, reply));
                }
            }
            return reply;
        }

        private static void row(ControlPiece piece, ControlDrift.Row row, Reply reply) {
            ControlReading control = row.control();
            reply.line(String.format(java.util.Locale.ROOT, "  %-6s %-16s  median %-6s off by %-6s allowed: %s%s", row.session().getCode(), Words.moment(row.session().getAt()),
                    FieldText.digits(control.median()), FieldText.digits(control.difference()), control.allowed(), control.off() ? "   " + Doubts.word() : ""));
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("control", piece.getCode());
            line.put("session", row.session().getCode());
            line.put("median", control.median());
            line.put("low", row.low());
            line.put("high", row.high());
            line.put("usual", control.before());
            line.put("limit", Double.isNaN(control.limit()) ? null : control.limit());
            line.put("off", control.off());
            reply.item(line);
        }
    }

    @Command(name = "read", description = "Put readings on a control piece, in the session that begins with it.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright control read K1 --session S2 --property shore-a --readings \"61;60.5;61\" --dwell 3s" })
    static final class Read extends ProjectCall {
        @Parameters(paramLabel = "PIECE", description = "Code of the control piece.")
        String code;
        @Mixin
        ReadOptions options = new ReadOptions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            ControlPiece piece = Find.controlPiece(session.project(), code);
            options.read(services, session.project(), piece);
            session.execute("Read control piece " + piece.getCode(), edit -> {
                options.add(edit, piece);
                options.session().filter(s -> s.getControlPiece() == null).ifPresent(s -> edit.set(s, ModelPackage.Literals.SESSION__CONTROL_PIECE, piece));
            });
            return options.reply(new Reply(id()).words("control", piece.getCode()), piece);
        }
    }
}
