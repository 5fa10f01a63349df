package org.flexwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Step;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** The usual cautions for all steps, each once, and what the data sheets say in their codes. */
final class PackHazards {
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;

    PackHazards(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        Map<String, HazardPrompt> prompts = new LinkedHashMap<>();
        Map<String, List<String>> steps = new LinkedHashMap<>();
        int number = 0;
        for (Step step : source.plan().getSteps()) {
            number++;
            for (HazardPrompt prompt : registries.prompts(step, source.plan())) {
                prompts.putIfAbsent(prompt.id(), prompt);
                steps.computeIfAbsent(prompt.id(), id -> new ArrayList<>()).add(Integer.toString(number));
            }
        }
        blocks.heading(2, Say.it("hazards"));
        blocks.say(Say.it(prompts.isEmpty() ? "hazards.none" : "hazards.lead"), Tone.STRONG);
        if (!prompts.isEmpty()) {
            blocks.add(new Block.Table(Blocks.columns(List.of(Say.it("col.caution"), Say.it("col.controls"), Say.it("col.steps"), Say.it("col.source"))), prompts.values()
                    .stream().map(p -> List.of(Block.Cell.of(p.hazard().text(), Tone.STRONG), Block.Cell.of(p.controls().text()), Block.Cell.of(String.join(", ", steps.get(p
                            .id()))), Block.Cell.of(p.source().display(), Tone.QUIET))).toList()));
        }
        statements();
    }

    private void statements() {
        List<String> points = new ArrayList<>();
        for (MaterialGrade grade : PackMaterials.used(source)) {
            String name = RecordSections.name(grade);
            points.add(grade.getHazards().isEmpty() ? Say.it("hazards.unread", name) : name + ": " + String.join(", ", grade.getHazards()));
        }
        if (!points.isEmpty()) {
            blocks.heading(3, Say.it("hazards.statements")).items(points);
        }
    }
}
