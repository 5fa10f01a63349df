package org.flexwright.testing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.Reading;
import org.flexwright.model.RunResult;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Say;

/** What is known of the modulus of a trial's material, each with the way it came: the best first, none ever mixed with another. */
public final class ModulusKnown {

    /** How a modulus came to be known, the best way first. */
    public enum Way {
        /** A strip stretched by weights, its calculation kept in the trial. */
        WEIGHTS,
        /** Kept as readings of the modulus on a piece, from a curve or another way that was measured. */
        READ,
        /** From Shore A as a band over published formulas. */
        HARDNESS
    }

    /**
     * One way.
     *
     * @param way     how
     * @param modulus MPa, with its band and source
     * @param detail  on what it rests: {@code P1, P2}, or the hardness
     */
    public record Known(Way way, Estimate modulus, String detail) {
        public Known {
            Objects.requireNonNull(way, "way");
            Objects.requireNonNull(modulus, "modulus");
            Objects.requireNonNull(detail, "detail");
        }
    }

    private static final String MODULUS = "materials.modulus";

    private ModulusKnown() {
    }

    /** All ways there are, the best first. */
    public static List<Known> of(Trial trial) {
        List<Known> known = new ArrayList<>();
        trial.getCalculations().stream().filter(run -> CouponCalculation.ID.equals(run.getCalculation()) && run.getRefusal() == null).reduce((a, b) -> b).ifPresent(run -> weights(run, known));
        read(trial, known);
        hardness(trial, known);
        return known;
    }

    private static void weights(CalculationRun run, List<Known> known) {
        run.getResults().stream().filter(r -> "modulus".equals(r.getName()) && complete(r)).findFirst().ifPresent(r -> known.add(new Known(Way.WEIGHTS,
                new Estimate(r.getLow(), r.getLikely(), r.getHigh(), Source.ownRecord("strip stretched by weights, calculation kept in the trial")), "")));
    }

    private static boolean complete(RunResult result) {
        return result.getLow() != null && result.getLikely() != null && result.getHigh() != null && "MPa".equals(result.getUnit());
    }

    /** Median over the pieces; its band runs over them, so one piece has none. */
    private static void read(Trial trial, List<Known> known) {
        List<Part> pieces = trial.getParts().stream().filter(part -> !part.isFailed() && !values(part, MODULUS).isEmpty()).toList();
        if (!pieces.isEmpty()) {
            double[] medians = pieces.stream().mapToDouble(part -> Descriptive.median(values(part, MODULUS).stream().mapToDouble(Double::doubleValue).toArray())).toArray();
            known.add(new Known(Way.READ, new Estimate(Descriptive.min(medians), Descriptive.median(medians), Descriptive.max(medians), Source.ownRecord("modulus read on "
                    + codes(pieces))), codes(pieces)));
        }
    }

    /** After the shortest dwell that was used, from the lowest to the highest piece, each with the doubt of its reading and of the formulas. */
    private static void hardness(Trial trial, List<Known> known) {
        String shore = GaugeScale.A.materialProperty();
        Double dwell = trial.getParts().stream().filter(part -> !part.isFailed()).flatMap(part -> part.getMeasurements().stream()).filter(m -> counts(m, shore)).map(m -> m.getKey()
                .getDwell()).filter(Objects::nonNull).min(Double::compare).orElse(null);
        List<Part> pieces = trial.getParts().stream().filter(part -> !part.isFailed() && !values(part, shore, dwell).isEmpty()).toList();
        if (pieces.isEmpty()) {
            return;
        }
        double[] medians = pieces.stream().mapToDouble(part -> Descriptive.median(values(part, shore, dwell).stream().mapToDouble(Double::doubleValue).toArray())).toArray();
        double low = Descriptive.min(medians);
        double high = Descriptive.max(medians);
        if (low >= ModulusBand.LOWEST && high <= ModulusBand.HIGHEST) {
            known.add(new Known(Way.HARDNESS, ModulusBand.between(low, high), codes(pieces) + (dwell == null ? "" : Say.message("modulus.after", Rounded.text(dwell, "s"))
                    .text())));
        }
    }

    private static String codes(List<Part> pieces) {
        return String.join(", ", pieces.stream().map(part -> String.valueOf(part.getCode())).toList());
    }

    private static boolean counts(Measurement measurement, String property) {
        return measurement.getKey() != null && property.equals(measurement.getKey().getProperty()) && measurement.getKnowledge() == Knowledge.MEASURED && !counting(measurement)
                .isEmpty();
    }

    private static List<Double> values(Part part, String property) {
        return part.getMeasurements().stream().filter(m -> counts(m, property)).flatMap(m -> counting(m).stream()).toList();
    }

    /** Those after one dwell: a modulus belongs to a time, and another dwell is another modulus. */
    private static List<Double> values(Part part, String property, Double dwell) {
        return part.getMeasurements().stream().filter(m -> counts(m, property) && Objects.equals(dwell, m.getKey().getDwell())).flatMap(m -> counting(m).stream()).toList();
    }

    private static List<Double> counting(Measurement measurement) {
        return measurement.getReadings().stream().filter(Measurements::counts).map(Reading::getValue).filter(Objects::nonNull).toList();
    }
}
