package org.flexwright.testing.rule;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Rounded;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Readings;
import org.flexwright.testing.hardness.ScaleChoice;
import org.osgi.service.component.annotations.Component;

/** A hardness outside the part of its scale that can be trusted. */
@Component(service = FindingRule.class)
public final class WindowRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.window";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Hardness outside 20 to 90 of its scale";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        GaugeScale scale = Readings.gaugeOf(measurement.getKey().getProperty());
        List<Double> values = Pieces.values(measurement);
        if (scale == null || values.isEmpty()) {
            return;
        }
        double median = Descriptive.median(values.stream().mapToDouble(Double::doubleValue).toArray());
        GaugeScale suited = ScaleChoice.suited(scale, median);
        if (!ScaleChoice.inWindow(median)) {
            out.accept(finding(Severity.CAUTION, measurement, "readings", suited == scale ? "outside-window.alone" : "outside-window", List.of("median=" + median, "scale=" + scale), ScaleChoice.WINDOW_SOURCE,
                    Pieces.name(trial, piece), Rounded.text(median, ""), scale, suited));
        }
    }
}
