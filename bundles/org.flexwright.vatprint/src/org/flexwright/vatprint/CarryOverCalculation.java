package org.flexwright.vatprint;

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

/** What a row of baths leaves on the parts. */
@Component(service = Calculation.class)
public final class CarryOverCalculation implements Calculation<CarryOverCalculation.Inputs, CarryOverCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.wash";

    private static final double TIRED_BATH = 5;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Resin left by the wash", 1,
            "Share of the clinging resin that is left after a row of clean baths, (v / (v + V))^n, and how much resin the first bath then holds.",
            Source.derived("mixing in each bath, the same volume carried on each time"),
            "Full mixing in each bath and nothing swollen into the part. Renewing solvent at 5 to 10 % resin is common practice, no source.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Carried over", kind = QuantityKind.VOLUME, unit = "ml", min = 0, max = 10000, def = "5 ml", help = "Liquid that clings to the parts each time.") double carried,
            @Field(label = "Solvent in a bath", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 100000, def = "500 ml", help = "In each bath.") double bath,
            @Field(label = "Baths", kind = QuantityKind.COUNT, min = 1, max = 20, def = "2", help = "One after another.") int baths,
            @Field(label = "Loads washed before", kind = QuantityKind.COUNT, min = 0, max = 10000, def = "0", help = "In the first bath since it was renewed.") int loads) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Left on the parts", kind = QuantityKind.FRACTION, unit = "%", help = "Of the resin that clung to them, by volume, when the baths are clean.") double left,
            @Field(label = "Resin in the first bath", kind = QuantityKind.FRACTION, unit = "%", help = "By volume, after this load.") double firstBath) {
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
        double left = 100 * CarryOver.share(in.carried(), in.bath(), in.baths());
        // each load brings resin in and takes as much of the mixed bath out
        double kept = in.bath() / (in.bath() + in.carried());
        double firstBath = 100 * (1 - Math.pow(kept, in.loads() + 1));
        List<Remark> remarks = firstBath > TIRED_BATH
                ? List.of(new Remark(Severity.CAUTION, Message.of(CarryOverCalculation.class, "wash.tired", Rounded.text(firstBath, "%")),
                        Source.commonPractice("renew solvent at 5 to 10 % resin")))
                : List.of();
        return Outcome.done(new Results(left, firstBath), remarks);
    }
}
