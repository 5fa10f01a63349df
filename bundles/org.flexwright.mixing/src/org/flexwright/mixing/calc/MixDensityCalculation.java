package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.MixDensity;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Density of a mixture of several components. */
@Component(service = Calculation.class)
public final class MixDensityCalculation implements Calculation<MixDensityCalculation.Inputs, MixDensityCalculation.Results> {

    private static final Source IDEAL = Source.derived("Ideal volumes");

    /** One component. */
    public record Ingredient(
            @Field(help = "What it is.", def = "") String name,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, help = "Grams, or parts by weight.") double amount,
            @Field(kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 20, help = "From the sheet or weighed.") double density) {
    }

    /** What is mixed. */
    public record Inputs(
            @Field(def = "A; 60; 1.05 | B; 40; 1.21", help = "One row a component: name; grams; density.") List<Ingredient> components) {
    }

    /** The mixture. */
    public record Results(
            @Field(kind = QuantityKind.DENSITY, unit = "g/cm3", help = "Before cure; cure raises it by the shrinkage.") double density,
            @Field(kind = QuantityKind.MASS, unit = "g", help = "All components.") double mass,
            @Field(kind = QuantityKind.VOLUME, unit = "ml", help = "All components.") double volume) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.mix-density", "Density of a mixture", 1,
                "1/rho = sum(w/rho) over the components, w by weight: volumes add up. The mean by mass is a common mistake.", IDEAL,
                "Liquids and powders that do not react; trapped air and cure shrinkage are not counted.");
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
        List<MixDensity.Component> parts = in.components().stream().map(c -> new MixDensity.Component(c.amount(), c.density())).toList();
        double mass = parts.stream().mapToDouble(MixDensity.Component::grams).sum();
        if (!(mass > 0)) {
            return Outcome.refused("components", Say.DENSITY_NONE.with(), Say.DENSITY_NONE_REMEDY.with());
        }
        double density = MixDensity.of(parts);
        return Outcome.done(new Results(density, mass, mass / density),
                List.of(Say.DENSITY_MEAN.note(IDEAL, Figures.of(MixDensity.arithmeticMean(parts), "g/cm3"))));
    }
}
