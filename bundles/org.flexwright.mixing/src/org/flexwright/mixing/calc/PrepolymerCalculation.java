package org.flexwright.mixing.calc;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.Polyurethane;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** NCO content of a prepolymer. */
@Component(service = Calculation.class)
public final class PrepolymerCalculation implements Calculation<PrepolymerCalculation.Inputs, PrepolymerCalculation.Results> {

    /** What is reacted. */
    public record Inputs(
            @Field(label = "Isocyanate", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "250.25 g",
                    help = "Grams of isocyanate.")
            double isocyanate,
            @Field(label = "NCO content", kind = QuantityKind.FRACTION, unit = "%", min = 0.5, max = 60, def = "33.58 %",
                    help = "Of the isocyanate.")
            double nco,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "1000 g", help = "Grams of polyol.") double polyol,
            @Field(label = "Hydroxyl value", min = 1, max = 2000, def = "56.1", help = "Of the polyol, mg KOH to a gram.") double hydroxylValue,
            @Field(label = "Functionality of the polyol", min = 1, max = 8, def = "2",
                    help = "OH groups to a molecule, for its molar mass.")
            double functionality) {
    }

    /** The prepolymer. */
    public record Results(
            @Field(label = "NCO content", kind = QuantityKind.FRACTION, unit = "%", help = "Of the prepolymer, all OH reacted.") double nco,
            @Field(label = "Equivalent weight", kind = QuantityKind.MOLAR_MASS, unit = "g/mol",
                    help = "Grams of prepolymer to one NCO group.")
            double equivalent,
            @Field(label = "Molar mass of the polyol", kind = QuantityKind.MOLAR_MASS, unit = "g/mol",
                    help = "Functionality times equivalent weight.")
            double molarMass) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.prepolymer", "Prepolymer", 1,
                "%NCO = 4202 (eq NCO - eq OH)/total mass; molar mass of the polyol = functionality x 56100/OHV.",
                Source.published("Polyurethane Manufacturers Association, technical library, section 5: equivalent weights"),
                "All hydroxyl groups reacted, no side reactions, no moisture.");
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
        double iso = in.isocyanate() / Polyurethane.isocyanateEquivalent(in.nco());
        double polyolEquivalent = Polyurethane.hydroxylEquivalent(in.hydroxylValue());
        double hydroxyl = in.polyol() / polyolEquivalent;
        if (hydroxyl >= iso) {
            return Outcome.refused("isocyanate", Say.PREPOLYMER_EXCESS.with(Figures.of(hydroxyl, ""), Figures.of(iso, "")), Say.PREPOLYMER_EXCESS_REMEDY.with());
        }
        double nco = Polyurethane.prepolymerNco(iso, hydroxyl, in.isocyanate() + in.polyol());
        return Outcome.done(new Results(nco, Polyurethane.isocyanateEquivalent(nco), Polyurethane.molarMass(in.functionality(), polyolEquivalent)));
    }
}
