package org.flexwright.testing.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Exponentials fitted to a force that falls while a piece is held. */
@Component(service = Calculation.class)
public final class PronyFitCalculation implements Calculation<PronyFitCalculation.Inputs, PronyFitCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.prony-fit";

    private static final int DIGITS = 3;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Fit of a relaxation", 1,
            "F = F0 (1 - sum g (1 - exp(-t / tau))) by least squares from many starts, all shares g above 0; the terms go into the relaxation with time.",
            Source.derived("linear viscoelasticity, textbook; least squares"),
            "Constant deformation and temperature, over the times measured only; other terms may describe the same fall. Intervals speak of these points alone.");

    /**
     * A point.
     *
     * @param time  s from when the hold began
     * @param force N
     */
    public record Row(
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1e9, help = "From when the hold began.") double time,
            @Field(label = "Force", kind = QuantityKind.FORCE, unit = "N", min = -100000, max = 100000, help = "Force at rest taken off.") double force) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Measured points", min = 4, max = 10000, def = "0; 10.00 | 0.1; 9.80 | 0.2; 9.63 | 0.5; 9.19 | 1; 8.69 | 2; 8.17 | 5; 7.78 | 10; 7.57 | 20; 7.27 | 50; 6.78 | 100; 6.55 | 200; 6.50", help = "Time since the hold began and force, in order of time; the example is invented.") List<Row> points,
            @Field(label = "Terms", min = 1, max = PronyFit.MOST_TERMS, def = "2", help = "How many exponentials; each needs two points and about a decade of time of its own.") int terms) {
    }

    /** Results. */
    public record Results(
            @Field(label = "F0", kind = QuantityKind.FORCE, unit = "N", help = "At the beginning, by the exponentials; 95 %.") Estimate instant,
            @Field(label = "Terms", help = "Share and time in s of each term, as the relaxation with time takes them.") String terms,
            @Field(label = "Intervals", help = "95 % of each share and time, as far as the residuals are chance.") String intervals,
            @Field(label = "Left in the end", kind = QuantityKind.FRACTION, unit = "%", help = "Of F0, if nothing slower follows.") double left,
            @Field(label = "Root mean square residual", kind = QuantityKind.FORCE, unit = "N", help = "Of the forces.") double rms) {
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
        double[] time = in.points().stream().mapToDouble(Row::time).toArray();
        for (int i = 1; i < time.length; i++) {
            if (!(time[i] > time[i - 1])) {
                return Outcome.refused("points", Say.message("prony.order", i + 1, Figures.of(time[i], "s"), Figures.of(time[i - 1], "s")), Say.message("prony.order.remedy"));
            }
        }
        Optional<PronyFit> found = PronyFit.of(time, in.points().stream().mapToDouble(Row::force).toArray(), in.terms(), Watch.NONE);
        if (found.isEmpty()) {
            return Outcome.refused("terms", Say.message("prony.none", in.terms(), time.length), Say.message("prony.none.remedy"));
        }
        PronyFit fit = found.get();
        List<Remark> remarks = new ArrayList<>();
        for (int i = 0; i < fit.terms().size(); i++) {
            if (fit.atTheEdge(fit.terms().get(i))) {
                remarks.add(Say.caution(INFO.source(), "hold.edge", i + 1, Figures.of(fit.terms().get(i).time(), "s", DIGITS), Figures.of(fit.shortest(), "s", DIGITS), Figures.of(fit.longest(), "s",
                        DIGITS)));
            }
        }
        return Outcome.done(new Results(fit.band().isPresent() ? Estimate.plusMinus(fit.instant(), fit.band().getAsDouble(), INFO.source()) : Estimate.exact(fit.instant(), INFO.source()),
                fit.terms().stream().map(t -> Figures.of(t.share(), "") + "; " + Figures.of(t.time(), "")).collect(Collectors.joining(" | ")),
                fit.terms().stream().map(PronyFitCalculation::interval).collect(Collectors.joining(" | ")), 100 * fit.left(), fit.rms()), remarks);
    }

    private static String interval(PronyFit.Term term) {
        if (term.shareBand().isEmpty() || term.timeRatio().isEmpty()) {
            return Say.message("prony.noInterval").text();
        }
        return Say.message("prony.interval", Figures.of(term.share() - term.shareBand().getAsDouble(), "", DIGITS), Figures.of(term.share() + term.shareBand().getAsDouble(), "", DIGITS), Figures.of(term
                .time() / term.timeRatio().getAsDouble(), "", DIGITS), Figures.of(term.time() * term.timeRatio().getAsDouble(), "s", DIGITS)).text();
    }
}
