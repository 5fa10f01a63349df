package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Weighed;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.mixing.formulation.FormulationPlan;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;

/**
 * What to weigh next in a weighing step, from what stands in it now. Once one component is weighed the other follows it; when both are, the
 * short one gets an addition, never a negative one; everything else follows the total of A and B. Where no grams are planned, they follow from
 * the parts given to the materials, else from the parts to make, as far as the details say enough.
 *
 * @param targets    every use of the step with its target now, in order
 * @param ratio      planned ratio by weight; null when none can be told
 * @param weighed    both components as weighed; null until both are
 * @param ownLimit   largest relative deviation the maker accepts, e.g. 0.02
 * @param problem    why there is no ratio; null when there is one
 */
public record WeighAdvice(List<Target> targets, WeightRatio ratio, Weighed weighed, double ownLimit, Message problem) {

    /** Own limit when the step names none; common practice, no source. */
    public static final double USUAL_LIMIT = 0.02;
    /** Share of the own limit that the balance alone may use up; common practice, no source. */
    static final double BALANCE_SHARE = 0.5;


    /**
     * One use and its target.
     *
     * @param use     the use
     * @param weighed grams so far; null when nothing was weighed
     * @param now     grams it should come to now; null when nothing says so
     */
    public record Target(MaterialUse use, Double weighed, Double now) {
        /** Grams still to add; zero when there is enough or no target. */
        public double toAdd() {
            return now == null ? 0 : Math.max(0, now - (weighed == null ? 0 : weighed));
        }
    }

    public WeighAdvice {
        targets = List.copyOf(targets);
    }

    /** Deviation of the ratio in words, to the hundredth of a per cent: no bench balance tells more. Only when both components are weighed. */
    String deviationText() {
        return Figures.percent(Math.rint(weighed.deviation() * 1e4) / 1e4);
    }

    /** The advice for a step of kind {@code mixing.weigh}, with or without details. */
    public static WeighAdvice of(Step step) {
        WeighDetails details = step.getDetails() instanceof WeighDetails d ? d : null;
        Optional<FormulationPlan> plan = FormulationPlan.of(step);
        Optional<BatchPlan> batch = plan.isPresent() ? Optional.empty() : BatchPlan.of(details);
        Sums a = Sums.of(step, PartRole.COMPONENT_A, plan, batch.map(BatchPlan::gramsA));
        Sums b = Sums.of(step, PartRole.COMPONENT_B, plan, batch.map(BatchPlan::gramsB));
        WeightRatio ratio = plan.flatMap(p -> PlannedRatio.ofGrams(p.share(PartRole.COMPONENT_A), p.share(PartRole.COMPONENT_B))).or(() -> PlannedRatio.of(details, a.planned(), b.planned())).orElse(null);
        Weighed weighed = ratio == null || !a.isWeighed() || !b.isWeighed() ? null : new Weighed(ratio, a.weighed(), b.weighed());
        double limit = details == null || details.getOwnLimit() == null ? USUAL_LIMIT : details.getOwnLimit() / 100;
        return new WeighAdvice(targets(step, a, b, ratio, plan), ratio, weighed, limit, ratio == null ? plan.map(FormulationPlan::problem).orElseGet(() -> problem(details)) : null);
    }

    private static Message problem(WeighDetails details) {
        return PlannedRatio.lacksDensity(details) ? Say.ADVICE_DENSITY.with() : Say.ADVICE_RATIO.with();
    }

    /** Planned and weighed grams of a role; null where nothing is known. */
    private record Sums(Double planned, Double weighed) {
        static Sums of(Step step, PartRole role, Optional<FormulationPlan> plan, Optional<Double> batch) {
            Double planned = null;
            for (MaterialUse use : step.getUses()) {
                Double grams = meant(use, plan);
                double share = Mixtures.share(use, role);
                planned = grams == null || share <= 0 ? planned : Double.valueOf((planned == null ? 0 : planned) + grams * share);
            }
            return new Sums(planned == null ? batch.orElse(null) : planned, Mixtures.of(step).actual(role));
        }

        boolean isWeighed() {
            return weighed != null && weighed > 0;
        }
    }

    /** Grams meant of a use: those planned, else those that follow from its parts; null when neither says. */
    static Double meant(MaterialUse use, Optional<FormulationPlan> plan) {
        return use.getPlanned() != null ? use.getPlanned() : plan.map(p -> p.grams(use)).orElse(null);
    }

    private static List<Target> targets(Step step, Sums a, Sums b, WeightRatio ratio, Optional<FormulationPlan> plan) {
        Double nowA = now(a, b, ratio == null ? null : ratio::aFor);
        Double nowB = now(b, a, ratio == null ? null : ratio::bFor);
        Double planned = plus(a.planned(), b.planned());
        Double now = plus(nowA, nowB);
        double follow = planned == null || now == null || !(planned > 0) ? 1 : now / planned;
        List<Target> targets = new ArrayList<>();
        for (MaterialUse use : step.getUses()) {
            PartRole carries = carries(use);
            Double meant = meant(use, plan);
            Double target = carries == PartRole.COMPONENT_A ? share(step, use, nowA, a.planned(), meant)
                    : carries == PartRole.COMPONENT_B ? share(step, use, nowB, b.planned(), meant)
                    : meant == null ? null : Double.valueOf(meant * follow);
            targets.add(new Target(use, Mixtures.grams(use), target));
        }
        return targets;
    }

