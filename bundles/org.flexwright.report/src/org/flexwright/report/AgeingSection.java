package org.flexwright.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.Message;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.Drift;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.Project;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** What age did to the pieces that are followed, and which readings are still to come. */
final class AgeingSection {
    private AgeingSection() {
    }

    static void write(Project project, Registries registries, Instant now, Blocks blocks) {
        for (AgeingPlan plan : project.getAgeingPlans()) {
            if (plan.getKey() != null && plan.getKey().getProperty() != null) {
                registries.findProperty(plan.getKey().getProperty()).ifPresent(property -> write(plan, property, now, blocks));
            }
        }
    }

    private static void write(AgeingPlan plan, PropertyDef property, Instant now, Blocks blocks) {
        Drift drift = Drift.of(plan, property);
        blocks.heading(2, Say.it("ageing", Drift.title(plan, property)));
        blocks.say(drift.sentence().text());
        if (!drift.series().isEmpty()) {
            blocks.add(Drawings.plot(drift.plot()));
            blocks.table(List.of(Say.it("ageing.piece"), "#" + Say.it("ageing.days"), property.title(), "#" + Say.it("ageing.readings"), Say.it("ageing.session")), drift.table().rows());
        }
        drift.remarks().forEach((Message remark) -> blocks.say(remark.text(), Tone.QUIET));
        List<List<String>> rows = new ArrayList<>();
        Map<AgeingPoint, List<AgeingCheck>> byAge = new LinkedHashMap<>();
        AgeingPlans.checks(plan, property, now).forEach(c -> byAge.computeIfAbsent(c.point(), p -> new ArrayList<>()).add(c));
        byAge.forEach((point, checks) -> {
            AgeingCheck.byState(checks).forEach((state, pieces) -> rows.add(List.of(AgeSpan.textOfDays(point.getDays()), AgeSpan.textOfDays(AgeingPlans.give(point)), checks.getFirst()
                    .due() == null ? "" : Report.moment(checks.getFirst().due()), state.word() + (point.getSkipped() == null || point.getSkipped().isBlank() ? "" : ": " + point
                            .getSkipped()), String.join(", ", pieces))));
        });
        blocks.table(List.of(Say.it("ageing.age"), Say.it("ageing.give"), Say.it("ageing.due"), Say.it("ageing.state"), Say.it("ageing.pieces")), rows);
    }
}
