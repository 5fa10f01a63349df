package org.flexwright.testing.sample;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.numerics.OneWayAnova;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Whether several groups of parts differ at all: one-way analysis of variance. */
@Component(service = Calculation.class)
public final class GroupsCalculation implements Calculation<GroupsCalculation.Inputs, GroupsCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.groups";

    private static final double ALPHA = 0.05;
    private static final int MOST = 1000;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Several groups of parts: do they differ", 1,
            "One-way analysis of variance: F is the mean square between the groups over that within them; its chance is that of an F at least as large when no group differs. "
                    + "It says whether any differ, not which.",
            Source.published("NIST StRD analysis of variance sets; NIST/SEMATECH e-Handbook 7.4.3"), "One value a part, parts made independently, groups that spread about alike.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Groups", def = "41; 42; 43 | 44; 45; 44 | 42; 43; 43", help = "One value a part, semicolons between; a bar between the groups.") String groups) {
    }

    /** Results. */
    public record Results(
            @Field(label = "F", help = "Mean square between over within.") double f,
            @Field(label = "Chance", kind = QuantityKind.FRACTION, unit = "%", help = "Of an F at least as large when no group differs.") double chance,
            @Field(label = "In words", help = "As it may stand in a conclusion.") String words,
            @Field(label = "Spread within", help = "Standard deviation within the groups, pooled.") double within,
            @Field(label = "Degrees of freedom between", help = "Groups less one.") int between,
            @Field(label = "Degrees of freedom within", help = "Values less groups.") int freedom) {
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
        List<double[]> groups = new ArrayList<>();
        for (String typed : in.groups().split("\\|", -1)) {
            List<Double> values = new ArrayList<>();
            for (String one : typed.split(";")) {
                if (!one.isBlank()) {
                    Optional<Double> number = number(one.strip());
                    if (number.isEmpty()) {
                        return Outcome.refused("groups", Say.message("groups.number", one.strip()), Say.message("groups.number.remedy"));
                    }
                    values.add(number.get());
                }
            }
            if (values.isEmpty()) {
                return Outcome.refused("groups", Say.message("groups.empty", groups.size() + 1), Say.message("groups.number.remedy"));
            }
            groups.add(values.stream().mapToDouble(Double::doubleValue).toArray());
        }
        if (groups.size() < 2 || groups.stream().mapToInt(g -> g.length).sum() > MOST) {
            return Outcome.refused("groups", Say.message("groups.two", MOST), Say.message("groups.number.remedy"));
        }
        if (groups.stream().allMatch(g -> g.length < 2)) {
            return Outcome.refused("groups", Say.message("groups.one"), Say.message("groups.one.remedy"));
        }
        Optional<OneWayAnova> anova = OneWayAnova.of(groups.toArray(double[][]::new));
        if (anova.isEmpty()) {
            return Outcome.refused("groups", Say.message("groups.identical"), Say.message("groups.identical.remedy"));
        }
        OneWayAnova a = anova.get();
        String words = Say.message(a.p() < ALPHA ? "groups.differ" : "groups.doNotDiffer").text();
        Results results = new Results(a.f(), 100 * a.p(), words, Math.sqrt(a.msWithin()), a.dfBetween(), a.dfWithin());
        return Arrays.stream(groups.toArray(double[][]::new)).anyMatch(g -> g.length < 2) ? Outcome.done(results, List.of(Say.caution(INFO.source(), "groups.single"))) : Outcome.done(results);
    }

    private static Optional<Double> number(String typed) {
        try {
            double value = Double.parseDouble(typed.replace(',', '.').replace('\u2212', '-'));
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
