package org.flexwright.testing.law;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Stiffness left after a time, from a Prony series. */
@Component(service = Calculation.class)
public final class RelaxationCalculation implements Calculation<RelaxationCalculation.Inputs, RelaxationCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.relaxation";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Relaxation with time", 1,
            "E(t) = E0 (1 - sum g (1 - exp(-t / tau))) over the terms of a Prony series; relaxation = 100 (E0 - E(t)) / E0.",
            Source.derived("linear viscoelasticity, textbook"),
            "Small strains, constant temperature, and only over the span of times the terms were fitted on.");

    /**
     * A term.
     *
     * @param share share of the instant modulus that relaxes
     * @param time  s
     */
    public record Row(
            @Field(label = "Share", min = 0, minOpen = true, max = 1, help = "Of the instant modulus.") double share,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true, max = 1e12, help = "Relaxation time.") double time) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Instant modulus", kind = QuantityKind.STRESS, unit = "MPa", min = 0, minOpen = true, max = 100000, def = "2 MPa", help = "At the shortest time of interest.") double instant,
            @Field(label = "Terms", min = 1, max = 50, def = "0.2; 1 | 0.15; 30", help = "Share and time of each term; the shares sum to less than 1.") List<Row> terms,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1000000000000.0, def = "15 s", help = "Where the modulus is wanted.") double time) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Modulus then", kind = QuantityKind.STRESS, unit = "MPa", help = "After that time.") double modulus,
            @Field(label = "Relaxed", kind = QuantityKind.FRACTION, unit = "%", help = "Share of the instant modulus.") double relaxation,
            @Field(label = "Final modulus", kind = QuantityKind.STRESS, unit = "MPa", help = "After a very long time.") double inTheEnd) {
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
        double sum = in.terms().stream().mapToDouble(Row::share).sum();
        if (sum >= 1) {
            return Outcome.refused("terms", Say.message("prony.sum", Rounded.text(sum, "")), Say.message("prony.sum.remedy"));
        }
        List<Relaxation.Term> terms = in.terms().stream().map(r -> new Relaxation.Term(r.share(), r.time())).toList();
        double then = Relaxation.prony(in.instant(), terms, in.time());
        return Outcome.done(new Results(then, 100 * (in.instant() - then) / in.instant(), in.instant() * (1 - sum)));
    }
}
