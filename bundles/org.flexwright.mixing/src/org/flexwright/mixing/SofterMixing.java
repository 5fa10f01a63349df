package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.process.Steps;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** What in stirring and degassing may have made a part softer. */
final class SofterMixing {

    private static final Source VOIDS = Source.commonPractice("Modulus falls with the square of what is not air; up to 10 % of it, 3 % likely, where nothing was pulled");
    /** Below this share of what was planned it counts as cut short; common practice, no source. */
    private static final double ENOUGH = 0.75;
    private static final double[] AIR = { 0, 0.03, 0.10 };

    private SofterMixing() {
    }

    static List<SofterCause> of(Step step, Trial trial) {
        List<SofterCause> causes = new ArrayList<>();
        causes.add(air(step, trial));
        if (step.getDetails() instanceof MixDetails details) {
            stirred(step, details).ifPresent(causes::add);
        }
        return causes;
    }

    private static SofterCause air(Step step, Trial trial) {
        var degassed = Steps.of(trial, DegasStep.ID, DegasDetails.class).stream().filter(d -> d.step().getState() != StepState.SKIPPED).findFirst();
        boolean skipped = trial.getSteps().stream().anyMatch(s -> DegasStep.ID.equals(s.getKind()) && s.getState() == StepState.SKIPPED);
        if (degassed.isEmpty()) {
            return air(step, skipped ? Standing.RECORDED : Standing.OPEN, (skipped ? Say.SOFT_AIR_SKIPPED : Say.SOFT_AIR_NONE).with(), true);
        }
        DegasDetails details = degassed.get().details();
        if (details.getMinutes() == null || details.getPressure() == null) {
            return air(step, Standing.OPEN, Say.SOFT_AIR_SILENT.with(), true);
        }
        boolean shorter = details.getPlannedMinutes() != null && details.getMinutes() < ENOUGH * details.getPlannedMinutes();
        boolean weaker = details.getPlannedPressure() != null && details.getPressure() > details.getPlannedPressure() / ENOUGH;
        return air(step, shorter || weaker ? Standing.RECORDED : Standing.CLEARED,
                Say.SOFT_AIR_SAID.with(Figures.of(details.getMinutes(), "min"), Figures.of(details.getPressure(), "kPa")), shorter || weaker);
    }

    private static SofterCause air(Step step, Standing standing, Message evidence, boolean sized) {
        Estimate stiffness = new Estimate(square(AIR[2]), square(AIR[1]), square(AIR[0]), VOIDS);
        return new SofterCause("air", standing, Say.SOFT_AIR.with(), evidence, sized ? stiffness : null, Say.SOFT_AIR_CHECK.with(), VOIDS, id(step));
    }

    private static double square(double air) {
        return (1 - air) * (1 - air);
    }

    private static Optional<SofterCause> stirred(Step step, MixDetails details) {
        boolean shorter = details.getMinutes() != null && details.getPlannedMinutes() != null && details.getMinutes() < ENOUGH * details.getPlannedMinutes();
        if (Boolean.FALSE.equals(details.getScraped()) || shorter) {
            return Optional.of(stirred(step, Standing.RECORDED, (shorter ? Say.SOFT_STIRRED_SHORT : Say.SOFT_STIRRED_NOT).with()));
        }
        return details.getScraped() == null ? Optional.of(stirred(step, Standing.OPEN, Say.SOFT_STIRRED_SILENT.with()))
                : Optional.of(stirred(step, Standing.CLEARED, Say.SOFT_STIRRED_YES.with()));
    }

    private static SofterCause stirred(Step step, Standing standing, Message evidence) {
        return new SofterCause("stirring", standing, Say.SOFT_STIRRED.with(), evidence, null, Say.SOFT_STIRRED_CHECK.with(), Source.commonPractice(), id(step));
    }

    private static String id(Step step) {
        return step.getId() == null ? "" : step.getId();
    }
}
