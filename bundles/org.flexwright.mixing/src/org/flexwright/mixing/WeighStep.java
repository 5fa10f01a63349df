package org.flexwright.mixing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.GatePoint.State;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.process.GramsOfParts;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.PotPlan;
import org.flexwright.core.process.PotRequest;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formulation.FormulationPlan;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Weighing out a batch. */
@Component(service = StepKind.class)
public final class WeighStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "mixing.weigh";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Weigh";
    }

    @Override
    public String summary() {
        return "Weigh the components into the cup. While B is not weighed its target follows the A that is really in the cup.";
    }

    @Override
    public EClass details() {
        return MixingDataPackage.Literals.WEIGH_DETAILS;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        List<HazardPrompt> prompts = new ArrayList<>();
        if (step.getUses().stream().anyMatch(u -> u.getRole() == PartRole.FILLER || u.getRole() == PartRole.PIGMENT)) {
            prompts.add(new HazardPrompt("mixing.dust", Say.PROMPT_DUST.with(), Say.PROMPT_DUST_CONTROL.with(), Source.commonPractice(), true));
        }
        return prompts;
    }

    @Override
    public List<StepPlot> plots(Step step, Trial trial, PropertyCatalogue properties) {
        return FillerPlots.of(step, trial, properties);
    }

    @Override
    public List<SofterCause> softer(Step step, Trial trial, Trial than) {
        return SofterWeighing.of(step, trial, than);
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial) {
        return WeighAdviceLines.of(step, trial);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        return Optional.of(StepTime.hands(step.getPlannedDuration(), StepTime.usual(5, 10, 20)));
    }

    @Override
    public Optional<PotPlan> pots(Step step, Trial trial, PotRequest request) {
        return Optional.of(PotSplit.of(step, trial, request));
    }

    @Override
    public Map<String, Object> forParts(Step step, int recipeParts, int parts) {
        Map<String, Object> values = new HashMap<>();
        values.put(MixingDataPackage.Literals.WEIGH_DETAILS__PART_COUNT.getName(), parts);
        if (step.getDetails() instanceof WeighDetails details && details.getBatchMass() != null) {
            values.put(MixingDataPackage.Literals.WEIGH_DETAILS__BATCH_MASS.getName(), details.getBatchMass() * parts / recipeParts);
        }
        return values;
    }

    @Override
    public List<GatePoint> gate(Step step, Trial trial, Instant now) {
        WeighAdvice advice = WeighAdvice.of(step);
        State state = advice.weighed() == null ? State.UNKNOWN : advice.outside() ? State.OPEN : State.MET;
        Message how = advice.weighed() == null ? advice.ratio() == null && advice.problem() != null ? advice.problem() : Say.GATE_RATIO_UNKNOWN.with()
                : Say.GATE_RATIO_IS.with(advice.deviationText(), Figures.percent(advice.ownLimit()));
        boolean pair = step.getUses().stream().anyMatch(u -> u.getRole() == PartRole.COMPONENT_A || u.getRole() == PartRole.COMPONENT_B);
        return pair ? List.of(GatePoint.after("ratio", Say.GATE_RATIO.with().text(), state, how, Source.commonPractice("own limit of the ratio"))) : List.of();
    }

    @Override
    public Optional<GramsOfParts> gramsOfParts(Step step, Trial trial) {
        return FormulationPlan.of(step).map(plan -> new GramsOfParts(step.getUses().stream().map(use -> plan.grams(use) == null ? Double.NaN : plan.grams(use)).toList(),
                plan.problem(), Source.derived(Say.FROM_PARTS.with().text())));
    }
}
