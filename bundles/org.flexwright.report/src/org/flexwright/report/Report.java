package org.flexwright.report;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.HtmlFile;
import org.flexwright.report.doc.Tone;
import org.flexwright.report.photo.Photos;

/**
 * The record of a project as one HTML file that is readable without the program and printable: job, reference, targets, trials as made,
 * readings, verdicts, findings and overrides, photos, plots, cautions. Every text is escaped; nothing is loaded from elsewhere.
 */
public final class Report {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);
    /** What every printed thing of demonstration data says first. */
    static final String INVENTED = "Invented demonstration data. Nothing in it was measured on a real part.";
    /** What every printed thing says last. */
    static final String LAST_WORD = "The product's own safety data sheet, local codes and licensed practice win over anything written here. Verdicts are about "
            + "the parts read, not about parts not yet made.";
    /** How strips are read. */
    static final String STRIP = "Block: target. Line: 95 % interval of the mean over parts. Dot: a part, hollow when only a bound is known. Diamond: reference part.";

    private final Project project;
    private final Registries registries;
    private final Photos photos;
    private final Path folder;
    private final Instant now;
    private final String program;
    private final Blocks blocks = new Blocks();
    private final Subjects subjects;

    private Report(Project project, Registries registries, Path folder, Instant now, String program) {
        this.project = project;
        this.registries = registries;
        this.photos = new Photos(folder);
        this.folder = folder;
        this.now = now;
        this.program = program;
        this.subjects = new Subjects(project);
    }

    /**
     * Makes the report.
     *
     * @param folder  the project's folder, from which photos are taken in
     * @param now     the moment written into it
     * @param program version of the program written into it
     */
    public static String html(Project project, Registries registries, Path folder, Instant now, String program) {
        return new Report(project, registries, folder, now, program).write();
    }

    private String write() {
        String title = project.getTitle() == null ? "Project" : project.getTitle();
        blocks.heading(1, title).say("Written " + moment(now) + " by Flexwright " + program + ".", Tone.QUIET);
        if (project.isInvented()) {
            blocks.say(INVENTED, Tone.BANNER);
        }
        absentPlugins();
        new JobSection(project, registries, photos, blocks).write();
        List<Finding> findings = registries.findings().check(project, now);
        comparison();
        Map<Optional<Trial>, List<Finding>> ofTrial = findings.stream().collect(Collectors.groupingBy(f -> subjects.trial(f.subject())));
        for (Trial trial : project.getTrials()) {
            new TrialSection(project, registries, blocks, ofTrial.getOrDefault(Optional.of(trial), List.of())).write(trial);
            PackSource.attachments(trial).forEach(attachment -> blocks.add(photos.figure(attachment)));
        }
        RecordingSection.write(project, registries, folder, blocks);
        LawSection.write(project, registries, folder, blocks);
        SpotSection.write(project, registries, folder, blocks);
        AgeingSection.write(project, registries, now, blocks);
        new RecordSections(project, registries, blocks).write();
        new StudySections(project, registries, blocks).write();
        findings(findings);
        new LogSections(project, registries, subjects, blocks).write(findings);
        blocks.say(LAST_WORD, Tone.QUIET);
        return HtmlFile.write(new Document(title, title, "", now, true, blocks.all()));
    }

    /** Plugins that wrote details into this project and are not here. */
    private void absentPlugins() {
        Set<String> here = registries.packages().stream().map(p -> p.ePackage().getNsURI()).collect(Collectors.toSet());
        project.getPlugins().stream().filter(p -> !here.contains(p.getNsURI())).forEach(p -> blocks.say("The plugin " + p.getPlugin() + " " + p.getVersion()
                + " (" + p.getNsURI() + ") is not here: what it wrote is kept in the project and not shown.", Tone.BANNER));
    }

    private void comparison() {
        Comparison comparison = Comparison.of(project, registries);
        blocks.heading(2, "Verdicts, side by side");
        if (comparison.rows().isEmpty()) {
            blocks.say("There are no targets yet.");
            return;
        }
        blocks.say("Against target sheet v" + comparison.sheetVersion() + ". " + STRIP, Tone.QUIET);
        List<Block.Column> columns = new ArrayList<>(Blocks.columns(List.of("Target", "Limits")));
        comparison.columns().forEach(c -> columns.add(Block.Column.text(c.code() + "\n" + (c.reference() ? "reference" : c.summary()))));
        List<List<Block.Cell>> rows = new ArrayList<>();
        differing(comparison, rows);
        for (int r = 0; r < comparison.rows().size(); r++) {
            List<Block.Cell> row = new ArrayList<>(List.of(Block.Cell.of(comparison.rows().get(r).title(), Tone.STRONG), Block.Cell.of(comparison.rows().get(r)
                    .limits())));
            for (int c = 0; c < comparison.columns().size(); c++) {
                row.add(cell(comparison.cell(r, c)));
            }
            rows.add(row);
        }
        blocks.add(new Block.Table(columns, rows));
        for (int r = 0; r < comparison.rows().size(); r++) {
            comparison.plot(r).ifPresent(plot -> blocks.add(Drawings.plot(plot)));
        }
    }

    private static void differing(Comparison comparison, List<List<Block.Cell>> rows) {
        if (comparison.columns().stream().allMatch(c -> c.differing().isEmpty())) {
            return;
        }
        List<Block.Cell> row = new ArrayList<>(List.of(Block.Cell.of("What differs", Tone.STRONG), Block.Cell.of("")));
        comparison.columns().forEach(c -> row.add(Block.Cell.of(String.join("\n", c.differing().stream().map(f -> f.label() + ": " + f.value()).toList()))));
        rows.add(row);
    }

    private static Block.Cell cell(Comparison.Cell cell) {
        Drawing strip = cell.strip() == null ? null : Drawings.strip(cell.strip(), cell.value() + ", " + cell.word());
        return new Block.Cell((cell.value() + "\n" + cell.word()).strip(), Tone.PLAIN, strip);
    }

    private void findings(List<Finding> findings) {
        blocks.heading(2, "Findings");
        if (findings.isEmpty()) {
            blocks.say("The rules found nothing.");
            return;
        }
        List<List<Block.Cell>> rows = new ArrayList<>();
        for (Finding finding : findings) {
            String override = FindingService.overridden(finding, project).map(o -> o.getReason() + " (" + o.getWho() + ", " + moment(o.getAt()) + ")").orElse("");
            List<Block.Cell> row = new ArrayList<>(List.of(Block.Cell.of(finding.severity().name().toLowerCase(Locale.ROOT), tone(finding))));
            row.addAll(Blocks.row(subjects.name(finding.subject()), finding.message().text(), finding.remedy().text(), finding.source().display(), override));
            rows.add(row);
        }
        blocks.add(new Block.Table(Blocks.columns(List.of("", "About", "Finding", "What helps", "Source", "Gone against")), rows));
    }

    /** How a finding is said. */
    static Tone tone(Finding finding) {
        return switch (finding.severity()) {
            case STOP -> Tone.STOP;
            case CAUTION -> Tone.CAUTION;
            case NOTE -> Tone.QUIET;
        };
    }

    static String moment(Instant at) {
        return at == null ? "" : DAY.format(at);
    }
}
