package org.flexwright.curing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Source;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.curing.data.CureBy;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.data.CureStage;
import org.flexwright.curing.data.CuringDataPackage;
import org.flexwright.curing.formula.Schedule;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Letting a part cure, in the room, in an oven or under a lamp. */
@Component(service = StepKind.class)
public final class CureStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "curing.cure";

    private static final double ROOM = 23;
    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Cure";
    }

    @Override
    public String summary() {
        return "Keep time and temperature of the part. Its age at a test counts from the end of this step.";
    }

    @Override
    public EClass details() {
        return CuringDataPackage.Literals.CURE_DETAILS;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        CureBy by = step.getDetails() instanceof CureDetails d ? d.getBy() : CureBy.ROOM;
        return switch (by) {
            case ROOM -> List.of();
            case HEAT -> List.of(new HazardPrompt("curing.heat", Say.PROMPT_HEAT.with(), Say.PROMPT_HEAT_CONTROL.with(), Source.commonPractice(), true));
            case LAMP -> List.of(new HazardPrompt("curing.lamp", Say.PROMPT_LAMP.with(), Say.PROMPT_LAMP_CONTROL.with(), Source.commonPractice(), false));
        };
    }

    @Override
    public List<SofterCause> softer(Step step, Trial trial, Trial than) {
        return step.getDetails() instanceof CureDetails details && details.getBy() != CureBy.LAMP ? SofterCure.of(step, details, than) : List.of();
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        List<StepAdvice> lines = new ArrayList<>();
        if (step.getDetails() instanceof CureDetails details && details.getBy() != CureBy.LAMP) {
            CureSchedules.planned(details).ifPresent(s -> lines.add(line("plannedEquivalent", Say.CURE_PLAN, s, details)));
            CureSchedules.actual(details).ifPresent(s -> lines.add(line("actualEquivalent", Say.CURE_ACTUAL, s, details)));
        }
        return lines;
    }

    private static StepAdvice line(String name, Say label, Schedule schedule, CureDetails details) {
        return new StepAdvice(name, label.with().text() + " as hours at 23 \u00b0C", CureSchedules.hours(schedule, details, ROOM), "h", null);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double minutes = step.getPlannedDuration();
        if (step.getDetails() instanceof CureDetails details) {
            double stages = details.getPlannedStages().stream().map(CureStage::getMinutes).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum();
            minutes = stages > 0 ? Double.valueOf(stages) : details.getPlannedHours() != null ? Double.valueOf(MINUTES_AN_HOUR * details.getPlannedHours()) : minutes;
        }
        return Optional.ofNullable(minutes).map(m -> StepTime.waiting(m, Source.ownRecord("planned time of the step")));
    }

    @Override
    public List<StepMark> marks(Step step, Trial trial) {
        Double minutes = step.getDetails() instanceof CureDetails details ? CureSchedules.planned(details).map(s -> s.minutes()).orElse(null) : null;
        StepMark end = StepMark.end("cured", Say.MARK_CURED.with().text(), step, minutes,
                Source.ownRecord(Say.MARK_PLAN.with().text()));
        return end == null ? List.of() : List.of(end);
    }

    @Override
    public Map<String, Double> timed(Step step, Trial trial, Instant now) {
        return StepMark.minutes(step, now).map(minutes -> Map.of("hours", minutes / 60)).orElse(Map.of());
    }
}
