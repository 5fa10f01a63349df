package org.flexwright.moulding;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.FillMethod;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldingDataPackage;
import org.osgi.service.component.annotations.Component;

/** Filling the mould, poured or pressed in. */
@Component(service = StepKind.class)
public final class FillStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "moulding.fill";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Fill the mould";
    }

    @Override
    public String summary() {
        return "Pour or press the mix into the mould, from the lowest point up, well inside its working time.";
    }

    @Override
    public EClass details() {
        return MouldingDataPackage.Literals.FILLING;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        List<HazardPrompt> prompts = new ArrayList<>();
        prompts.add(prompt("moulding.splash", "prompt.splash"));
        if (step.getDetails() instanceof Filling filling && filling.getMethod() == FillMethod.INJECTED) {
            prompts.add(prompt("moulding.burst", "prompt.burst"));
        }
        return prompts;
    }

    @Override
    public Optional<WorkingTime> workingTime(Step step, Trial trial) {
        return step.getDetails() instanceof Filling filling && filling.getWorkingMinutes() != null && filling.getWorkingMinutes() > 0
                ? Optional.of(stated(filling)) : Optional.empty();
    }

    private static WorkingTime stated(Filling filling) {
        Double growth = filling.getWorkingGrowth() != null && filling.getWorkingGrowth() > 1 ? filling.getWorkingGrowth() : null;
        return WorkingTime.stated(Estimate.exact(filling.getWorkingMinutes(), Source.ownRecord(Message.of(FillStep.class, "working-time.typed").text())),
                filling.getWorkingDefinition() == null ? "" : filling.getWorkingDefinition(), growth, null, null, null);
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial, StepKinds kinds) {
        List<StepAdvice> advice = new ArrayList<>();
        if (step.getDetails() instanceof Filling filling) {
            WorkingTime working = WorkingTimes.of(trial, kinds).orElse(null);
            Entered fill = Entered.of("FillMinutes", filling.getPlannedFillMinutes(), filling.getActualFillMinutes());
            if (fill != null && working != null) {
                advice.add(new StepAdvice("share", "Filling takes, of the working time", share(fill.value(), working), "%", null));
            }
            if (filling.getPartVolume() != null && filling.getPartVolume() > 0) {
                GateFill.of(filling, working).map(gate -> gate.flow().time(filling.getPartVolume() / 1e6)).filter(OptionalDouble::isPresent)
                        .ifPresent(time -> advice.add(new StepAdvice("gateTime", "Through this gate at this pressure",
                                Estimate.exact(time.getAsDouble() / 60, ThickeningFlow.SOURCE), "min", null)));
            }
        }
        return advice;
    }

    private static Estimate share(double minutes, WorkingTime working) {
        Estimate time = working.minutes();
        return new Estimate(100 * minutes / time.high(), 100 * minutes / time.likely(), 100 * minutes / time.low(), Source.derived(
                "fill time by working time; working time: " + time.source().display()));
    }

    private static HazardPrompt prompt(String id, String key) {
        return new HazardPrompt(id, Message.of(FillStep.class, key + ".hazard"), Message.of(FillStep.class, key + ".controls"),
                Source.commonPractice(), false);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double planned = step.getDetails() instanceof Filling filling ? filling.getPlannedFillMinutes() : null;
        return Optional.of(StepTime.hands(planned == null ? step.getPlannedDuration() : planned, StepTime.usual(2, 5, 15)));
    }

    @Override
    public Map<String, Object> forParts(Step step, int recipeParts, int parts) {
        Map<String, Object> values = new HashMap<>();
        if (step.getDetails() instanceof Filling filling) {
            scaled(values, MouldingDataPackage.Literals.FILLING__PLANNED_FILL_MINUTES, filling.getPlannedFillMinutes(), parts, recipeParts);
            scaled(values, MouldingDataPackage.Literals.FILLING__PART_VOLUME, filling.getPartVolume(), parts, recipeParts);
        }
        return values;
    }

    private static void scaled(Map<String, Object> values, EAttribute feature, Double planned, int parts, int recipeParts) {
        if (planned != null) {
            values.put(feature.getName(), planned * parts / recipeParts);
        }
    }

    @Override
    public OptionalDouble needsWorkingTime(Step step, Trial trial) {
        return step.getDetails() instanceof Filling filling && filling.getPlannedFillMinutes() != null ? OptionalDouble.of(filling.getPlannedFillMinutes())
                : OptionalDouble.empty();
    }

    @Override
    public boolean fillsMould() {
        return true;
    }

    @Override
    public Map<String, Double> timed(Step step, Trial trial, Instant now) {
        return StepMark.minutes(step, now).map(minutes -> Map.of("actualFillMinutes", minutes)).orElse(Map.of());
    }
}
