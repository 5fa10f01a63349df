package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import org.flexwright.core.Figures;
import org.flexwright.core.Watch;
import org.flexwright.core.naming.Find;
import org.flexwright.core.recording.LawFits;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Treloar;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.LawFit;
import org.flexwright.model.Recording;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Rubber laws fitted to stretch curves. */
@Command(name = "fit", description = "Rubber laws fitted to stretch curves: one law, or all beside each other.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright fit try C1 C2", "Example: flexwright fit example --law ogden-3" },
        subcommands = { FitNoun.Try.class, FitNoun.Add.class, FitNoun.ListCall.class, FitNoun.Show.class, FitNoun.Remove.class, FitNoun.Example.class })
final class FitNoun extends Noun {

    /** What a fit is asked with. */
    static final class Asked {
        @Option(names = "--law", description = "neo-hooke, mooney-rivlin, yeoh, ogden-1, ogden-2 or ogden-3; all beside each other when left out.")
        String law;
        @Option(names = "--weighting", description = "equal (every MPa of a residual counts alike; when left out), relative (every per cent), per-loading (every loading).")
        String weighting;

        RubberForm form() {
            return law == null ? null : RubberForm.find(law).orElseThrow(() -> new UsageException("\"" + law + "\" is no law; allowed are " + RubberForm.ids() + "."));
        }

        Weighting weights() {
            return weighting == null ? Weighting.EQUAL
                    : Weighting.find(weighting).orElseThrow(() -> new UsageException("\"" + weighting + "\" is no weighting; allowed are " + Weighting.ids() + "."));
        }
    }

    /** Recordings and a range of stretches. */
    static final class Curves {
        @Parameters(paramLabel = "RECORDING", arity = "1..*", description = "Codes of recordings of stretched pieces; several loadings are fitted together.")
        List<String> codes;
        @Option(names = "--from", paramLabel = "STRETCH", description = "Least stretch used, length over undeformed length.")
        Double from;
        @Option(names = "--to", paramLabel = "STRETCH", description = "Largest stretch used.")
        Double to;

        List<Recording> recordings(ProjectSession session) {
            return codes.stream().map(code -> Find.recording(session.project(), code)).distinct().toList();
        }
    }

