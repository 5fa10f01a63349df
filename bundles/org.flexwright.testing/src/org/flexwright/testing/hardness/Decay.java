package org.flexwright.testing.hardness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.Line;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Readings;

/**
 * Readings of one spot of one piece at several dwells: how far hardness falls while the gauge rests.
 *
 * @param piece  the piece
 * @param scale  the gauge's scale
 * @param spot   the spot; empty when it has no name
 * @param points dwell in s and median of its readings, the shortest dwell first; two at least
 */
public record Decay(Specimen piece, GaugeScale scale, String spot, List<DecayCalculation.Point> points) {
    public Decay {
        points = List.copyOf(points);
    }

    /** The spots of a piece that were read at two dwells at least. */
    public static List<Decay> of(Specimen piece) {
        Map<List<String>, Map<Double, List<Double>>> spots = new LinkedHashMap<>();
        for (Measurement measurement : piece.getMeasurements()) {
            PropertyKey key = measurement.getKey();
            if (key != null && key.getDwell() != null && key.getDwell() > 0 && Readings.durometer(key.getProperty())) {
                spots.computeIfAbsent(place(key), k -> new LinkedHashMap<>()).computeIfAbsent(key.getDwell(), d -> new ArrayList<>()).addAll(values(measurement));
            }
        }
        List<Decay> found = new ArrayList<>();
        spots.forEach((place, dwells) -> {
            List<DecayCalculation.Point> points = dwells.entrySet().stream().filter(e -> !e.getValue().isEmpty()).sorted(Map.Entry.comparingByKey())
                    .map(e -> new DecayCalculation.Point(e.getKey(), Descriptive.median(e.getValue().stream().mapToDouble(Double::doubleValue).toArray()))).toList();
            if (points.size() > 1) {
                found.add(new Decay(piece, Readings.gaugeOf(place.get(0)), place.get(3), points));
            }
        });
        return found;
    }

    /** True when the piece was read at that spot after both dwells: then a dwell of its own is meant, and no slip. */
    public static boolean both(Specimen piece, PropertyKey key, Double dwell) {
        return dwell != null && piece.getMeasurements().stream().map(Measurement::getKey).anyMatch(other -> other != null && dwell.equals(other.getDwell()) && place(other).equals(place(key)));
    }

    private static List<String> place(PropertyKey key) {
        return Arrays.asList(key.getProperty(), plain(key.getSpot()), plain(key.getSupport()), key.getSpot() == null ? "" : key.getSpot().strip());
    }

    private static String plain(String words) {
        return words == null ? "" : words.strip().toLowerCase(Locale.ROOT);
    }

    private static List<Double> values(Measurement measurement) {
        return measurement.getReadings().stream().filter(Measurements::counts).map(Reading::getValue).filter(v -> v != null).toList();
    }

    /** The line over the logarithm of time. */
    public Optional<Line> line() {
        return DecayCalculation.fit(points);
    }

    /** Points lost for each ten times longer, with its 95 % band, never narrower than the dial's step allows; of two dwells alone without one. */
    public Optional<Estimate> fall() {
        return line().map(line -> DecayCalculation.fall(line, points));
    }

    /** Code of the piece and spot. */
    public String words() {
        return ((piece.getCode() == null ? "" : piece.getCode()) + " " + spot).strip();
    }
}
