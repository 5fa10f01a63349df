package org.flexwright.vatprint;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Resin that a print uses up. */
@Component(service = Calculation.class)
public final class ResinCalculation implements Calculation<ResinCalculation.Inputs, ResinCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.resin";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Resin used", 1,
            "Mass of resin = density times (part + supports + what clings to part and plate), and its price.", Source.derived("density times volume"),
            "What stays in the vat is not counted.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Part", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 100000, def = "8 ml", help = "Of all parts.") double part,
            @Field(label = "Supports", kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 100000, def = "2 ml", help = "Rafts included.") double supports,
            @Field(label = "Drag-out", kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 100000, def = "3 ml", help = "Clings to parts and plate; weigh it once.") double dragOut,
            @Field(label = "Density", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.5, max = 3, def = "1.1 g/cm3", help = "Of the liquid resin.") double density,
            @Field(label = "Price of 1 kg", kind = QuantityKind.MONEY, unit = "EUR", min = 0, max = 100000, optional = true, help = "Left empty, no cost is shown.") Double price) {
    }

    /** Results. */
    public record Results(@Field(label = "Resin", kind = QuantityKind.MASS, unit = "g", help = "Taken out of the vat.") double mass,
            @Field(label = "Cost", kind = QuantityKind.MONEY, unit = "EUR", optional = true, help = "Of that resin.") Double cost) {
    }

    @Override
    public CalculationInfo info() {
        return INFO;
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
        double mass = in.density() * (in.part() + in.supports() + in.dragOut());
        return Outcome.done(new Results(mass, in.price() == null ? null : mass * in.price() / 1e3));
    }
}