    @Command(name = "try", description = "Fit recordings without keeping anything.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright fit try C1 C2 --law yeoh --to 3", "All laws beside each other: flexwright fit try C1 C2" })
    static final class Try extends ProjectCall {
        @Mixin
        Curves curves = new Curves();
        @Mixin
        Asked asked = new Asked();

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            LawFits.Question question = LawFits.question(session.folder(), curves.recordings(session), asked.form(), asked.weights(), curves.from, curves.to, services.registries());
            return answer(new Reply(id()).input("recordings", curves.codes), question);
        }
    }

    @Command(name = "add", description = "Keep a fit in the project: law, weights, range and recordings. Its figures are computed anew each time.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright fit add C1 C2 --law yeoh --to 3 --title \"sheet, batch 2\"" })
    static final class Add extends ProjectCall {
        @Mixin
        Curves curves = new Curves();
        @Mixin
        Asked asked = new Asked();
        @Option(names = "--title", description = "A few words; law and recordings when left out.")
        String title;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            if (asked.form() == null) {
                throw new UsageException("Say which law is kept with --law: " + RubberForm.ids() + "; flexwright fit try compares them.");
            }
            List<Recording> recordings = curves.recordings(session);
            // what cannot be fitted is not kept
            LawFits.Question question = LawFits.question(session.folder(), recordings, asked.form(), asked.weights(), curves.from, curves.to, services.registries());
            Reply reply = new Reply(id());
            answer(reply, question);
            if (reply.status() == Status.FINE) {
                LawFit[] made = new LawFit[1];
                session.execute("Keep fit", edit -> made[0] = LawFits.add(edit, title, asked.form(), asked.weights(), curves.from, curves.to, recordings));
                reply.words("fit", made[0].getTitle()).line("Kept as: " + made[0].getTitle());
            }
            return reply;
        }
    }

    /** A verb about one kept fit. */
    abstract static class OneFit extends ProjectCall {
        @Parameters(paramLabel = "FIT", description = "Title or number of the fit; flexwright fit list names them.")
        String name;

        final LawFit fit(ProjectSession session) {
            List<LawFit> all = session.project().getLawFits();
            if (name.strip().matches("\\d{1,6}") && Integer.parseInt(name.strip()) >= 1 && Integer.parseInt(name.strip()) <= all.size()) {
                return all.get(Integer.parseInt(name.strip()) - 1);
            }
            return Find.named("fit", all, f -> Objects.toString(f.getTitle(), ""), f -> Objects.toString(f.getTitle(), ""), name);
        }
    }

    @Command(name = "list", description = "The fits that are kept.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright fit list" })
    static final class ListCall extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<LawFit> all = new ArrayList<>(session.project().getLawFits());
            if (all.isEmpty()) {
                reply.line("No fit is kept; flexwright fit add keeps one.");
            }
            for (LawFit fit : all) {
                String codes = fit.getRecordings().stream().map(r -> Objects.toString(r.getCode(), "")).collect(Collectors.joining(", "));
                reply.line(String.format("%2d  %-32s %-14s %-12s %s%s", all.indexOf(fit) + 1, fit.getTitle(), fit.getLaw(), fit.getWeighting(), codes, range(fit)));
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("title", fit.getTitle());
                row.put("law", fit.getLaw());
                row.put("weighting", fit.getWeighting());
                row.put("recordings", codes);
                row.put("from", fit.getFromStretch());
                row.put("to", fit.getToStretch());
                reply.item(row);
            }
            return reply;
        }

        private static String range(LawFit fit) {
            return (fit.getFromStretch() == null ? "" : "  from " + Figures.of(fit.getFromStretch(), "")) + (fit.getToStretch() == null ? "" : "  to " + Figures.of(fit.getToStretch(), ""));
        }
    }

    @Command(name = "show", description = "Compute a kept fit anew: coefficients, intervals, residuals.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright fit show 1 --json", "The same points, all laws: flexwright fit show 1 --compare" })
    static final class Show extends OneFit {
        @Option(names = "--compare", description = "All laws on the same points beside each other.")
        boolean compare;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            LawFit fit = fit(session);
            LawFits.Question question = LawFits.question(session.folder(), fit, services.registries());
            return answer(new Reply(id()).words("fit", fit.getTitle()).line(fit.getTitle()), compare ? question.with(null) : question);
        }
    }

    @Command(name = "remove", description = "Take a kept fit out of the project; its recordings stay.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright fit remove 1" })
    static final class Remove extends OneFit {
        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            LawFit fit = fit(session);
            String title = fit.getTitle();
            session.execute("Remove fit " + title, edit -> edit.remove(fit));
            return new Reply(id()).words("removed", title);
        }
    }

    private static Reply answer(Reply reply, LawFits.Question question) {
        FitReply.of(reply, question.form(), question.weighting(), question.points(Watch.NONE));
        question.remarks().forEach(reply::remark);
        return reply;
    }

    @Command(name = "example", description = "Fit Treloar's natural rubber of 1944: 53 points in three loadings.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright fit example --law ogden-3", "The points as files to import: flexwright fit example --files treloar" })
    static final class Example extends Call {
        @Mixin
        Asked asked = new Asked();
        @Option(names = "--files", paramLabel = "FOLDER", description = "Write the three files there too; nothing that is there already is overwritten.")
        Path files;

        @Override
        protected Reply reply(CliServices services) {
            Reply reply = new Reply(id()).input("law", asked.law).input("weighting", asked.weights().id());
            reply.line("Natural rubber, 53 points in three loadings: " + Treloar.SOURCE.display());
            if (files != null) {
                write(services.workingFolder().resolve(files), reply);
            }
            return FitReply.of(reply, asked.form(), asked.weights(), Treloar.points());
        }

        private static void write(Path folder, Reply reply) {
            for (Loading loading : Loading.values()) {
                Path file = folder.resolve(Treloar.fileName(loading));
                if (Files.exists(file)) {
                    throw new UsageException(file.getFileName() + " is there already: name a folder without it.");
                }
            }
            try {
                Files.createDirectories(folder);
                for (Loading loading : Loading.values()) {
                    Files.writeString(folder.resolve(Treloar.fileName(loading)), Treloar.file(loading));
                    reply.line("written: " + folder.getFileName() + "/" + Treloar.fileName(loading));
                }
            } catch (IOException e) {
                throw new CliException("The files could not be written to this folder.", e);
            }
        }
    }
}
