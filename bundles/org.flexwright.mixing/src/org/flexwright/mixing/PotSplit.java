package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.PotPlan;
import org.flexwright.core.process.PotRequest;
import org.flexwright.core.process.Steps;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Batch;
import org.flexwright.mixing.formula.Pots;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.mixing.formula.Surplus;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Splits a number of parts over pots: as few as the mould and the working time allow, evenly filled, each with dead volume and extra of its own. */
final class PotSplit {
    private static final Source RESERVE = Source.commonPractice("1.3 times the filling time left at the start of filling");
    private static final Source ROOM_TO_FOAM = Source.commonPractice("cup a quarter to a third full for degassing");
    private static final Source ROUNDING = Source.fromMemory("JCGM 100:2008, 4.3.7: rectangular distribution of a rounded reading");

    private final Step step;
    private final Trial trial;
    private final PotRequest request;
    private final WeighDetails details;
    private final List<Remark> remarks = new ArrayList<>();
    private int recipeParts;

    private PotSplit(Step step, Trial trial, PotRequest request) {
        this.step = step;
        this.trial = trial;
        this.request = request;
        this.details = step.getDetails() instanceof WeighDetails weigh ? weigh : null;
    }

    static PotPlan of(Step step, Trial trial, PotRequest request) {
        return new PotSplit(step, trial, request).split();
    }

    private PotPlan split() {
        Integer parts = details != null && details.getPartCount() != null ? details.getPartCount() : request.recipeParts();
        if (parts == null || parts < 1) {
            return new PotPlan.Refused("partCount", Say.POTS_PARTS.with(StepNames.of(step)), Say.POTS_PARTS_REMEDY.with());
        }
        recipeParts = parts;
        if (step.getUses().stream().noneMatch(use -> use.getPlanned() != null && use.getPlanned() > 0)) {
            return new PotPlan.Refused("planned", Say.POTS_GRAMS.with(StepNames.of(step)), Say.POTS_GRAMS_REMEDY.with());
        }
        int cap = request.cavities() == null ? request.parts() : Math.max(1, Math.min(request.parts(), request.cavities()));
        int inTime = inTime(cap);
        if (inTime < 1) {
            double time = workingTime(1).low();
            return new PotPlan.Refused("workingTime", Say.POTS_TIME.with(StepNames.of(step), Figures.of(time, "min", 3), Figures.of(request.before(), "min", 3),
                    Figures.of(WorkingTime.RESERVE * fill(1), "min", 3)), Say.POTS_TIME_REMEDY.with());
        }
        Pots pots = new Pots(request.parts(), inTime);
        List<PotPlan.Pot> made = IntStream.range(0, pots.pots()).map(i -> request.parts() / pots.pots() + (i < request.parts() % pots.pots() ? 1 : 0)).mapToObj(this::pot)
                .toList();
        remarks(made);
        return new PotPlan.Split(made, inTime, recipeParts, request.before(), inTime < cap
                ? Say.POTS_BY_TIME.with(inTime, Figures.of(workingTime(inTime).low(), "min", 3), Figures.of(request.before(), "min", 3), Figures.of(WorkingTime.RESERVE * fill(inTime), "min", 3))
                : request.cavities() != null && cap < request.parts() ? Say.POTS_BY_MOULD.with(request.cavities())
                        : Say.POTS_FREE.with(), remarks);
    }

    /** The most parts, up to a number, that one pot fills in time; a bigger pot is shorter. */
    private int inTime(int cap) {
        if (request.workingTime() == null || request.fill() == null) {
            return cap;
        }
        // a tenth of a millisecond and less forgives what the division lost
        return IntStream.iterate(cap, n -> n >= 1, n -> n - 1).filter(n -> request.before() + WorkingTime.RESERVE * fill(n) <= workingTime(n).low() + 1e-6).findFirst().orElse(0);
    }

