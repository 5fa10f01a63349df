package org.flexwright.testing.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Readings;
import org.osgi.service.component.annotations.Component;

/** A hardness kept on one scale and read with a gauge of another. */
@Component(service = FindingRule.class)
public final class GaugeScaleRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.gauge-scale";

    private static final Source SOURCE = Source.published("ASTM D2240: there is no simple relation between the types");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Hardness read with a gauge of another scale";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        Instrument gauge = measurement.getInstrument();
        if (gauge == null || gauge.getScale() == null || gauge.getScale().isBlank()) {
            return;
        }
        GaugeScale kept = Readings.gaugeOf(measurement.getKey().getProperty());
        Optional<GaugeScale> own = GaugeScale.named(gauge.getScale());
        List<String> restsOn = List.of("scale=" + gauge.getScale(), "property=" + measurement.getKey().getProperty());
        String name = gauge.getName() == null ? "" : gauge.getName();
        if (own.isEmpty()) {
            out.accept(finding(Severity.NOTE, measurement, "instrument", "gauge-scale.unknown", restsOn, SOURCE, Pieces.name(trial, piece), name, gauge.getScale().strip(), scales()));
        } else if (own.get() != kept) {
            out.accept(finding(Severity.CAUTION, measurement, "instrument", "gauge-scale.other", restsOn, SOURCE, Pieces.name(trial, piece), name, own.get(), kept));
        }
    }

    private static String scales() {
        return String.join(", ", java.util.Arrays.stream(GaugeScale.values()).map(GaugeScale::symbol).toList());
    }
}
