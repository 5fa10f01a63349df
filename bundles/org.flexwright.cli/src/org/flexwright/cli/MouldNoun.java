package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Moulds;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Moulds. */
@Command(name = "mould", description = "Moulds and the casts they have seen.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright mould add --name \"dome, wall 1.5\" --cavities 4 --limit 40" },
        subcommands = { MouldNoun.Add.class, MouldNoun.Show.class, MouldNoun.Cast.class })
final class MouldNoun extends Noun {

    @Command(name = "add", description = "Add a mould.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright mould add --name \"dome, wall 1.5\" --material \"vat print, coated\" --cavities 4 --casts-before 7 --limit 40 --turn 17h --price 45" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", description = "Short code; the next free one when left out.")
        String code;
        @Option(names = "--name", description = "What it is called.")
        String name;
        @Option(names = "--material", description = "What it is made of.")
        String material;
        @Option(names = "--made", description = "Day it was made.")
        String made;
        @Option(names = "--cavities", description = "Parts a cast.")
        String cavities;
        @Option(names = "--casts-before", description = "Casts made before they were counted here.")
        String before;
        @Option(names = "--limit", description = "Casts after which you look at it closely, or replace it.")
        String limit;
        @Option(names = "--turn", description = "From pouring until it can be poured again, e.g. 17h.")
        String turn;
        @Option(names = "--price", description = "What it cost.")
        String price;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Mould mould = ModelFactory.eINSTANCE.createMould();
            new Inputs().put("code", code).put("name", name).put("material", material).put("madeOn", made).put("cavities", cavities).put("castsBefore", before)
                    .put("castsLimit", limit).put("turnMinutes", turn).put("price", price).fill(mould, services.clock());
            session.execute("Add a mould", edit -> Moulds.add(edit, mould));
            return new Reply(id()).words("mould", mould.getCode());
        }
    }

    @Command(name = "cast", description = "Count a cast.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright mould cast M1 --trial T12 --release wax --well yes --parts 4" })
    static final class Cast extends ProjectCall {
        @Parameters(paramLabel = "MOULD", description = "Code of the mould.")
        String mould;
        @Option(names = "--trial", description = "The trial that was cast.")
        String trial;
        @Option(names = "--release", description = "What released the parts.")
        String release;
        @Option(names = "--well", description = "Whether the parts came out without force or damage: yes or no.")
        String well;
        @Option(names = "--parts", description = "Parts that came out.")
        String parts;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Mould of = Find.mould(session.project(), mould);
            Trial cast = trial == null ? null : Find.trial(session.project(), trial);
            MouldCast typed = ModelFactory.eINSTANCE.createMouldCast();
            new Inputs().put("release", release).put("releasedWell", well).put("parts", parts).fill(typed, services.clock());
            session.execute("Count a cast of " + of.getCode(), edit -> Moulds.cast(edit, of, cast, typed.getRelease(), typed.getReleasedWell(), typed.getParts()));
            Reply reply = new Reply(id()).words("mould", of.getCode()).result("casts", Value.number(Moulds.casts(of), "1", Reply.OWN_RECORD));
            return reply.line(said(of));
        }
    }

    private static String said(Mould mould) {
        Integer left = Moulds.left(mould);
        return mould.getCode() + Words.tail("  ", mould.getName()) + ": " + Words.count(Moulds.casts(mould), "cast") + (left == null ? ", no own limit is entered"
                : left > 0 ? ", " + left + " left until your own limit of " + mould.getCastsLimit() : ", your own limit of " + mould.getCastsLimit() + " is reached");
    }

    @Command(name = "show", description = "Show a mould, or all moulds.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright mould show M1" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "MOULD", arity = "0..1", description = "Code of the mould.")
        String mould;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<Mould> all = mould == null ? session.project().getMoulds() : List.of(Find.mould(session.project(), mould));
            for (Mould one : all) {
                reply.line(said(one));
                for (MouldCast cast : one.getCasts()) {
                    reply.line("  " + Words.moment(cast.getAt()) + (cast.getTrial() == null ? "" : "  " + cast.getTrial().getCode()) + (cast.getParts() == null ? "" : ", " + Words.count(
                            cast.getParts(), "part")) + Words.tail(", ", cast.getRelease()) + (cast.getReleasedWell() == null ? "" : cast.getReleasedWell() ? ", came out well"
                                    : ", did not come out well") + Words.tail(". ", cast.getNote()));
                }
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("mould", one.getCode());
                row.put("casts", Moulds.casts(one));
                row.put("limit", one.getCastsLimit());
                row.put("cavities", one.getCavities());
                reply.item(row);
            }
            if (all.isEmpty()) {
                reply.line("There is no mould yet: flexwright mould add makes one.");
            }
            return reply;
        }
    }
}
