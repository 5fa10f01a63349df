package org.flexwright.report;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Attachment;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;

/**
 * The record of a project as one HTML file that is readable without the program and printable: job, reference, targets, trials as made,
 * readings, verdicts, findings and overrides, photos, plots, cautions. Every text is escaped; nothing is loaded from elsewhere.
 */
public final class Report {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);
    private static final String CSS = """
            body{font:15px/1.45 system-ui,sans-serif;color:#1B2126;background:#FFF;max-width:76rem;margin:1.5rem auto;padding:0 1.5rem}
            h1{font-size:1.8em;margin:0 0 .2em}h2{font-size:1.35em;margin:1.8em 0 .4em;border-bottom:1px solid #C9CED3}h3{margin:1.4em 0 .3em}
            p,li{max-width:80ch}table{border-collapse:collapse;margin:.5em 0 1em;font-size:.93em}
            th,td{border:1px solid #C9CED3;padding:.3em .55em;vertical-align:top;text-align:left}th{background:#F4F5F6}
            td.n{text-align:right;white-space:nowrap}.quiet,figcaption{color:#59636C}.banner{border:2px solid #8A5A00;padding:.5em .8em;font-weight:600}
            .stop{color:#A3123A;font-weight:600}.caution{color:#8A5A00;font-weight:600}.note{color:#59636C;font-weight:600}
            .v{font-weight:600;white-space:nowrap}figure{display:inline-block;margin:.4em 1em .8em 0;vertical-align:top}figure img{max-width:340px}
            .band{fill:#CFE5F3}.interval{stroke:#1B2126;stroke-width:1.4}.dot{fill:#005A91}.bound{fill:none;stroke:#005A91;stroke-width:1.2}
            .reference{fill:#B33C00}.axis{stroke:#59636C;stroke-width:1}.level{stroke:#B33C00;stroke-width:1;stroke-dasharray:5 3}
            .label{font-size:11px;fill:#59636C}.title{font-size:12px;fill:#1B2126}
            @page{size:A4 landscape;margin:12mm}
            @media print{body{margin:0;max-width:none;font-size:11px}h2{break-after:avoid}tr,figure,svg{break-inside:avoid}.wide{overflow:visible}}
            .wide{overflow-x:auto}
            """;

    private final Project project;
    private final Registries registries;
    private final Path folder;
    private final Instant now;
    private final String program;
    private final Html html = new Html();
    private final Subjects subjects;

    private Report(Project project, Registries registries, Path folder, Instant now, String program) {
        this.project = project;
        this.registries = registries;
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
        html.doctype().open("html", "lang", "en").open("head").open("meta", "charset", "utf-8").element("title", title).style(CSS).close("head").open(
                "body");
        html.element("h1", title);
        html.element("p", "Written " + moment(now) + " by Flexwright " + program + ".", "class", "quiet");
        if (project.isInvented()) {
            html.element("p", "Invented demonstration data. Nothing in it was measured on a real part.", "class", "banner");
        }
        absentPlugins();
        new JobSection(project, registries, new Photos(folder), html).write();
        List<Finding> findings = registries.findings().check(project, now);
        comparison();
        Map<Optional<Trial>, List<Finding>> ofTrial = findings.stream().collect(Collectors.groupingBy(f -> subjects.trial(f.subject())));
        for (Trial trial : project.getTrials()) {
            new TrialSection(project, registries, html, ofTrial.getOrDefault(Optional.of(trial), List.of())).write(trial);
            photos(attachments(trial));
        }
        new RecordSections(project, registries, html).write();
        findings(findings);
        new LogSections(project, registries, subjects, html).write(findings);
        html.element("p", "The product's own safety data sheet, local codes and licensed practice win over anything written here. Verdicts are about "
                + "the parts read, not about parts not yet made.", "class", "quiet");
        return html.close("body").close("html").toString();
    }

    /** Plugins that wrote details into this project and are not here. */
    private void absentPlugins() {
        Set<String> here = registries.packages().stream().map(p -> p.ePackage().getNsURI()).collect(Collectors.toSet());
        project.getPlugins().stream().filter(p -> !here.contains(p.getNsURI())).forEach(p -> html.element("p", "The plugin " + p.getPlugin() + " " + p.getVersion()
                + " (" + p.getNsURI() + ") is not here: what it wrote is kept in the project and not shown.", "class", "banner"));
    }

    private void comparison() {
        Comparison comparison = Comparison.of(project, registries);
        html.element("h2", "Verdicts, side by side");
        if (comparison.rows().isEmpty()) {
            html.element("p", "There are no targets yet.");
            return;
        }
        html.element("p", "Against target sheet v" + comparison.sheetVersion() + ". Block: target. Line: 95 % interval of the mean over parts. Dot: a part"
                + ", hollow when only a bound is known. Diamond: reference part.", "class", "quiet");
        html.open("div", "class", "wide").open("table").open("tr").element("th", "Target").element("th", "Limits");
        comparison.columns().forEach(c -> html.open("th").text(c.code()).open("br").text(c.reference() ? "reference" : c.summary()).close("th"));
        html.close("tr");
        differing(comparison);
        for (int r = 0; r < comparison.rows().size(); r++) {
            html.open("tr").element("th", comparison.rows().get(r).title()).element("td", comparison.rows().get(r).limits());
            for (int c = 0; c < comparison.columns().size(); c++) {
                cell(comparison.cell(r, c));
            }
            html.close("tr");
        }
        html.close("table").close("div");
        for (int r = 0; r < comparison.rows().size(); r++) {
            comparison.plot(r).ifPresent(plot -> html.open("figure").made(Drawings.plot(plot)).close("figure"));
        }
    }

    private void differing(Comparison comparison) {
        if (comparison.columns().stream().allMatch(c -> c.differing().isEmpty())) {
            return;
        }
        html.open("tr").element("th", "What differs", "colspan", "2");
        comparison.columns().forEach(c -> {
            html.open("td");
            c.differing().forEach(f -> html.text(f.label() + ": " + f.value()).open("br"));
            html.close("td");
        });
        html.close("tr");
    }

    private void cell(Comparison.Cell cell) {
        html.open("td");
        if (cell.strip() != null) {
            html.made(Drawings.strip(cell.strip(), cell.value() + ", " + cell.word())).open("br");
        }
        html.text(cell.value()).open("br").open("span", "class", "v").text(cell.word()).close("span");
        html.close("td");
    }

    /** All that belongs to a trial, its steps and its parts, each once. */
    private static List<Attachment> attachments(Trial trial) {
        return Stream.of(trial.getAttachments().stream(), trial.getSteps().stream().flatMap(s -> s.getAttachments().stream()),
                trial.getParts().stream().flatMap(p -> p.getPhotos().stream())).flatMap(all -> all).distinct().toList();
    }

    private void photos(List<Attachment> attachments) {
        Photos photos = new Photos(folder);
        attachments.forEach(attachment -> photos.write(attachment, html));
    }

    private void findings(List<Finding> findings) {
        html.element("h2", "Findings");
        if (findings.isEmpty()) {
            html.element("p", "The rules found nothing.");
            return;
        }
        html.open("table").row("th", List.of("", "About", "Finding", "What helps", "Source", "Gone against"));
        for (Finding finding : findings) {
            List<String> override = new ArrayList<>();
            FindingService.overridden(finding, project).ifPresent(o -> override.add(o.getReason() + " (" + o.getWho() + ", " + moment(o.getAt()) + ")"));
            String severity = finding.severity().name().toLowerCase(java.util.Locale.ROOT);
            html.open("tr").element("td", severity, "class", severity).element("td", subjects.name(finding.subject())).element("td", finding
                    .message().text()).element("td", finding.remedy().text()).element("td", finding.source().display()).element("td", String.join(" ",
                            override)).close("tr");
        }
        html.close("table");
    }

    static String moment(Instant at) {
        return at == null ? "" : DAY.format(at);
    }
}
