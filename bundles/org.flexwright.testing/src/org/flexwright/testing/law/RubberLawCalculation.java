package org.flexwright.testing.law;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.PolynomialLaw;
import org.flexwright.core.rubber.RubberLaw;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Stress of a neo-Hooke, Mooney-Rivlin or Yeoh law. */
@Component(service = Calculation.class)
public final class RubberLawCalculation implements Calculation<RubberLawCalculation.Inputs, RubberLawCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.rubber-law";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Stress of a rubber law", 1,
            "W = C10 (I1 - 3) + C01 (I2 - 3) + C20 (I1 - 3)^2 + C30 (I1 - 3)^3; nominal stresses in three loadings, G = 2 (C10 + "
                    + "C01), E = 3 G, and the stretch where the law gives way (Drucker, plane stress).",
            Source.derived("incompressible elasticity"),
            "Incompressible, elastic: no set, no rate, no Mullins softening.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "C10", kind = QuantityKind.STRESS, unit = "MPa", min = -1000, max = 1000, def = "0.15 MPa", help = "Coefficient of I1 - 3.") double c10,
            @Field(label = "C01", kind = QuantityKind.STRESS, unit = "MPa", min = -1000, max = 1000, def = "0.05 MPa", help = "Coefficient of I2 - 3.") double c01,
            @Field(label = "C20", kind = QuantityKind.STRESS, unit = "MPa", min = -1000, max = 1000, def = "0 MPa", help = "Yeoh.") double c20,
            @Field(label = "C30", kind = QuantityKind.STRESS, unit = "MPa", min = -1000, max = 1000, def = "0 MPa", help = "Yeoh.") double c30,
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
        RubberLaw law = new PolynomialLaw(in.c10(), in.c01(), in.c20(), in.c30());
        return Outcome.done(new Results(law.stress(Loading.UNIAXIAL, in.stretch()), law.stress(Loading.EQUIBIAXIAL, in.stretch()), law.stress(Loading.PLANAR, in.stretch()),
                law.shearModulus(), law.youngsModulus(), RubberWords.stability(law, in.lowest(), in.highest())));
    }
}
