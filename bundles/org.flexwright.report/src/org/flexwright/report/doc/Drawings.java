package org.flexwright.report.doc;

import java.util.List;

import org.flexwright.core.view.Bars;
import org.flexwright.core.view.Lanes;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.Strip;
import org.flexwright.core.view.Tick;
import org.flexwright.report.doc.Drawing.Anchor;
import org.flexwright.report.doc.Drawing.Style;

/** Draws core's plot and strip models. */
public final class Drawings {
    private static final double STRIP_WIDTH = 130;
    private static final double STRIP_HEIGHT = 18;
    private static final double WIDTH = 640;
    private static final double HEIGHT = 260;
    private static final double LEFT = 64;
    private static final double RIGHT = 12;
    private static final double TOP = 30;
    private static final double BOTTOM = 44;
    private static final double BAR_LEFT = 120;
    private static final double BAR_ROW = 32;
    private static final double LANE_LEFT = 60;
    private static final double LANE_WIDTH = 400;
    private static final double LANE_ROW = 20;
    private static final double ROW = 18;
    private static final double SAMPLE = 26;
    /** A letter of the legend is about that wide. */
    private static final double LETTER = 6.2;

    private Drawings() {
    }

    /** A strip to the scale of its row; {@code words} say the same aloud. */
    public static Drawing strip(Strip strip, String words) {
        Drawing.Pen pen = new Drawing.Pen();
        double middle = STRIP_HEIGHT / 2;
        pen.rectangle(at(strip, strip.bandLow()), 2, at(strip, strip.bandHigh()) - at(strip, strip.bandLow()), STRIP_HEIGHT - 4, Style.BAND);
        if (strip.low() != null) {
            pen.line(at(strip, strip.low()), middle, at(strip, strip.high()), middle, Style.INTERVAL);
        }
        for (Strip.Dot dot : strip.dots()) {
            pen.circle(at(strip, dot.value()), middle, 2.6, dot.mark() == Strip.Mark.VALUE ? Style.DOT : Style.BOUND);
        }
        if (strip.reference() != null) {
            pen.diamond(at(strip, strip.reference()), middle, 4.5, Style.REFERENCE);
        }
        return pen.done(STRIP_WIDTH, STRIP_HEIGHT, words);
    }

    private static double at(Strip strip, double value) {
        return 4 + strip.scale().at(value) * (STRIP_WIDTH - 8);
    }

    /** Bars from zero with label, interval and words. */
    public static Drawing bars(Bars bars) {
        Drawing.Pen pen = new Drawing.Pen();
        double width = WIDTH - BAR_LEFT - RIGHT;
        for (int i = 0; i < bars.bars().size(); i++) {
            Bars.Bar bar = bars.bars().get(i);
            double top = i * BAR_ROW;
            double x = BAR_LEFT + bar.value() / bars.end() * width;
            pen.text(0, top + 12, bar.label(), Anchor.START, Style.TITLE).rectangle(BAR_LEFT, top + 3, Math.max(1, x - BAR_LEFT), 11, bar.sum() ? Style.INK : Style.DOT);
            if (bar.hasInterval()) {
                double low = BAR_LEFT + Math.min(1, bar.low() / bars.end()) * width;
                double high = BAR_LEFT + Math.min(1, bar.high() / bars.end()) * width;
                pen.line(low, top + 8.5, high, top + 8.5, Style.LEVEL).line(low, top + 4, low, top + 13, Style.LEVEL);
                if (bar.high() <= bars.end()) {
                    pen.line(high, top + 4, high, top + 13, Style.LEVEL);
                } else {
                    pen.diamond(high, top + 8.5, 4, Style.REFERENCE);
                }
            }
            pen.text(BAR_LEFT + 3, top + 26, bar.words(), Anchor.START, Style.LABEL);
        }
        pen.line(BAR_LEFT, 0, BAR_LEFT, bars.bars().size() * BAR_ROW - 4, Style.AXIS);
        return pen.done(WIDTH, bars.bars().size() * BAR_ROW, bars.title());
    }

