package org.flexwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.StopOverride;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** What was read, piece by piece; what the rules find, and what was gone against. */
final class PackRecord {
    private final PackSource source;
    private final Registries registries;
    private final Blocks blocks;

    PackRecord(PackSource source, Registries registries, Blocks blocks) {
        this.source = source;
        this.registries = registries;
        this.blocks = blocks;
    }

    void readings() {
        List<List<String>> rows = new ArrayList<>();
        for (Part part : source.made().getParts()) {
            String name = Objects.toString(part.getCode(), "") + (part.isFailed() ? "\n" + Say.it("failed", Objects.toString(part.getFailReason(), "")) : "");
            if (part.getMeasurements().isEmpty()) {
                rows.add(List.of(name, "", Say.it("count.none"), "", "", ""));
            }
            for (Measurement measurement : part.getMeasurements()) {
                rows.add(row(name, part, measurement));
            }
        }
        if (!rows.isEmpty()) {
            blocks.heading(2, Say.it("readings")).table(List.of(Say.it("col.piece"), Say.it("col.property"), Say.it("col.readings"), Say.it("col.how"), Say.it("col.age"), Say.it(
                    "col.gauge")), rows);
        }
    }

    private List<String> row(String name, Part part, Measurement measurement) {
        String id = measurement.getKey() == null ? "" : measurement.getKey().getProperty();
        PropertyDef def = registries.findProperty(id).orElse(null);
        String age = PackUnknown.ageHours(part, measurement).stream().mapToObj(h -> org.flexwright.core.view.TimeLine.clock(h * 60)).findFirst().orElse("");
        return List.of(name, def == null ? Objects.toString(id, "") : def.title(), JobSection.values(measurement, def) + (def == null || def.yesNo() ? "" : " " + def.kind()
                .unit().display()) + (Doubts.of(measurement.getSession(), registries.properties()).isPresent() ? "\n" + Doubts.word() : ""), measurement.getKey() == null ? "" : JobSection.conditions(measurement.getKey()), age, measurement.getInstrument() == null ? "" : Objects
                        .toString(measurement.getInstrument().getName(), ""));
    }

    void findings() {
        blocks.heading(2, Say.it("findings"));
        List<Finding> findings = registries.findings().check(source.project(), source.made(), source.at());
        if (findings.isEmpty()) {
            blocks.say(Say.it("findings.none"));
        } else {
            blocks.add(new Block.Table(Blocks.columns(List.of("", Say.it("col.finding"), Say.it("col.helps"), Say.it("col.source"))), findings.stream().map(f -> List.of(
                    Block.Cell.of(f.severity().name().toLowerCase(Locale.ROOT), Report.tone(f)), Block.Cell.of(f.message().text()), Block.Cell.of(f.remedy().text()), Block.Cell.of(f
                            .source().display(), Tone.QUIET))).toList()));
        }
        List<StopOverride> against = source.recipe() == null ? own() : source.project().getOverrides();
        if (!against.isEmpty()) {
            blocks.heading(3, Say.it("findings.against")).table(List.of(Say.it("col.finding"), Say.it("col.about"), Say.it("col.reason"), Say.it("col.who"), Say.it("col.when")),
                    against.stream().map(o -> List.of(registries.findRule(o.getRule()).map(FindingRule::title).orElse(Objects.toString(o.getRule(), "")), about(o), Objects
                            .toString(o.getReason(), ""), Objects.toString(o.getWho(), ""), Report.moment(o.getAt()))).toList());
        }
    }

    private List<StopOverride> own() {
        Subjects subjects = new Subjects(source.project());
        return source.project().getOverrides().stream().filter(o -> subjects.trial(o.getSubject()).filter(t -> t == source.made()).isPresent()).toList();
    }

    private String about(StopOverride override) {
        return source.recipe() == null ? new Subjects(source.project()).name(override.getSubject()) : Objects.toString(override.getNote(), "");
    }
}
