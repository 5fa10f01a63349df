package org.flexwright.moulding;

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

/** How far a part must stretch to come off its core. */
@Component(service = Calculation.class)
public final class StretchCalculation implements Calculation<StretchCalculation.Inputs, StretchCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.stretch";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Stretch at demoulding", 1,
            "How far an opening must stretch over the widest place of its core or undercut: perimeter of the core / perimeter of the opening - 1, "
                    + "and the elongation at break a part needs for that with a margin.",
            Source.derived("ratio of perimeters; the margin of 3, of 5 where there is a notch, is common practice, no source"),
            "The part stretches evenly around; just demoulded rubber is weaker than its sheet says.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Core, long diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "12 mm", help = "At its widest place; both diameters alike when it is round.") double coreLong,
            @Field(label = "Core, short diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "12 mm", help = "At its widest place, across the long one.") double coreShort,
            @Field(label = "Opening, long diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "9 mm", help = "Of the part where it has to pass.") double openingLong,
            @Field(label = "Opening, short diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "9 mm", help = "Across the long one.") double openingShort,
            @Field(label = "Margin", min = 1, max = 20, def = "3", help = "Elongation at break divided by stretch; 3 usual, 5 with a notch.") double margin,
            @Field(label = "Elongation at break", kind = QuantityKind.FRACTION, unit = "%", min = 0, max = 2000, optional = true, help = "Of the rubber when it is demoulded, if known.") Double elongation) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Stretch", kind = QuantityKind.FRACTION, unit = "%", help = "Of the opening; below 0 it passes freely.") double stretch,
            @Field(label = "Elongation at break needed", kind = QuantityKind.FRACTION, unit = "%", help = "Stretch times margin.") double needed,
            @Field(label = "Perimeter of the core", kind = QuantityKind.LENGTH, unit = "mm", help = "Of an ellipse with these diameters.") double corePerimeter,
            @Field(label = "Perimeter of the opening", kind = QuantityKind.LENGTH, unit = "mm", help = "Of an ellipse with these diameters.") double openingPerimeter) {
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
        double core = Ellipse.perimeter(in.coreLong() / 2, in.coreShort() / 2);
        double opening = Ellipse.perimeter(in.openingLong() / 2, in.openingShort() / 2);
        double stretch = 100 * (core / opening - 1);
        double needed = Math.max(0, stretch * in.margin());
        return Outcome.done(new Results(stretch, needed, core, opening), remarks(in, stretch, needed));
    }

    private static List<Remark> remarks(Inputs in, double stretch, double needed) {
        if (stretch <= 0) {
            return List.of(new Remark(Severity.NOTE, Message.of(StretchCalculation.class, "stretch.none"), INFO.source()));
        }
        if (in.elongation() == null || in.elongation() >= needed) {
            return List.of();
        }
        String stretched = Rounded.text(stretch, "%");
        String has = Rounded.text(in.elongation(), "%");
        return stretch >= in.elongation()
                ? List.of(new Remark(Severity.STOP, Message.of(StretchCalculation.class, "stretch.beyond", stretched, has), INFO.source()))
                : List.of(new Remark(Severity.CAUTION, Message.of(StretchCalculation.class, "stretch.little", stretched,
                        Rounded.text(in.margin(), ""), Rounded.text(needed, "%"), has), INFO.source()));
    }
}
