package org.flexwright.mixing;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Source;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Pulling air out of a mixture. */
@Component(service = StepKind.class)
public final class DegasStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "mixing.degas";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Degas";
    }

    @Override
    public String summary() {
        return "Pull a vacuum until the foam has risen and fallen. The cup must hold several times the mixture.";
    }

    @Override
    public EClass details() {
        return MixingDataPackage.Literals.DEGAS_DETAILS;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("mixing.vacuum", Say.PROMPT_VACUUM.with(), Say.PROMPT_VACUUM_CONTROL.with(), Source.commonPractice(), false));
    }

    /** Foam must be watched: the hands are not free. */
    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double planned = step.getDetails() instanceof DegasDetails details ? details.getPlannedMinutes() : null;
        return Optional.of(StepTime.hands(planned == null ? step.getPlannedDuration() : planned, StepTime.usual(5, 10, 20)));
    }

    @Override
    public Map<String, Object> forParts(Step step, int recipeParts, int parts) {
        return step.getDetails() instanceof DegasDetails details && details.getMixVolume() != null
                ? Map.of(MixingDataPackage.Literals.DEGAS_DETAILS__MIX_VOLUME.getName(), details.getMixVolume() * parts / recipeParts) : Map.of();
    }

    @Override
    public List<StepMark> marks(Step step, Trial trial) {
        StepMark end = step.getDetails() instanceof DegasDetails details
                ? StepMark.end("vacuum", Say.MARK_VACUUM.with().text(), step, details.getPlannedMinutes(), Source.ownRecord(Say.MARK_PLAN.with().text())) : null;
        return end == null ? List.of() : List.of(end);
    }

    @Override
    public Map<String, Double> timed(Step step, Trial trial, Instant now) {
        return StepMark.minutes(step, now).map(minutes -> Map.of("minutes", minutes)).orElse(Map.of());
    }
}
