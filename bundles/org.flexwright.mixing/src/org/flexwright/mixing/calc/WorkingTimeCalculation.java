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
import org.flexwright.core.process.CupClock;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Working time at another temperature and under another definition. */
@Component(service = Calculation.class)
public final class WorkingTimeCalculation implements Calculation<WorkingTimeCalculation.Inputs, WorkingTimeCalculation.Results> {

    private static final Source BAND = Source.commonPractice("Activation energy 35 to 75 kJ/mol, 50 where nothing is known");
    private static final Source MODEL = Source.derived("Arrhenius; eta = eta0 exp(t/tau)");

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
            @Field(label = "Wanted with a mass of", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "Amount in your cup; empty: the amount of the sheet.")
            Double mass,
            @Field(label = "Wanted end: viscosity grown", min = 1, max = 1000, def = "2",
                    help = "Times; 2 to fill, more to pour a block.")
            double fold,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 10, max = 200, optional = true,
                    help = "Own value; empty: the usual band for urethanes.")
            Double activationEnergy) {
    }

    /** The working time there. */
    public record Results(
            @Field(label = "Working time there", kind = QuantityKind.DURATION, unit = "min", help = "Band over the activation energy and the warming of the cup.") Estimate time,
            @Field(label = "Doubling of viscosity there", kind = QuantityKind.DURATION, unit = "min", help = "Likely value.") double doubling) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.working-time", "Working time elsewhere", 1,
                "t(T2) = t(T1) exp[(Ea/R)(1/T2 - 1/T1)]; from one definition to another with eta = eta0 exp(t/tau), k-fold growth at tau ln k. "
                        + "To another amount: rho cp dT/dt = rho H dX/dt - (h S/V)(T - Ta), surface of a sphere, h 8 W/m2/K, warmed by 2 to 20 K without loss. "
                        + "Also called pot life; standards let its end be chosen, so the definition travels with the number.",
                MODEL, "Within some 20 K of the sheet's temperature, before gelling; the amount in the cup is a rough estimate; a warm cup thins first.");
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
        WorkingTime sheet = WorkingTime.stated(Estimate.exact(in.time(), MODEL), "", in.sheetFold(), in.sheetMass(), in.sheetTemperature(), in.activationEnergy());
        double otherEnd = CupClock.timeTo(in.fold(), CupClock.growthTime(1, in.sheetFold()));
        Estimate band = sheet.at(in.mass(), in.temperature()).minutes().times(otherEnd);
        return Outcome.done(new Results(band, CupClock.timeTo(2, CupClock.growthTime(band.likely(), in.fold()))), remarks(in));
    }

    private static List<Remark> remarks(Inputs in) {
        List<Remark> remarks = new ArrayList<>();
        if (in.activationEnergy() == null) {
            remarks.add(Say.TIME_EA.caution(BAND));
        }
        if (Math.abs(in.temperature() - in.sheetTemperature()) > 20) {
            remarks.add(Say.TIME_FAR.caution(MODEL, Figures.of(in.sheetTemperature(), "\u00b0C"), Figures.of(in.temperature(), "\u00b0C")));
        }
        if (in.sheetMass() == null) {
            remarks.add(Say.TIME_MASS_UNKNOWN.note(Source.commonPractice()));
        } else if (in.mass() == null) {
            remarks.add(Say.TIME_MASS.note(Source.commonPractice(), Figures.of(in.sheetMass(), "g")));
        } else {
            remarks.add(Say.TIME_MASS_CARRIED.note(Source.commonPractice(), Figures.of(in.sheetMass(), "g"), Figures.of(in.mass(), "g")));
        }
        return remarks;
    }
}
