package org.flexwright.testing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Young's modulus of a strip that is stretched by weights. */
@Component(service = Calculation.class)
public final class CouponCalculation implements Calculation<CouponCalculation.Inputs, CouponCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.coupon-modulus";

    private static final double GRAVITY = 9.80665e-3;
    private static final double LEVEL = 0.95;
    /** About 95 % of a normal spread, for what is known of the rulers alone. */
    private static final double TWO = 2;
    /** Beyond this stretch a strip tells of more than its modulus at small strain (common practice). */
    private static final double SMALL = 0.5;
    /** Points that lie off the line by more than this many times what the ruler tells are no line (common practice). */
    private static final double OFF = 3;
    private static final Source LINE = Source.derived("incompressible neo-Hookean strip, weights exact, lengths scatter; 95 % of the slope with what calliper and ruler can tell");
    private static final Source USUAL = Source.commonPractice();
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Modulus of a strip stretched by weights", 1,
            "Stress m g / (w t) on the first cross-section against (l - 1/l^2) / 3 with l = L / L0: the slope is Young's modulus E. The line need not pass through zero, so "
                    + "the clip's own mass and a slack strip do no harm. The band holds the scatter about the line, or what the ruler can tell where that is more, and what "
                    + "calliper and ruler can tell of the section and the first length.",
            Source.derived("neo-Hookean network in one direction; g = 9.80665 m/s2"),
            "Strips of soft rubber up to some 50 % of stretch, the same wait after each weight. It is the modulus at that wait, and of a first loading.");

    /**
     * A weight.
     *
     * @param mass   g hung on, with or without the clip, the same way each time
     * @param length mm between the marks under it
     */
    public record Load(
            @Field(label = "Mass", kind = QuantityKind.MASS, unit = "g", min = 0, max = 100000, help = "Hung on; with or without the clip, the same way each time.") double mass,
            @Field(label = "Length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, help = "Between the marks, after the wait.") double length) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Width", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "6 mm", help = "Of the strip before the first weight.") double width,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, def = "2 mm", help = "Before the first weight; median of three places.") double thickness,
            @Field(label = "First length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 5000, def = "50 mm", help = "Between the marks of the free strip.") double first,
            @Field(label = "Weights", min = 2, max = 50, def = "50; 51 | 100; 52 | 150; 53.5 | 200; 54.5 | 300; 57", help = "Mass and length of each, two at least, five are good.") List<Load> loads,
            @Field(label = "Wait", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1000000, optional = true, help = "From hanging on to reading; the same each time.") Double afterLoading,
            @Field(label = "Ruler step", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "0.5 mm", help = "One step of what the lengths were read with.") double ruler,
            @Field(label = "Calliper, either way", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 5, def = "0.05 mm", help = "How far width and thickness may be off; callipers squash soft strips.") double calliper,
            @Field(label = "Shore A beside it", min = 10, max = 95, optional = true, help = "Hardness of the same material, to see whether both agree; never mixed in.") Double hardness) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Modulus from the weights", kind = QuantityKind.STRESS, unit = "MPa", help = "Young's modulus; the band is about 95 %.") Estimate modulus,
            @Field(label = "Shear modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "A third of it.") Estimate shear,
            @Field(label = "Largest stretch", kind = QuantityKind.FRACTION, unit = "%", help = "Of the first length.") double stretch,
            @Field(label = "Line starts at", kind = QuantityKind.MASS, unit = "g", help = "Mass at which the line has no stretch: below zero for a clip that was not weighed, above for a slack strip.") double start,
            @Field(label = "Modulus from hardness", kind = QuantityKind.STRESS, unit = "MPa", optional = true, help = "Band of the published formulas, beside it; not used for anything above.") Estimate fromHardness) {
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
        double[] stress = in.loads().stream().mapToDouble(load -> GRAVITY * load.mass() / (in.width() * in.thickness())).toArray();
        double[] strain = in.loads().stream().mapToDouble(load -> strain(load.length() / in.first())).toArray();
        Optional<Line> fitted = LeastSquares.line(stress, strain);
        if (fitted.isEmpty()) {
            return Outcome.refused("loads", Say.message("coupon.same"), Say.message("coupon.same.remedy"));
        }
        Line line = fitted.get();
        if (!(line.slope() > 0)) {
            return Outcome.refused("loads", Say.message("coupon.falls"), Say.message("coupon.falls.remedy"));
        }
        double modulus = 1 / line.slope();
        double told = in.ruler() / Math.sqrt(12) / in.first();
        double floor = TWO * told / Math.sqrt(line.sumOfSquaresX());
        double scatter = line.slopeError().isPresent() ? StudentT.quantile((1 + LEVEL) / 2, line.n() - 2.0) * line.slopeError().getAsDouble() : 0;
        double slope = Math.max(floor, scatter) / line.slope();
        double section = TWO * Math.hypot(in.calliper() / in.width(), in.calliper() / in.thickness()) / Math.sqrt(3);
        double share = Math.sqrt(slope * slope + section * section + square(TWO * told));
        Estimate band = new Estimate(modulus / (1 + share), modulus, share < 1 ? modulus / (1 - share) : Double.MAX_VALUE, LINE);
        if (share >= 1) {
            return Outcome.refused("loads", Say.message("coupon.nothing", Rounded.text(100 * share, "%")), Say.message("coupon.nothing.remedy"));
        }
        Estimate hardness = in.hardness() == null ? null : ModulusBand.of(in.hardness());
        double stretch = in.loads().stream().mapToDouble(Load::length).max().orElseThrow() / in.first() - 1;
        double start = -line.intercept() / line.slope() * in.width() * in.thickness() / GRAVITY;
        return Outcome.done(new Results(band, band.times(1.0 / 3), 100 * stretch, start, hardness), remarks(in, line, told, stretch, band, hardness));
    }

    /** What a network's stress is the modulus times. */
    private static double strain(double ratio) {
        return (ratio - 1 / (ratio * ratio)) / 3;
    }

    private static double square(double x) {
        return x * x;
    }

    private static List<Remark> remarks(Inputs in, Line line, double told, double stretch, Estimate band, Estimate hardness) {
        List<Remark> remarks = new ArrayList<>();
        if (line.n() == 2) {
            remarks.add(Say.caution(USUAL, "coupon.two"));
        }
        if (stretch > SMALL) {
            remarks.add(Say.caution(USUAL, "coupon.far", Rounded.text(100 * stretch, "%")));
        }
        if (in.afterLoading() == null) {
            remarks.add(Say.caution(USUAL, "coupon.wait"));
        } else {
            remarks.add(Say.note(USUAL, "coupon.time", Rounded.text(in.afterLoading(), "s")));
        }
        if (line.residualSd().isPresent() && line.residualSd().getAsDouble() > OFF * told) {
            remarks.add(Say.caution(USUAL, "coupon.bent", Rounded.text(line.residualSd().getAsDouble() * in.first(), "mm"), Rounded.text(in.ruler(), "mm")));
        }
        if (hardness != null) {
            boolean agree = band.low() <= hardness.high() && hardness.low() <= band.high();
            remarks.add(agree ? Say.note(hardness.source(), "coupon.agrees", Rounded.text(hardness.low(), ""), Rounded.text(hardness.high(), "MPa"))
                    : Say.caution(hardness.source(), "coupon.apart", Rounded.text(hardness.low(), ""), Rounded.text(hardness.high(), "MPa")));
        }
        return remarks;
    }
}
