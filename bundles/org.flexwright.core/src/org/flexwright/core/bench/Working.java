package org.flexwright.core.bench;

import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Trial;

/** The working time of a trial's mix in its own cup and room. */
final class Working {
    private final Registries registries;

    Working(Registries registries) {
        this.registries = registries;
    }

    /** The time with its definition; empty when nothing tells. */
    Optional<WorkingTime> time(Trial trial) {
        return WorkingTimes.of(trial, registries);
    }

    /** Minutes from contact, as a band; empty when nothing tells. */
    Optional<Estimate> minutes(Trial trial) {
        return time(trial).map(WorkingTime::minutes);
    }
}
