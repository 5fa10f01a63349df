package org.flexwright.safety.air;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Mean of a shift and its highest stretch. */
@Component(service = Calculation.class)
public final class ShiftCalculation implements Calculation<ShiftCalculation.Inputs, ShiftCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.shift";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Mean over a shift", 1,
            "TWA = sum of C T / 8, always divided by 8 h even when the shift is shorter. The highest stretch is shown beside it, "
                    + "because a mean never hides a ceiling.",
            Exposure.SOURCE,
            "One substance, one unit throughout. A shift longer than 8 h needs a hygienist. Meters for mixed vapour do not give "
                    + "such figures.");

    /**
     * A stretch of the shift.
     *
     * @param hours         duration
     * @param concentration in the unit of all
     */
    public record Row(
            @Field(label = "Hours", kind = QuantityKind.DURATION, unit = "h", min = 0, minOpen = true, max = 24, help = "Duration.") double hours,
            @Field(label = "Concentration", min = 0, max = 1e9, help = "In the same unit in every row.") double concentration) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Stretches", min = 1, max = 200, def = "2; 150 | 2; 75 | 4; 50", help = "Hours and concentration of each stretch, all ppm or all mg/m3.") List<Row> stretches,
            @Field(label = "8 h figure", min = 0, minOpen = true, max = 1000000000.0, optional = true, help = "In the same unit; empty to compare with nothing.") Double limit,
            @Field(label = "Ceiling", min = 0, minOpen = true, max = 1000000000.0, optional = true, help = "In the same unit; empty when there is none.") Double ceiling,
            @Field(label = "Source and year of that figure", optional = true, help = "Who set it, which kind (8 h, 15 min, ceiling), which year.") String limitSource) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Mean over 8 h", help = "In the unit of the stretches.") double mean,
            @Field(label = "Highest stretch", help = "In the unit of the stretches.") double highest,
            @Field(label = "Time accounted for", kind = QuantityKind.DURATION, unit = "h", help = "Sum of the stretches.") double hours,
            @Field(label = "Compared", help = "With the figure you entered and nothing else.") String comparison) {
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
        List<Exposure.Stretch> stretches = in.stretches().stream().map(r -> new Exposure.Stretch(r.hours(), r.concentration())).toList();
        double hours = stretches.stream().mapToDouble(Exposure.Stretch::hours).sum();
        double mean = Exposure.timeWeighted(stretches);
        double highest = Exposure.highest(stretches);
        List<Remark> remarks = new ArrayList<>();
        if (hours > Exposure.SHIFT) {
            remarks.add(Say.caution(INFO.source(), "shift.long", Rounded.text(hours, "h")));
        }
        if (in.ceiling() != null && highest > in.ceiling()) {
            remarks.add(Say.caution(INFO.source(), "shift.ceiling", Rounded.text(highest, ""), Rounded.text(in.ceiling(), "")));
        }
        AirRemarks.source(remarks, in.limit(), in.limitSource());
        return Outcome.done(new Results(mean, highest, hours, AirRemarks.plainComparison(mean, in.limit(), in.limitSource())), remarks);
    }
}
