package org.flexwright.curing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.Schedule;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How much a schedule of temperatures cures, as hours at one temperature. */
@Component(service = Calculation.class)
public final class ScheduleCalculation implements Calculation<ScheduleCalculation.Inputs, ScheduleCalculation.Results> {

    private static final Source MODEL = Source.derived("Arrhenius equivalence with one activation energy");

    /** A stretch of the schedule. */
    public record Stretch(
            @Field(kind = QuantityKind.DURATION, unit = "min", min = 0, max = 1e6, help = "How long it lasts.") double time,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 250,
                    help = "At its end; all through when it is no ramp.")
            double temperature,
            @Field(def = "no", help = "Yes when the temperature runs evenly from the stretch before.") boolean ramp) {
    }

    /** Schedule and reference. */
    public record Inputs(
            @Field(def = "30; 60; yes | 120; 60; no", help = "One row a stretch: minutes; degC at its end; ramp yes or no.") List<Stretch> stretches,
            @Field(label = "Temperature at the start", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 250, def = "23 degC",
                    help = "Where a first ramp starts.")
            double start,
            @Field(label = "Reference temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 250, def = "23 degC",
                    help = "At which the answer is counted, the sheet's temperature.")
            double reference,
            @Field(label = "Wanted", kind = QuantityKind.DURATION, unit = "h", min = 0, minOpen = true, max = 1e6, def = "16 h",
                    help = "Cure time the sheet asks for at the reference temperature.")
            double wanted,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 5, max = 200, optional = true,
                    help = "Own value; empty: the usual band for urethanes.")
            Double activationEnergy) {
    }

    /** The schedule in hours at the reference. */
    public record Results(
            @Field(label = "Equivalent", kind = QuantityKind.DURATION, unit = "h",
                    help = "Hours at the reference temperature that cure as much.")
            Estimate equivalent,
            @Field(label = "Of what is wanted", kind = QuantityKind.FRACTION, unit = "%", help = "100 % is the sheet's cure.") Estimate share,
            @Field(label = "In all", kind = QuantityKind.DURATION, unit = "h", help = "Clock time of the schedule.") double clock) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.schedule", "Schedule in hours at one temperature", 1,
                "t(eq) = integral of exp[-(Ea/R)(1/T - 1/Tref)] dt over the stretches, ramps included. Without an own activation energy the band "
                        + "35 to 75 kJ/mol is shown with 50 as likely.",
                MODEL, "One activation energy, no stiffening, inside the temperatures the sheet allows; a silicone or photopolymer has its own.");
    }

    @Override
    public Class<Inputs> inputType() {
        return Inputs.class;
    }

    @Override
    public Class<Results> resultType() {
        return Results.class;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        Schedule schedule = Schedule.of(in.stretches().stream().map(s -> new Schedule.Stage(s.time(), s.temperature(), s.ramp())).toList(), in.start());
        if (!(schedule.minutes() > 0)) {
            return Outcome.refused("stretches", Say.SCHEDULE_NONE.with(), Say.SCHEDULE_NONE_REMEDY.with());
        }
        boolean known = in.activationEnergy() != null;
        double likely = hours(schedule, in, known ? in.activationEnergy() : Examples.USUAL_EA);
        double one = known ? likely : hours(schedule, in, Examples.LOW_EA);
        double other = known ? likely : hours(schedule, in, Examples.HIGH_EA);
        Estimate band = new Estimate(Math.min(likely, Math.min(one, other)), likely, Math.max(likely, Math.max(one, other)), known ? MODEL : Examples.EA_BAND);
        return Outcome.done(new Results(band, band.times(100 / in.wanted()), schedule.minutes() / 60), remarks(band, in, known));
    }

    private static double hours(Schedule schedule, Inputs in, double ea) {
        return schedule.equivalentMinutes(ea, in.reference()) / 60;
    }

    private static List<Remark> remarks(Estimate band, Inputs in, boolean known) {
        List<Remark> remarks = new ArrayList<>();
        if (!known) {
            remarks.add(Say.EA_ASSUMED.caution(Examples.EA_BAND));
        }
        if (band.likely() < in.wanted()) {
            remarks.add(Say.SCHEDULE_SHORT.caution(band.source(), Figures.percent(band.likely() / in.wanted()), Figures.of(in.wanted() - band.likely(), "h", 3),
                    Figures.of(in.reference(), "\u00b0C")));
        } else if (band.low() >= in.wanted()) {
            remarks.add(Say.SCHEDULE_LONG.note(band.source(), Figures.percent(band.low() / in.wanted())));
        }
        return remarks;
    }
}
