package org.flexwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.junit.jupiter.api.Test;

class PlotFileTest {

    private static PlotModel plot(Series... series) {
        return new PlotModel("Force over travel", Axis.over("Travel", "mm", 0, 2), Axis.over("Force", "N", 0, 1), List.of(series), List.of(), List.of());
    }

    private static Series curve(String name) {
        return new Series(name, Style.LINE, List.of(Point.of(0, 0), Point.of(1, 1), Point.of(2, 0.5)));
    }

    @Test
    void curvesAreLinesEachWithItsOwnDashAndNameAndAPieceOfACurveIsNoOther() {
        String svg = PlotFile.svg(plot(curve("P1"), curve("P2 <wet>"), curve("P1")));
        assertEquals(3 + 2, svg.split("<polyline", -1).length - 1, "three lines and two samples");
        assertEquals(3, svg.split("class=\"curve1\"", -1).length - 1);
        assertEquals(2, svg.split("class=\"curve2\"", -1).length - 1);
        assertTrue(svg.contains("P2 &lt;wet&gt;"));
        assertFalse(svg.contains("<circle"));
    }

    @Test
    void oneCurveNeedsNoLegend() {
        assertFalse(PlotFile.svg(plot(curve("P1"))).contains(">P1<"));
    }
}
