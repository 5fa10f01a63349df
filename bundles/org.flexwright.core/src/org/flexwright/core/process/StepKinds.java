package org.flexwright.core.process;

import java.util.List;
import java.util.Optional;

/** Finds step kinds by id. The registries are one; tests give a few. */
@FunctionalInterface
public interface StepKinds {

    /** Knows none. */
    StepKinds NONE = id -> Optional.empty();

    /** The step kind with that id; empty when its plugin is absent. */
    Optional<StepKind> findStepKind(String id);

    /** These and no others. */
    static StepKinds of(StepKind... kinds) {
        List<StepKind> all = List.of(kinds);
        return id -> all.stream().filter(kind -> kind.id().equals(id)).findFirst();
    }
}
