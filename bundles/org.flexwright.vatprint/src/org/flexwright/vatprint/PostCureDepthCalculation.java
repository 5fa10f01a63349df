package org.flexwright.vatprint;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How deep post-cure light reaches. */
@Component(service = Calculation.class)
public final class PostCureDepthCalculation implements Calculation<PostCureDepthCalculation.Inputs, PostCureDepthCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.postcure-depth";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Depth of post-cure light", 1,
            "Depth at which a share of the light is left, -Dp ln(share): thick or coloured parts get a cured skin only.",
            Source.derived("law of Beer and Lambert"),
            "Absorption as in the liquid resin; bleaching lets light deeper, colour and filler less deep. Warmth helps some resins further in "
                    + "and others not.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Penetration depth Dp", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 5000, def = "150 um", help = "Of the resin at the lamp's wavelength.") double penetrationDepth,
            @Field(label = "Share of light", kind = QuantityKind.FRACTION, unit = "%", min = 0, minOpen = true, max = 100, def = "10 %", help = "Of the light at the surface.") double share) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Depth", kind = QuantityKind.LENGTH, unit = "mm", help = "Where that share is left.") double depth,
            @Field(label = "In penetration depths", help = "Depth divided by Dp.") double inDepths) {
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
        double depth = new WorkingCurve(in.penetrationDepth(), 1).depthOfShare(in.share() / 100);
        return Outcome.done(new Results(depth / 1e3, depth / in.penetrationDepth()));
    }
}
