package org.flexwright.core.verdict;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.numerics.Descriptive;

/**
 * What the readings on control pieces say of a gauge: how single readings of one piece, in one session, scatter. It holds the hand of whoever
 * read and the piece itself, and is no gauge study.
 *
 * @param property what was read
 * @param sd       standard deviation of one reading, in the property's canonical unit, pooled over the sets of readings
 * @param df       degrees of freedom behind it
 * @param readings how many readings there are
 * @param sets     in how many sets, each on one piece in one session
 */
public record ControlScatter(PropertyDef property, double sd, int df, int readings, int sets) {
    /** With fewer degrees of freedom a standard deviation is hardly known to half its size. */
    private static final int FEWEST = 4;

    /** The same for a gauge, of the property it was read most for; empty with fewer than four readings that repeat one before them. */
    public static Optional<ControlScatter> of(Project project, Instrument gauge, PropertyCatalogue properties) {
        List<Measurement> read = project.getControlPieces().stream().flatMap(p -> p.getMeasurements().stream())
                .filter(m -> m.getInstrument() == gauge && m.getKnowledge() == Knowledge.MEASURED && m.getKey() != null && m.getKey().getProperty() != null).toList();
        Set<String> ids = read.stream().map(m -> m.getKey().getProperty()).collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        return ids.stream().flatMap(id -> properties.find(id).stream()).filter(p -> !p.yesNo())
                .flatMap(p -> of(p, read.stream().filter(m -> p.id().equals(m.getKey().getProperty())).toList()).stream())
                .max(java.util.Comparator.comparingInt(ControlScatter::df));
    }

    private static Optional<ControlScatter> of(PropertyDef property, List<Measurement> read) {
        double squares = 0;
        int df = 0;
        int readings = 0;
        int sets = 0;
        for (Measurement m : read) {
            double[] values = m.getReadings().stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE)
                    .filter(Measurements::counts).mapToDouble(Reading::getValue).toArray();
            if (values.length > 1) {
                double sd = Descriptive.standardDeviation(values).orElseThrow();
                squares += sd * sd * (values.length - 1);
                df += values.length - 1;
                readings += values.length;
                sets++;
            }
        }
        return df < FEWEST || squares == 0 ? Optional.empty() : Optional.of(new ControlScatter(property, Math.sqrt(squares / df), df, readings, sets));
    }

    /** Where it comes from, as it stands beside the number. */
    public String from() {
        return Case.words("scatter.controls", String.valueOf(readings), String.valueOf(sets), String.valueOf(df));
    }
}
