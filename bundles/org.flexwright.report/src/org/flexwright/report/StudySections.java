package org.flexwright.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.flexwright.core.gauge.GaugeAnalysis;
import org.flexwright.core.gauge.GaugeOutcome;
import org.flexwright.core.gauge.GaugeResult;
import org.flexwright.core.gauge.GaugeTable;
import org.flexwright.core.gauge.GaugeViews;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.ranking.RankOutcome;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Project;
import org.flexwright.model.Ranking;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** Gauge studies and rankings. */
final class StudySections {
    private final Project project;
    private final Registries registries;
    private final Blocks blocks;

    StudySections(Project project, Registries registries, Blocks blocks) {
        this.project = project;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        project.getGaugeStudies().forEach(this::study);
        project.getRankings().forEach(this::ranking);
    }

    private void study(GaugeStudy study) {
        blocks.heading(2, "Gauge study " + Objects.toString(study.getCode(), "") + (study.getTitle() == null ? "" : ", " + study.getTitle()));
        String id = study.getKey() == null ? null : study.getKey().getProperty();
        Optional<PropertyDef> def = id == null ? Optional.empty() : registries.findProperty(id);
        if (def.isEmpty()) {
            blocks.say(id == null ? "It does not say what was read." : "The plugin that knows " + id + " is not here.");
            return;
        }
        blocks.say(def.get().title() + (study.getInstrument() == null ? ", no gauge named" : ", " + study.getInstrument().getName()) + (study.getAt() == null ? "." : ", " + Report.moment(study
                .getAt()) + "."));
        GaugeTable table = GaugeTable.of(study);
        List<String> titles = Stream.concat(Stream.of("Piece"), table.persons().stream().map(who -> who.isEmpty() ? "Readings" : who)).toList();
        blocks.table(titles, table.pieces().stream().map(piece -> Stream.concat(Stream.of(piece), table.persons().stream().map(who -> String.join("; ", table
                .readings(piece, who).stream().map(r -> ReadingPrinter.print(def.get(), r) + (r.getLeftOut() == null ? "" : " (left out: " + r.getLeftOut() + ")")).toList()))).toList()).toList());
        switch (GaugeAnalysis.of(study, def.get())) {
            case GaugeOutcome.Refused no -> blocks.say(no.sentence().text());
            case GaugeResult result -> {
                blocks.say("Standard deviations; line: 95 % interval.", Tone.QUIET).add(Drawings.bars(GaugeViews.components(result))).items(GaugeViews.sentences(result));
                blocks.say("[" + GaugeResult.SOURCE.display() + "; " + GaugeResult.INTERVALS.display() + "]", Tone.QUIET);
            }
        }
        GaugeViews.readings(table, def.get()).ifPresent(plot -> blocks.add(Drawings.plot(plot)));
    }

    private void ranking(Ranking ranking) {
        blocks.heading(2, "Ranking " + Objects.toString(ranking.getCode(), "") + (ranking.getTitle() == null ? "" : ", " + ranking.getTitle()));
        blocks.say(ranking.getQuestion());
        if (!ranking.getLists().isEmpty()) {
            blocks.table(List.of("Who", "First to last"), ranking.getLists().stream().map(list -> List.of(Objects.toString(list.getWho(), ""), Rankings.text(list))).toList());
        }
        switch (Rankings.outcome(ranking)) {
            case RankOutcome.Refused no -> blocks.say(no.sentence().text());
            case RankOutcome.Order order -> {
                blocks.items(Rankings.sentences(ranking, order));
                blocks.table(List.of("#Place", "Piece", "Placed", "#First by"), order.places().stream().map(p -> List.of(String.valueOf(p.place()), Names.piece(p.piece()), p.placed().text(), p.first() + " of " + order.people())).toList());
                blocks.say(RankOutcome.SOURCE.display() + ".", Tone.QUIET);
            }
        }
    }
}
