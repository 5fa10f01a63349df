package org.flexwright.testing.law;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.OgdenLaw;
import org.flexwright.core.rubber.RubberLaw;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Stress of an Ogden law. */
@Component(service = Calculation.class)
public final class OgdenLawCalculation implements Calculation<OgdenLawCalculation.Inputs, OgdenLawCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.ogden-law";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Stress of an Ogden law", 1,
            "W = sum mu/alpha (l1^alpha + l2^alpha + l3^alpha - 3); P = sum mu (l^(alpha - 1) - l^(e alpha - 1)) with e = -1/2, "
                    + "-2, -1; G = 1/2 sum mu alpha. Programs that write 2 mu/alpha^2 need converting first.",
            Source.published("R. W. Ogden 1972, Proc. R. Soc. A 326, 565"),
            "Incompressible, elastic: no set, no rate, no Mullins softening.");

    /**
     * A term.
     *
     * @param mu    MPa
     * @param alpha exponent
     */
    public record Row(
            @Field(label = "mu", kind = QuantityKind.STRESS, unit = "MPa", min = -1000, max = 1000, help = "Coefficient.") double mu,
            @Field(label = "alpha", min = -50, max = 50, help = "Exponent, not 0.") double alpha) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Terms", min = 1, max = 20, def = "6.3 kgf/cm2; 1.3 | 0.012 kgf/cm2; 5 | -0.1 kgf/cm2; -2", help = "mu in MPa and alpha of each term.") List<Row> terms,
            @Field(label = "Stretch", min = 0.05, max = 20, def = "2", help = "Length over undeformed length.") double stretch,
            @Field(label = "Stable from", min = 0.01, max = 1, def = "0.5", help = "Least stretch of interest.") double lowest,
            @Field(label = "Stable up to", min = 1, max = 20, def = "3", help = "Largest stretch of interest.") double highest) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Pulled in one direction", kind = QuantityKind.STRESS, unit = "MPa", help = "Nominal stress at that stretch.") double uniaxial,
            @Field(label = "Pulled alike in two directions", kind = QuantityKind.STRESS, unit = "MPa", help = "Nominal stress at that stretch.") double equibiaxial,
            @Field(label = "Pure shear", kind = QuantityKind.STRESS, unit = "MPa", help = "Nominal stress at that stretch.") double planar,
            @Field(label = "Shear modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain.") double shear,
            @Field(label = "Young's modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain, three times the shear modulus.") double young,
            @Field(label = "Stability", help = "Whether more strain always takes more stress over the range asked for.") String stability) {
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
        for (int i = 0; i < in.terms().size(); i++) {
            if (in.terms().get(i).alpha() == 0) {
                return Outcome.refused("terms", Say.message("rubber.alpha", i + 1), Say.message("rubber.alpha.remedy"));
            }
        }

        RubberLaw law = new OgdenLaw(in.terms().stream().map(r -> new OgdenLaw.Term(r.mu(), r.alpha())).toList());
        return Outcome.done(new Results(law.stress(Loading.UNIAXIAL, in.stretch()), law.stress(Loading.EQUIBIAXIAL, in.stretch()), law.stress(Loading.PLANAR, in.stretch()),
                law.shearModulus(), law.youngsModulus(), RubberWords.stability(law, in.lowest(), in.highest())));
    }
}
