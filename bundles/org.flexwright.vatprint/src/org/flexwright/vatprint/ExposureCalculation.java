package org.flexwright.vatprint;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Exposure for a layer height from the resin's own working curve. */
@Component(service = Calculation.class)
public final class ExposureCalculation implements Calculation<ExposureCalculation.Inputs, ExposureCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.exposure";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Exposure of a layer", 1,
            "Dose E = Ec exp((layer + over-cure) / Dp) and time = E / irradiance, and the dose that the bottom of a layer collects from all later "
                    + "layers, E exp(-layer / Dp) / (1 - exp(-layer / Dp)): thick light below an overhang cures slots shut.",
            WorkingCurve.SOURCE, "Dp and Ec from your own curve for this resin and lamp; light even over the vat; printed part as clear as the resin.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Layer height", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 1000, def = "50 um", help = "Thickness of one layer.") double layer,
            @Field(label = "Over-cure", kind = QuantityKind.LENGTH, unit = "um", min = 0, max = 1000, def = "25 um", help = "How far a layer shall cure into the one below.") double overCure,
            @Field(label = "Penetration depth Dp", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 5000, def = "150 um", help = "From your own working curve.") double penetrationDepth,
            @Field(label = "Critical dose Ec", kind = QuantityKind.DOSE, unit = "mJ/cm2", min = 0, minOpen = true, max = 10000, def = "6 mJ/cm2", help = "From your own working curve.") double criticalDose,
            @Field(label = "Irradiance", kind = QuantityKind.IRRADIANCE, unit = "mW/cm2", min = 0, minOpen = true, max = 1000, def = "2.5 mW/cm2", help = "At the vat floor.") double irradiance) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Exposure", kind = QuantityKind.DURATION, unit = "s", help = "Of a normal layer.") double time,
            @Field(label = "Dose", kind = QuantityKind.DOSE, unit = "mJ/cm2", help = "Of a normal layer.") double dose,
            @Field(label = "Light from later layers", kind = QuantityKind.DOSE, unit = "mJ/cm2", help = "Dose at the bottom of a layer after many more; above Ec it cures below.") double printThrough) {
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
        WorkingCurve curve = new WorkingCurve(in.penetrationDepth(), in.criticalDose());
        double dose = curve.dose(in.layer() + in.overCure());
        return Outcome.done(new Results(dose / in.irradiance(), dose, curve.printThrough(dose, in.layer())));
    }
}
