package org.flexwright.testing.sample;

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
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.MeanDifference;
import org.flexwright.numerics.PooledT;
import org.flexwright.numerics.Tost;
import org.flexwright.numerics.Welch;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Whether two groups of parts differ, and whether they are alike within a margin. */
@Component(service = Calculation.class)
public final class TwoGroupsCalculation implements Calculation<TwoGroupsCalculation.Inputs, TwoGroupsCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.two-groups";

    private static final double LEVEL = 0.95;
    private static final double ALPHA = 0.05;
    private static final Source WELCH = Source.published("NIST/SEMATECH e-Handbook 1.3.5.3: unequal spread (Welch), degrees of freedom after Satterthwaite");
    private static final Source POOLED = Source.published("NIST/SEMATECH e-Handbook 1.3.5.3: equal spread");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Two groups of parts: different or alike", 1,
            "Difference of the means with its 95 % interval, once with each group's own spread (Welch) and once with one spread for both. Alike within a margin when two one-sided "
                    + "tests both say so, that is when the 90 % interval lies inside it. No significant difference is not the same as being alike.",
            Source.published("NIST/SEMATECH e-Handbook 1.3.5.3; Schuirmann 1987 for the margin"),
            "One value a part, parts made independently. Readings on one part are no group. Fix the margin before measuring.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "First group", min = -1e12, max = 1e12, def = "41; 42; 43; 42", help = "One value a part, semicolons between.") List<Double> first,
            @Field(label = "Second group", min = -1e12, max = 1e12, def = "44; 45; 44; 46", help = "One value a part, semicolons between.") List<Double> second,
            @Field(label = "Margin", min = 0, def = "3", help = "The largest difference that does not matter; 0 when it is not asked.") double margin) {
    }

    /** Results. */
    public record Results(
            @Field(label = "First less second", help = "Difference of the means, 95 %, each group with its own spread.") Estimate difference,
            @Field(label = "Degrees of freedom", help = "After Satterthwaite.") double freedom,
            @Field(label = "Chance", kind = QuantityKind.FRACTION, unit = "%", help = "Of a difference at least as large when the groups do not differ.") double chance,
            @Field(label = "With one spread", help = "The same when both groups are taken to spread alike.") Estimate pooled,
            @Field(label = "Different", help = "In words.") String different,
            @Field(label = "Alike", help = "Within the margin, in words.") String alike) {
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
        double[] x = in.first().stream().mapToDouble(Double::doubleValue).toArray();
        double[] y = in.second().stream().mapToDouble(Double::doubleValue).toArray();
        if (x.length < 2 || y.length < 2) {
            return Outcome.refused(x.length < 2 ? "first" : "second", Say.message("groups.one"), Say.message("groups.one.remedy"));
        }
        Optional<MeanDifference> welch = Welch.test(x, y);
        if (welch.isEmpty()) {
            return Outcome.refused("first", Say.message("groups.identical"), Say.message("groups.identical.remedy"));
        }
        MeanDifference own = welch.get();
        MeanDifference one = PooledT.test(x, y).orElseThrow();
        Interval interval = own.interval(LEVEL);
        String different = Say.message(interval.contains(0) ? "groups.noDifference" : "groups.difference", Rounded.text(interval.low(), ""), Rounded.text(interval.high(), "")).text();
        List<Remark> remarks = new ArrayList<>();
        if (x.length < 3 || y.length < 3) {
            remarks.add(Say.caution(INFO.source(), "groups.few"));
        }
        return Outcome.done(new Results(estimate(own, WELCH), own.df(), 100 * own.p(), estimate(one, POOLED), different, alike(own, in.margin())), remarks);
    }

    private static String alike(MeanDifference own, double margin) {
        if (margin == 0) {
            return Say.message("groups.notAsked").text();
        }
        Interval ninety = own.interval(1 - 2 * ALPHA);
        return Say.message(Tost.test(own, margin).equivalent(ALPHA) ? "groups.alike" : "groups.notAlike", Rounded.text(ninety.low(), ""), Rounded.text(ninety.high(), ""), Rounded.text(margin, "")).text();
    }

    private static Estimate estimate(MeanDifference difference, Source source) {
        Interval interval = difference.interval(LEVEL);
        return new Estimate(interval.low(), difference.difference(), interval.high(), source);
    }
}
