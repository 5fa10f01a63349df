package org.flexwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.PartBudget;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.core.view.Budgets;
import org.flexwright.core.view.Lanes;
import org.flexwright.model.Project;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** How sure the values of a trial's parts are: every reading on one scale a target, and what makes each part's value unsure. */
final class SureSection {
    private SureSection() {
    }

    static void write(Project project, Registries registries, Trial trial, Blocks blocks) {
        TargetSheet sheet = TargetSheets.current(project);
        if (sheet == null) {
            return;
        }
        Blocks own = new Blocks();
        List<List<String>> rows = new ArrayList<>();
        for (Target target : sheet.getTargets()) {
            String id = target.getKey() == null ? null : target.getKey().getProperty();
            PropertyDef def = id == null ? null : registries.findProperty(id).orElse(null);
            if (def == null) {
                continue;
            }
            List<PartValue> parts = PartValues.of(trial, target.getKey(), def);
            List<PartValue> reference = PartValues.ofReference(project, target.getKey(), def);
            if (parts.stream().noneMatch(PartValue::hasNumber)) {
                continue;
            }
            Lanes.of(target, def, parts, Verdicts.judge(target, def, parts, null, reference), reference).ifPresent(lanes -> own.say(lanes.title()).add(Drawings.lanes(lanes)));
            parts.forEach(part -> PartBudget.of(part, def).ifPresent(budget -> rows.add(row(def, budget))));
        }
        if (rows.isEmpty()) {
            return;
        }
        blocks.heading(3, "How sure").say("Block: target. Short strokes: readings. Dot: a part; line: how sure its value is, 95 %. Diamond: reference part. Thick stroke: mean of the parts with its interval.",
                Tone.QUIET);
        own.all().forEach(blocks::add);
        blocks.table(List.of("Property", "Part", "Value", "Made of, standard uncertainties", "Not known"), rows);
        blocks.say(PartBudget.SOURCE.display() + ". About each part alone, not about how parts differ.", Tone.QUIET);
    }

    private static List<String> row(PropertyDef def, PartBudget budget) {
        return List.of(def.title(), budget.part().part(), budget.text(), Budgets.bars(budget).bars().stream().map(b -> b.label() + " " + b.words()).collect(Collectors.joining("; ")), budget
                .unknown().stream().map(Message::text).collect(Collectors.joining(" ")));
    }
}
