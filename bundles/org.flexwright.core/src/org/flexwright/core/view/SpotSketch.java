package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Message;

/**
 * A drawn outline that stands in for a photo of a part. Places are shares of its width from the left and of its height from the top.
 *
 * @param id     as kept in a spot map
 * @param aspect width over height
 * @param lines  outlines, each a list of places {@code {across, down}}
 */
public record SpotSketch(String id, double aspect, List<List<double[]>> lines) {
    private static final int ROUND = 48;
    private static final SpotSketch DOME_TOP = new SpotSketch("dome-top", 1, List.of(ring(0.48), ring(0.34), ring(0.10)));
    private static final SpotSketch DOME_SIDE = new SpotSketch("dome-side", 2, List.of(List.of(at(0.02, 0.94), at(0.02, 0.84), at(0.15, 0.84)), arch(0.35, 0.74), List.of(at(0.85,
            0.84), at(0.98, 0.84), at(0.98, 0.94), at(0.02, 0.94))));
    private static final SpotSketch SHEET = new SpotSketch("sheet", 1.6, List.of(List.of(at(0.03, 0.05), at(0.97, 0.05), at(0.97, 0.95), at(0.03, 0.95), at(0.03, 0.05))));

    public SpotSketch {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /** All there are. */
    public static List<SpotSketch> all() {
        return List.of(DOME_TOP, DOME_SIDE, SHEET);
    }

    /** The one with that id. */
    public static Optional<SpotSketch> find(String id) {
        return all().stream().filter(sketch -> sketch.id.equals(id)).findFirst();
    }

    /** The one with that id, else a sheet. */
    public static SpotSketch orSheet(String id) {
        return find(id).orElse(SHEET);
    }

    /** A few words: {@code dome from above}. */
    public String title() {
        return Message.of(SpotSketch.class, "sketch." + id).text();
    }

    private static double[] at(double across, double down) {
        return new double[] {across, down};
    }

    private static List<double[]> ring(double radius) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i <= ROUND; i++) {
            double angle = 2 * Math.PI * i / ROUND;
            places.add(at(0.5 + radius * Math.cos(angle), 0.5 + radius * Math.sin(angle)));
        }
        return places;
    }

    /** Half an ellipse standing on the flange. */
    private static List<double[]> arch(double half, double height) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i <= ROUND; i++) {
            double angle = Math.PI * (1 - (double) i / ROUND);
            places.add(at(0.5 + half * Math.cos(angle), 0.84 - height * Math.sin(angle)));
        }
        return places;
    }
}
