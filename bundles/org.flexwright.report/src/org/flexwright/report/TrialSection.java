package org.flexwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.find.Finding;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** One trial, with the findings about it: idea, steps as planned and as made, cautions, parts with every reading, calculations kept, conclusion. */
final class TrialSection {
    private final Project project;
    private final Registries registries;
    private final Blocks blocks;
    private final List<Finding> findings;

    TrialSection(Project project, Registries registries, Blocks blocks, List<Finding> findings) {
        this.project = project;
        this.registries = registries;
        this.blocks = blocks;
        this.findings = findings;
    }

    void write(Trial trial) {
        blocks.heading(2, trial.getCode() + (trial.getTitle() == null ? "" : " · " + trial.getTitle()));
        String route = registries.findProcessKind(trial.getRoute()).map(ProcessKind::title).orElse(trial.getRoute() + " (its plugin is absent)");
        blocks.say(route + ". State: " + trial.getState().getLiteral() + (trial.getStateReason() == null ? "" : ", " + trial.getStateReason()) + "."
                + (trial.getBasedOn() == null ? "" : " Based on " + trial.getBasedOn().getCode() + "."));
        blocks.say(trial.getIdea());
        if (trial.getCupLabel() != null || trial.getMould() != null || trial.getContactAt() != null) {
            blocks.say((trial.getCupLabel() == null ? "" : "On the cup: " + trial.getCupLabel() + ". ") + (trial.getMould() == null ? "" : "Mould: " + trial.getMould()
                    .getCode() + ". ") + (trial.getContactAt() == null ? "" : "A met B " + Report.moment(trial.getContactAt()) + "."));
        }
        steps(trial);
        decisions(trial);
        prompts(trial);
        for (Part part : trial.getParts()) {
            blocks.heading(3, "Piece " + part.getCode() + " (" + part.getPieceKind().getLiteral().replace('_', ' ') + ")");
            JobSection.readings(part, registries, blocks);
        }
        SureSection.write(project, registries, trial, blocks);
        calculations(trial);
        own();
        if (trial.getConclusion() != null) {
            blocks.heading(3, "Conclusion").say(trial.getConclusion());
        }
        String spent = (trial.getCost() == null ? "" : "Cost " + FieldText.show(FieldDescriptors.of(ModelPackage.Literals.TRIAL__COST), trial.getCost()) + ". ") + (trial.getHours() == null ? "" : "Hours of work "
                + QuantityFormat.plain(trial.getHours()) + ".");
        blocks.say(spent, Tone.QUIET);
    }

    private void steps(Trial trial) {
        List<List<String>> rows = new ArrayList<>();
        for (Step step : trial.getSteps()) {
            StepKind kind = registries.findStepKind(step.getKind()).orElse(null);
            String title = step.getTitle() + ", " + step.getState().getLiteral() + (step.isUnconfirmed() ? ", copied and not confirmed" : "") + (step
                    .getSession() == null ? "" : ", " + step.getSession().getCode()) + (step.getConfirmedBy() == null ? "" : ", confirmed by " + step
                            .getConfirmedBy());
            List<CardLine> lines = StepCard.lines(step, kind).stream().filter(l -> !l.planned().isEmpty() || !l.actual().isEmpty()).toList();
            if (lines.isEmpty()) {
                rows.add(List.of(title, kind == null ? "its plugin is absent; details are kept" : "", "", "", "", ""));
            }
            for (int i = 0; i < lines.size(); i++) {
                CardLine line = lines.get(i);
                rows.add(List.of(i == 0 ? title : "", line.label(), line.planned(), line.actual(), line.origin(), line.difference() + (line.outside()
                        ? " outside own limit " + line.limit() : "")));
            }
        }
        blocks.table(List.of("Step", "What", "Planned", "As made", "Origin", "Difference"), rows);
        weighings(trial.getSteps(), blocks);
    }

    /** Every single weighing. */
    static void weighings(List<Step> steps, Blocks blocks) {
        List<List<String>> rows = new ArrayList<>();
        for (MaterialUse use : steps.stream().flatMap(step -> step.getUses().stream()).toList()) {
            use.getWeighings().forEach(w -> rows.add(List.of(material(use), number(w.getNet()), number(w.getGross()), number(w.getTare()), Report.moment(w.getAt()), w
                    .getInstrument() == null ? "" : w.getInstrument().getName(), w.isCorrection() ? "added to mend the ratio" : "")));
        }
        if (!rows.isEmpty()) {
            blocks.table(List.of("Weighed", "#Net g", "#Gross g", "#Tare g", "When", "Balance", ""), rows);
        }
    }