    /** Grams a component should come to: what belongs to the weighed other one, else what is planned; never less than is in the cup. */
    private static Double now(Sums own, Sums other, DoubleUnaryOperator belongsTo) {
        if (belongsTo != null && other.isWeighed()) {
            double wanted = belongsTo.applyAsDouble(other.weighed());
            return own.isWeighed() ? Math.max(own.weighed(), wanted) : wanted;
        }
        if (own.isWeighed()) {
            return own.weighed();
        }
        if (own.planned() == null && belongsTo != null && other.planned() != null) {
            return belongsTo.applyAsDouble(other.planned());
        }
        return own.planned();
    }

    /** The component a use brings into the cup, by itself or in a premix; null when it brings neither. */
    static PartRole carries(MaterialUse use) {
        double a = Mixtures.share(use, PartRole.COMPONENT_A);
        double b = Mixtures.share(use, PartRole.COMPONENT_B);
        return a <= 0 && b <= 0 ? null : a > b ? PartRole.COMPONENT_A : PartRole.COMPONENT_B;
    }

    /** A component's target split over the uses that bring it, as they were planned. */
    private static Double share(Step step, MaterialUse use, Double target, Double planned, Double meant) {
        PartRole role = carries(use);
        if (target == null || step.getUses().stream().filter(u -> carries(u) == role).count() == 1) {
            return target == null ? null : Double.valueOf(target / Mixtures.share(use, role));
        }
        return meant == null || planned == null || !(planned > 0) ? null : Double.valueOf(target * meant / planned);
    }

    private static Double plus(Double one, Double other) {
        return one == null || other == null ? null : Double.valueOf(one + other);
    }

    /** Relative deviation of B to A from the plan, e.g. -0.08; empty until both are weighed. */
    public Optional<Double> deviation() {
        return Optional.ofNullable(weighed).map(Weighed::deviation);
    }

    /** True when both are weighed and the ratio is outside the own limit. */
    public boolean outside() {
        return weighed != null && Math.abs(weighed.deviation()) > ownLimit;
    }

    /** Grams that mend the ratio, of what is added: the short component, or the premix it comes in. Never negative. */
    public double addition() {
        return weighed == null ? 0 : weighed.addition() / mends().map(t -> Mixtures.share(t.use(), shortRole().orElseThrow())).orElse(1.0);
    }

    /** What is added to mend the ratio: the use that is the short component, else the premix that brings it. Empty when none is short. */
    public Optional<Target> mends() {
        return shortRole().flatMap(role -> targets.stream().filter(t -> t.use().getRole() == role).findFirst()
                .or(() -> targets.stream().filter(t -> carries(t.use()) == role).findFirst()));
    }

    /** Role of the short component; empty until both are weighed, and when none is short. */
    public Optional<PartRole> shortRole() {
        return weighed == null || weighed.shortOf() == Weighed.Short.NONE ? Optional.empty()
                : Optional.of(weighed.shortOf() == Weighed.Short.A ? PartRole.COMPONENT_A : PartRole.COMPONENT_B);
    }

    /** What to put on the balance next: the first use with nothing weighed, else the short component when outside the own limit. */
    public Optional<Target> next() {
        Optional<Target> unweighed = targets.stream().filter(t -> t.weighed() == null && t.toAdd() > Mixtures.NOTHING).findFirst();
        if (unweighed.isPresent() || !outside()) {
            return unweighed;
        }
        return mends();
    }

    /** One sentence saying what to do now. */
    public Message sentence() {
        if (targets.isEmpty()) {
            return Say.ADVICE_NOTHING.with();
        }
        Optional<Target> next = next();
        if (next.isPresent() && next.get().weighed() == null) {
            return Say.ADVICE_WEIGH.with(Figures.of(next.get().toAdd(), "g"), name(next.get().use()));
        }
        if (problem != null) {
            return problem;
        }
        if (weighed == null || addition() < Mixtures.NOTHING) {
            return Say.ADVICE_DONE.with();
        }
        return (outside() ? Say.ADVICE_ADD : Say.ADVICE_ADD_OR_LEAVE).with(Figures.of(addition(), "g", 3), mends().map(t -> name(t.use())).orElse(weighed.shortOf().name()),
                Figures.percent(weighed.deviation()), Figures.percent(ownLimit));
    }

    /** What a use is called on the bench: A, B, the premix, the grade's name, or its role. */
    public static String name(MaterialUse use) {
        return switch (use.getRole()) {
            case COMPONENT_A -> "A";
            case COMPONENT_B -> "B";
            default -> use.getPremix() != null ? Say.ADVICE_PREMIX.with(use.getPremix().getCode()).text() : use.getGrade() != null && use.getGrade().getName() != null ? use.getGrade().getName()
                    : use.getRole().getLiteral().replace('_', ' ');
        };
    }
}
