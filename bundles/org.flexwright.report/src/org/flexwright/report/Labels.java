package org.flexwright.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.label.LabelCode;
import org.flexwright.model.Batch;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.Tone;

/** Sheets of labels to cut out: for the parts of a trial, the pots of a batch, the lots of a material. */
public final class Labels {
    private final Project project;
    private final List<Block.Code> labels = new ArrayList<>();

    private Labels(Project project) {
        this.project = project;
    }

    /** The trial's own label and one for each of its parts. Throws LabelException when one has no code. */
    public static Document of(Trial trial) {
        Labels sheet = new Labels((Project) trial.eContainer());
        sheet.add(trial, Say.it("label.trial", trial.getCode()), Objects.toString(trial.getTitle(), ""));
        trial.getParts().forEach(part -> sheet.part(trial, part));
        return sheet.document(Say.it("label.trial", trial.getCode()), trial.getMadeAt() == null ? trial.getCreatedAt() : trial.getMadeAt());
    }

    /** The batch's own label, one for each pot and one for each part of its pots. Throws LabelException when one has no code. */
    public static Document of(Batch batch) {
        Labels sheet = new Labels((Project) batch.eContainer());
        sheet.add(batch, Say.it("label.batch", batch.getCode()), Objects.toString(batch.getTitle(), ""));
        for (Trial pot : batch.getPots()) {
            sheet.add(pot, Say.it("label.pot", pot.getCode()), Objects.toString(pot.getCupLabel(), ""), Say.it("label.batch", batch.getCode()));
        }
        batch.getPots().forEach(pot -> pot.getParts().forEach(part -> sheet.part(pot, part)));
        return sheet.document(Say.it("label.batch", batch.getCode()), batch.getCreatedAt());
    }

    /** One for each lot of a material. Throws LabelException when one has no code. */
    public static Document of(MaterialGrade grade) {
        Labels sheet = new Labels((Project) grade.eContainer());
        for (Lot lot : grade.getLots()) {
            sheet.add(lot, Say.it("label.lot", Objects.toString(lot.getCode(), ""), RecordSections.name(grade)), lot.getOpened() == null ? "" : Say.it("label.opened", lot
                    .getOpened()), lot.getExpires() == null ? "" : Say.it("label.expires", lot.getExpires()));
        }
        return sheet.document(RecordSections.name(grade), null);
    }

    private void part(Trial trial, Part part) {
        add(part, Say.it("label.part", Objects.toString(part.getCode(), ""), trial.getCode()), Objects.toString(trial.getTitle(), ""), Report.moment(part.getMadeAt()));
    }

    private void add(Entry thing, String... words) {
        List<String> lines = new ArrayList<>(List.of(words));
        lines.removeIf(String::isBlank);
        labels.add(new Block.Code(LabelCode.of(project, thing).text(), lines));
    }

    /** Labels carry no moment of printing; the file has that of what it is about. */
    private Document document(String name, Instant at) {
        String title = Say.it("labels.title", name);
        Blocks blocks = new Blocks().heading(1, title).say(Say.it("labels.hint"), Tone.QUIET);
        if (project.isInvented()) {
            blocks.say(Report.INVENTED, Tone.BANNER);
        }
        blocks.say(labels.isEmpty() ? Say.it("labels.none", name) : "");
        labels.forEach(blocks::add);
        return new Document(title, Say.it("labels.foot", name, Objects.toString(project.getTitle(), "")), "", at == null ? Instant.EPOCH : at, false, blocks.all());
    }
}
