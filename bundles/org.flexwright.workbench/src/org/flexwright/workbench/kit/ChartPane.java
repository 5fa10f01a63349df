package org.flexwright.workbench.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.text.Format;
import java.text.ParsePosition;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.IAxis;
import org.eclipse.swtchart.ICustomPaintListener;
import org.eclipse.swtchart.IErrorBar;
import org.eclipse.swtchart.ILineSeries;
import org.eclipse.swtchart.ILineSeries.PlotSymbolType;
import org.eclipse.swtchart.ISeries;
import org.eclipse.swtchart.ISeries.SeriesType;
import org.eclipse.swtchart.LineStyle;
import org.eclipse.swtchart.Range;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.flexwright.core.view.Tick;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * Draws a plot model in the program's colours: axis titles with unit, target band behind the data, each series with its own colour,
 * marker and dash. Exports itself as PNG, SVG and CSV.
 */
public final class ChartPane extends Composite {

    private static final List<PlotSymbolType> MARKERS = List.of(PlotSymbolType.CIRCLE, PlotSymbolType.SQUARE, PlotSymbolType.DIAMOND,
            PlotSymbolType.TRIANGLE, PlotSymbolType.INVERTED_TRIANGLE, PlotSymbolType.CROSS);
    private static final List<LineStyle> DASHES = List.of(LineStyle.SOLID, LineStyle.DASH, LineStyle.DOT, LineStyle.DASHDOT,
            LineStyle.DASHDOTDOT);

    private final Kit kit;
    private final Chart chart;
    private PlotModel plot;
    private Function<PlotModel, String> svg;

