package org.flexwright.testing.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.PolynomialLaw;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.Stability;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Fit of a rubber law to measured stresses. */
@Component(service = Calculation.class)
public final class RubberFitCalculation implements Calculation<RubberFitCalculation.Inputs, RubberFitCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.rubber-fit";

    /** The stability of a law is looked at over some compression at least. */
    private static final double NEARLY_ONE = 0.9;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Fit of a rubber law", 1,
            "Unweighted least squares on nominal stress. Neo-Hooke W = C10 (I1 - 3); Mooney-Rivlin adds C01 (I2 - 3); Yeoh C20 "
                    + "(I1 - 3)^2 and C30 (I1 - 3)^3. The fit is refused when the law is unstable over the stretches measured (Drucker, "
                    + "plane stress).",
            Source.derived("incompressible elasticity; example: L. R. G. Treloar 1944, Trans. Faraday Soc. 40, 59"),
            "Incompressible, one loading at a time, loading branch only. Outside the measured stretches and loadings it is "
                    + "exploration.");

    /**
     * A measured point.
     *
     * @param loading how it was stretched
     * @param stretch length over undeformed length
     * @param stress  nominal stress, MPa
     */
    public record Row(
            @Field(label = "Loading", help = "uniaxial, equibiaxial or planar.") Loading loading,
            @Field(label = "Stretch", min = 0.05, max = 20, help = "Length over undeformed length.") double stretch,
            @Field(label = "Stress", kind = QuantityKind.STRESS, unit = "MPa", min = -10000, max = 10000, help = "Force over undeformed area.") double stress) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Law", def = "mooney-rivlin", help = "More coefficients need more points and more loadings.") RubberFit.Form form,
            @Field(label = "Measured points", min = 2, max = 10000, def = "uniaxial; 1.02; 0.26 kgf/cm2 | uniaxial; 1.125; 1.37 kgf/cm2 | uniaxial; 1.24; 2.30 kgf/cm2 | uniaxial; 1.39; 3.23 kgf/cm2 | uniaxial; 1.585; 4.16 kgf/cm2 | uniaxial; 1.90; 5.10 kgf/cm2 | uniaxial; 2.18; 6.00 kgf/cm2 | uniaxial; 2.42; 6.90 kgf/cm2 | uniaxial; 3.02; 8.80 kgf/cm2", help = "Loading, stretch (length over undeformed length) and force over undeformed area.") List<Row> points) {
    }

    /** Results. */
    public record Results(
            @Field(label = "C10", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of I1 - 3.") double c10,
            @Field(label = "C01", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of I2 - 3; 0 for the other laws.") double c01,
            @Field(label = "C20", kind = QuantityKind.STRESS, unit = "MPa", help = "Yeoh; 0 for the other laws.") double c20,
            @Field(label = "C30", kind = QuantityKind.STRESS, unit = "MPa", help = "Yeoh; 0 for the other laws.") double c30,
            @Field(label = "Shear modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain.") double shear,
            @Field(label = "Young's modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain, three times the shear modulus.") double young,
            @Field(label = "Root mean square residual", kind = QuantityKind.STRESS, unit = "MPa", help = "Of the stresses.") double rms,
            @Field(label = "R2", help = "1 less the residual share; empty when the stress does not vary.") Double r2) {
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
        if (in.points().size() < in.form().coefficients()) {
            return Outcome.refused("points", Say.message("rubber.few", in.points().size(), in.form().coefficients()), Say.message("rubber.few.remedy"));
        }
        List<RubberFit.Point> points = in.points().stream().map(r -> new RubberFit.Point(r.loading(), r.stretch(), r.stress())).toList();
        Optional<RubberFit> found = RubberFit.of(in.form(), points);
        if (found.isEmpty()) {
            return Outcome.refused("points", Say.message("rubber.undetermined"), Say.message("rubber.few.remedy"));
        }
        PolynomialLaw law = found.get().law();
        double lowest = points.stream().mapToDouble(RubberFit.Point::stretch).min().orElse(1);
        double highest = points.stream().mapToDouble(RubberFit.Point::stretch).max().orElse(1);
        Optional<Stability.Limit> limit = Stability.limit(law, Math.min(NEARLY_ONE, lowest), Math.max(1 / NEARLY_ONE, highest));
        if (limit.isPresent()) {
            return Outcome.refused("form", Say.message("rubber.unstable", Rounded.text(limit.get().stretch(), ""), RubberWords.of(limit.get().loading()), Rounded.text(law.youngsModulus(), "MPa")),
                    Say.message("rubber.unstable.remedy"));
        }
        List<Remark> remarks = new ArrayList<>();
        if (points.stream().map(RubberFit.Point::loading).distinct().count() == 1 && in.form() != RubberFit.Form.NEO_HOOKE) {
            remarks.add(Say.caution(INFO.source(), "rubber.one-loading", RubberWords.of(points.get(0).loading())));
        }
        Double r2 = found.get().r2().isPresent() ? Double.valueOf(found.get().r2().getAsDouble()) : null;
        return Outcome.done(new Results(law.c10(), law.c01(), law.c20(), law.c30(), law.shearModulus(), law.youngsModulus(), found.get().rms(), r2), remarks);
    }
}
