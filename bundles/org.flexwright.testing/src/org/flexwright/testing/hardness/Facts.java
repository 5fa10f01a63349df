package org.flexwright.testing.hardness;

import java.util.List;

import org.flexwright.testing.GaugeScale;

/**
 * What is known of durometer readings on one piece; null stands for what nobody said.
 *
 * @param standard    whose protocol they are held against
 * @param stated      whether somebody said that they follow it; else it serves as the yardstick of the workshop
 * @param scale       the gauge's scale
 * @param sort        vulcanised or thermoplastic
 * @param thickness   rubber under the spot in mm, plies together
 * @param plies       layers that make it up
 * @param plySmooth   whether their faces are smooth
 * @param curved      whether the place is curved
 * @param edge        to the nearest edge in mm
 * @param spacing     between readings in mm
 * @param dwell       s from contact to reading
 * @param rest        h from the end of cure to the test
 * @param temperature of the piece in degrees Celsius
 * @param readings    the readings that count
 */
public record Facts(DurometerStandard standard, boolean stated, GaugeScale scale, RubberKind sort, Double thickness, Integer plies, Boolean plySmooth, boolean curved,
        Double edge, Double spacing, Double dwell, Double rest, Double temperature, List<Double> readings) {
    public Facts {
        readings = List.copyOf(readings);
    }
}
