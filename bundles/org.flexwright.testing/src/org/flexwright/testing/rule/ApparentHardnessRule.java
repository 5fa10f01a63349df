package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.HardnessReading;
import org.flexwright.testing.Readings;
import org.osgi.service.component.annotations.Component;

/** A hardness of the material read on a piece that is too thin or curved for one. */
@Component(service = FindingRule.class)
public final class ApparentHardnessRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.apparent";

    private static final Source SOURCE = Source.published("ISO 48-4:2018, clause not confirmed");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Hardness on a piece too thin or curved for it";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        GaugeScale scale = Readings.scaleOf(measurement.getKey().getProperty());
        if (scale == null) {
            return;
        }
        String spot = measurement.getKey().getSpot();
        boolean curved = Held.curved(measurement);
        String needed = Rounded.text(HardnessReading.neededThickness(scale), "mm");
        List<String> restsOn = List.of("thickness=" + piece.getThickness(), "spot=" + spot, "curved=" + curved, "property=" + measurement.getKey().getProperty());
        switch (HardnessReading.kindOf(scale, piece.getThickness(), curved)) {
            case APPARENT -> out.accept(curved
                    ? finding(Severity.CAUTION, measurement, "key", "apparent.curved", restsOn, SOURCE, Pieces.name(trial, piece))
                    : finding(Severity.CAUTION, measurement, "key", "apparent.thin", restsOn, SOURCE, Pieces.name(trial, piece),
                            Rounded.text(piece.getThickness(), "mm"), needed));
            case UNKNOWN -> out.accept(finding(Severity.NOTE, measurement, "key", "apparent.unknown", restsOn, SOURCE, Pieces.name(trial, piece), needed));
            case MATERIAL -> {
                // thick and flat: nothing to say
            }
        }
    }
}
