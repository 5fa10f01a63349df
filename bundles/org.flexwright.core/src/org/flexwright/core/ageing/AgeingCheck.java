package org.flexwright.core.ageing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.naming.Names;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.Measurement;
import org.flexwright.model.Specimen;

/**
 * One reading an ageing plan asks for: one piece at one age.
 *
 * @param plan    the plan
 * @param point   the age
 * @param piece   the piece
 * @param due     when it is to be read; null when nobody knows from when its age counts
 * @param state   how it stands
 * @param reading the measurement taken at that age; null when there is none
 */
public record AgeingCheck(AgeingPlan plan, AgeingPoint point, Specimen piece, Instant due, AgeingState state, Measurement reading) {
    public AgeingCheck {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(point, "point");
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(state, "state");
    }

    /** The names of the pieces by how they stand, in the order in which each state first comes up. */
    public static Map<AgeingState, List<String>> byState(List<AgeingCheck> checks) {
        Map<AgeingState, List<String>> pieces = new LinkedHashMap<>();
        checks.forEach(check -> pieces.computeIfAbsent(check.state(), s -> new ArrayList<>()).add(Names.piece(check.piece())));
        return pieces;
    }
}
