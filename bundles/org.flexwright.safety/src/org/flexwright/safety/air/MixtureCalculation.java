package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Several substances with the same kind of effect. */
@Component(service = Calculation.class)
public final class MixtureCalculation implements Calculation<MixtureCalculation.Inputs, MixtureCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.mixture";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Several vapours together", 1,
            "E = sum of C / L over substances with the same kind of effect. Below 1 their sum is below the figures you entered, "
                    + "above 1 it is above.",
            Exposure.SOURCE,
            "Same kind of effect only; concentration and figure of a row in the same unit. It says nothing about sensitised "
                    + "people, who react below any figure.");

    /**
     * A substance.
     *
     * @param name          words
     * @param concentration in the unit of the figure
     * @param limit         the figure entered for it
     */
    public record Row(
            @Field(label = "Substance", help = "Its name.") String name,
            @Field(label = "Concentration", min = 0, max = 1e9, help = "In the unit of its figure.") double concentration,
            @Field(label = "Figure", min = 0, minOpen = true, max = 1e9, help = "Of your authority or data sheet, with source and year in your notes.") double limit) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Substances", min = 1, max = 100, def = "first; 500; 1000 | second; 45; 200 | third; 40; 200", help = "Name, concentration and the figure you entered for it.") List<Row> substances) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Sum of shares", help = "Against 1.") double sum,
            @Field(label = "Compared", help = "With the figures you entered and nothing else.") String comparison) {
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
        double sum = Exposure.mixture(in.substances().stream().map(r -> new Exposure.Against(r.concentration(), r.limit())).toList());
        String key = sum > 1 ? "mixture.above" : "mixture.below";
        return Outcome.done(new Results(sum, Say.message(key, Rounded.text(sum, "")).text()), List.of(Say.note(INFO.source(), "mixture.same-effect")));
    }
}