    /** An empty chart. */
    public ChartPane(Composite parent, Kit kit) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setLayout(new FillLayout());
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        chart = new Chart(this, SWT.NONE);
        kit.dress(chart, Ink.INK, Ink.PAPER, Role.BODY);
        kit.dress(chart.getPlotArea().getControl(), Ink.INK, Ink.PAPER, Role.BODY);
        chart.getTitle().setText("\u00a0"); // room for the topmost figure at the axis
        chart.getPlotArea().addCustomPaintListener(painter(true, this::paintBands));
        chart.getPlotArea().addCustomPaintListener(painter(false, this::paintLevels));
        named("Plot");
        kit.whenDressed(this, this::colour);
    }

    private interface Paint {
        void paint(GC gc, IAxis y, Point size);
    }

    private ICustomPaintListener painter(boolean behind, Paint work) {
        return new ICustomPaintListener() {
            @Override
            public void paintControl(PaintEvent event) {
                if (plot != null) {
                    work.paint(event.gc, chart.getAxisSet().getYAxis(0), chart.getPlotArea().getSize());
                }
            }

            @Override
            public boolean drawBehindSeries() {
                return behind;
            }
        };
    }

    private void named(String words) {
        Kit.name(chart, words);
        Kit.name(chart.getPlotArea().getControl(), words);
    }

    /** Sets what writes SVG; without it {@link #exportSvg} is refused. */
    public void setSvgWriter(Function<PlotModel, String> writer) {
        this.svg = writer;
    }

    /** True when SVG can be written. */
    public boolean writesSvg() {
        return svg != null;
    }

    /** What is shown; null when nothing is. */
    public PlotModel plot() {
        return plot;
    }

    /** Shows another plot. */
    public void show(PlotModel shown) {
        this.plot = shown;
        chart.suspendUpdate(true);
        for (ISeries<?> old : chart.getSeriesSet().getSeries()) {
            chart.getSeriesSet().deleteSeries(old.getId());
        }
        for (Series s : shown.series()) {
            ISeries<?> line = chart.getSeriesSet().createSeries(SeriesType.LINE, s.name());
            line.setXSeries(s.points().stream().mapToDouble(PlotModel.Point::x).toArray());
            line.setYSeries(s.points().stream().mapToDouble(PlotModel.Point::y).toArray());
        }
        chart.suspendUpdate(false);
        named(shown.title() + ", " + shown.x().title() + " across, " + shown.y().title() + " up");
        colour();
        chart.redraw();
    }

    private void colour() {
        if (chart.isDisposed()) {
            return;
        }
        chart.setBackground(kit.color(Ink.PAPER));
        chart.setBackgroundInPlotArea(kit.color(Ink.PAPER));
        axis(chart.getAxisSet().getXAxis(0), plot == null ? null : plot.x());
        axis(chart.getAxisSet().getYAxis(0), plot == null ? null : plot.y());
        chart.getLegend().setVisible(plot != null && plot.series().size() > 1);
        chart.getLegend().setPosition(SWT.BOTTOM);
        chart.getLegend().setBackground(kit.color(Ink.PAPER));
        chart.getLegend().setForeground(kit.color(Ink.INK));
        chart.getLegend().setFont(kit.type().font(Role.BODY));
        ISeries<?>[] shown = chart.getSeriesSet().getSeries();
        for (int i = 0; i < shown.length; i++) {
            series((ILineSeries<?>) shown[i], plot.series().get(i), i);
        }
    }

    private void axis(IAxis axis, Axis model) {
        axis.getTitle().setForeground(kit.color(Ink.INK));
        axis.getTitle().setFont(kit.type().font(Role.BODY));
        axis.getTick().setForeground(kit.color(Ink.QUIET));
        axis.getTick().setFont(kit.type().font(Role.BODY));
        axis.getTick().setFormat(new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        axis.getTick().setTickMarkStepHint(kit.grid().steps(16));
        axis.getGrid().setForeground(kit.color(Ink.LINE));
        axis.getGrid().setStyle(axis.getDirection() == IAxis.Direction.Y ? LineStyle.DOT : LineStyle.NONE);
        axis.getTitle().setVisible(model != null && !model.title().isEmpty());
        if (model == null) {
            return;
        }
        axis.getTitle().setText(model.title());
        boolean named = axis.getDirection() == IAxis.Direction.X && model.ticks().stream().anyMatch(ChartPane::isName);
        if (named) { // no category axis: that counts the points of each series on its own
            axis.getTick().setFormat(new NamedPlaces(model.ticks()));
        }
        axis.setRange(new Range(model.min(), model.max()));
    }

    /**
     * Prints a place on an axis by its name, and nothing one could see between the places. The chart reads its labels back and replaces by
     * dots those it does not find where it put them, so each invisible one is different.
     */
    private static final class NamedPlaces extends Format {
        private static final long serialVersionUID = 1L;
        private static final double NEAR = 1e-6;
        private static final String INVISIBLE = "\u200b";

        private final transient Map<String, Double> printed = new LinkedHashMap<>();
        private final transient List<Tick> ticks;

        NamedPlaces(List<Tick> ticks) {
            this.ticks = ticks;
        }

        @Override
        public StringBuffer format(Object place, StringBuffer to, FieldPosition position) {
            double at = ((Number) place).doubleValue();
            String label = ticks.stream().filter(tick -> Math.abs(tick.value() - at) < NEAR).map(Tick::label).findFirst()
                    .or(() -> printed.entrySet().stream().filter(e -> Math.abs(e.getValue() - at) < NEAR).map(Map.Entry::getKey).findFirst())
                    .orElseGet(() -> INVISIBLE.repeat(printed.size() + 1));
            printed.put(label, at);
            return to.append(label);
        }

        @Override
        public Object parseObject(String text, ParsePosition position) {
            position.setIndex(Math.max(1, text.length()));
            return printed.getOrDefault(text, 0.0);
        }
    }

    private static boolean isName(Tick tick) {
        return !tick.label().matches("[-−+]?[0-9.,  ]+([eE×].*)?");
    }

    private void series(ILineSeries<?> line, Series model, int index) {
        Color colour = kit.color(Palette.series(index));
        boolean joined = model.style() == Style.LINE;
        line.setLineColor(colour);
        line.setLineWidth(2);
        line.setLineStyle(joined ? DASHES.get(index % DASHES.size()) : LineStyle.NONE);
        line.setSymbolColor(colour);
        line.setSymbolType(joined ? PlotSymbolType.NONE : MARKERS.get(index % MARKERS.size()));
        line.setSymbolSize(kit.grid().steps(1) + 1);
        line.setAntialias(SWT.ON);
        IErrorBar bar = line.getYErrorBar();
        boolean intervals = model.points().stream().anyMatch(p -> p.low() < p.y() || p.high() > p.y());
        bar.setVisible(intervals);
        if (intervals) {
            bar.setType(IErrorBar.ErrorBarType.BOTH);
            bar.setMinusErrors(model.points().stream().mapToDouble(p -> p.y() - p.low()).toArray());
            bar.setPlusErrors(model.points().stream().mapToDouble(p -> p.high() - p.y()).toArray());
            bar.setColor(colour);
            bar.setLineWidth(2);
        }
    }

    private void paintBands(GC gc, IAxis y, Point size) {
        gc.setBackground(kit.color(Ink.BAND));
        for (PlotModel.Band band : plot.bands()) {
            int top = Double.isInfinite(band.high()) ? 0 : y.getPixelCoordinate(band.high());
            int bottom = Double.isInfinite(band.low()) ? size.y : y.getPixelCoordinate(band.low());
            gc.fillRectangle(0, top, size.x, Math.max(2, bottom - top));
        }
        gc.setForeground(kit.color(Ink.INK));
        gc.setFont(kit.type().font(Role.BODY));
        for (PlotModel.Band band : plot.bands()) {
            int top = Double.isInfinite(band.high()) ? 0 : y.getPixelCoordinate(band.high());
            gc.drawText(band.label(), size.x - gc.textExtent(band.label()).x - kit.grid().gap(), Math.max(0, top) + 2, true);
        }
    }

    private void paintLevels(GC gc, IAxis y, Point size) {
        gc.setForeground(kit.color(Ink.INK));
        gc.setFont(kit.type().font(Role.BODY));
        gc.setLineStyle(SWT.LINE_DASH);
        for (PlotModel.Level level : plot.lines()) {
            int at = y.getPixelCoordinate(level.y());
            gc.drawLine(0, at, size.x, at);
            gc.drawText(level.label(), kit.grid().gap(), at - gc.textExtent(level.label()).y - 2, true);
        }
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    /** Writes a picture as the screen shows it. */
    public void exportPng(Path file) throws IOException {
        Point size = chart.getSize();
        Image image = new Image(getDisplay(), Math.max(1, size.x), Math.max(1, size.y));
        GC gc = new GC(image);
        try {
            chart.print(gc);
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {image.getImageData()};
            try (var out = Files.newOutputStream(file)) {
                loader.save(out, SWT.IMAGE_PNG);
            }
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** Writes the plot as SVG. Throws IllegalStateException when no writer was set. */
    public void exportSvg(Path file) throws IOException {
        if (svg == null) {
            throw new IllegalStateException("Nothing here writes SVG.");
        }
        Files.writeString(file, svg.apply(plot));
    }

    /** Writes the numbers as CSV. */
    public void exportCsv(Path file) throws IOException {
        Files.writeString(file, plot.table().csv());
    }
}
