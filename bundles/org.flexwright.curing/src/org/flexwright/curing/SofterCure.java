package org.flexwright.curing;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.process.Steps;
import org.flexwright.core.rubber.Network;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.formula.Schedule;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** A cure that was short or cold as a reason for a softer part. */
final class SofterCure {

    private static final Source NETWORK = Source.fromMemory(
            "Miller and Macosko 1976; cure of second order that reaches 90 to 99.5 % as planned, 98 % likely (common practice)");
    /** Conversion that the planned schedule reaches. */
    private static final double[] PLANNED = { 0.90, 0.98, 0.995 };

    /** A liquid has no modulus to compare with. */
    private static final double LEAST = 1e-9;

    private SofterCure() {
    }

    static List<SofterCause> of(Step step, CureDetails details, Trial than) {
        if (step.getState() == StepState.SKIPPED) {
            return List.of(cause(step, Standing.RECORDED, Say.SOFT_CURE_SKIPPED.with(), null));
        }
        Optional<Schedule> planned = CureSchedules.planned(details).filter(s -> s.minutes() > 0);
        Optional<Schedule> actual = CureSchedules.actual(details);
        if (planned.isEmpty() || actual.isEmpty()) {
            return List.of(cause(step, Standing.OPEN, Say.SOFT_CURE_SILENT.with(), null));
        }
        Estimate share = CureSchedules.share(actual.get(), planned.get(), details);
        Estimate other = other(than, planned.get(), details).orElse(Estimate.exact(1, share.source()));
        return List.of(cause(step, Standing.RECORDED,
                Say.SOFT_CURE_SAID.with(Figures.percent(share.likely()), Figures.percent(share.low()), Figures.percent(share.high()), Figures.percent(other.likely())),
                stiffness(share, other)));
    }

    /** What the other trial's cure came to against this one's plan. */
    private static Optional<Estimate> other(Trial than, Schedule planned, CureDetails details) {
        return than == null ? Optional.empty()
                : Steps.of(than, CureStep.ID, CureDetails.class).stream().flatMap(d -> CureSchedules.actual(d.details()).stream()).findFirst()
                        .map(s -> CureSchedules.share(s, planned, details));
    }

    private static Estimate stiffness(Estimate share, Estimate other) {
        double likely = ofShare(share.likely(), PLANNED[1]) / Math.max(LEAST, ofShare(other.likely(), PLANNED[1]));
        double low = likely;
        double high = likely;
        for (double reached : PLANNED) {
            double least = ofShare(share.low(), reached) / Math.max(LEAST, ofShare(other.low(), reached));
            double most = ofShare(share.high(), reached) / Math.max(LEAST, ofShare(other.high(), reached));
            low = Math.min(low, Math.min(least, most));
            high = Math.max(high, Math.max(least, most));
        }
        return new Estimate(low, likely, high, NETWORK);
    }

    /** Modulus of the finished network times this, after a share of the planned cure that would reach that conversion: kt = X/(1-X). */
    static double ofShare(double share, double reached) {
        double rate = share * reached / (1 - reached);
        return Network.relativeStiffness(Network.alpha(100, rate / (1 + rate)));
    }

    private static SofterCause cause(Step step, Standing standing, Message evidence, Estimate stiffness) {
        return new SofterCause("cure", standing, Say.SOFT_CURE.with(), evidence, stiffness, Say.SOFT_CURE_CHECK.with(), NETWORK, step.getId() == null ? "" : step.getId());
    }
}
