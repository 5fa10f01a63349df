package org.flexwright.core.rubber;

import java.util.Arrays;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;

/** Modulus from Shore A as a band: lowest and highest of all models over the reading and three points to either side. */
public final class ModulusBand {

    /** Points a reading is good for. */
    public static final double POINTS = 3;
    /** Below this hardness no modulus is given. */
    public static final double LOWEST = 10;
    /** Above this hardness no modulus is given. */
    public static final double HIGHEST = 95;

    private static final Source BAND = Source.derived("Gent 1958; Qi, Joyce and Boyce 2003; IRHD curve of ISO 48-2 (from memory, unconfirmed); reading \u00b1 3 points");

    private ModulusBand() {
    }

    /** The band in MPa for a hardness of 10 to 95; likely is the geometric mean of the models. */
    public static Estimate of(double hardness) {
        return between(hardness, hardness);
    }

    /** The band in MPa for a range of hardness inside 10 to 95. */
    public static Estimate between(double low, double high) {
        if (!(low >= LOWEST && high <= HIGHEST && low <= high)) {
            throw new IllegalArgumentException("Modulus from hardness needs " + LOWEST + " to " + HIGHEST + " Shore A, got " + low + " to " + high + ".");
        }
        List<HardnessModel> models = Arrays.asList(HardnessModel.values());
        double least = models.stream().mapToDouble(m -> m.modulus(low - POINTS)).min().orElseThrow();
        double most = models.stream().mapToDouble(m -> m.modulus(high + POINTS)).max().orElseThrow();
        double middle = (low + high) / 2;
        double likely = Math.exp(models.stream().mapToDouble(m -> Math.log(m.modulus(middle))).average().orElseThrow());
        return new Estimate(least, likely, most, BAND);
    }
}
