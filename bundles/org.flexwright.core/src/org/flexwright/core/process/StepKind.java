package org.flexwright.core.process;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * One kind of thing done at the bench. Register it as an OSGi service; form, command line, bench card and report part come for free.
 */
public interface StepKind {
    /** Stable id, {@code capability.name}, e.g. {@code mixing.weigh}. */
    String id();

    /** A verb or two: what is done. */
    String title();

    /** One or two sentences for the person who plans it. */
    String summary();

    /**
     * Class of the details, from the plugin's own package; null when the core step says it all. Features are described by annotations
     * {@code urn:flexwright:field} (label, kind, unit, min, max, help, role = planned or actual, of = name of the planned feature an
     * actual one belongs to, limit = own limit in per cent or unit).
     */
    EClass details();

    /** Whether the pieces of the trial are read in this step; then readings are offered where it is done. */
    default boolean reads() {
        return false;
    }

    /** Hazard prompts for what is really in this step, beyond what the materials themselves call for. */
    default List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of();
    }

    /** What the step says about itself right now, from its planned and actual values; empty when it has nothing to say. */
    default List<StepAdvice> advice(Step step, Trial trial) {
        return List.of();
    }

    /**
     * The same when what other steps say counts too, such as the working time; this is the one to call, as
     * {@link org.flexwright.core.registry.Registries#advice} does.
     */
    default List<StepAdvice> advice(Step step, Trial trial, StepKinds kinds) {
        return advice(step, trial);
    }

    /**
     * What must be so before this step begins, and what must be so of its outcome before a later step that cannot be taken back; empty
     * when it asks for nothing. A step with a point of the first sort has a gate.
     */
    default List<GatePoint> gate(Step step, Trial trial, Instant now) {
        return List.of();
    }

    /** Moments to watch in this step: vacuum off, demould; empty when the core step's planned times say it all. */
    default List<StepMark> marks(Step step, Trial trial) {
        return List.of();
    }

    /** What the clock says of actual features, by name, in each one's unit: offered, never filled in by itself. */
    default Map<String, Double> timed(Step step, Trial trial, Instant now) {
        return Map.of();
    }

    /** Minutes of the mix's working time this step needs from its start; empty when it needs none, or nothing tells how many. */
    default OptionalDouble needsWorkingTime(Step step, Trial trial) {
        return OptionalDouble.empty();
    }

    /** True when this step fills the trial's mould, so that its end counts as a cast. */
    default boolean fillsMould() {
        return false;
    }

    /** The working time this step states, for the amount and the temperature it was stated for; empty when it states none. */
    default Optional<WorkingTime> workingTime(Step step, Trial trial) {
        return Optional.empty();
    }

    /** How long it takes and whether somebody works at it; the planned duration unless the kind knows better, empty when nothing tells. */
    default Optional<StepTime> time(Step step, Trial trial) {
        return Optional.ofNullable(step.getPlannedDuration()).map(minutes -> StepTime.hands(minutes, null));
    }

    /** How a number of parts is split over pots, each with its grams: for the step that weighs the batch; empty for every other step. */
    default Optional<PotPlan> pots(Step step, Trial trial, PotRequest request) {
        return Optional.empty();
    }

    /**
     * Planned features that go with the number of parts, by name, for so many parts instead of those the plan is for; each value in the type of its feature. Grams in the
     * step's uses are not among them.
     */
    default Map<String, Object> forParts(Step step, int recipeParts, int parts) {
        return Map.of();
    }

    /**
     * What in this step may have made the parts softer, and what its record rules out; empty when it has nothing to do with it.
     *
     * @param than the trial it is compared with, whose own share of a cause does not count; null for none
     */
    default List<SofterCause> softer(Step step, Trial trial, Trial than) {
        return List.of();
    }

    /** The grams that follow from the parts given to the step's materials; empty when nobody gave any, or this kind does not count in parts. */
    default Optional<GramsOfParts> gramsOfParts(Step step, Trial trial) {
        return Optional.empty();
    }

    /** What of this step can be drawn, the maker's own trials on top; empty when there is nothing. */
    default List<StepPlot> plots(Step step, Trial trial, PropertyCatalogue properties) {
        return List.of();
    }
}
