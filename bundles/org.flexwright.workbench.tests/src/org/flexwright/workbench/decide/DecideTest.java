package org.flexwright.workbench.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.ISeries;
import org.flexwright.core.view.Comparison;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DecideTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Comparison comparison() {
        return Comparison.of(Pages.project(), Ui.projects().registries());
    }

    private static int column(Comparison comparison, String code) {
        List<String> codes = comparison.columns().stream().map(Comparison.Column::code).toList();
        return codes.indexOf(code);
    }

    private static void click(CompareGrid grid, Rectangle at) {
        Event event = new Event();
        event.button = 1;
        event.x = at.x + at.width / 2;
        event.y = at.y + at.height / 2;
        grid.notifyListeners(SWT.MouseDown, event);
        Ui.pump();
    }

    private static CompareGrid grid(Shell shell) {
        return Ui.all(shell, CompareGrid.class).getFirst();
    }

    /** Steps to a cell with the arrow keys, from wherever one is. */
    private static void goTo(CompareGrid grid, int row, int column) {
        Pages.key(grid, SWT.HOME);
        for (int i = 0; i < comparison().rows().size() + 1; i++) {
            Pages.key(grid, SWT.ARROW_UP);
        }
        for (int i = 0; i <= row; i++) {
            Pages.key(grid, SWT.ARROW_DOWN);
        }
        for (int i = 0; i <= column; i++) {
            Pages.key(grid, SWT.ARROW_RIGHT);
        }
    }

    @Test
    void theReferenceComesFirstAndACellOpensItsReadings() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.project(), "decide.comparison");
        Comparison comparison = comparison();
        assertTrue(comparison.columns().getFirst().reference());
        CompareGrid grid = grid(shell);
        assertFalse(Ui.shows(shell, "What was learned from T06"), "the readings come when they are asked for");
        goTo(grid, 0, column(comparison, "T06"));
        assertTrue(Kit.nameOf(grid).contains("T06, Peak force"), "what one looks at is heard: " + Kit.nameOf(grid));
        assertTrue(Kit.nameOf(grid).contains("cannot tell"));
        Pages.key(grid, SWT.CR);
        assertTrue(Ui.shows(shell, "T06  Peak force"));
        assertTrue(Ui.shows(shell, "0.74  0.74 N"), "every reading behind the cell");
        Ui.picture(shell, "decide-behind");
        Ui.type(Ui.find(shell, Text.class, "Conclusion"), "Three more parts would settle it.");
        assertEquals("Three more parts would settle it.", Pages.trial("T06").getConclusion());
        Ui.click(shell, "Close");
        assertFalse(Ui.shows(shell, "What was learned from T06"));
    }

    @Test
    void aClickOnACellOpensWhatIsBehindIt() {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.project(), "decide.comparison");
        CompareGrid grid = grid(shell);
        CompareState state = new CompareState();
        state.take(comparison());
        CompareGeometry at = CompareGeometry.of(Ui.kit(), state, grid.getClientArea().height);
        click(grid, at.cell(0, 2));
        assertTrue(Ui.shows(shell, comparison().columns().get(2).code() + "  Peak force"));
    }

    @Test
    void aTargetSortsTheTrialsWithinTheirRoutesAndHHidesOne() {
        Projects.example(folder);
        CompareState state = new CompareState();
        state.take(comparison());
        List<String> before = codes(state);
        state.sort(0);
        List<Double> means = new ArrayList<>();
        for (int i = 0; i < state.shown().columns().size(); i++) {
            if ("moulding.cast".equals(state.shown().columns().get(i).route()) && state.shown().cell(0, i).judgement().mean() != null) {
                means.add(state.shown().cell(0, i).judgement().mean());
            }
        }
        assertEquals(means.stream().sorted().toList(), means, "smallest first");
        assertTrue(means.size() > 3);
        state.sort(0);
        state.sort(0);
        assertEquals(before, codes(state), "the third time it stands as it was");

        Shell shell = Pages.open(Pages.project(), "decide.comparison");
        CompareGrid grid = grid(shell);
        goTo(grid, 0, column(comparison(), "T01"));
        Pages.key(grid, 'h');
        assertFalse(Kit.nameOf(grid).contains("T01"), "what is hidden is not looked at");
        assertTrue(Ui.shows(shell, "1 trial is hidden"));
    }

    private static List<String> codes(CompareState state) {
        return state.shown().columns().stream().map(Comparison.Column::code).toList();
    }

    @Test
    void eachTrialStandsAtItsOwnPlaceInThePlot() throws Exception {
        Projects.example(folder);
        Shell shell = Pages.open(Pages.project(), "decide.plot");
        Ui.picture(shell, "decide-plot");
        ChartPane pane = Ui.all(shell, ChartPane.class).getFirst();
        Chart chart = Ui.all(shell, Chart.class).getFirst();
        assertFalse(chart.getAxisSet().getXAxis(0).isCategoryEnabled(), "a category axis would count each route's points from the left");
        ISeries<?>[] series = chart.getSeriesSet().getSeries();
        for (int i = 0; i < series.length; i++) {
            assertArrayEquals(pane.plot().series().get(i).points().stream().mapToDouble(p -> p.x()).toArray(), series[i].getXSeries());
        }
        Path csv = folder.resolve("plot.csv");
        pane.exportCsv(csv);
        assertTrue(Files.readString(csv).contains("T06"), "the numbers go out with their trials");
        Path svg = folder.resolve("plot.svg");
        pane.exportSvg(svg);
        assertTrue(Files.readString(svg).startsWith("<?xml"));
        Path png = folder.resolve("plot.png");
        pane.exportPng(png);
        assertTrue(Files.size(png) > 1000);
        Combo target = Ui.find(shell, Combo.class, "Target to draw");
        Ui.choose(target, target.getItem(1));
        assertTrue(pane.plot().title().startsWith("Snap ratio"), pane.plot().title());
    }

    @Test
    void withoutTargetsItSaysWhatGoesHere() {
        Projects.small(folder);
        Shell shell = Pages.open(Pages.project(), "decide.comparison");
        assertTrue(Ui.shows(shell, "It takes a target sheet with a target, and a trial."));
    }
}
