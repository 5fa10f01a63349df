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
import org.flexwright.mixing.formula.Formulation;
import org.flexwright.mixing.formula.MoistureFoam;
import org.flexwright.mixing.formula.Polyurethane;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Isocyanate for an index, and the index of what was weighed. */
@Component(service = Calculation.class)
public final class IndexCalculation implements Calculation<IndexCalculation.Inputs, IndexCalculation.Results> {

    private static final Source EQUIVALENTS = Source.published("Polyurethane Manufacturers Association, technical library, section 5: equivalent weights");
    private static final Source USUAL = Source.commonPractice("Index 95 to 105 for castings");

    /** The two sides. */
    public record Inputs(
            @Field(label = "NCO content", kind = QuantityKind.FRACTION, unit = "%", min = 0.5, max = 60, def = "33.6 %",
                    help = "Of the isocyanate or prepolymer, from its sheet.")
            double nco,
            @Field(label = "Hydroxyl value", min = 1, max = 2000, def = "56",
                    help = "Of the polyol, mg KOH to a gram; an amine or acid number counts the same way.")
            double hydroxylValue,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "100 g", help = "Grams of polyol.") double polyol,
            @Field(label = "Extender equivalent weight", kind = QuantityKind.MOLAR_MASS, unit = "g/mol", min = 5, max = 5000, def = "45.06",
                    help = "Grams to one OH or NH group; butanediol has 45.06.")
            double extenderEquivalent,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "10 g", help = "Grams of extender.") double extender,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "0 g",
                    help = "Grams of water in polyol, filler or pigment: each uses up isocyanate.")
            double water,
            @Field(label = "Wanted index", min = 80, max = 130, def = "105",
                    help = "100 is as many NCO groups as OH groups; some write 1.00.")
            double index,
            @Field(label = "Isocyanate weighed", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "For the index of what is in the cup; may be empty.")
            Double weighed,
            @Field(label = "A mole of KOH is", def = "rounded", help = "Rounded: 56100 mg, as most guides count. Exact: 56105.6 mg, from atomic weights.")
            KohMass koh) {
    }

    /** Equivalents and amounts. */
    public record Results(
            @Field(label = "Isocyanate equivalent weight", kind = QuantityKind.MOLAR_MASS, unit = "g/mol",
                    help = "4202 divided by the NCO content.")
            double isocyanateEquivalent,
            @Field(label = "Polyol equivalent weight", kind = QuantityKind.MOLAR_MASS, unit = "g/mol",
                    help = "56100 divided by the hydroxyl value.")
            double polyolEquivalent,
            @Field(label = "Isocyanate to weigh", kind = QuantityKind.MASS, unit = "g", help = "For the wanted index.") double isocyanate,
            @Field(label = "Index as weighed", optional = true, help = "Of the isocyanate weighed; empty when none is given.") Double actualIndex) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.index", "Polyurethane index", 1,
                "EW(iso) = 4202/%NCO, EW(OH) = 56100/OHV, water 9.008 (it uses two NCO groups); isocyanate = index/100 EW(iso) sum(m/EW); "
                        + "index = 100 eq(NCO)/eq(OH + NH + water).",
                EQUIVALENTS, "Index 80 to 130. Sheet values of NCO and OH move with age and moisture; some guides take 4200 for 4202.");
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
        double extender = in.extender() / in.extenderEquivalent();
        double others = in.polyol() / Polyurethane.hydroxylEquivalent(in.hydroxylValue(), in.koh().milligrams()) + extender + in.water() / Polyurethane.waterEquivalent();
        if (!(others > 0)) {
            return Outcome.refused("polyol", Say.INDEX_NOTHING.with(), Say.INDEX_NOTHING_REMEDY.with());
        }
        Double actual = in.weighed() == null ? null : Polyurethane.index(in.weighed(), in.nco(), others);
        if (actual != null && (actual < Formulation.LOWEST_INDEX || actual > Formulation.HIGHEST_INDEX)) {
            return Outcome.refused("weighed", Say.INDEX_RANGE.with(Figures.of(actual, "")), Say.INDEX_RANGE_REMEDY.with());
        }
        Results results = new Results(Polyurethane.isocyanateEquivalent(in.nco()), Polyurethane.hydroxylEquivalent(in.hydroxylValue(), in.koh().milligrams()),
                Polyurethane.isocyanateFor(in.index(), in.nco(), others), actual);
        List<Remark> remarks = new ArrayList<>();
        double shown = actual == null ? in.index() : actual;
        if (shown < 95 || shown > 105) {
            remarks.add(Say.INDEX_USUAL.caution(USUAL));
        }
        if (in.koh() == KohMass.EXACT) {
            remarks.add(Say.INDEX_KOH.note(KohMass.WEIGHTS, Figures.of(Polyurethane.KOH, "mg", 6), Figures.of(in.koh().milligrams(), "mg", 6)));
        }
        if (in.water() > 0) {
            remarks.add(Say.INDEX_WATER.note(EQUIVALENTS, Figures.of(in.water(), "g"),
                    Figures.of(Polyurethane.isocyanateFor(100, in.nco(), in.water() / Polyurethane.waterEquivalent()), "g"),
                    Figures.of(MoistureFoam.co2Volume(in.water()), "ml")));
        }
        return Outcome.done(results, remarks);
    }
}
