package org.flexwright.testing.rule;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Readings;
import org.flexwright.testing.Say;
import org.flexwright.testing.hardness.Deviation;
import org.flexwright.testing.hardness.Deviation.Matter;
import org.flexwright.testing.hardness.DurometerStandard;
import org.flexwright.testing.hardness.Facts;
import org.flexwright.testing.hardness.Protocol;
import org.osgi.service.component.annotations.Component;

/**
 * Durometer readings held against the protocol of the standard they follow: plies, distances, dwell, temperature, spread. Thickness,
 * curvature, number of readings and window have rules of their own.
 */
@Component(service = FindingRule.class)
public final class ProtocolRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.protocol";

    private static final Set<Matter> OWN = EnumSet.of(Matter.PLIES, Matter.EDGE, Matter.SPACING, Matter.DWELL, Matter.TEMPERATURE, Matter.SPREAD);

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Durometer readings against the protocol of their standard";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        GaugeScale scale = Readings.gaugeOf(measurement.getKey().getProperty());
        DurometerStandard standard = Held.standard(measurement, scale);
        if (!standard.covers(scale)) {
            out.accept(finding(Severity.CAUTION, measurement, "details", "protocol.not-covered", List.of("standard=" + standard, "scale=" + scale),
                    Source.published(standard.designation() + ", scope"), Pieces.name(trial, piece), standard, scale));
            return;
        }
        Facts facts = Held.facts(piece, measurement, scale);
        Protocol.check(facts).stream().filter(deviation -> OWN.contains(deviation.matter())).forEach(deviation -> out.accept(
                finding(name(trial, piece, measurement), measurement, deviation)));
    }

    /** A piece is read in many sessions: the sentence says in which. */
    private static String name(Trial trial, Specimen piece, Measurement measurement) {
        String session = measurement.getSession() == null || measurement.getSession().getCode() == null ? "" : ", " + measurement.getSession().getCode();
        return Pieces.name(trial, piece) + session;
    }

    private static Finding finding(String name, Measurement measurement, Deviation deviation) {
        Object[] arguments = deviation.arguments().toArray();
        return new Finding(ID, deviation.severity(), measurement.getId(), deviation.matter() == Matter.SPREAD ? "readings" : "details",
                Say.message("protocol.of", name, Say.message(deviation.key(), arguments).text()), List.of(deviation.key() + "=" + deviation.arguments()), deviation.source(),
                Say.message(deviation.key() + ".remedy", arguments));
    }
}
