package org.flexwright.workbench.pages.trial;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;

/** The clock of a trial: runs from the first contact of A and B, which is when the second of them went into the cup. */
final class ContactClock {

    private ContactClock() {
    }

    /** The moment of contact; empty until both components are in the cup. */
    static Optional<Instant> contact(Trial trial) {
        return trial.getSteps().stream().flatMap(step -> contact(step).stream()).min(Instant::compareTo);
    }

    private static Optional<Instant> contact(Step step) {
        Optional<Instant> a = first(step, PartRole.COMPONENT_A);
        Optional<Instant> b = first(step, PartRole.COMPONENT_B);
        return a.isEmpty() || b.isEmpty() ? Optional.empty() : Stream.of(a.get(), b.get()).max(Instant::compareTo);
    }

    private static Optional<Instant> first(Step step, PartRole role) {
        return step.getUses().stream().filter(use -> use.getRole() == role).map(MaterialUse::getWeighings).flatMap(java.util.List::stream)
                .map(Weighing::getAt).filter(Objects::nonNull).min(Instant::compareTo);
    }
}
