package org.flexwright.report;

import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.Strip;
import org.flexwright.core.view.Tick;

/** Draws core's plot and strip models. */
final class Drawings {
    private static final double STRIP_WIDTH = 130;
    private static final double STRIP_HEIGHT = 18;
    private static final double WIDTH = 640;
    private static final double HEIGHT = 260;
    private static final double LEFT = 64;
    private static final double RIGHT = 12;
    private static final double TOP = 30;
    private static final double BOTTOM = 44;

    private Drawings() {
    }

    /** A strip to the scale of its row; {@code words} say the same aloud. */
    static Svg strip(Strip strip, String words) {
        Svg svg = new Svg(STRIP_WIDTH, STRIP_HEIGHT, words);
        double middle = STRIP_HEIGHT / 2;
        svg.rectangle(at(strip, strip.bandLow()), 2, at(strip, strip.bandHigh()) - at(strip, strip.bandLow()), STRIP_HEIGHT - 4, "band");
        if (strip.low() != null) {
            svg.line(at(strip, strip.low()), middle, at(strip, strip.high()), middle, "interval");
        }
        for (Strip.Dot dot : strip.dots()) {
            svg.circle(at(strip, dot.value()), middle, 2.6, dot.mark() == Strip.Mark.VALUE ? "dot" : "bound");
        }
        if (strip.reference() != null) {
            svg.diamond(at(strip, strip.reference()), middle, 4.5, "reference");
        }
        return svg;
    }

    private static double at(Strip strip, double value) {
        return 4 + strip.scale().at(value) * (STRIP_WIDTH - 8);
    }

    /** A plot with axes, units, target band and intervals. */
    static Svg plot(PlotModel plot) {
        Svg svg = new Svg(WIDTH, HEIGHT, plot.title());
        double floor = HEIGHT - BOTTOM;
        for (PlotModel.Band band : plot.bands()) {
            double high = y(plot, Math.min(band.high(), plot.y().max()));
            svg.rectangle(LEFT, high, WIDTH - LEFT - RIGHT, y(plot, Math.max(band.low(), plot.y().min())) - high, "band");
        }
        for (Tick tick : plot.y().ticks()) {
            svg.line(LEFT - 4, y(plot, tick.value()), LEFT, y(plot, tick.value()), "axis");
            svg.text(LEFT - 7, y(plot, tick.value()) + 4, tick.label(), "end", "label");
        }
        for (Tick tick : plot.x().ticks()) {
            svg.text(x(plot, tick.value()), floor + 16, tick.label(), "middle", "label");
        }
        plot.lines().forEach(level -> svg.line(LEFT, y(plot, level.y()), WIDTH - RIGHT, y(plot, level.y()), "level").text(WIDTH - RIGHT - 2, y(plot,
                level.y()) - 4, level.label(), "end", "label"));
        svg.line(LEFT, TOP, LEFT, floor, "axis").line(LEFT, floor, WIDTH - RIGHT, floor, "axis");
        for (PlotModel.Series series : plot.series()) {
            for (PlotModel.Point point : series.points()) {
                svg.line(x(plot, point.x()), y(plot, point.low()), x(plot, point.x()), y(plot, point.high()), "interval");
                svg.circle(x(plot, point.x()), y(plot, point.y()), 3.5, "dot");
            }
        }
        svg.text((LEFT + WIDTH) / 2, HEIGHT - 8, plot.x().title(), "middle", "title").text(4, 16, plot.y().title(), "start", "title");
        return svg;
    }

    private static double x(PlotModel plot, double value) {
        return LEFT + (value - plot.x().min()) / (plot.x().max() - plot.x().min()) * (WIDTH - LEFT - RIGHT);
    }

    private static double y(PlotModel plot, double value) {
        double inside = Math.min(plot.y().max(), Math.max(plot.y().min(), value));
        return HEIGHT - BOTTOM - (inside - plot.y().min()) / (plot.y().max() - plot.y().min()) * (HEIGHT - BOTTOM - TOP);
    }
}
