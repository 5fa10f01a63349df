package org.flexwright.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.flexwright.core.Figures;
import org.flexwright.core.Watch;
import org.flexwright.core.recording.LawFits;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.rubber.FitPlots;
import org.flexwright.core.rubber.FitWords;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.LawFit;
import org.flexwright.model.Project;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** Kept fits of rubber laws: points and law, residuals, coefficients with intervals; computed from the raw files as they are now. */
final class LawSection {
    private static final int MOST = 6;
    private static final int DIGITS = 3;

    private LawSection() {
    }

    static void write(Project project, Registries registries, Path folder, Blocks blocks) {
        List<LawFit> all = project.getLawFits();
        if (all.isEmpty()) {
            return;
        }
        blocks.heading(2, Say.it("laws"));
        for (LawFit kept : all.stream().limit(MOST).toList()) {
            blocks.heading(3, Say.it("law.of", kept.getTitle()));
            blocks.say(Say.it("law.from", kept.getRecordings().stream().map(Recordings::name).collect(Collectors.joining("; ")), kept.getLaw() == null ? "" : kept.getLaw(), kept.getWeighting() == null ? "" :
                    kept.getWeighting()), Tone.QUIET);
            try {
                LawFits.Question question = LawFits.question(folder, kept, registries);
                one(question.fit(Watch.NONE), blocks);
                question.remarks().forEach(remark -> blocks.say(remark.message().text(), Tone.QUIET));
            } catch (RefusedException e) {
                // a curve is gone or changed since: the report says so and goes on
                blocks.say(e.getMessage());
            }
        }
        if (all.size() > MOST) {
            blocks.say(Say.it("law.more", all.size() - MOST, all.stream().skip(MOST).map(LawFit::getTitle).collect(Collectors.joining("; "))), Tone.QUIET);
        }
    }

    private static void one(RubberFit fit, Blocks blocks) {
        if (FitWords.rejected(fit).isPresent()) {
            blocks.say(FitWords.rejected(fit).get().text());
            return;
        }
        blocks.add(Drawings.plot(FitPlots.fit(fit)));
        blocks.add(Drawings.plot(FitPlots.residuals(fit)));
        List<Block.Cell> lines = new ArrayList<>();
        fit.coefficients().forEach(c -> lines.add(Block.Cell.of(Say.it("law.coefficient", c.name(), FitWords.text(c)))));
        lines.add(Block.Cell.of(Say.it("law.young", FitWords.text(fit.young()))));
        lines.add(Block.Cell.of(Say.it("law.rms", Figures.of(fit.rms(), "MPa", DIGITS), fit.points().size(), fit.weighting().title())));
        blocks.add(new Block.Items(lines));
        blocks.say(FitWords.reach(fit).text());
        FitWords.remarks(fit).forEach(remark -> blocks.say(remark.message().text(), Tone.QUIET));
        blocks.say(Say.it("law.source", FitWords.SOURCE.display()), Tone.QUIET);
    }
}
