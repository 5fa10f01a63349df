package org.flexwright.core.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.rubber.HardnessModel;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Measurement;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;

/** The maker's own trials of one mixture over the amount of filler, by hardness read alike. */
public final class FilledTrials {

    private static final Source APPROXIMATE = Source.derived("Modulus from Shore A by Gent 1958, Qi, Joyce and Boyce 2003 and the IRHD curve; reading to 1 point; an approximation");
    /** A hand gauge is read to a point; common practice, no source. */
    private static final double POINT = 1;

    private FilledTrials() {
    }

    /**
     * One trial.
     *
     * @param trial     the trial
     * @param load      g of filler to 100 g of polymer
     * @param hardness  mean over its parts, Shore A
     * @param parts     parts read
     * @param stiffness modulus against that of the least filled one, from hardness
     */
    public record Point(Trial trial, double load, double hardness, int parts, Estimate stiffness) {
    }

    /** Trials of the same polymer materials whose hardness was read as on this one, least filler first; empty when none can be compared. */
    public static List<Point> of(Trial trial, PropertyCatalogue properties) {
        if (!(trial.eContainer() instanceof Project project)) {
            return List.of();
        }
        Set<MaterialGrade> polymer = polymer(trial);
        List<Trial> alike = project.getTrials().stream().filter(t -> polymer(t).equals(polymer)).toList();
        List<PropertyKey> keys = alike.stream().flatMap(t -> t.getParts().stream()).flatMap(p -> p.getMeasurements().stream()).map(Measurement::getKey)
                .filter(Objects::nonNull).filter(k -> properties.find(k.getProperty()).filter(FilledTrials::shoreA).isPresent()).toList();
        List<Point> best = List.of();
        for (PropertyKey key : keys) {
            List<Point> points = points(alike, key, properties.find(key.getProperty()).orElseThrow());
            if (points.size() > best.size() || points.size() == best.size() && count(points) > count(best)) {
                best = points;
            }
        }
        return best;
    }

    private static int count(List<Point> points) {
        return points.stream().mapToInt(Point::parts).sum();
    }

    private static boolean shoreA(PropertyDef property) {
        return property.kind() == org.flexwright.quantity.QuantityKind.SHORE_A;
    }

    private static Set<MaterialGrade> polymer(Trial trial) {
        return FillerLoad.parts(trial).stream().map(FillerLoad.Part::use)
                .filter(u -> u.getRole() == PartRole.COMPONENT_A || u.getRole() == PartRole.COMPONENT_B || u.getRole() == PartRole.SINGLE || u.getRole() == PartRole.POLYOL)
                .map(u -> u.getGrade()).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    private static List<Point> points(List<Trial> alike, PropertyKey key, PropertyDef property) {
        List<Point> points = new ArrayList<>();
        for (Trial trial : alike) {
            double[] values = PartValues.of(trial, key, property).stream().filter(p -> !p.failed() && !p.notComparable() && p.hasNumber() && !p.censored())
                    .mapToDouble(PartValue::value).toArray();
            double hardness = values.length == 0 ? Double.NaN : Descriptive.mean(values);
            if (hardness >= 10 && hardness <= 95) {
                FillerLoad.of(trial).ifPresent(load -> points.add(new Point(trial, load.phr(), hardness, values.length, Estimate.exact(1, APPROXIMATE))));
            }
        }
        points.sort(Comparator.comparingDouble(Point::load));
        return points.stream().map(p -> new Point(p.trial(), p.load(), p.hardness(), p.parts(), stiffness(p.hardness(), points.getFirst().hardness(), p == points.getFirst())))
                .toList();
    }

    /** Over the formulas, and a point of reading either way; the least filled one is what the others are counted on. */
    private static Estimate stiffness(double hardness, double least, boolean itself) {
        if (itself) {
            return Estimate.exact(1, APPROXIMATE);
        }
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double logs = 0;
        for (HardnessModel model : HardnessModel.values()) {
            low = Math.min(low, model.modulus(hardness - POINT) / model.modulus(least));
            high = Math.max(high, model.modulus(hardness + POINT) / model.modulus(least));
            logs += Math.log(model.modulus(hardness) / model.modulus(least)) / HardnessModel.values().length;
        }
        return new Estimate(low, Math.exp(logs), high, APPROXIMATE);
    }
}
