package org.flexwright.safety.gauge;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** A part against the small-parts gauge. */
@Component(service = Calculation.class)
public final class SmallPartCalculation implements Calculation<SmallPartCalculation.Inputs, SmallPartCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.small-part";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Small-parts gauge", 1,
            "Compares a ball, or the box around a part, with the truncated cylinder of 16 CFR 1501.4: 31.75 mm across, 25.4 to "
                    + "57.15 mm deep.",
            SmallPartGauge.SOURCE,
            "Geometry of the gauge only, the part not squeezed. Soft parts can be squeezed smaller, pieces can tear off, and only "
                    + "an accredited laboratory tests a toy.");

    /** Shapes the sums know. */
    public enum Shape {
        BALL, BOX
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Shape", def = "box", help = "A ball by its diameter, anything else by the box around it.") Shape shape,
            @Field(label = "Longest edge or diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "28 mm", help = "Of the ball or the box around the part.") double longest,
            @Field(label = "Middle edge", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "28 mm", help = "Of the box; a ball does not use it.") double middle,
            @Field(label = "Shortest edge", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "6 mm", help = "Of the box; a ball does not use it.") double shortest,
            @Field(label = "Volume of the part", kind = QuantityKind.VOLUME, unit = "cm3", min = 0, minOpen = true, max = 100000, optional = true, help = "Empty when not known.") Double own) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Gauge drawing", help = "Whether it goes in wholly in some orientation.") SmallPartGauge.Fit fit,
            @Field(label = "Drops through the ball hole", help = "A ball through 44.45 mm by its own weight; no for other shapes.") boolean ball,
            @Field(label = "Volume of the gauge", kind = QuantityKind.VOLUME, unit = "cm3", help = "For comparison.") double gaugeVolume) {
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
        if (in.shape() == Shape.BOX && !(in.longest() >= in.middle() && in.middle() >= in.shortest())) {
            return Outcome.refused("middle", Say.message("gauge.order"), Say.message("gauge.order.remedy"));
        }
        boolean ball = in.shape() == Shape.BALL;
        SmallPartGauge.Fit fit = ball ? SmallPartGauge.ball(in.longest()) : SmallPartGauge.box(in.longest(), in.middle(), in.shortest(), in.own());
        String key = switch (fit) {
            case FITS -> "gauge.fits";
            case DOES_NOT_FIT -> "gauge.not";
            case CANNOT_TELL -> "gauge.unknown";
        };
        return Outcome.done(new Results(fit, ball && SmallPartGauge.ballDrops(in.longest()), SmallPartGauge.volume()),
                List.of(Say.caution(SmallPartGauge.SOURCE, key), Say.caution(Source.commonPractice(), "gauge.label")));
    }
}
