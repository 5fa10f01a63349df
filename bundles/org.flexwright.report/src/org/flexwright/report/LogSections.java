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
import org.flexwright.report.doc.Blocks;

/** What people ticked, went against and noted: who, when, and why. */
final class LogSections {
    private final Project project;
    private final Registries registries;
    private final Subjects subjects;
    private final Blocks blocks;

    LogSections(Project project, Registries registries, Subjects subjects, Blocks blocks) {
        this.project = project;
        this.registries = registries;
        this.subjects = subjects;
        this.blocks = blocks;
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
        blocks.heading(2, "Findings gone against").table(List.of("Rule", "About", "Reason", "Who", "When", ""), project.getOverrides().stream().map(override -> List.of(
                registries.findRule(override.getRule()).map(r -> r.title() + " (" + r.id() + ")").orElse(text(override.getRule())), subjects.name(override.getSubject()),
                text(override.getReason()), text(override.getWho()), Report.moment(override.getAt()), holding.contains(override) ? "stands"
                        : "lapsed: what it rested on has changed, or the rule is silent now")).toList());
    }

    private void acknowledgements() {
        if (project.getAcknowledgements().isEmpty()) {
            return;
        }
        blocks.heading(2, "Cautions and data sheets read").table(List.of("Who", "When", "Caution", "Step", "Session", "Lot", "Data sheet of", "Revision"), project
                .getAcknowledgements().stream().map(this::acknowledgement).toList());
    }

    private List<String> acknowledgement(Acknowledgement tick) {
        Lot lot = tick.getLot();
        return List.of(text(tick.getWho()), Report.moment(tick.getAt()), text(tick.getPrompt()), tick.getStep() == null ? "" : subjects.name(tick.getStep().getId()), tick
                .getSession() == null ? "" : text(tick.getSession().getCode()), lot == null ? "" : subjects.name(lot.getId()), text(tick.getSheetDate()), text(tick
                        .getSheetRevision()));
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
            blocks.heading(2, "Notes").table(List.of("About", "Note"), entries.stream().map(e -> List.of(subjects.name(e.getId()), e.getNote())).toList());
        }
    }

    private static String text(Object value) {
        return Objects.toString(value, "");
    }
}
