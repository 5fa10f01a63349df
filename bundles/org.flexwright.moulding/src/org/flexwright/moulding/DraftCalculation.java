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

/** What draft does to the width of a wall or core. */
@Component(service = Calculation.class)
public final class DraftCalculation implements Calculation<DraftCalculation.Inputs, DraftCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.draft";

    private static final double USUAL_DRAFT = 1;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Draft", 1,
            "How much narrower a core gets over its depth when its sides lean by a draft angle: depth times tan(draft) a side. "
                    + "The draft of a face is asin(n . d), n its outward normal and d the direction of pull.",
            Source.derived("geometry; 1 to 2 degrees are common practice, no source"), "Straight sides, both with the same draft.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Depth", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "20 mm", help = "Along the pull.") double depth,
            @Field(label = "Draft", kind = QuantityKind.ANGLE, unit = "deg", min = 0, max = 60, def = "1.5 deg", help = "Of each side against the pull.") double draft,
            @Field(label = "Width at the wide end", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "10 mm", help = "Of the core.") double width) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Each side leans by", kind = QuantityKind.LENGTH, unit = "mm", help = "Over the depth.") double side,
            @Field(label = "Width at the narrow end", kind = QuantityKind.LENGTH, unit = "mm", help = "Wide end less both sides.") double narrow) {
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
        double side = in.depth() * Math.tan(Math.toRadians(in.draft()));
        if (2 * side >= in.width()) {
            return Outcome.refused("draft",
                    Message.of(DraftCalculation.class, "draft.deeper", Rounded.text(2 * side, "mm"), Rounded.text(in.width(), "mm")),
                    Message.of(DraftCalculation.class, "draft.less-draft"));
        }
        List<Remark> remarks = in.draft() < USUAL_DRAFT
                ? List.of(new Remark(Severity.NOTE, Message.of(DraftCalculation.class, "draft.low"), INFO.source()))
                : List.of();
        return Outcome.done(new Results(side, in.width() - 2 * side), remarks);
    }
}
