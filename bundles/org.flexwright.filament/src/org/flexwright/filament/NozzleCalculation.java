package org.flexwright.filament;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.flow.PowerLaw;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Pressure in a nozzle and push on the strand. */
@Component(service = Calculation.class)
public final class NozzleCalculation implements Calculation<NozzleCalculation.Inputs, NozzleCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.nozzle";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Pressure in a nozzle", 1,
            "Pressure of a power-law melt over the land, (2 K l / r)[((3n + 1) / n) Q / (pi r^3)]^n, and over the cone before it, "
                    + "(2 K / (3 n tan a))[((3n + 1) / n) Q / pi]^n (r1^-3n - r2^-3n); push on the strand = pressure times its cross-section.",
            Source.derived("power-law flow in tube and cone, lubrication approximation"),
            "Melt at one temperature, no slip, no elastic entry loss; friction in the feed path comes on top. Fit K and n of your own melt: published "
                    + "ones are for other plastics (ABS n 0.42 to 0.49, K 6700 to 12000 Pa s^n, Materials 2023 16:7664 Table 1).");

    /** Inputs. */
    public record Inputs(
            @Field(label = "K of the melt (Pa s^n)", min = 0, minOpen = true, max = 1e7, def = "5000", help = "Power law at the nozzle temperature; the viscosity in Pa s when n is 1.") double consistency,
            @Field(label = "n of the melt", min = 0.05, max = 1.5, def = "0.5", help = "Power law index.") double index,
            @Field(label = "Flow", kind = QuantityKind.FLOW, unit = "mm3/s", min = 0, minOpen = true, max = 1000, def = "2 mm3/s", help = "Melt laid in a second.") double flow,
            @Field(label = "Nozzle diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0.05, max = 5, def = "0.4 mm", help = "Of the hole.") double nozzle,
            @Field(label = "Nozzle land", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 50, def = "1 mm", help = "Length of the narrow part.") double land,
            @Field(label = "Length of the cone", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 50, def = "1.2 mm", help = "From the strand's diameter down to the hole.") double cone,
            @Field(label = "Strand diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0.1, max = 10, def = "1.75 mm", help = "The cone starts with it.") double strand) {
    }

    /** Results. */
    public record Results(@Field(label = "Pressure of the land", kind = QuantityKind.STRESS, unit = "MPa", help = "Lost over it.") double landPressure,
            @Field(label = "Pressure of the cone", kind = QuantityKind.STRESS, unit = "MPa", help = "Lost over it.") double conePressure,
            @Field(label = "Push for the land", kind = QuantityKind.FORCE, unit = "N", help = "On the strand.") double landPush,
            @Field(label = "Push for both", kind = QuantityKind.FORCE, unit = "N", help = "On the strand, without friction.") double push) {
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
        if (in.nozzle() >= in.strand()) {
            return Outcome.refused("nozzle", Message.of(NozzleCalculation.class, "nozzle.wide", Rounded.text(in.nozzle(), "mm"), Rounded.text(in.strand(), "mm")),
                    Message.of(NozzleCalculation.class, "nozzle.wide-remedy"));
        }
        PowerLaw melt = new PowerLaw(in.consistency(), in.index());
        double land = Nozzle.landPressure(melt, in.nozzle(), in.land(), in.flow());
        double cone = Nozzle.conePressure(melt, in.nozzle() / 2, in.strand() / 2, in.cone(), in.flow());
        Strand strand = new Strand(in.strand());
        return Outcome.done(new Results(land, cone, strand.push(land), strand.push(land + cone)));
    }
}
