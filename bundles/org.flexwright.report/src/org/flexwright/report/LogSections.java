package org.flexwright.report;

import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.Project;
import org.flexwright.model.StopOverride;

/** What people ticked, went against and noted: who, when, and why. */
final class LogSections {
    private final Project project;
    private final Registries registries;
    private final Subjects subjects;
    private final Html html;

    LogSections(Project project, Registries registries, Subjects subjects, Html html) {
        this.project = project;
        this.registries = registries;
        this.subjects = subjects;
        this.html = html;
    }

    void write(List<Finding> findings) {
        overrides(findings);
        acknowledgements();
        notes();
    }

    private void overrides(List<Finding> findings) {
        if (project.getOverrides().isEmpty()) {
            return;
        }
        List<StopOverride> holding = findings.stream().flatMap(f -> FindingService.overridden(f, project).stream()).toList();
        html.element("h2", "Findings gone against").open("table").row("th", List.of("Rule", "About", "Reason", "Who", "When", ""));
        for (StopOverride override : project.getOverrides()) {
            html.row("td", List.of(registries.findRule(override.getRule()).map(r -> r.title() + " (" + r.id() + ")").orElse(text(override.getRule())), subjects
                    .name(override.getSubject()), text(override.getReason()), text(override.getWho()), Report.moment(override.getAt()), holding.contains(override)
                            ? "stands" : "lapsed: what it rested on has changed, or the rule is silent now"));
        }
        html.close("table");
    }

    private void acknowledgements() {
        if (project.getAcknowledgements().isEmpty()) {
            return;
        }
        html.element("h2", "Cautions and data sheets read").open("table").row("th", List.of("Who", "When", "Caution", "Step", "Session", "Lot",
                "Data sheet of", "Revision"));
        project.getAcknowledgements().forEach(this::acknowledgement);
        html.close("table");
    }

    private void acknowledgement(Acknowledgement tick) {
        Lot lot = tick.getLot();
        html.row("td", List.of(text(tick.getWho()), Report.moment(tick.getAt()), text(tick.getPrompt()), tick.getStep() == null ? "" : subjects.name(tick.getStep()
                .getId()), tick.getSession() == null ? "" : text(tick.getSession().getCode()), lot == null ? "" : subjects.name(lot.getId()), text(tick
                        .getSheetDate()), text(tick.getSheetRevision())));
    }

    /** Free words, wherever in the project they stand. */
    private void notes() {
        Stream.Builder<Entry> noted = Stream.builder();
        noted.add(project);
        for (Iterator<EObject> all = EcoreUtil.getAllContents(project, true); all.hasNext();) {
            if (all.next() instanceof Entry entry) {
                noted.add(entry);
            }
        }
        List<Entry> entries = noted.build().filter(e -> e.getNote() != null && !e.getNote().isBlank()).toList();
        if (!entries.isEmpty()) {
            html.element("h2", "Notes").open("table").row("th", List.of("About", "Note"));
            entries.forEach(e -> html.row("td", List.of(subjects.name(e.getId()), e.getNote())));
            html.close("table");
        }
    }

    private static String text(Object value) {
        return Objects.toString(value, "");
    }
}