    /** Every reading behind a verdict on one scale: the target as a band, a lane for the reference, each part, the mean. */
    public static Drawing lanes(Lanes lanes) {
        Drawing.Pen pen = new Drawing.Pen();
        double floor = lanes.lanes().size() * LANE_ROW;
        if (lanes.band() != null) {
            double low = lane(lanes, lanes.band().low());
            pen.rectangle(low, 0, lane(lanes, lanes.band().high()) - low, floor, Style.BAND);
        }
        for (int i = 0; i < lanes.lanes().size(); i++) {
            Lanes.Lane one = lanes.lanes().get(i);
            double middle = (i + 0.5) * LANE_ROW;
            pen.text(0, middle + 4, one.label(), Anchor.START, Style.TITLE).text(WIDTH, middle + 4, one.words(), Anchor.END, Style.LABEL);
            if (one.interval() != null) {
                pen.line(lane(lanes, one.interval().low()), middle, lane(lanes, one.interval().high()), middle, Style.INTERVAL);
            }
            one.readings().forEach(reading -> pen.line(lane(lanes, reading), middle - 6, lane(lanes, reading), middle + 6, Style.AXIS));
            if (!Double.isNaN(one.value())) {
                double x = lane(lanes, one.value());
                switch (one.kind()) {
                    case REFERENCE -> pen.diamond(x, middle, 4.5, Style.REFERENCE);
                    case MEAN -> pen.rectangle(x - 1.5, middle - 7, 3, 14, Style.INK);
                    case PART -> pen.circle(x, middle, 3.2, Style.DOT);
                    case ASIDE -> pen.circle(x, middle, 3.2, Style.BOUND);
                }
            }
        }
        pen.line(LANE_LEFT, floor, LANE_LEFT + LANE_WIDTH, floor, Style.AXIS);
        for (Tick tick : lanes.axis().ticks()) {
            pen.line(lane(lanes, tick.value()), floor, lane(lanes, tick.value()), floor + 4, Style.AXIS).text(lane(lanes, tick.value()), floor + 16, tick.label(), Anchor.MIDDLE, Style.LABEL);
        }
        pen.text(LANE_LEFT, floor + 32, lanes.axis().title(), Anchor.START, Style.TITLE);
        return pen.done(WIDTH, floor + 38, lanes.title());
    }

    private static double lane(Lanes lanes, double value) {
        return LANE_LEFT + lanes.scale().at(value) * LANE_WIDTH;
    }

    /** A plot with axes, units, target band and intervals. */
    public static Drawing plot(PlotModel plot) {
        Drawing.Pen pen = new Drawing.Pen();
        double floor = HEIGHT - BOTTOM;
        for (PlotModel.Band band : plot.bands()) {
            double high = y(plot, Math.min(band.high(), plot.y().max()));
            pen.rectangle(LEFT, high, WIDTH - LEFT - RIGHT, y(plot, Math.max(band.low(), plot.y().min())) - high, Style.BAND);
        }
        for (Tick tick : plot.y().ticks()) {
            pen.line(LEFT - 4, y(plot, tick.value()), LEFT, y(plot, tick.value()), Style.AXIS);
            pen.text(LEFT - 7, y(plot, tick.value()) + 4, tick.label(), Anchor.END, Style.LABEL);
        }
        for (Tick tick : plot.x().ticks()) {
            double half = tick.label().length() * LETTER / 2;
            boolean edge = x(plot, tick.value()) + half > WIDTH; // a long number at the end would be cut off
            pen.text(edge ? WIDTH : x(plot, tick.value()), floor + 16, tick.label(), edge ? Anchor.END : Anchor.MIDDLE, Style.LABEL);
        }
        plot.lines().forEach(level -> pen.line(LEFT, y(plot, level.y()), WIDTH - RIGHT, y(plot, level.y()), Style.LEVEL).text(WIDTH - RIGHT - 2, y(plot,
                level.y()) - 4, level.label(), Anchor.END, Style.LABEL));
        pen.line(LEFT, TOP, LEFT, floor, Style.AXIS).line(LEFT, floor, WIDTH - RIGHT, floor, Style.AXIS);
        List<String> names = plot.series().stream().map(PlotModel.Series::name).distinct().toList(); // a curve may come in pieces
        List<String> dotted = dotted(plot);
        for (PlotModel.Series series : plot.series()) {
            if (series.style() == PlotModel.Style.LINE) {
                pen.path(series.points().stream().map(p -> new Drawing.Spot(x(plot, p.x()), y(plot, p.y()))).toList(), Style.curve(names.indexOf(series.name())));
                continue;
            }
            for (PlotModel.Point point : series.points()) {
                pen.line(x(plot, point.x()), y(plot, point.low()), x(plot, point.x()), y(plot, point.high()), Style.INTERVAL);
                dot(pen, x(plot, point.x()), y(plot, point.y()), dotted.indexOf(series.name()));
            }
        }
        pen.text((LEFT + WIDTH) / 2, HEIGHT - 8, plot.x().title(), Anchor.MIDDLE, Style.TITLE).text(4, 16, plot.y().title(), Anchor.START, Style.TITLE);
        return pen.done(WIDTH, HEIGHT + legend(pen, plot, names), plot.title());
    }

