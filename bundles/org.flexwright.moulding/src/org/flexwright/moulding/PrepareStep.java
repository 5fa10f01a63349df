package org.flexwright.moulding;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.GatePoint.State;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepTime;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.MouldingDataPackage;
import org.flexwright.moulding.data.Preparation;
import org.osgi.service.component.annotations.Component;

/** Preparing the mould: treatment of its face, drying, warming, release. */
@Component(service = StepKind.class)
public final class PrepareStep implements StepKind {
    /** Id of this step kind. */
    public static final String ID = "moulding.prepare";

    private static final double MINUTES_AN_HOUR = 60;
    private static final double WARM_LIMIT = 5;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Prepare the mould";
    }

    @Override
    public String summary() {
        return "What the mould is made of, how its face was treated, how long it dried, how warm it is and what releases the part.";
    }

    @Override
    public EClass details() {
        return MouldingDataPackage.Literals.PREPARATION;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        List<HazardPrompt> prompts = new java.util.ArrayList<>();
        if (step.getDetails() instanceof Preparation preparation) {
            MouldTreatment treatment = Moulds.treatment(preparation);
            if (treatment == MouldTreatment.BAKED || treatment == MouldTreatment.BAKED_AND_COATED) {
                prompts.add(prompt("moulding.hot-mould", "prompt.hot-mould", false));
            }
            if (treatment == MouldTreatment.BARRIER_COAT || treatment == MouldTreatment.BAKED_AND_COATED || hasText(preparation.getRelease())) {
                prompts.add(prompt("moulding.spray", "prompt.spray", true));
            }
        }
        return prompts;
    }

    private static boolean hasText(String text) {
        return text != null && !text.isBlank();
    }

    private static HazardPrompt prompt(String id, String key, boolean needsSheet) {
        return new HazardPrompt(id, Message.of(PrepareStep.class, key + ".hazard"), Message.of(PrepareStep.class, key + ".controls"),
                Source.commonPractice(), needsSheet);
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double dry = step.getDetails() instanceof Preparation preparation ? preparation.getPlannedDryHours() : null;
        StepTime hands = StepTime.hands(step.getPlannedDuration(), StepTime.usual(10, 20, 60));
        return Optional.of(dry == null ? hands : new StepTime(hands.hands(), MINUTES_AN_HOUR * dry, null));
    }

    @Override
    public List<GatePoint> gate(Step step, Trial trial, Instant now) {
        return step.getDetails() instanceof Preparation preparation ? List.of(dry(preparation), warm(preparation)) : List.of();
    }

    private static GatePoint dry(Preparation preparation) {
        Double done = preparation.getActualDryHours();
        Double planned = preparation.getPlannedDryHours();
        boolean needed = planned != null && planned > 0;
        State state = done == null ? needed || WetMouldRule.holdsWater(preparation.getMouldMaterial()) ? State.UNKNOWN : State.MET
                : done >= (planned == null ? 0 : planned) ? State.MET : State.OPEN;
        Message how = done == null ? state == State.MET ? words("gate.dry.none") : words("gate.dry.unknown")
                : planned == null ? words("gate.dry.is", Figures.of(done, "h")) : words("gate.dry.against", Figures.of(done, "h"), Figures.of(planned, "h"));
        return GatePoint.after("dry", words("gate.dry").text(), state, how, Source.commonPractice("mould dry before pouring")).answeredBy("actualDryHours");
    }

    /** Within 5 K of the plan; common practice, no source. */
    private static GatePoint warm(Preparation preparation) {
        Double is = preparation.getActualTemperature();
        Double planned = preparation.getPlannedTemperature();
        State state = is == null || planned == null ? State.UNKNOWN : Math.abs(is - planned) <= WARM_LIMIT ? State.MET : State.OPEN;
        Message how = is == null ? words("gate.warm.unknown") : planned == null ? words("gate.warm.unplanned", Figures.of(is, "\u00b0C"))
                : words("gate.warm.is", Figures.of(is, "\u00b0C"), Figures.of(planned, "\u00b0C"), Figures.of(WARM_LIMIT, "K"));
        return GatePoint.after("warm", words("gate.warm").text(), state, how, Source.commonPractice("mould within 5 K of the plan")).answeredBy("actualTemperature");
    }

    private static Message words(String key, Object... args) {
        return Message.of(PrepareStep.class, key, args);
    }
}
