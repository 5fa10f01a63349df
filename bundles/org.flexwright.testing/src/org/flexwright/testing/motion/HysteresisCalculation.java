package org.flexwright.testing.motion;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Energy lost in a loading loop. */
@Component(service = Calculation.class)
public final class HysteresisCalculation implements Calculation<HysteresisCalculation.Inputs, HysteresisCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.hysteresis";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Energy lost in a press", 1,
            "W = integral of F dx by trapezoids over each branch on its own travel; loss = (W in - W out) / W in, rebound share = "
                    + "W out / W in. tan delta is the one that gives this share at a constant loss angle: R = exp(-2 pi tan(delta / 2)).",
            Source.derived("trapezoids; tan delta for a constant loss angle, rough for impacts"),
            "One full press and release. The first press of a new part differs from later ones: state which cycle.");

    /**
     * A point of a branch.
     *
     * @param travel mm
     * @param force  N
     */
    public record Row(
            @Field(label = "Travel", kind = QuantityKind.LENGTH, unit = "mm", min = -1000, max = 10000, help = "Of the pad.") double travel,
            @Field(label = "Force", kind = QuantityKind.FORCE, unit = "N", min = -100000, max = 100000, help = "At that travel.") double force) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Pressing", min = 2, max = 10000, def = "0; 0 | 1; 2 | 2; 4.4 | 3; 7.4 | 4; 11.2 | 5; 16", help = "Travel and force while pressing, travel rising.") List<Row> loading,
            @Field(label = "Releasing", min = 2, max = 10000, def = "0; 0 | 1; 1.2 | 2; 3 | 3; 5.5 | 4; 9.4 | 5; 16", help = "Travel and force while releasing, in order of rising travel.") List<Row> unloading) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Energy put in", kind = QuantityKind.ENERGY, unit = "mJ", help = "Under the pressing branch.") double in,
            @Field(label = "Energy given back", kind = QuantityKind.ENERGY, unit = "mJ", help = "Under the releasing branch.") double out,
            @Field(label = "Loss", kind = QuantityKind.FRACTION, unit = "%", help = "Of the energy put in.") double loss,
            @Field(label = "Given back", kind = QuantityKind.FRACTION, unit = "%", help = "Of the energy put in.") double rebound,
            @Field(label = "tan delta", help = "That would give this share; empty when more comes back than went in.") Double tanDelta) {
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
        int wrongLoading = firstNotRising(in.loading());
        int wrongUnloading = firstNotRising(in.unloading());
        if (wrongLoading > 0 || wrongUnloading > 0) {
            return Outcome.refused(wrongLoading > 0 ? "loading" : "unloading", Say.message("loop.order", Math.max(wrongLoading, wrongUnloading) + 1), Say.message("loop.order.remedy"));
        }
        double in0 = LossLoop.work(points(in.loading()));
        double out = LossLoop.work(points(in.unloading()));
        if (!(in0 > 0)) {
            return Outcome.refused("loading", Say.message("loop.nothing"), Say.message("loop.nothing.remedy"));
        }
        double share = out / in0;
        Double tanDelta = share > 0 && share < 1 ? LossLoop.tanDeltaOf(share) : null;
        Results results = new Results(in0, out, 100 * (1 - share), 100 * share, tanDelta);
        return share >= 1 ? Outcome.done(results, List.of(Say.caution(INFO.source(), "loop.gains"))) : Outcome.done(results);
    }

    private static List<LossLoop.Point> points(List<Row> rows) {
        return rows.stream().map(r -> new LossLoop.Point(r.travel(), r.force())).toList();
    }

    /** Index of the first row whose travel does not rise; 0 when all do. */
    private static int firstNotRising(List<Row> rows) {
        for (int i = 1; i < rows.size(); i++) {
            if (!(rows.get(i).travel() > rows.get(i - 1).travel())) {
                return i;
            }
        }
        return 0;
    }
}
