package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.junit.jupiter.api.Test;

class OverlayTest {

    private static PlotModel plot(String unit, double to, String... series) {
        return new PlotModel("Force over travel", Axis.over("Travel", "mm", 0, to), Axis.over("Force", unit, 0, to), Arrays.stream(series).map(name -> new Series(name,
                Style.LINE, List.of(Point.of(0, 0), Point.of(to, to)))).toList(), List.of(), List.of());
    }

    private static List<String> names(PlotModel plot) {
        return plot.series().stream().map(Series::name).toList();
    }

    @Test
    void curvesGoByTheNameOfTheirPieceAndTheAxesHoldThemAll() {
        PlotModel all = Overlay.of(List.of(new Overlay.Layer("P1", plot("N", 2, "curve")), new Overlay.Layer("P2", plot("N", 7, "curve"))));
        assertEquals(List.of("P1", "P2"), names(all));
        assertTrue(all.x().max() >= 7 && all.y().max() >= 7);
        assertEquals("Force, N", all.y().title());
    }

    @Test
    void aPieceWithSeveralCurvesKeepsTheirNames() {
        PlotModel all = Overlay.of(List.of(new Overlay.Layer("P1", plot("N", 2, "in", "out")), new Overlay.Layer("P2", plot("N", 2, "curve"))));
        assertEquals(List.of("P1, in", "P1, out", "P2"), names(all));
    }

    @Test
    void thePieceOfTheSameNameIsToldApart() {
        assertEquals(List.of("P1", "P1 (2)"), names(Overlay.of(List.of(new Overlay.Layer("P1", plot("N", 2, "a")), new Overlay.Layer("P1", plot("N", 2, "a"))))));
    }

    @Test
    void anotherUnitIsNeverDrawnOverTheSameAxis() {
        PlotModel newton = plot("N", 2, "curve");
        PlotModel stress = plot("MPa", 2, "curve");
        assertEquals(List.of("P1"), names(Overlay.of(List.of(new Overlay.Layer("P1", newton), new Overlay.Layer("P2", stress)))));
    }

    @Test
    void oneAloneStaysAsItIs() {
        PlotModel one = plot("N", 2, "curve");
        assertSame(one, Overlay.of(List.of(new Overlay.Layer("P1", one))));
    }

    @Test
    void aPlaceIsReadOutNoFinerThanTheScreenShowsIt() {
        PlotModel all = Overlay.of(List.of(new Overlay.Layer("P1", plot("N", 2, "curve")), new Overlay.Layer("P2", plot("N", 7, "curve"))));
        assertEquals("Travel, mm: 1.23     Force, N: P1 1.23   P2 1.23", Readout.at(all, 1.234567, 0.02, 0.03));
        assertEquals("Travel, mm: 5.00     Force, N: P2 5.0", Readout.at(all, 5, 0.02, 0.3));
        assertEquals("Travel, mm: 7.50", Readout.at(all, 7.5, 0.02, 0.3));
    }

    @Test
    void aLoopIsReadOnBothWays() {
        PlotModel loop = new PlotModel("Loop", Axis.over("Travel", "mm", 0, 2), Axis.over("Force", "N", 0, 4), List.of(new Series("", Style.LINE, List.of(Point.of(0, 0),
                Point.of(2, 4), Point.of(0, 1)))), List.of(), List.of());
        assertEquals("Travel, mm: 1.00     Force, N: 2.00 / 2.50", Readout.at(loop, 1, 0.02, 0.02));
    }
}
