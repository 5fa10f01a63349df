package org.flexwright.mixing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.Batch;
import org.flexwright.mixing.formula.MoistureFoam;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Gas from water in a polyurethane. */
@Component(service = Calculation.class)
public final class MoistureCalculation implements Calculation<MoistureCalculation.Inputs, MoistureCalculation.Results> {

    private static final Source GAS = Source.derived("One mole of carbon dioxide to one of water; ideal gas at 25 \u00b0C and 1 atm");
    private static final Source LIMIT = Source.commonPractice("Gas above 1 % of the batch volume");

    /** Water in a batch. */
    public record Inputs(
            @Field(label = "Component", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "50 g",
                    help = "Grams of the polyol, powder or paste that carries the water.")
            double component,
            @Field(label = "Water in it", kind = QuantityKind.FRACTION, unit = "%", min = 0, max = 20, def = "0.1 %",
                    help = "By weight; weigh it before and after drying.")
            double water,
            @Field(label = "Batch volume", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 1e6, def = "95 ml",
                    help = "A and B together.")
            double volume) {
    }

    /** Gas. */
    public record Results(
            @Field(kind = QuantityKind.MASS, unit = "g", help = "Water in the component.") double waterMass,
            @Field(label = "Carbon dioxide", kind = QuantityKind.MASS, unit = "g", help = "If all water reacts.") double gasMass,
            @Field(label = "Volume of gas", kind = QuantityKind.VOLUME, unit = "ml",
                    help = "At 25 degC and 1 atm, nothing dissolved.")
            double gasVolume,
            @Field(label = "Gas to batch", kind = QuantityKind.FRACTION, unit = "%", help = "Volume of gas to that of the batch.") double share) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.moisture", "Foam from moisture", 1,
                "Water and isocyanate give carbon dioxide, mole for mole: 1 g of water gives 2.44 g or 1358 ml of gas at 25 degC.", GAS,
                "Polyurethanes only; all the water reacts and no gas stays dissolved, so it is the most there can be.");
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
        double water = in.component() * in.water() / 100;
        double volume = MoistureFoam.co2Volume(water);
        double share = volume / in.volume();
        List<Remark> remarks = new ArrayList<>();
        if (share > 0.01) {
            remarks.add(Say.FOAM_MUCH.caution(LIMIT, Figures.of(volume, "ml"), Figures.percent(share)));
        }
        remarks.add(Say.FOAM_DISSOLVED.note(Source.commonPractice()));
        return Outcome.done(new Results(water, MoistureFoam.co2Grams(water), volume, 100 * share), remarks);
    }
}
