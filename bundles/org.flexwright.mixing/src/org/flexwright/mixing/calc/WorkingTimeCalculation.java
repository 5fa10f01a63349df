package org.flexwright.mixing.calc;

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
import org.flexwright.mixing.formula.WorkingTime;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Working time at another temperature and under another definition. */
@Component(service = Calculation.class)
public final class WorkingTimeCalculation implements Calculation<WorkingTimeCalculation.Inputs, WorkingTimeCalculation.Results> {

    private static final Source BAND = Source.commonPractice("Activation energy 35 to 75 kJ/mol, 50 where nothing is known");
    private static final Source MODEL = Source.derived("Arrhenius; eta = eta0 exp(t/tau)");
    private static final double LOW_EA = 35;
    private static final double USUAL_EA = 50;
    private static final double HIGH_EA = 75;

    /** A working time as a sheet gives it, and where it is wanted. */
    public record Inputs(
            @Field(label = "Working time", kind = QuantityKind.DURATION, unit = "min", min = 0, minOpen = true, max = 1e5, def = "20 min",
                    help = "As the sheet gives it.")
            double time,
            @Field(label = "at", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 150, def = "23 degC",
                    help = "Temperature the sheet names.")
            double sheetTemperature,
            @Field(label = "ends when viscosity has grown", min = 1, max = 1000, def = "2",
                    help = "Times: 2 is doubling. Standards leave it open; ask the supplier.")
            double sheetFold,
            @Field(label = "with a mass of", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "Amount in the cup it was measured with.")
            Double sheetMass,
            @Field(label = "Wanted at", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 150, def = "28 degC",
                    help = "Temperature in your cup.")
            double temperature,
            @Field(label = "Wanted end: viscosity grown", min = 1, max = 1000, def = "2",
                    help = "Times; 2 to fill, more to pour a block.")
            double fold,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 10, max = 200, optional = true,
                    help = "Own value; empty: the usual band for urethanes.")
            Double activationEnergy) {
    }

    /** The working time there. */
    public record Results(
            @Field(label = "Working time there", kind = QuantityKind.DURATION, unit = "min", help = "Band over the activation energy.") Estimate time,
            @Field(label = "Doubling of viscosity there", kind = QuantityKind.DURATION, unit = "min", help = "Likely value.") double doubling) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.working-time", "Working time elsewhere", 1,
                "t(T2) = t(T1) exp[(Ea/R)(1/T2 - 1/T1)]; from one definition to another with eta = eta0 exp(t/tau), k-fold growth at tau ln k. "
                        + "Also called pot life; standards let its end be chosen, so the definition travels with the number.",
                MODEL, "Within some 20 K of the sheet's temperature, the same amount in the cup, before gelling; a warm cup thins first.");
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
        if (in.sheetFold() <= 1 || in.fold() <= 1) {
            return Outcome.refused(in.sheetFold() <= 1 ? "sheetFold" : "fold", Say.TIME_FOLD.with(), Say.TIME_FOLD_REMEDY.with());
        }
        boolean known = in.activationEnergy() != null;
        double likely = time(in, known ? in.activationEnergy() : USUAL_EA);
        double other = known ? likely : time(in, LOW_EA);
        double another = known ? likely : time(in, HIGH_EA);
        Estimate band = new Estimate(Math.min(likely, Math.min(other, another)), likely, Math.max(likely, Math.max(other, another)), known ? MODEL : BAND);
        return Outcome.done(new Results(band, WorkingTime.timeTo(2, WorkingTime.growthTime(likely, in.fold()))), remarks(in, known));
    }

    private static double time(Inputs in, double ea) {
        double tau = WorkingTime.growthTime(in.time(), in.sheetFold()) * WorkingTime.temperatureFactor(ea, in.sheetTemperature(), in.temperature());
        return WorkingTime.timeTo(in.fold(), tau);
    }

    private static List<Remark> remarks(Inputs in, boolean known) {
        List<Remark> remarks = new ArrayList<>();
        if (!known) {
            remarks.add(Say.TIME_EA.caution(BAND));
        }
        if (Math.abs(in.temperature() - in.sheetTemperature()) > 20) {
            remarks.add(Say.TIME_FAR.caution(MODEL, Figures.of(in.sheetTemperature(), "\u00b0C"), Figures.of(in.temperature(), "\u00b0C")));
        }
        remarks.add(in.sheetMass() == null ? Say.TIME_MASS_UNKNOWN.note(Source.commonPractice())
                : Say.TIME_MASS.note(Source.commonPractice(), Figures.of(in.sheetMass(), "g")));
        return remarks;
    }
}
