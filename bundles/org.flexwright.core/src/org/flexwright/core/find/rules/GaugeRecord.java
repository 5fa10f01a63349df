package org.flexwright.core.find.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Descriptive;

/**
 * What the project's record says of the gauges a property is read with, in the property's canonical unit; 0 where it says nothing.
 *
 * @param resolution the coarsest display step
 * @param accuracy   the largest own error stated
 * @param spread     standard deviation of single readings on one piece: what the gauges are known to scatter by, or pooled over all pieces (0 with fewer than four
 *                   degrees of freedom), whichever is larger
 */
record GaugeRecord(double resolution, double accuracy, double spread) {
    /** With fewer degrees of freedom a standard deviation is hardly known to half its size. */
    private static final int FEWEST = 4;

    static GaugeRecord of(Project project, PropertyDef property) {
        List<Specimen> pieces = new ArrayList<>(project.getReferenceParts());
        pieces.addAll(project.getControlPieces());
        project.getTrials().forEach(t -> pieces.addAll(t.getParts()));
        List<Measurement> read = pieces.stream().flatMap(p -> p.getMeasurements().stream())
                .filter(m -> m.getKey() != null && property.id().equals(m.getKey().getProperty()) && m.getKnowledge() == Knowledge.MEASURED).toList();
        List<Instrument> gauges = read.stream().map(Measurement::getInstrument).filter(Objects::nonNull).distinct().toList();
        return new GaugeRecord(gauges.stream().mapToDouble(g -> GaugeAmounts.canonical(g, g.getResolution(), property)).max().orElse(0),
                gauges.stream().mapToDouble(g -> GaugeAmounts.canonical(g, g.getAccuracy(), property)).max().orElse(0),
                Math.max(spread(read), gauges.stream().mapToDouble(g -> GaugeAmounts.canonical(g, g.getSpread(), property)).max().orElse(0)));
    }

    private static double spread(List<Measurement> measurements) {
        double squares = 0;
        int df = 0;
        for (Measurement m : measurements) {
            double[] values = m.getReadings().stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE && Say.blank(r.getLeftOut()))
                    .mapToDouble(Reading::getValue).toArray();
            if (values.length > 1) {
                double sd = Descriptive.standardDeviation(values).orElseThrow();
                squares += sd * sd * (values.length - 1);
                df += values.length - 1;
            }
        }
        return df < FEWEST ? 0 : Math.sqrt(squares / df);
    }
}