    /** Names of the curves below the plot, when there are several; returns the height that takes. */
    private static double legend(Drawing.Pen pen, PlotModel plot, List<String> names) {
        boolean curves = plot.series().stream().anyMatch(s -> s.style() == PlotModel.Style.LINE);
        List<String> dotted = dotted(plot);
        if (!curves && dotted.size() < 2 || names.size() < 2) {
            return 0;
        }
        double left = LEFT;
        double foot = HEIGHT + ROW - 4;
        for (String name : names) {
            double wide = SAMPLE + 10 + name.length() * LETTER;
            if (left > LEFT && left + wide > WIDTH) {
                left = LEFT;
                foot += ROW;
            }
            if (plot.series().stream().anyMatch(s -> s.name().equals(name) && s.style() == PlotModel.Style.LINE)) {
                pen.path(List.of(new Drawing.Spot(left, foot - 4), new Drawing.Spot(left + SAMPLE, foot - 4)), Style.curve(names.indexOf(name)));
            } else {
                dot(pen, left + SAMPLE / 2, foot - 4, dotted.indexOf(name));
            }
            pen.text(left + SAMPLE + 5, foot, name, Anchor.START, Style.LABEL);
            left += wide + 12;
        }
        return foot - HEIGHT + 6;
    }

    /** Names of the series that are drawn as points. */
    private static List<String> dotted(PlotModel plot) {
        return plot.series().stream().filter(s -> s.style() == PlotModel.Style.POINTS).map(PlotModel.Series::name).distinct().toList();
    }

    /** A point, with a shape for each series that tells without its colour: full, diamond, hollow, square. */
    private static void dot(Drawing.Pen pen, double x, double y, int series) {
        switch (Math.floorMod(series, 4)) {
            case 0 -> pen.circle(x, y, 3.5, Style.DOT);
            case 1 -> pen.diamond(x, y, 4.5, Style.REFERENCE);
            case 2 -> pen.circle(x, y, 3.2, Style.BOUND);
            default -> pen.rectangle(x - 3, y - 3, 6, 6, Style.INK);
        }
    }

    private static double x(PlotModel plot, double value) {
        return LEFT + (value - plot.x().min()) / (plot.x().max() - plot.x().min()) * (WIDTH - LEFT - RIGHT);
    }

    private static double y(PlotModel plot, double value) {
        double inside = Math.min(plot.y().max(), Math.max(plot.y().min(), value));
        return HEIGHT - BOTTOM - (inside - plot.y().min()) / (plot.y().max() - plot.y().min()) * (HEIGHT - BOTTOM - TOP);
    }
}
