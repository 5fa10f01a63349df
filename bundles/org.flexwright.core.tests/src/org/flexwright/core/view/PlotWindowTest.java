package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.junit.jupiter.api.Test;

class PlotWindowTest {

    private static PlotModel plot(Series... series) {
        return new PlotModel("p", Axis.over("Travel", "mm", 0, 10), Axis.over("Force", "N", 0, 10), List.of(series), List.of(), List.of());
    }

    private static Series line(double... xy) {
        return new Series("P1", Style.LINE, IntStream.range(0, xy.length / 2).mapToObj(i -> Point.of(xy[2 * i], xy[2 * i + 1])).toList());
    }

    @Test
    void aLineThatCrossesTheWindowWithoutAPointInsideIsCutAtBothEdges() {
        PlotModel cut = PlotWindow.cut(plot(line(0, 0, 10, 10)), 2, 4, 0, 10);
        assertEquals(List.of(Point.of(2, 2), Point.of(4, 4)), cut.series().get(0).points());
        assertEquals(2, cut.x().min());
        assertEquals(4, cut.x().max());
        assertEquals("Travel, mm", cut.x().title());
    }

    @Test
    void aPeakThatSticksOutAboveFallsIntoTwoPiecesOfTheSameName() {
        PlotModel cut = PlotWindow.cut(plot(line(0, 0, 5, 10, 10, 0)), 0, 10, 0, 4);
        assertEquals(2, cut.series().size());
        assertEquals(List.of("P1", "P1"), cut.series().stream().map(Series::name).toList());
        assertEquals(List.of(Point.of(0, 0), Point.of(2, 4)), cut.series().get(0).points());
        assertEquals(List.of(Point.of(8, 4), Point.of(10, 0)), cut.series().get(1).points());
    }

    @Test
    void theWholeWindowKeepsEveryPoint() {
        Series curve = line(0, 0, 1, 3, 2, 1, 2, 5, 1, 4);
        PlotModel all = plot(curve);
        assertEquals(List.of(curve.points()), PlotWindow.cut(all, 0, 10, 0, 10).series().stream().map(Series::points).toList());
    }

    @Test
    void nothingOutsideIsKeptAndEveryPointInsideIs() {
        Random random = new Random(51);
        for (int n = 0; n < 300; n++) {
            double[] xy = random.doubles(40, -5, 15).toArray();
            Series curve = line(xy);
            double left = random.nextDouble(0, 5);
            double low = random.nextDouble(0, 5);
            double right = left + random.nextDouble(0.1, 5);
            double high = low + random.nextDouble(0.1, 5);
            List<Point> kept = PlotWindow.cut(plot(curve), left, right, low, high).series().stream().flatMap(s -> s.points().stream()).toList();
            double near = 1e-9;
            assertTrue(kept.stream().allMatch(p -> p.x() >= left - near && p.x() <= right + near && p.y() >= low - near && p.y() <= high + near));
            assertTrue(kept.containsAll(curve.points().stream().filter(p -> p.x() > left && p.x() < right && p.y() > low && p.y() < high).toList()));
        }
    }
}
