package org.flexwright.report;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.label.LabelCode;
import org.flexwright.core.label.LabelException;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Attachment;
import org.flexwright.model.Entry;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.Tone;
import org.flexwright.report.photo.Photos;

/**
 * The hand-over pack: everything a stranger needs to make a part again, readable without the program. The pack of a frozen recipe is
 * written from what the recipe keeps and nothing else, so it comes out the same, byte for byte, whatever is changed later.
 */
public final class Pack {
    private final PackSource source;
    private final Registries registries;
    private final Photos photos;
    private final Blocks blocks = new Blocks();

    private Pack(PackSource source, Registries registries, Path folder) {
        this.source = source;
        this.registries = registries;
        this.photos = new Photos(folder);
    }

    /** The pack of a recipe; photos come from the project's folder. */
    public static Document of(Recipe recipe, Registries registries, Path folder) {
        PackSource source = PackSource.of(recipe);
        String title = title(source);
        return new Pack(source, registries, folder).write((Project) recipe.eContainer(), recipe, Say.it("title.recipe", source.code(), title), Say.it("foot.recipe", source
                .code(), title, Report.moment(recipe.getFrozenAt()), Objects.toString(recipe.getFrozenBy(), "")));
    }

    /** The pack of a trial as it stands now. */
    public static Document of(Trial trial, Registries registries, Path folder, Instant now) {
        PackSource source = PackSource.of(trial, now);
        String title = Objects.toString(trial.getTitle(), title(source));
        return new Pack(source, registries, folder).write(source.project(), trial, Say.it("title.trial", source.code(), title), Say.it("foot.trial", source.code(), title(
                source), Report.moment(now)));
    }

    private static String title(PackSource source) {
        String title = source.project().getTitle();
        return title == null || title.isBlank() ? Objects.toString(source.plan().getTitle(), "") : title;
    }

    private Document write(Project home, Entry subject, String title, String foot) {
        blocks.heading(1, title);
        lead();
        if (source.project().isInvented()) {
            blocks.say(Report.INVENTED, Tone.BANNER);
        }
        label(home, subject);
        need();
        new PackAcceptance(source, registries, blocks).targets();
        new PackHazards(source, registries, blocks).write();
        new PackMaterials(source, registries, blocks).write();
        new PackProcedure(source, registries, blocks).write();
        off();
        new PackAcceptance(source, registries, blocks).acceptance();
        new PackRecord(source, registries, blocks).readings();
        reference();
        new PackRecord(source, registries, blocks).findings();
        photos();
        new PackUnknown(source, registries, blocks).write();
        blocks.say(Report.LAST_WORD, Tone.QUIET);
        String author = source.recipe() == null ? "" : Objects.toString(source.recipe().getFrozenBy(), "");
        return new Document(title, foot, author, source.at(), false, blocks.all());
    }

    private void lead() {
        Recipe recipe = source.recipe();
        blocks.say(recipe == null ? Say.it("lead.trial", Report.moment(source.at())) : Say.it("lead.recipe", Report.moment(recipe.getFrozenAt()), Objects.toString(recipe
                .getFrozenBy(), ""), Objects.toString(source.plan().getCode(), "")), Tone.QUIET);
    }

    private void label(Project home, Entry subject) {
        List<Block.Code> labels = new ArrayList<>();
        addLabel(home, subject, labels);
        if (source.recipe() != null) {
            addLabel(home, source.made(), labels);
        }
        labels.forEach(blocks::add);
    }

    private void addLabel(Project home, Entry subject, List<Block.Code> labels) {
        try {
            LabelCode code = LabelCode.of(home, subject);
            String name = subject instanceof Recipe ? Say.it("label.recipe", source.code()) : Say.it("label.trial", ((Trial) subject).getCode());
            labels.add(new Block.Code(code.text(), List.of(name, title(source))));
        } catch (LabelException e) {
            // a thing without a code has no label, and its name stands in the title
        }
    }

    private void need() {
        Project project = source.project();
        blocks.heading(2, Say.it("need")).say(project.getJob());
        if (project.getNeeds().isEmpty() && project.getJob() == null) {
            blocks.say(Say.it("need.none"), Tone.QUIET);
        }
        blocks.items(JobSection.needs(project.getNeeds()));
        Trial made = source.made();
        List<String> points = new ArrayList<>();
        points.add(Say.it("short.route", registries.findProcessKind(source.plan().getRoute()).map(ProcessKind::title).orElse(String.valueOf(source.plan().getRoute()))));
        add(points, "short.idea", source.plan().getIdea());
        add(points, "short.conclusion", made.getConclusion());
        if (source.recipe() != null) {
            add(points, "short.limits", source.recipe().getLimits());
            add(points, "short.changes", source.recipe().getChanges());
        }
        List<Part> parts = made.getParts().stream().filter(part -> part.getPieceKind() == PieceKind.PART).toList();
        if (!parts.isEmpty()) {
            points.add(Say.it("short.parts", parts.size(), parts.stream().filter(Part::isFailed).count()));
        }
        blocks.heading(3, Say.it("short")).items(points);
    }

    private static void add(List<String> points, String key, String text) {
        if (text != null && !text.isBlank()) {
            points.add(Say.it(key, text.strip()));
        }
    }

    private void off() {
        blocks.heading(2, Say.it("off")).say(Say.it("off.lead"), Tone.QUIET);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            rows.add(List.of(Say.it("off." + i).split("\\|")));
        }
        blocks.table(List.of(Say.it("off.sign"), Say.it("off.check"), Say.it("off.do")), rows);
    }

    private void reference() {
        for (ReferencePart part : source.project().getReferenceParts()) {
            blocks.heading(2, Say.it("reference", Objects.toString(part.getName(), Objects.toString(part.getCode(), ""))));
            new JobSection(source.project(), registries, photos, blocks).reference(part);
        }
        if (source.project().getReferenceParts().isEmpty()) {
            blocks.heading(2, Say.it("reference", "")).say(Say.it("reference.none"), Tone.QUIET);
        }
    }

    private void photos() {
        blocks.heading(2, Say.it("photos"));
        List<Attachment> attachments = source.attachments();
        attachments.forEach(a -> {
            Block.Figure figure = photos.figure(a);
            blocks.add(figure.picture() != null && !PackUnknown.saysScale(a) ? new Block.Figure(Say.it("photos.scale", figure.caption()), figure.picture()) : figure);
        });
        if (attachments.isEmpty()) {
            blocks.say(Say.it("photos.none"), Tone.QUIET);
        }
    }
}
