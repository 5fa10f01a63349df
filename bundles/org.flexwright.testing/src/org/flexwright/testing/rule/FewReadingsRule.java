package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Rounded;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.testing.Readings;
import org.flexwright.testing.hardness.Requirement;
import org.flexwright.testing.hardness.RubberKind;
import org.osgi.service.component.annotations.Component;

/** Too few durometer readings on a piece for the standard they follow; by that of rubber three on a known material, five on an unknown one. */
@Component(service = FindingRule.class)
public final class FewReadingsRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.few-readings";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Too few durometer readings on a piece";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        int count = Pieces.values(measurement).size();
        RubberKind said = Held.sort(measurement);
        Requirement needed = Held.standard(measurement, Readings.gaugeOf(measurement.getKey().getProperty()))
                .minReadings(said != RubberKind.UNKNOWN ? said : known(trial) ? RubberKind.VULCANISED : RubberKind.UNKNOWN);
        if (count == 0 || count >= needed.value()) {
            return;
        }
        String key = count == 1 ? "few.one" : "few.some";
        out.accept(finding(count == 1 ? Severity.CAUTION : Severity.NOTE, measurement, "readings", key, List.of("readings=" + Pieces.values(measurement)),
                needed.source(), Pieces.name(trial, piece), count, Rounded.text(needed.value(), "")));
    }

    /** A material counts as known when a grade in the trial's steps names its family. */
    private static boolean known(Trial trial) {
        return trial != null && trial.getSteps().stream().flatMap(s -> Mixtures.materials(s).stream()).map(u -> u.getGrade()).anyMatch(FewReadingsRule::hasFamily);
    }

    private static boolean hasFamily(MaterialGrade grade) {
        return grade != null && grade.getFamily() != null && !grade.getFamily().isBlank();
    }
}
