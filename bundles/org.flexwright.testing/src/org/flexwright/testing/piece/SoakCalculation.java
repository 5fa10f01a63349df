package org.flexwright.testing.piece;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Remark;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.Reading;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Descriptive;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.SoakDetails;
import org.osgi.service.component.annotations.Component;

/** A series of weighings of a piece in a liquid, or drying. */
@Component(service = Calculation.class)
public final class SoakCalculation implements Calculation<SoakCalculation.Inputs, SoakCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.soak";

    private static final double SECONDS_PER_HOUR = 3600;
    private static final Source CRANK = Source.fromMemory("J. Crank, The Mathematics of Diffusion, short-time solution for a sheet soaked from both faces");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Swelling or drying by mass", 1,
            "Change = 100 (m - m0) / m0. Settled: the last two weighings differ by no more than the weighing is good to and lie a third of the whole time "
                    + "apart. Half time by the square root of time between weighings; D = pi L^2 / (64 t_half), a hint for a sheet whose edges are small.",
            Source.derived("masses over the first mass"),
            "Wipe the same way each time, weigh within a minute. What dissolves out of the piece hides in the change: dry it and weigh again.");

    /**
     * One weighing.
     *
     * @param time since the first weighing
     * @param mass then
     */
    public record Row(
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "h", min = 0, max = 1000000, help = "Since the first weighing, which is 0.") double time,
            @Field(label = "Mass", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 100000, help = "Wiped, within a minute.") double mass) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Weighings", min = 2, max = 10000, def = "0 h; 1.310 g | 1 h; 1.322 g | 4 h; 1.334 g | 24 h; 1.352 g | 72 h; 1.355 g | 168 h; 1.355 g", help = "Time and mass, in order of time; the first before the liquid.") List<Row> weighings,
            @Field(label = "Weighing good to", kind = QuantityKind.MASS, unit = "g", min = 0, max = 100, def = "0.002 g", help = "Either way: balance and wiping.") double good,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 200, optional = true, help = "Of a sheet soaked from both faces; empty for anything else.") Double thickness) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Change of mass", kind = QuantityKind.FRACTION, unit = "%", help = "At the last weighing, of the first mass; below zero when it lost.") Estimate change,
            @Field(label = "Has it settled", help = "Whether the last weighings still change.") String settled,
            @Field(label = "Half time", kind = QuantityKind.DURATION, unit = "h", help = "Until half of the change, between two weighings; empty before it has settled or without weighings before it.") Estimate halfTime,
            @Field(label = "Diffusivity, a hint", kind = QuantityKind.DIFFUSIVITY, unit = "mm2/s", help = "Order of magnitude for a sheet; empty without thickness.") Estimate diffusivity) {
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
        List<Soak.Weighing> weighings = in.weighings().stream().map(r -> new Soak.Weighing(r.time(), r.mass())).toList();
        for (int i = 1; i < weighings.size(); i++) {
            if (weighings.get(i).hours() <= weighings.get(i - 1).hours()) {
                return Outcome.refused("weighings", Say.message("soak.order", i + 1), Say.message("soak.order.remedy"));
            }
        }
        double first = weighings.getFirst().grams();
        double last = weighings.getLast().grams();
        Estimate change = Bands.band(Soak.uptake(first, last), INFO.source(), Bands.within(in.good(), 100 / first), Bands.within(in.good(), -100 * last / (first * first)));
        boolean settled = Soak.settled(weighings, in.good());
        Optional<Soak.Half> half = settled && Math.abs(last - first) > 2 * in.good() ? Soak.half(weighings) : Optional.empty();
        List<Remark> remarks = new ArrayList<>();
        if (change.low() <= 0 && change.high() >= 0) {
            remarks.add(Say.note(INFO.source(), "soak.none"));
        }
        Estimate diffusivity = null;
        if (half.isPresent() && in.thickness() != null) {
            diffusivity = new Estimate(Soak.diffusivity(in.thickness(), half.get().before()), Soak.diffusivity(in.thickness(), half.get().likely()), Soak.diffusivity(in.thickness(),
                    half.get().after()), CRANK);
            remarks.add(Say.note(CRANK, "soak.hint"));
        }
        double step = weighings.getLast().hours() - weighings.get(weighings.size() - 2).hours();
        String words = Say.message(settled ? "soak.settled" : weighings.size() < 3 ? "soak.few" : "soak.changing", Rounded.text(step, "h"), Rounded.text(last - weighings.get(
                weighings.size() - 2).grams(), "g")).text();
        return Outcome.done(new Results(change, words, half.map(h -> new Estimate(h.after(), h.likely(), h.before(), INFO.source())).orElse(null), diffusivity), remarks);
    }

    @Override
    public Map<String, String> readings() {
        return Map.of("change", TestingProperties.MASS_CHANGE);
    }

    /** The masses read on the piece over time; when some were noted as soaking or drying, the last one before them and those alone. */
    @Override
    public Map<String, String> inputsFrom(Specimen piece) {
        List<Measurement> masses = piece.getMeasurements().stream().filter(m -> m.getKey() != null && TestingProperties.MASS.equals(m.getKey().getProperty()) && m.getAt() != null && !grams(
                m).isEmpty()).sorted(Comparator.comparing(Measurement::getAt)).toList();
        int soaked = 0;
        while (soaked < masses.size() && !soaked(masses.get(soaked))) {
            soaked++;
        }
        List<Measurement> series = soaked == masses.size() ? masses : masses.subList(Math.max(0, soaked - 1), masses.size());
        if (series.size() < 2) {
            return Map.of();
        }
        Instant zero = series.getFirst().getAt();
        Map<String, String> inputs = new LinkedHashMap<>();
        inputs.put("weighings", series.stream().map(m -> FieldText.fixed(Duration.between(zero, m.getAt()).toSeconds() / SECONDS_PER_HOUR, 3) + " h; " + FieldText.fixed(Descriptive
                .median(grams(m).stream().mapToDouble(Double::doubleValue).toArray()), 4) + " g").collect(Collectors.joining(" | ")));
        return inputs;
    }

    private static boolean soaked(Measurement measurement) {
        return measurement.getDetails() instanceof SoakDetails details && (Boolean.TRUE.equals(details.getDrying()) || details.getLiquid() != null && !details.getLiquid().isBlank());
    }

    private static List<Double> grams(Measurement measurement) {
        return measurement.getReadings().stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE && Measurements.counts(r)).map(
                Reading::getValue).toList();
    }
}
