package org.flexwright.testing.law;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.rubber.FitWords;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Fit of a rubber law to measured stresses. */
@Component(service = Calculation.class)
public final class RubberFitCalculation implements Calculation<RubberFitCalculation.Inputs, RubberFitCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.rubber-fit";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Fit of a rubber law", 2,
            "Least squares on nominal stress, one or several loadings together. Neo-Hooke W = C10 (I1 - 3); Mooney-Rivlin adds C01 (I2 - 3); Yeoh C20 "
                    + "(I1 - 3)^2 and C30 (I1 - 3)^3; Ogden W = sum mu/alpha (l1^alpha + l2^alpha + l3^alpha - 3), searched from 50 starts. The fit is refused when the law is unstable over the stretches measured (Drucker, "
                    + "plane stress).",
            Source.derived("incompressible elasticity; example: L. R. G. Treloar 1944, Trans. Faraday Soc. 40, 59"),
            "Incompressible, loading branch only. Intervals speak of these points, not of other pieces. Outside the measured stretches and loadings it is "
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
            @Field(label = "Law", def = "mooney-rivlin", help = "More coefficients need more points and more loadings.") RubberForm form,
            @Field(label = "Weighting", def = "equal", help = "equal: every MPa of a residual counts alike, so high stresses rule; relative: every per cent; per-loading: every loading.") Weighting weighting,
            @Field(label = "Measured points", min = 2, max = 10000, def = "uniaxial; 1.02; 0.26 kgf/cm2 | uniaxial; 1.125; 1.37 kgf/cm2 | uniaxial; 1.24; 2.30 kgf/cm2 | uniaxial; 1.39; 3.23 kgf/cm2 | uniaxial; 1.585; 4.16 kgf/cm2 | uniaxial; 1.90; 5.10 kgf/cm2 | uniaxial; 2.18; 6.00 kgf/cm2 | uniaxial; 2.42; 6.90 kgf/cm2 | uniaxial; 3.02; 8.80 kgf/cm2", help = "Loading, stretch (length over undeformed length) and force over undeformed area.") List<Row> points) {
    }

    /** Results; coefficients of other laws stay empty. Bands are 95 %, of these points alone. */
    public record Results(
            @Field(label = "Law", help = "Coefficients with their 95 % intervals, as far as the residuals are chance.") String coefficients,
            @Field(label = "C10", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of I1 - 3.") Estimate c10,
            @Field(label = "C01", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of I2 - 3.") Estimate c01,
            @Field(label = "C20", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of (I1 - 3)^2.") Estimate c20,
            @Field(label = "C30", kind = QuantityKind.STRESS, unit = "MPa", help = "Coefficient of (I1 - 3)^3.") Estimate c30,
            @Field(label = "mu 1", kind = QuantityKind.STRESS, unit = "MPa", help = "Term 1 of an Ogden law, largest exponent first.") Estimate mu1,
            @Field(label = "alpha 1", help = "Exponent of term 1.") Estimate alpha1,
            @Field(label = "mu 2", kind = QuantityKind.STRESS, unit = "MPa", help = "Term 2 of an Ogden law, largest exponent first.") Estimate mu2,
            @Field(label = "alpha 2", help = "Exponent of term 2.") Estimate alpha2,
            @Field(label = "mu 3", kind = QuantityKind.STRESS, unit = "MPa", help = "Term 3 of an Ogden law, largest exponent first.") Estimate mu3,
            @Field(label = "alpha 3", help = "Exponent of term 3.") Estimate alpha3,
            @Field(label = "Young's modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain, by the law.") Estimate young,
            @Field(label = "Shear modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "At small strain, a third of Young's modulus.") Estimate shear,
            @Field(label = "Root mean square residual", kind = QuantityKind.STRESS, unit = "MPa", help = "Of the stresses, unweighted.") double rms,
            @Field(label = "R2", help = "1 less the residual share; empty when the stress does not vary. High values come easily: look at the residuals.") Double r2,
            @Field(label = "Reach", help = "Stretches and loadings that were measured, over which the law was found stable.") String reach) {
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
        Optional<RubberFit> found = RubberFit.of(in.form(), in.weighting(), points, Watch.NONE);
        if (found.isEmpty()) {
            return Outcome.refused("points", Say.message("rubber.undetermined"), Say.message("rubber.few.remedy"));
        }
        RubberFit fit = found.get();
        Optional<Message> rejected = FitWords.rejected(fit);
        if (rejected.isPresent()) {
            return Outcome.refused("form", rejected.get(), FitWords.remedy());
        }
        Map<String, Estimate> c = new HashMap<>();
        fit.coefficients().forEach(one -> c.put(one.name(), band(one)));
        String law = fit.coefficients().stream().map(one -> one.name() + " = " + FitWords.text(one)).collect(Collectors.joining("; "));
        Estimate young = band(fit.young());
        return Outcome.done(new Results(law, c.get("C10"), c.get("C01"), c.get("C20"), c.get("C30"), c.get("mu1"), c.get("alpha1"), c.get("mu2"), c.get("alpha2"), c.get("mu3"), c.get("alpha3"), young,
                young.times(1.0 / 3), fit.rms(), fit.r2().isPresent() ? Double.valueOf(fit.r2().getAsDouble()) : null, FitWords.reach(fit).text()), FitWords.remarks(fit));
    }

    private static Estimate band(RubberFit.Coefficient c) {
        return c.band().map(b -> new Estimate(b.low(), c.value(), b.high(), INFO.source())).orElseGet(() -> Estimate.exact(c.value(), INFO.source()));
    }
}
