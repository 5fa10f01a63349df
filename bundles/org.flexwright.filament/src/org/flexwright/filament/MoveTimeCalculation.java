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

/** Time of printing moves that start and end at rest. */
@Component(service = Calculation.class)
public final class MoveTimeCalculation implements Calculation<MoveTimeCalculation.Inputs, MoveTimeCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.time";

    private static final double SHORTEST_LAYER = 10;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Time of printing moves", 1,
            "A move from rest to rest takes L / v + v / a when it reaches its speed (L at least v^2 / a), else 2 sqrt(L / a); the sum over the moves of "
                    + "a layer, and whether a layer has time to cool.",
            Source.derived("motion with constant acceleration"), "Every move starts and ends at rest: corners taken at speed are faster.");

    /** Moves of one length. */
    public record Move(@Field(label = "Length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100000, help = "Of one move.") double length,
            @Field(label = "How many", kind = QuantityKind.COUNT, min = 1, max = 1000000, help = "Moves of that length in a layer.") int count) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Moves of a layer", def = "10; 1", help = "Length and number of the moves, one row a length.") List<Move> moves,
            @Field(label = "Speed", kind = QuantityKind.SPEED, unit = "mm/s", min = 0, minOpen = true, max = 500, def = "30 mm/s", help = "Of the nozzle.") double speed,
            @Field(label = "Acceleration (mm/s2)", min = 0, minOpen = true, max = 100000, def = "500", help = "In mm/s2, as set on the machine.") double acceleration,
            @Field(label = "Layers", kind = QuantityKind.COUNT, min = 1, max = 100000, def = "1", help = "All taken alike.") int layers) {
    }

    /** Results. */
    public record Results(@Field(label = "Time of a layer", kind = QuantityKind.DURATION, unit = "s", help = "Sum over its moves.") double layer,
            @Field(label = "Time of all layers", kind = QuantityKind.DURATION, unit = "s", help = "Layers alike.") double all) {
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
        double layer = in.moves().stream().mapToDouble(move -> move.count() * seconds(move.length(), in.speed(), in.acceleration())).sum();
        List<Remark> remarks = in.layers() > 1 && layer < SHORTEST_LAYER
                ? List.of(new Remark(Severity.CAUTION, Message.of(MoveTimeCalculation.class, "time.short-layer", Rounded.text(layer, "s"),
                        Rounded.text(SHORTEST_LAYER, "s")), Source.commonPractice("at least 10 to 20 s a layer for soft filament")))
                : List.of();
        return Outcome.done(new Results(layer, in.layers() * layer), remarks);
    }

    private static double seconds(double length, double speed, double acceleration) {
        return length >= speed * speed / acceleration ? length / speed + speed / acceleration : 2 * Math.sqrt(length / acceleration);
    }
}
