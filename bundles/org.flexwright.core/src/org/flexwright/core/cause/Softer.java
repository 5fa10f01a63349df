package org.flexwright.core.cause;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.MeanDifference;
import org.flexwright.numerics.Welch;

/**
 * A trial that came out softer than one with less filler.
 *
 * @param trial    the softer one
 * @param than     the one with less filler
 * @param property the hardness that was read on both
 * @param key      under these conditions
 * @param hardness mean over the parts of the softer one, points
 * @param before   mean over the parts of the other one, points
 * @param parts    parts read of the softer one
 * @param load     filler in the softer one, g to 100 g of polymer
 * @param loadBefore filler in the other one
 */
public record Softer(Trial trial, Trial than, PropertyDef property, PropertyKey key, double hardness, double before, int parts, double load, double loadBefore) {

    /** Two single parts that differ by less than this many points, read with a hand gauge, may be alike; common practice, no source. */
    private static final double POINTS = 2;
    /** Less filler means at most this share of it; own choice. */
    private static final double LESS = 0.9;

    /** Against the nearest trial it is based on that has less filler and was read alike; empty when it is no softer than that. */
    public static Optional<Softer> of(Trial trial, PropertyCatalogue properties) {
        Set<Trial> seen = new LinkedHashSet<>(Set.of(trial));
        for (Trial than = trial.getBasedOn(); than != null && seen.add(than); than = than.getBasedOn()) {
            List<Softer> compared = compared(trial, than, properties);
            if (!compared.isEmpty()) {
                return compared.stream().filter(Softer::isSofter).findFirst();
            }
        }
        return Optional.empty();
    }

    /** One line for each hardness read on both alike; empty when the other one has not less filler. */
    private static List<Softer> compared(Trial trial, Trial than, PropertyCatalogue properties) {
        double load = FillerLoad.of(trial).map(FillerLoad::phr).orElse(0.0);
        double before = FillerLoad.of(than).map(FillerLoad::phr).orElse(Double.NaN);
        if (!(load > 0) || !(before < LESS * load)) {
            return List.of();
        }
        return hardness(trial, properties).entrySet().stream().flatMap(e -> {
            double[] mine = values(trial, e.getKey(), e.getValue());
            double[] others = values(than, e.getKey(), e.getValue());
            return mine.length == 0 || others.length == 0 ? java.util.stream.Stream.<Softer>empty()
                    : java.util.stream.Stream.of(new Softer(trial, than, e.getValue(), e.getKey(), Descriptive.mean(mine), Descriptive.mean(others), mine.length,
                            load, before));
        }).sorted((a, b) -> b.parts - a.parts).toList();
    }

    /** Under which keys a hardness was read on the trial's pieces, and which hardness; the same conditions once. */
    private static Map<PropertyKey, PropertyDef> hardness(Trial trial, PropertyCatalogue properties) {
        Map<PropertyKey, PropertyDef> keys = new LinkedHashMap<>();
        for (Part part : trial.getParts()) {
            for (Measurement measurement : part.getMeasurements()) {
                PropertyKey key = measurement.getKey();
                PropertyDef property = key == null ? null : properties.find(key.getProperty()).orElse(null);
                if (property != null && property.kind().name().startsWith("SHORE") && keys.entrySet().stream()
                        .noneMatch(e -> e.getValue().equals(property) && PartValues.differences(e.getKey(), key, property).isEmpty())) {
                    keys.put(key, property);
                }
            }
        }
        return keys;
    }

    private static double[] values(Trial trial, PropertyKey key, PropertyDef property) {
        return PartValues.of(trial, key, property).stream().filter(p -> !p.failed() && !p.notComparable() && p.hasNumber() && !p.censored())
                .mapToDouble(PartValue::value).toArray();
    }

    private boolean isSofter() {
        double[] mine = values(trial, key, property);
        double[] others = values(than, key, property);
        Optional<MeanDifference> test = Welch.test(mine, others);
        return test.isPresent() ? test.get().interval(0.95).high() < 0 : Arrays.stream(mine).max().orElseThrow() <= Arrays.stream(others).min().orElseThrow() - POINTS;
    }
}
