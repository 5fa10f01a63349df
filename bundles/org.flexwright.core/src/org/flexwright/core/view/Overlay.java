package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Plots of the same sort laid over each other, as of several specimens. */
public final class Overlay {

    private static final int MOST_TICKS = 9;

    private Overlay() {
    }

    /**
     * One plot among them.
     *
     * @param name what it is of, such as the code of a specimen
     * @param plot the plot
     */
    public record Layer(String name, PlotModel plot) {
        public Layer {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(plot, "plot");
        }
    }

    /** True when both have the same quantities and units at their axes, so that one may lie over the other. */
    public static boolean fit(PlotModel one, PlotModel other) {
        return one.x().title().equals(other.x().title()) && one.y().title().equals(other.y().title());
    }

    /**
     * All layers that fit the first one, over axes that hold them all. A series goes by the name of its layer, and by its own where the layer
     * has several. Bands and levels are those of the first.
     *
     * @param layers one at least
     */
    public static PlotModel of(List<Layer> layers) {
        PlotModel first = layers.get(0).plot();
        if (layers.size() == 1) {
            return first;
        }
        List<Layer> fitting = layers.stream().filter(layer -> fit(first, layer.plot())).toList();
        List<PlotModel.Series> all = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Layer layer : fitting) {
            boolean single = layer.plot().series().size() == 1;
            for (PlotModel.Series series : layer.plot().series()) {
                String name = single || series.name().isEmpty() ? layer.name() : layer.name() + ", " + series.name();
                String only = name;
                for (int n = 2; !taken.add(only); n++) {
                    only = name + " (" + n + ")";
                }
                all.add(new PlotModel.Series(only, series.style(), series.points()));
            }
        }
        return new PlotModel(first.title(), axis(fitting.stream().map(layer -> layer.plot().x()).toList()), axis(fitting.stream().map(layer -> layer.plot().y()).toList()),
                all, first.bands(), first.lines());
    }

    private static Axis axis(List<Axis> all) {
        double min = all.stream().mapToDouble(Axis::min).min().orElseThrow();
        double max = all.stream().mapToDouble(Axis::max).max().orElseThrow();
        return new Axis(all.get(0).title(), min, max, Ticks.of(min, max, MOST_TICKS));
    }
}
