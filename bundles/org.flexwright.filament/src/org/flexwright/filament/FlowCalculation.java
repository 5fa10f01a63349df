package org.flexwright.filament;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Flow of melt into a line and feed of the strand. */
@Component(service = Calculation.class)
public final class FlowCalculation implements Calculation<FlowCalculation.Inputs, FlowCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.flow";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Flow and feed", 1,
            "Melt laid in a second, cross-section of the line times speed, and the feed of the strand that gives it. Cross-section: w h as a "
                    + "rectangle, or h (w - h) + pi h^2 / 4 with rounded sides; the two conventions differ by about 10 %.",
            Source.derived("geometry"), "Solid lines, no voids between them. Compare flows only in the same convention.");

    /** How the cross-section of a line is counted. */
    public enum Convention {
        /** Width times height. */
        RECTANGLE,
        /** Flat top and bottom, half-round sides. */
        ROUNDED
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Line width", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 20, def = "0.45 mm", help = "Width of one laid line.") double width,
            @Field(label = "Layer height", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 5, def = "0.2 mm", help = "Thickness of one layer.") double height,
            @Field(label = "Speed", kind = QuantityKind.SPEED, unit = "mm/s", min = 0, minOpen = true, max = 500, def = "20 mm/s", help = "Of the nozzle over the part.") double speed,
            @Field(label = "Count the line as", def = "rectangle", help = "Rectangle, or with rounded sides.") Convention convention,
            @Field(label = "Strand diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "1.75 mm", help = "Mean of several places.") double diameter) {
    }

    /** Results. */
    public record Results(@Field(label = "Flow", kind = QuantityKind.FLOW, unit = "mm3/s", help = "Melt laid in a second.") double flow,
            @Field(label = "Cross-section of the line", kind = QuantityKind.AREA, unit = "mm2", help = "In the chosen convention.") double line,
            @Field(label = "Cross-section of the strand", kind = QuantityKind.AREA, unit = "mm2", help = "Of the cold strand.") double strand,
            @Field(label = "Feed of the strand", kind = QuantityKind.SPEED, unit = "mm/s", help = "At the drive wheel.") double feed) {
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
        if (in.convention() == Convention.ROUNDED && in.width() < in.height()) {
            return Outcome.refused("width", Message.of(FlowCalculation.class, "flow.narrow", Rounded.text(in.width(), "mm"), Rounded.text(in.height(), "mm")),
                    Message.of(FlowCalculation.class, "flow.narrow-remedy"));
        }
        Bead bead = new Bead(in.width(), in.height());
        double line = in.convention() == Convention.ROUNDED ? bead.rounded() : bead.rectangle();
        double strand = new Strand(in.diameter()).area();
        double flow = line * in.speed();
        return Outcome.done(new Results(flow, line, strand, flow / strand));
    }
}
