package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Batch;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.report.Labels;
import org.flexwright.report.Pack;
import org.flexwright.report.PackFiles;
import org.flexwright.report.doc.Document;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Packs and labels. */
@Command(name = "pack", description = "What another person needs to make it again, as one HTML file and one PDF; and sheets of labels.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright pack recipe R1 --out handover" }, subcommands = { PackNoun.OfRecipe.class, PackNoun.OfTrial.class, PackNoun.OfLabels.class })
final class PackNoun extends Noun {

    /** Writes a document into a folder. */
    abstract static class Printing extends ProjectCall {
        @Option(names = "--out", paramLabel = "FOLDER", description = "The folder to write into; this folder when left out. Files that are there are replaced.")
        Path out = Path.of("");

        @Override
        protected final boolean writes() {
            return false;
        }

        final Reply print(CliServices services, Document document, String name) {
            Reply reply = new Reply(id());
            try {
                for (Path file : PackFiles.write(document, services.workingFolder().resolve(out).toAbsolutePath(), name, () -> false)) {
                    Path shown = out.resolve(file.getFileName());
                    reply.words(shown.toString().toLowerCase(Locale.ROOT).endsWith(".pdf") ? "pdf" : "html", shown.toString());
                    reply.line("Written: " + shown);
                }
            } catch (IOException | PackFiles.Stopped e) {
                throw new CliException("The pack cannot be written to " + (out.toString().isEmpty() ? "this folder" : out) + ": it is read-only, full, or no folder.", e);
            }
            return reply;
        }
    }

    @Command(name = "recipe", description = "The hand-over pack of a frozen recipe. It comes out the same, byte for byte, whatever is changed later.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright pack recipe R1 --out handover" })
    static final class OfRecipe extends Printing {
        @Parameters(paramLabel = "RECIPE", description = "Code of the recipe, \"R1 v2\" for a version.")
        String recipe;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Recipe found = Find.recipe(session.project(), recipe);
            return print(services, Pack.of(found, services.registries(), session.folder()), found.getCode() + "-v" + found.getVersion());
        }
    }

    @Command(name = "trial", description = "The same for a trial, as it stands now.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright pack trial T08 --out handover" })
    static final class OfTrial extends Printing {
        @Parameters(paramLabel = "TRIAL", description = "Code of the trial.")
        String trial;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial found = Find.trial(session.project(), trial);
            return print(services, Pack.of(found, services.registries(), session.folder(), services.clock().instant()), found.getCode());
        }
    }

    @Command(name = "labels", description = "Labels to cut out, each with a code that finds its thing again: for a trial and its parts, a batch and its pots, or the lots of a material.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright pack labels T08 --out handover" })
    static final class OfLabels extends Printing {
        @Parameters(paramLabel = "CODE", description = "Code of a trial, batch or material.")
        String code;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            return print(services, sheet(session.project(), code.strip()), "labels-" + code.strip());
        }

        private static Document sheet(Project project, String code) {
            List<Batch> batches = project.getBatches().stream().filter(b -> code.equalsIgnoreCase(b.getCode())).toList();
            List<MaterialGrade> grades = project.getGrades().stream().filter(g -> code.equalsIgnoreCase(g.getCode())).toList();
            boolean trial = project.getTrials().stream().anyMatch(t -> code.equalsIgnoreCase(t.getCode()));
            if (!trial && !batches.isEmpty()) {
                return Labels.of(batches.get(0));
            }
            return !trial && !grades.isEmpty() ? Labels.of(grades.get(0)) : Labels.of(Find.trial(project, code));
        }
    }
}
