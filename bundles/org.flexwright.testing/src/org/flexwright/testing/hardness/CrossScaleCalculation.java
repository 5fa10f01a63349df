package org.flexwright.testing.hardness;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** A reading set beside another scale, as a guide. */
@Component(service = Calculation.class)
public final class CrossScaleCalculation implements Calculation<CrossScaleCalculation.Inputs, CrossScaleCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.cross-scale";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "About the same on another scale", 1,
            "Looks a reading up in a handbook chart of the scales A, 00 and D, straight lines between its columns, and puts 5 points on either side.",
            CrossScaleChart.SOURCE, "A guide for choosing a scale or reading a supplier's sheet. Never kept as a reading, never averaged with one.");

    /** Scales of the chart. */
    public enum ChartScale {
        A(GaugeScale.A), SHORE_00(GaugeScale.SHORE_00), D(GaugeScale.D);

        private final GaugeScale scale;

        ChartScale(GaugeScale scale) {
            this.scale = scale;
        }

        @Override
        public String toString() {
            return scale.symbol();
        }
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "From scale", def = "A", help = "Scale of the reading.") ChartScale from,
            @Field(label = "Reading", min = 0, max = 100, def = "40", help = "Between 10 and 95.") double reading,
            @Field(label = "To scale", def = "00", help = "Scale to compare with.") ChartScale to) {
    }

    /** Results. */
    public record Results(@Field(label = "About", help = "Approximate, 5 points either way.") Estimate about) {
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
        if (in.from() == in.to()) {
            return Outcome.refused("to", Say.message("same-scale", in.from()), Say.message("same-scale.remedy"));
        }
        Optional<double[]> range = CrossScaleChart.convertible(in.from().scale, in.to().scale);
        if (range.isEmpty()) {
            return Outcome.refused("to", Say.message("no-columns", in.from(), in.to()), Say.message("read-again"));
        }
        Optional<Estimate> about = CrossScaleChart.about(in.from().scale, in.reading(), in.to().scale);
        if (about.isEmpty()) {
            return Outcome.refused("reading", Say.message("outside-chart", Rounded.text(in.reading(), ""), in.from(), Rounded.text(range.get()[0], ""), Rounded.text(range.get()[1], "")),
                    Say.message("read-again"));
        }
        return Outcome.done(new Results(about.get()), List.of(Say.caution(CrossScaleChart.SOURCE, "converted")));
    }
}
