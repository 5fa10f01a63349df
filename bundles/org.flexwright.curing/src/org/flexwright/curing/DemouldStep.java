package org.flexwright.curing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.curing.data.CuringDataPackage;
import org.flexwright.curing.data.DemouldDetails;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Taking a part out of its mould. */
@Component(service = StepKind.class)
public final class DemouldStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "curing.demould";

    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Demould";
    }

    @Override
    public String summary() {
        return "Open the mould once the leftover in the cup is firm to the nail and the planned time has passed.";
    }

    @Override
    public EClass details() {
        return CuringDataPackage.Literals.DEMOULD_DETAILS;
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double age = step.getDetails() instanceof DemouldDetails details ? details.getPlannedAge() : null;
        StepTime hands = StepTime.hands(step.getPlannedDuration(), StepTime.usual(5, 10, 30));
        return Optional.of(new StepTime(hands.hands(), 0, age == null ? null : Double.valueOf(MINUTES_AN_HOUR * age)));
    }

    @Override
    public List<GatePoint> gate(Step step, Trial trial, Instant now) {
        Boolean firm = step.getDetails() instanceof DemouldDetails details ? details.getLeftoverFirm() : null;
        Message how = firm == null ? Say.GATE_LEFTOVER_UNKNOWN.with() : firm ? Say.GATE_LEFTOVER_YES.with() : Say.GATE_LEFTOVER_NO.with();
        return List.of(GatePoint.before("leftover", Say.GATE_LEFTOVER.with().text(), GatePoint.of(firm), how, Source.commonPractice()).answeredBy("leftoverFirm"));
    }

    @Override
    public List<StepMark> marks(Step step, Trial trial) {
        Instant filled = filled(step, trial);
        Double age = step.getDetails() instanceof DemouldDetails details ? details.getPlannedAge() : null;
        return filled == null || age == null ? List.of()
                : List.of(StepMark.at("demould", Say.MARK_DEMOULD.with().text(), StepMark.after(filled, 60 * age), step.getStartedAt() != null,
                        Source.ownRecord(Say.MARK_AGE.with().text())));
    }

    @Override
    public Map<String, Double> timed(Step step, Trial trial, Instant now) {
        Instant filled = filled(step, trial);
        Instant opened = step.getStartedAt() == null ? now : step.getStartedAt();
        return filled == null || opened.isBefore(filled) ? Map.of() : Map.of("age", Duration.between(filled, opened).toMillis() / 3_600_000.0);
    }

    /** When the step that came before the cure ended: what was filled in. Null when nothing tells. */
    private static Instant filled(Step step, Trial trial) {
        int at = trial.getSteps().indexOf(step);
        for (Step cure : trial.getSteps().subList(0, Math.max(0, at))) {
            if (CureStep.ID.equals(cure.getKind())) {
                int before = trial.getSteps().indexOf(cure) - 1;
                return before < 0 ? cure.getStartedAt() : trial.getSteps().get(before).getEndedAt();
            }
        }
        return at < 1 ? null : trial.getSteps().get(at - 1).getEndedAt();
    }
}
