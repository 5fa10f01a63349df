package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Published figures for a substance in air. */
@Component(service = Calculation.class)
public final class LimitsCalculation implements Calculation<LimitsCalculation.Inputs, LimitsCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.limits";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Published figures for the air", 1,
            "Lists figures of two US authorities for a substance, each with its source, so that the one that binds you can be "
                    + "found and entered elsewhere with its source and year.",
            Source.published("29 CFR 1910.1000; NIOSH Pocket Guide 2005-149; NIOSH IDLH sheets 1994"),
            "US figures only, old ones among them. Your authority and the data sheet decide; newer guides are often lower (TDI: "
                    + "0.001 ppm, ACGIH notice of 2016).");

    /**
     * A figure.
     *
     * @param kind   whose figure and over which time
     * @param value  with its unit
     * @param source where it stands
     */
    public record Row(
            @Field(label = "Kind", help = "Whose figure and over which time.") String kind,
            @Field(label = "Figure", help = "With its unit.") String value,
            @Field(label = "Source", help = "Where it stands.") String source) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Substance", def = "isopropanol", help = "One of the listed ones.") ReferenceLimit.Substance substance) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Figures", help = "Each with its own source.") List<Row> figures) {
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
        List<Row> rows = ReferenceLimit.of(in.substance()).stream().map(l -> new Row(Say.message("limit." + l.kind().name()).text(), Rounded.text(l.value(), l.unit()), l.source().display())).toList();
        return Outcome.done(new Results(rows), List.of(Say.caution(INFO.source(), "limit.binding")));
    }
}
