package org.flexwright.materials.calc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.materials.formula.BallGauge;
import org.flexwright.core.rubber.HardnessModel;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Modulus from hardness as a band. */
@Component(service = Calculation.class)
public final class ModulusCalculation implements Calculation<ModulusCalculation.Inputs, ModulusCalculation.Results> {

    private static final Source WINDOW = Source.published("ASTM D2240, trustworthy window 20 to 90 (later wording from memory)");
    private static final Source HERTZ = Source.derived("Hertz contact, Poisson 0.5, spring and ball of the 00 gauge; good to a factor of some 1.5");
    private static final double BALL_LOW = 10;
    private static final double BALL_HIGH = 90;
    private static final double BALL_FACTOR = 1.5;

    /** A reading. */
    public record Inputs(
            @Field(min = 0, max = 100, def = "50", help = "Median of the readings, in points of the scale below.") double hardness,
            @Field(def = "shore-a", help = "Scale it was read on; scales are never converted into each other.") HardnessScale scale,
            @Field(kind = QuantityKind.DURATION, unit = "s", min = 0, max = 3600, optional = true,
                    help = "Time from contact to reading; may be empty.")
            Double dwell) {
    }

    /** One formula. */
    public record Model(
            @Field(help = "Who published it.") String model,
            @Field(kind = QuantityKind.STRESS, unit = "MPa", help = "At the reading itself.") double modulus,
            @Field(label = "Relation to its range", help = "Inside or outside what it covers.") String range) {
    }

    /** The band. */
    public record Results(
            @Field(kind = QuantityKind.STRESS, unit = "MPa",
                    help = "Lowest to highest of the formulas over the reading and 3 points to either side; likely is their geometric mean.")
            Estimate modulus,
            @Field(label = "Shear modulus", kind = QuantityKind.STRESS, unit = "MPa",
                    help = "A third of it, rubber hardly changing its volume; towards a quarter when filled.")
            Estimate shear,
            @Field(label = "One point more", kind = QuantityKind.FRACTION, unit = "%", optional = true,
                    help = "By how much Gent's modulus grows; empty for scale 00.")
            Double perPoint,
            @Field(help = "The formulas one by one.") List<Model> models) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("materials.modulus", "Modulus from hardness", 1,
                "Gent: E = 0.0981 (56 + 7.62336 S)/(0.137505 (254 - 2.54 S)). Qi, Joyce and Boyce: log10 E = 0.0235 S - 0.6403. IRHD curve: "
                        + "S = 100 Phi((log10 E - 0.364)/0.6999). The band is the lowest to the highest of them over the reading \u00b1 3 points.",
                Source.published("Gent 1958; Qi, Joyce and Boyce 2003; ISO 48-2 (from memory)"),
                "Shore A 10 to 95, trustworthy 20 to 90; small strains; the time of the reading. For an unknown polymer expect 50 % either way.");
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
        return in.scale() == HardnessScale.SHORE_00 ? ball(in) : shoreA(in);
    }

    private static Outcome<Results> shoreA(Inputs in) {
        double s = in.hardness();
        if (s < ModulusBand.LOWEST || s > ModulusBand.HIGHEST) {
            return Outcome.refused("hardness", Say.MODULUS_END.with(Figures.of(s, "")), Say.MODULUS_END_REMEDY.with());
        }
        Estimate band = ModulusBand.of(s);
        List<Model> models = Arrays.stream(HardnessModel.values()).map(m -> new Model(m.title(), m.modulus(s), m.covers(s) ? "inside" : "outside")).toList();
        return Outcome.done(new Results(band, band.times(1.0 / 3), 100 * HardnessModel.perPoint(s), models), remarks(in));
    }

    private static List<Remark> remarks(Inputs in) {
        double s = in.hardness();
        List<Remark> remarks = new ArrayList<>();
        if (s < 20 || s > 90) {
            remarks.add(Say.MODULUS_WINDOW.caution(WINDOW, Figures.of(s, "")));
        }
        for (HardnessModel model : HardnessModel.values()) {
            if (!model.covers(s)) {
                remarks.add(Say.MODULUS_OUTSIDE.note(model.source(), model.title(), Figures.of(model.low(), ""), Figures.of(model.high(), ""), Figures.of(s, "")));
            }
        }
        remarks.add(Say.MODULUS_LEFT_OUT.note(Source.commonPractice()));
        remarks.add(Say.MODULUS_UNKNOWN.note(Source.commonPractice()));
        if (in.dwell() != null) {
            remarks.add(Say.MODULUS_TIME.note(Source.commonPractice(), Figures.of(in.dwell(), "")));
        }
        return remarks;
    }

    private static Outcome<Results> ball(Inputs in) {
        double s = in.hardness();
        if (s < BALL_LOW || s > BALL_HIGH) {
            return Outcome.refused("hardness", Say.MODULUS_BALL_END.with(Figures.of(s, "")), Say.MODULUS_BALL_END_REMEDY.with());
        }
        double likely = BallGauge.modulus(s);
        double low = Math.min(likely / BALL_FACTOR, BallGauge.modulus(s - ModulusBand.POINTS));
        double high = Math.max(likely * BALL_FACTOR, BallGauge.modulus(s + ModulusBand.POINTS));
        Estimate band = new Estimate(low, likely, high, HERTZ);
        return Outcome.done(new Results(band, band.times(1.0 / 3), null, List.of(new Model("Hertz, ball of scale 00", likely, "rough"))), List.of(Say.MODULUS_BALL.caution(HERTZ)));
    }
}
