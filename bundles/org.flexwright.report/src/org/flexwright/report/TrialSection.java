package org.flexwright.report;

import java.util.List;

import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.find.Finding;
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

/** One trial, with the findings about it: idea, steps as planned and as made, cautions, parts with every reading, calculations kept, conclusion. */
final class TrialSection {
    private final Project project;
    private final Registries registries;
    private final Html html;
    private final List<Finding> findings;

    TrialSection(Project project, Registries registries, Html html, List<Finding> findings) {
        this.project = project;
        this.registries = registries;
        this.html = html;
        this.findings = findings;
    }

    void write(Trial trial) {
        html.element("h2", trial.getCode() + (trial.getTitle() == null ? "" : " · " + trial.getTitle()));
        String route = registries.findProcessKind(trial.getRoute()).map(ProcessKind::title).orElse(trial.getRoute() + " (its plugin is absent)");
        html.element("p", route + ". State: " + trial.getState().getLiteral() + (trial.getStateReason() == null ? "" : ", " + trial.getStateReason()) + "."
                + (trial.getBasedOn() == null ? "" : " Based on " + trial.getBasedOn().getCode() + "."));
        if (trial.getIdea() != null) {
            html.element("p", trial.getIdea());
        }
        steps(trial);
        prompts(trial);
        for (Part part : trial.getParts()) {
            html.element("h3", "Piece " + part.getCode() + " (" + part.getPieceKind().getLiteral().replace('_', ' ') + ")");
            JobSection.readings(part, registries, html);
        }
        calculations(trial);
        own();
        if (trial.getConclusion() != null) {
            html.element("h3", "Conclusion").element("p", trial.getConclusion());
        }
        String spent = (trial.getCost() == null ? "" : "Cost " + FieldText.show(FieldDescriptors.of(ModelPackage.Literals.TRIAL__COST), trial.getCost()) + ". ") + (trial.getHours() == null ? "" : "Hours of work "
                + QuantityFormat.plain(trial.getHours()) + ".");
        if (!spent.isEmpty()) {
            html.element("p", spent, "class", "quiet");
        }
    }

    private void steps(Trial trial) {
        html.open("table").row("th", List.of("Step", "What", "Planned", "As made", "Origin", "Difference"));
        for (Step step : trial.getSteps()) {
            StepKind kind = registries.findStepKind(step.getKind()).orElse(null);
            String title = step.getTitle() + ", " + step.getState().getLiteral() + (step.isUnconfirmed() ? ", copied and not confirmed" : "") + (step
                    .getSession() == null ? "" : ", " + step.getSession().getCode()) + (step.getConfirmedBy() == null ? "" : ", confirmed by " + step
                            .getConfirmedBy());
            List<CardLine> lines = StepCard.lines(step, kind).stream().filter(l -> !l.planned().isEmpty() || !l.actual().isEmpty()).toList();
            if (lines.isEmpty()) {
                html.row("td", List.of(title, kind == null ? "its plugin is absent; details are kept" : "", "", "", "", ""));
            }
            for (int i = 0; i < lines.size(); i++) {
                CardLine line = lines.get(i);
                html.row("td", List.of(i == 0 ? title : "", line.label(), line.planned(), line.actual(), line.origin(), line.difference() + (line.outside()
                        ? " outside own limit " + line.limit() : "")));
            }
        }
        html.close("table");
        weighings(trial);
    }

    /** Every single weighing. */
    private void weighings(Trial trial) {
        List<MaterialUse> uses = trial.getSteps().stream().flatMap(s -> s.getUses().stream()).filter(u -> !u.getWeighings().isEmpty()).toList();
        if (uses.isEmpty()) {
            return;
        }
        html.open("table").row("th", List.of("Weighed", "Net g", "Gross g", "Tare g", "When", "Balance", ""));
        for (MaterialUse use : uses) {
            String material = RoleWords.of(use.getRole()) + (use.getGrade() == null ? "" : ", " + use.getGrade().getCode()) + (use.getLot() == null ? "" : "/" + use
                    .getLot().getCode());
            use.getWeighings().forEach(w -> html.row("td", List.of(material, number(w.getNet()), number(w.getGross()), number(w.getTare()), Report.moment(w
                    .getAt()), w.getInstrument() == null ? "" : w.getInstrument().getName(), w.isCorrection() ? "added to mend the ratio" : "")));
        }
        html.close("table");
    }

    private static String number(Double value) {
        return value == null ? "" : FieldText.digits(value);
    }

    private void prompts(Trial trial) {
        html.open("details", "open", "open").element("summary", "Usual cautions for what is in this trial");
        html.open("ul");
        for (Step step : trial.getSteps()) {
            for (HazardPrompt prompt : registries.prompts(step, trial)) {
                html.element("li", step.getTitle() + ": " + prompt.hazard().text() + " " + prompt.controls().text() + " [" + prompt.source().display()
                        + "]" + ticks(step, prompt));
            }
        }
        html.close("ul").close("details");
    }

    private String ticks(Step step, HazardPrompt prompt) {
        return project.getAcknowledgements().stream().filter(a -> a.getStep() == step && prompt.id().equals(a.getPrompt())).findFirst().map(
                a -> " Read by " + a.getWho() + ", " + Report.moment(a.getAt()) + (a.getSheetDate() == null ? "" : ", data sheet of " + a.getSheetDate()
                        + " revision " + a.getSheetRevision()) + ".").orElse("");
    }

    private void calculations(Trial trial) {
        for (CalculationRun run : trial.getCalculations()) {
            html.element("h3", "Calculation kept: " + run.getCalculation() + ", version " + run.getVersion() + ", " + Report.moment(run.getAt()));
            if (run.getRefusal() != null) {
                html.element("p", "Refused: " + run.getRefusal());
            }
            html.element("p", "Computed by version " + run.getProgramVersion() + " of the program.", "class", "quiet");
            html.open("table").row("th", List.of("Input", "Value", "Origin"));
            run.getInputs().forEach(i -> html.row("td", List.of(i.getName() == null ? "" : i.getName(), value(i), Provenances.word(i.getOrigin()))));
            html.close("table").open("table").row("th", List.of("Result", "Value", "Source"));
            run.getResults().forEach(r -> html.row("td", List.of(r.getName(), value(r), r.getSource() == null ? "" : r.getSource())));
            html.close("table");
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
            html.element("h3", "Findings").open("ul");
            findings.forEach(f -> html.open("li").element("span", f.severity().name().toLowerCase(java.util.Locale.ROOT), "class", f.severity().name()
                    .toLowerCase(java.util.Locale.ROOT)).text(" " + f.message().text()).close("li"));
            html.close("ul");
        }
    }
}
