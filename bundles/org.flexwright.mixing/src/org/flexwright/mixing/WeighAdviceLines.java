package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.mixing.WeighAdvice.Target;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.mixing.formulation.FormulationPlan;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * The weighing advice as lines: {@code targetA, targetB, ratio, trueRatio, deviation, addA or addB}, {@code target1} and so on for the rest,
 * {@code index, trueIndex, filler}, {@code reading1.of_all} and so on for a share that says not of what, {@code smallest}, and
 * {@code proposal}. What follows from weighings has a band of two standard uncertainties where the balance is known.
 */
final class WeighAdviceLines {

    private static final Source BALANCE = Source.derived("Mass balance of what is planned and weighed");
    private static final Source ROUNDING = Source.fromMemory("JCGM 100:2008, 4.3.7: rounded readings; the band is two standard uncertainties");
    private static final double COVERAGE = 2;

    private final Step step;
    private final WeighAdvice advice;
    private final WeighedBand band;
    private final Optional<WeighProposal> proposal;
    private final List<StepAdvice> lines = new ArrayList<>();

    private WeighAdviceLines(Step step, Trial trial) {
        this.step = step;
        this.advice = WeighAdvice.of(step);
        this.band = new WeighedBand(step);
        this.proposal = WeighProposal.of(step, trial);
    }

    static List<StepAdvice> of(Step step, Trial trial) {
        return new WeighAdviceLines(step, trial).all();
    }

    private List<StepAdvice> all() {
        advice.targets().forEach(this::target);
        ratio();
        index();
        filler();
        advice.targets().forEach(target -> readings(target.use()));
        smallest();
        proposal.ifPresent(p -> lines.add(new StepAdvice("proposal", Say.valueOf("WORD_" + p.word().getName()).with().text(),
                weighed(advice.weighed() == null ? 0 : 100 * advice.weighed().deviation(), ratioHalf()), "%", new Remark(Severity.NOTE, p.reason(), p.source()))));
        return lines;
    }

    private void target(Target target) {
        if (target.now() != null) {
            boolean next = advice.next().filter(n -> n.use() == target.use()).isPresent() && advice.weighed() == null;
            lines.add(line("target" + mark(target), "Target of " + WeighAdvice.name(target.use()), Estimate.exact(target.now(), BALANCE), "g", next ? remark() : null));
        }
    }

    private void ratio() {
        if (advice.ratio() != null) {
            lines.add(line("ratio", "B to 100 g of A, planned", Estimate.exact(100 * advice.ratio().bPerA(), BALANCE), "g", null));
        }
        if (advice.weighed() != null) {
            double is = 100 * advice.weighed().actual().bPerA();
            lines.add(line("trueRatio", "B to 100 g of A, in the cup", weighed(is, is * COVERAGE * band.ratio()), "g", null));
            lines.add(line("deviation", "Deviation of B to A", weighed(100 * advice.weighed().deviation(), ratioHalf()), "%", remark()));
            advice.mends().filter(t -> proposal.map(WeighProposal::adds).orElse(true)).ifPresent(
                    t -> lines.add(line("add" + mark(t), "Add of " + WeighAdvice.name(t.use()), Estimate.exact(advice.addition(), BALANCE), "g", null)));
        }
    }

    private double ratioHalf() {
        return advice.weighed() == null ? Double.NaN : 100 * (1 + advice.weighed().deviation()) * COVERAGE * band.ratio();
    }

    private void index() {
        double planned = plannedIndex();
        if (!Double.isNaN(planned)) {
            lines.add(line("index", "Index, planned", Estimate.exact(planned, IndexRule.SOURCE), "", null));
        }
        double is = MixtureFigures.weighed(step).index();
        if (!Double.isNaN(is) && Mixtures.of(step).actualRatio() != null) {
            lines.add(line("trueIndex", "Index, in the cup", weighed(is, is * COVERAGE * band.index()), "", null));
        }
    }

    /** Of the planned grams; where none are planned, of those that follow from the parts. */
    private double plannedIndex() {
        MixtureFigures planned = MixtureFigures.planned(step);
        return planned.total() > 0 ? planned.index()
                : FormulationPlan.of(step).filter(p -> !p.shares().isEmpty()).map(p -> p.formulation().index(p.shares())).orElse(Double.NaN);
    }

    private void filler() {
        MixtureFigures is = MixtureFigures.weighed(step);
        if (is.filler() > 0 && is.total() > 0) {
            double share = 100 * is.filler() / is.total();
            lines.add(line("filler", "Filler in all of it, in the cup", weighed(share, share * COVERAGE * band.filler()), "%", null));
        }
    }

    /** What a share that says not of what might mean: each reading with its grams, none of them taken. */
    private void readings(MaterialUse use) {
        Map<PartsOf, Double> readings = FormulationPlan.readings(step, use);
        readings.forEach((of, grams) -> {
            String base = of.getLiteral().toLowerCase(Locale.ROOT);
            lines.add(line("reading" + (step.getUses().indexOf(use) + 1) + "." + base, Say.valueOf("READING_" + of.getName()).with(WeighAdvice.name(use)).text(),
                    Estimate.exact(grams, BALANCE), "g", null));
        });
    }

    /** Only where it matters: when something is still to be weighed that this balance is too coarse for. */
    private void smallest() {
        OptionalDouble resolution = Balances.coarsest(step);
        if (resolution.isPresent()) {
            double least = ScaleReading.smallestMass(resolution.getAsDouble(), WeighAdvice.BALANCE_SHARE * advice.ownLimit());
            boolean below = advice.targets().stream().anyMatch(t -> t.weighed() == null && t.now() != null && t.now() > 0 && t.now() < least);
            if (below) {
                lines.add(line("smallest", "Least this balance weighs to " + Figures.percent(WeighAdvice.BALANCE_SHARE * advice.ownLimit()), Estimate.exact(least, ROUNDING), "g", null));
            }
        }
    }

    /** A or B for the first use that is that component, else the place among the uses from 1. */
    private String mark(Target target) {
        PartRole role = target.use().getRole();
        boolean first = advice.targets().stream().filter(t -> t.use().getRole() == role).findFirst().orElseThrow().use() == target.use();
        return first && role == PartRole.COMPONENT_A ? "A" : first && role == PartRole.COMPONENT_B ? "B" : String.valueOf(step.getUses().indexOf(target.use()) + 1);
    }

    private static Estimate weighed(double value, double half) {
        return Double.isNaN(half) || !(half > 0) ? Estimate.exact(value, BALANCE) : Estimate.plusMinus(value, half, ROUNDING);
    }

    private static StepAdvice line(String name, String label, Estimate value, String unit, Remark remark) {
        return new StepAdvice(name, label, value, unit, remark);
    }

    private Remark remark() {
        boolean twice = advice.outside() && Math.abs(advice.weighed().deviation()) > 2 * advice.ownLimit();
        Severity severity = twice ? Severity.STOP : advice.outside() ? Severity.CAUTION : Severity.NOTE;
        boolean fits = proposal.map(WeighProposal::adds).orElse(true);
        return new Remark(severity, fits ? advice.sentence() : proposal.get().reason(), Source.commonPractice("own limit of the ratio"));
    }
}
