package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.Batch;
import org.flexwright.mixing.formula.MixDensity;
import org.flexwright.mixing.formula.Surplus;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Grams of A and B for a number of parts. */
@Component(service = Calculation.class)
public final class BatchCalculation implements Calculation<BatchCalculation.Inputs, BatchCalculation.Results> {

    static final Source ALGEBRA = Source.derived("Mass balance; ideal volumes");

    /** What is to be filled and with what. */
    public record Inputs(
            @Field(label = "Parts", min = 1, max = 10000, def = "3", help = "How many parts the batch is for.") int parts,
            @Field(kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 100000, def = "12 ml",
                    help = "Volume of one part, from the drawing or by water displacement.")
            double partVolume,
            @Field(kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 100000, def = "0 ml",
                    help = "Sprue, runner and riser of one part.")
            double runnerVolume,
            @Field(kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 100000, def = "0 ml",
                    help = "What stays in syringe or hose, once a batch.")
            double deadVolume,
            @Field(kind = QuantityKind.FRACTION, unit = "%", min = 0, max = 90, def = "15 %",
                    help = "Share for what never reaches the mould; the next field says of what.")
            double extra,
            @Field(def = "allowance",
                    help = "Allowance: added to the net amount. Loss: the share of the mixed amount that stays behind.")
            Surplus extraKind,
            @Field(label = "Parts of A", min = 0, minOpen = true, max = 1e6, def = "100", help = "As the data sheet gives the ratio.") double ratioA,
            @Field(label = "Parts of B", min = 0, minOpen = true, max = 1e6, def = "90", help = "As the data sheet gives the ratio.") double ratioB,
            @Field(label = "Parts by", def = "volume", help = "Whether the ratio is by weight or by volume.") RatioBasis basis,
            @Field(label = "Density of A", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.05 g/cm3", optional = true,
                    help = "Needed for a ratio by volume, and when the mixture's density is not given.")
            Double densityA,
            @Field(label = "Density of B", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.10 g/cm3", optional = true,
                    help = "Needed for a ratio by volume, and when the mixture's density is not given.")
            Double densityB,
            @Field(label = "Density of the mixture", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, optional = true,
                    help = "Own measurement; empty: from the densities of A and B.")
            Double mixDensity) {
    }

    /** What to weigh. */
    public record Results(
            @Field(label = "Mass of A", kind = QuantityKind.MASS, unit = "g", help = "Grams of A to weigh.") double massA,
            @Field(label = "Mass of B", kind = QuantityKind.MASS, unit = "g", help = "Grams of B to weigh.") double massB,
            @Field(label = "Total", kind = QuantityKind.MASS, unit = "g", help = "A and B together.") double total,
            @Field(label = "Volume mixed", kind = QuantityKind.VOLUME, unit = "ml", help = "Volume of A and B together.") double volume,
            @Field(label = "B to 100 g of A", kind = QuantityKind.MASS, unit = "g", help = "The ratio by weight.") double ratioByWeight,
            @Field(label = "Density of the mixture", kind = QuantityKind.DENSITY, unit = "g/cm3",
                    help = "Given, or from ideal volumes.")
            double mixDensity,
            @Field(label = "Net mass", kind = QuantityKind.MASS, unit = "g", help = "What the parts, runners and dead volume take.") double netMass) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.batch", "Batch to weigh", 1,
                "Grams of A and B for a number of parts: m = rho (n (part + runner) + dead), then either m (1 + w) with w an allowance on the net, "
                        + "or m/(1 - w) with w the share lost of what is mixed. The mixture's density is 1/rho = sum(w/rho) unless it is given.",
                ALGEBRA, "Volumes of A and B add up; cure raises the density later by the shrinkage. Filler is not counted here.");
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
        boolean densities = in.densityA() != null && in.densityB() != null;
        if (!densities && in.basis() == RatioBasis.VOLUME) {
            return noDensities(in, "the ratio is by volume and the batch is weighed");
        }
        if (!densities && in.mixDensity() == null) {
            return noDensities(in, "the density of the mixture is not given");
        }
        Batch batch = new Batch(in.parts(), in.partVolume(), in.runnerVolume(), in.deadVolume());
        if (!(batch.netVolume() > 0)) {
            return Outcome.refused("partVolume", Say.BATCH_EMPTY.with(), Say.BATCH_EMPTY_REMEDY.with());
        }
        WeightRatio ratio = in.basis().toWeight(in.ratioA(), in.ratioB(), in.densityA(), in.densityB());
        double density = in.mixDensity() != null ? in.mixDensity() : MixDensity.of(ratio, in.densityA(), in.densityB());
        double share = in.extra() / 100;
        double total = batch.mass(density, in.extraKind(), share);
        Results results = new Results(total * ratio.shareA(), total * ratio.shareB(), total, total / density, 100 * ratio.bPerA(), density,
                batch.netMass(density));
        return Outcome.done(results, share == 0 ? List.of() : List.of(conventions(in.extraKind(), share, ratio, results.netMass())));
    }

    private static Outcome<Results> noDensities(Inputs in, String why) {
        return Outcome.refused(in.densityA() == null ? "densityA" : "densityB", Say.BATCH_DENSITIES.with(why), Say.BATCH_DENSITIES_REMEDY.with());
    }

    private static Remark conventions(Surplus used, double share, WeightRatio ratio, double net) {
        double other = net * used.other().factor(share);
        Say words = used == Surplus.ALLOWANCE ? Say.BATCH_ALLOWANCE : Say.BATCH_LOSS;
        return words.note(ALGEBRA, Figures.percent(share), Figures.of(net, "g"), Figures.of(1 + share, ""), Figures.of(1 - share, ""),
                Figures.of(other * ratio.shareA(), "g"), Figures.of(other * ratio.shareB(), "g"));
    }
}
