package org.flexwright.filament;

import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Corrects the flow setting by weighing what a length of strand gave. */
@Component(service = Calculation.class)
public final class FlowFactorCalculation implements Calculation<FlowFactorCalculation.Inputs, FlowFactorCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.flow-factor";

    private static final double MOST_CORRECTED = 1.1;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Flow factor by weighing", 1,
            "Mass that was to be fed, density times cross-section times length, against the mass weighed; new factor = old factor times commanded "
                    + "by weighed mass.",
            Source.derived("mass balance"), "Everything fed is weighed. A strand that slips more when pushed harder is not cured by a factor.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Strand diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "1.75 mm", help = "Mean of several places.") double diameter,
            @Field(label = "Length fed", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100000, def = "500 mm", help = "As commanded.") double length,
            @Field(label = "Density", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.5, max = 3, def = "1.2 g/cm3", help = "Of the strand.") double density,
            @Field(label = "Mass weighed", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 100000, def = "1.371 g", help = "Of what came out of the nozzle.") double mass,
            @Field(label = "Flow factor so far", min = 0, minOpen = true, max = 10, def = "1", help = "The setting with which it was printed.") double factor) {
    }

    /** Results. */
    public record Results(@Field(label = "Mass commanded", kind = QuantityKind.MASS, unit = "g", help = "Of that length of strand.") double commanded,
            @Field(label = "New flow factor", help = "Times the strand fed before.") double newFactor) {
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
        double commanded = in.density() * new Strand(in.diameter()).area() * in.length() / 1e3;
        double correction = commanded / in.mass();
        List<Remark> remarks = correction > MOST_CORRECTED || correction < 1 / MOST_CORRECTED
                ? List.of(new Remark(Severity.CAUTION, Message.of(FlowFactorCalculation.class, "factor.large", Rounded.text(correction, "")),
                        Source.commonPractice("a correction of more than 10 % points to slipping, a wrong diameter or a wrong density")))
                : List.of();
        return Outcome.done(new Results(commanded, in.factor() * correction), remarks);
    }
}
