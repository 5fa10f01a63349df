package org.flexwright.vatprint;

import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How deep an exposure cures. */
@Component(service = Calculation.class)
public final class CureDepthCalculation implements Calculation<CureDepthCalculation.Inputs, CureDepthCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.cure-depth";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Cure depth", 1,
            "Depth that an exposure cures, Dp ln(E / Ec) with E = irradiance times time, and the light that later layers add at a layer's bottom.",
            WorkingCurve.SOURCE, "As for the exposure: your own Dp and Ec, for this resin and lamp.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Irradiance", kind = QuantityKind.IRRADIANCE, unit = "mW/cm2", min = 0, minOpen = true, max = 1000, def = "2.5 mW/cm2", help = "At the vat floor.") double irradiance,
            @Field(label = "Exposure", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true, max = 3600, def = "4 s", help = "Of a layer.") double time,
            @Field(label = "Penetration depth Dp", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 5000, def = "150 um", help = "From your own working curve.") double penetrationDepth,
            @Field(label = "Critical dose Ec", kind = QuantityKind.DOSE, unit = "mJ/cm2", min = 0, minOpen = true, max = 10000, def = "6 mJ/cm2", help = "From your own working curve.") double criticalDose,
            @Field(label = "Layer height", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 1000, def = "50 um", help = "To compare the depth with.") double layer) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Cure depth", kind = QuantityKind.LENGTH, unit = "um", help = "Of a single exposure.") double depth,
            @Field(label = "Over-cure", kind = QuantityKind.LENGTH, unit = "um", help = "Cure depth less layer height.") double overCure,
            @Field(label = "Light from later layers", kind = QuantityKind.DOSE, unit = "mJ/cm2", help = "Dose at the bottom of a layer after many more.") double printThrough) {
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
        double dose = in.irradiance() * in.time();
        if (dose <= in.criticalDose()) {
            return Outcome.refused("time", Message.of(CureDepthCalculation.class, "depth.nothing", Rounded.text(dose, "mJ/cm²"),
                    Rounded.text(in.criticalDose(), "mJ/cm²")), Message.of(CureDepthCalculation.class, "depth.remedy"));
        }
        WorkingCurve curve = new WorkingCurve(in.penetrationDepth(), in.criticalDose());
        double depth = curve.depth(dose);
        List<Remark> remarks = depth < in.layer()
                ? List.of(new Remark(Severity.STOP, Message.of(CureDepthCalculation.class, "depth.split", Rounded.text(depth, "µm"),
                        Rounded.text(in.layer(), "µm")), WorkingCurve.SOURCE))
                : List.of();
        return Outcome.done(new Results(depth, depth - in.layer(), curve.printThrough(dose, in.layer())), remarks);
    }
}
