package org.flexwright.cli;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
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
        footer = { "", "Example: flexwright control add --code K1 --thickness 8mm" }, subcommands = { ControlNoun.Add.class, ControlNoun.Read.class })
final class ControlNoun extends Noun {

    @Command(name = "add", description = "Add a control piece.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright control add --code K1 --thickness 8mm --made-at 2025-11-03T10:00" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", required = true, description = "Short code.")
        String code;
        @Option(names = "--thickness", description = "Thickness at the spot that is measured.")
        String thickness;
        @Option(names = "--made-at", description = "From when its age counts.")
        String madeAt;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            StockNouns.refuseTwice("control piece", session.project().getControlPieces(), ControlPiece::getCode, code);
            ControlPiece piece = ModelFactory.eINSTANCE.createControlPiece();
            piece.setPieceKind(PieceKind.TEST_PIECE);
            new Inputs().put("code", code).put("thickness", thickness).put("madeAt", madeAt).fill(piece, services.clock());
            session.execute("Add control piece " + code, edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, piece));
            return new Reply(id()).words("control", code);
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
