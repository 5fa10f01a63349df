package org.flexwright.curing;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** How old a part was when it was read, counted from the end of its cure. */
public final class Ages {

    private static final double HOUR = 3600;

    private Ages() {
    }

    /** Hours from the end of the last cure step before the reading, else the noted or general age; empty when nothing is known. */
    public static Optional<Double> sinceCure(Trial trial, Measurement measurement) {
        Instant at = measurement.getAt();
        if (measurement.getDelayHours() != null || at == null) {
            return Optional.ofNullable(Measurements.ageHours(measurement));
        }
        return trial.getSteps().stream().filter(s -> CureStep.ID.equals(s.getKind())).map(Step::getEndedAt)
                .filter(end -> end != null && !end.isAfter(at)).max(Instant::compareTo)
                .map(end -> Duration.between(end, at).toSeconds() / HOUR)
                .or(() -> Optional.ofNullable(Measurements.ageHours(measurement)));
    }
}