    private PotPlan.Pot pot(int parts) {
        double factor = factor(parts);
        List<Double> grams = step.getUses().stream().map(MaterialUse::getPlanned).map(g -> g == null ? Double.NaN : g * factor).toList();
        double mass = grams.stream().filter(g -> !g.isNaN()).mapToDouble(Double::doubleValue).sum();
        Double fill = request.fill() == null ? null : Double.valueOf(fill(parts));
        Double volume = volume(parts);
        return new PotPlan.Pot(parts, grams, net(mass), fill, fill == null ? null : Double.valueOf(WorkingTime.RESERVE * fill), request.workingTime() == null ? null : workingTime(parts),
                volume == null || degas() == null ? null : Double.valueOf(volume / CupRoom.THIRD));
    }

    /** What the planned grams are multiplied by; the dead volume is there once a pot. */
    private double factor(int parts) {
        return details == null || details.getPartVolume() == null ? (double) parts / recipeParts : batch(parts).netVolume() / batch(recipeParts).netVolume();
    }

    private Batch batch(int parts) {
        return new Batch(parts, details.getPartVolume(), zero(details.getRunnerVolume()), zero(details.getDeadVolume()));
    }

    private Double volume(int parts) {
        if (details != null && details.getPartVolume() != null) {
            return batch(parts).netVolume() * surplus().factor(zero(details.getExtra()) / 100);
        }
        DegasDetails degas = degas();
        return degas == null || degas.getMixVolume() == null ? null : Double.valueOf(degas.getMixVolume() * parts / recipeParts);
    }

    private Double net(double mass) {
        return details == null || details.getExtra() == null ? null : Double.valueOf(mass / surplus().factor(details.getExtra() / 100));
    }

    private Surplus surplus() {
        return details.getExtraKind() == Extra.LOSS ? Surplus.LOSS : Surplus.ALLOWANCE;
    }

    private double fill(int parts) {
        return request.fill() * parts / recipeParts;
    }

    private Estimate workingTime(int parts) {
        double planned = step.getUses().stream().map(MaterialUse::getPlanned).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum();
        return request.workingTime().at(planned * factor(parts), request.roomC()).minutes();
    }

    private DegasDetails degas() {
        return Steps.of(trial, DegasStep.ID, DegasDetails.class).stream().map(Steps.Detailed::details).findFirst().orElse(null);
    }

    private void remarks(List<PotPlan.Pot> pots) {
        if (request.workingTime() == null || request.fill() == null) {
            remarks.add((request.workingTime() == null ? Say.POTS_NO_TIME : Say.POTS_NO_FILL).caution(RESERVE));
        }
        balance(pots.getLast());
        DegasDetails degas = degas();
        Double cup = details != null && details.getCupVolume() != null ? details.getCupVolume() : degas == null ? null : degas.getCupVolume();
        Double needs = pots.getFirst().cup();
        if (cup != null && needs != null && needs > cup) {
            remarks.add(Say.POTS_CUP.caution(ROOM_TO_FOAM, Figures.of(cup, "ml"), Figures.of(Math.ceil(needs), "ml")));
        }
    }

    /** The smallest amount of A or B against what the balance can weigh to half of the own limit. */
    private void balance(PotPlan.Pot smallest) {
        OptionalDouble coarsest = Balances.coarsest(step);
        OptionalDouble least = IntStream.range(0, step.getUses().size()).filter(i -> {
            PartRole role = step.getUses().get(i).getRole();
            return role == PartRole.COMPONENT_A || role == PartRole.COMPONENT_B;
        }).mapToDouble(i -> smallest.grams().get(i)).filter(g -> g > 0).min();
        if (coarsest.isPresent() && least.isPresent()) {
            double limit = WeighAdvice.of(step).ownLimit();
            double can = ScaleReading.smallestMass(coarsest.getAsDouble(), WeighAdvice.BALANCE_SHARE * limit);
            if (least.getAsDouble() < can) {
                remarks.add(Say.POTS_SMALL.caution(ROUNDING, Figures.of(least.getAsDouble(), "g"), Figures.of(coarsest.getAsDouble(), "g"), Figures.of(can, "g", 2)));
            }
        }
    }

    private static double zero(Double value) {
        return value == null ? 0 : value;
    }
}