    /** Role, material and lot. */
    static String material(MaterialUse use) {
        String grade = use.getGrade() == null ? "" : ", " + use.getGrade().getCode();
        String premix = use.getPremix() == null ? "" : ", " + use.getPremix().getCode();
        return RoleWords.of(use.getRole()) + grade + (use.getLot() == null ? "" : "/" + use.getLot().getCode()) + premix;
    }

    private static String number(Double value) {
        return value == null ? "" : FieldText.digits(value);
    }

    /** Go, hold or dump, and what was noted at the bench. */
    private void decisions(Trial trial) {
        if (!trial.getDecisions().isEmpty()) {
            blocks.table(List.of("Decided", "When", "Step", "Who", "Reason", "Stood against it"), trial.getDecisions().stream().map(d -> List.of(Names.word(d.getWord()), Report
                    .moment(d.getAt()), d.getStep() == null ? "" : Objects.toString(d.getStep().getTitle(), ""), Objects.toString(d.getWho(), ""), Objects.toString(d
                            .getReason(), ""), String.join("; ", d.getOpen()))).toList());
        }
        if (!trial.getNotes().isEmpty()) {
            blocks.table(List.of("At the bench", "When", "Step", "Note", "What it turned out to be"), trial.getNotes().stream().map(n -> List.of(Names.word(n.getKind()), Report
                    .moment(n.getAt()), n.getStep() == null ? "" : Objects.toString(n.getStep().getTitle(), ""), Objects.toString(n.getNote(), ""), Objects.toString(n
                            .getSortedAs(), ""))).toList());
        }
    }

    private void prompts(Trial trial) {
        List<String> prompts = new ArrayList<>();
        for (Step step : trial.getSteps()) {
            for (HazardPrompt prompt : registries.prompts(step, trial)) {
                prompts.add(step.getTitle() + ": " + prompt.hazard().text() + " " + prompt.controls().text() + " [" + prompt.source().display() + "]" + ticks(step,
                        prompt));
            }
        }
        if (!prompts.isEmpty()) {
            blocks.heading(3, "Usual cautions for what is in this trial").items(prompts);
        }
    }

    private String ticks(Step step, HazardPrompt prompt) {
        return project.getAcknowledgements().stream().filter(a -> a.getStep() == step && prompt.id().equals(a.getPrompt())).findFirst().map(
                a -> " Read by " + a.getWho() + ", " + Report.moment(a.getAt()) + (a.getSheetDate() == null ? "" : ", data sheet of " + a.getSheetDate()
                        + " revision " + a.getSheetRevision()) + ".").orElse("");
    }

    private void calculations(Trial trial) {
        for (CalculationRun run : trial.getCalculations()) {
            blocks.heading(3, "Calculation kept: " + run.getCalculation() + ", version " + run.getVersion() + ", " + Report.moment(run.getAt()));
            if (run.getRefusal() != null) {
                blocks.say("Refused: " + run.getRefusal());
            }
            blocks.say("Computed by version " + run.getProgramVersion() + " of the program.", Tone.QUIET);
            blocks.table(List.of("Input", "Value", "Origin"), run.getInputs().stream().map(i -> List.of(i.getName() == null ? "" : i.getName(), value(i), Provenances
                    .word(i.getOrigin()))).toList());
            blocks.table(List.of("Result", "Value", "Source"), run.getResults().stream().map(r -> List.of(r.getName() == null ? "" : r.getName(), value(r), r
                    .getSource() == null ? "" : r.getSource())).toList());
        }
    }

    private static String value(RunInput input) {
        if (input.getValue() == null) {
            return input.getText() == null ? "" : input.getText();
        }
        return QuantityFormat.plain(input.getValue()) + (input.getUnit() == null ? "" : " " + input.getUnit());
    }

    private static String value(RunResult result) {
        if (result.getText() != null && !result.getText().isBlank()) {
            return result.getText();
        }
        if (result.getLikely() == null) {
            return "";
        }
        String unit = result.getUnit() == null ? "" : " " + result.getUnit();
        String likely = QuantityFormat.plain(result.getLikely()) + unit;
        return result.getLow() == null || result.getHigh() == null || result.getLow().equals(result.getHigh()) ? likely : likely + " (" + QuantityFormat.plain(result.getLow()) + " to " + QuantityFormat.plain(
                result.getHigh()) + unit + ")";
    }

    /** The findings, in short; the whole of them stands at the end. */
    private void own() {
        if (!findings.isEmpty()) {
            blocks.heading(3, "Findings").cells(findings.stream().map(f -> Block.Cell.of(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f.message().text(), Report
                    .tone(f))).toList());
        }
    }
}
