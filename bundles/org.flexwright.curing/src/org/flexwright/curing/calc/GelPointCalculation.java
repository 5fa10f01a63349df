package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.curing.formula.GelPoint;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** When a two-part network gels. */
@Component(service = Calculation.class)
public final class GelPointCalculation implements Calculation<GelPointCalculation.Inputs, GelPointCalculation.Results> {

    private static final Source FLORY = Source.derived("Flory-Stockmayer condition");

    /** Molecules of one side. */
    public record Groups(
            @Field(min = 1, max = 20, help = "Groups to a molecule.") double functionality,
            @Field(min = 0, max = 1e6, help = "How many of this side's groups come from them, in any unit.") double equivalents) {
    }

    /** Both sides. */
    public record Inputs(
            @Field(label = "Hydroxyl side", def = "3; 1", help = "One row a kind of molecule: functionality; equivalents.") List<Groups> hydroxyl,
            @Field(label = "Isocyanate side", def = "2; 1", help = "One row a kind of molecule: functionality; equivalents.") List<Groups> isocyanate,
            @Field(label = "Index", min = 1, max = 1000, def = "100", help = "100 is as many NCO groups as OH groups.") double index) {
    }

    /** The gel point. */
    public record Results(
            @Field(label = "OH reacted at the gel point", kind = QuantityKind.FRACTION, unit = "%",
                    help = "Flory and Stockmayer; the real one is later.")
            double hydroxylAt,
            @Field(label = "NCO reacted at the gel point", kind = QuantityKind.FRACTION, unit = "%",
                    help = "The same moment on the other side.")
            double isocyanateAt,
            @Field(label = "Carothers", kind = QuantityKind.FRACTION, unit = "%", max = 200,
                    help = "Of the scarcer side, 2/f: an upper bound.")
            double carothers) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.gel-point", "Gel point", 1,
                "pOH pNCO (fOH - 1)(fNCO - 1) = 1 with pOH = r pNCO, r = NCO to OH; functionalities weighted by equivalents. "
                        + "It gels only if neither conversion has to pass 100 %.",
                FLORY, "Equal groups, no loops, no side reactions.");
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
        double oh = functionality(in.hydroxyl());
        double nco = functionality(in.isocyanate());
        if (!(oh > 1) || !(nco > 1)) {
            return Outcome.refused(oh > 1 ? "isocyanate" : "hydroxyl", Say.GEL_SIDE.with(), Say.GEL_SIDE_REMEDY.with());
        }
        GelPoint point = new GelPoint(oh, nco, in.index() / 100);
        if (point.gel().isEmpty()) {
            return Outcome.refused("index", Say.GEL_NEVER.with(Figures.percent(point.hydroxylConversion()), Figures.percent(point.isocyanateConversion())),
                    Say.GEL_NEVER_REMEDY.with());
        }
        Results results = new Results(100 * point.hydroxylConversion(), 100 * point.isocyanateConversion(), 100 * point.carothers());
        return Outcome.done(results, List.of(Say.GEL_LATER.note(Source.published("Budinski-Simendic et al. 1993, Polymer 34:5157, abstract"),
                Figures.percent(point.carothers()), Figures.percent(point.simple()))));
    }

    /** Zero when nothing is there to weigh. */
    private static double functionality(List<Groups> side) {
        double sum = side.stream().mapToDouble(Groups::equivalents).sum();
        return sum > 0 ? GelPoint.functionality(side.stream().map(g -> new GelPoint.Groups(g.functionality(), g.equivalents())).toList()) : 0;
    }
}
