package org.flexwright.workbench.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
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
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A chart in the program's colours: axis titles with unit, a target band behind the data, each series with its own colour, marker and
 * dash. Exports itself as PNG, SVG and CSV.
 */
public final class ChartPane extends Composite {

    private static final PlotSymbolType[] MARKERS = {PlotSymbolType.CIRCLE, PlotSymbolType.SQUARE, PlotSymbolType.DIAMOND,
        PlotSymbolType.TRIANGLE, PlotSymbolType.INVERTED_TRIANGLE, PlotSymbolType.CROSS};
    private static final LineStyle[] DASHES = {LineStyle.SOLID, LineStyle.DASH, LineStyle.DOT, LineStyle.DASHDOT, LineStyle.DASHDOTDOT,
        LineStyle.SOLID};

    private final Kit kit;
    private final Chart chart;
    private ChartData data = ChartData.of("chart", "", "", java.util.List.of());
    private Function<ChartData, String> svg;

    /** An empty chart. */
    public ChartPane(Composite parent, Kit kit) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setLayout(new FillLayout());
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        chart = new Chart(this, SWT.NONE);
        kit.dress(chart, Ink.INK, Ink.PAPER, Role.BODY);
        kit.dress(chart.getPlotArea().getControl(), Ink.INK, Ink.PAPER, Role.BODY);
        chart.getTitle().setVisible(false);
        chart.getPlotArea().addCustomPaintListener(new ICustomPaintListener() {
            @Override
            public void paintControl(org.eclipse.swt.events.PaintEvent event) {
                paintBand(event.gc);
            }

            @Override
            public boolean drawBehindSeries() {
                return true;
            }
        });
        Kit.name(chart, data.name());
        Kit.name(chart.getPlotArea().getControl(), data.name());
        kit.whenDressed(this, this::colour);
    }

    /** Sets what writes SVG; without it {@link #exportSvg} is refused. */
    public void setSvgWriter(Function<ChartData, String> writer) {
        this.svg = writer;
    }

    /** True when SVG can be written. */
    public boolean writesSvg() {
        return svg != null;
    }

    /** What is shown. */
    public ChartData data() {
        return data;
    }

    /** Shows other data. */
    public void show(ChartData shown) {
        this.data = shown;
        chart.suspendUpdate(true);
        for (ISeries<?> old : chart.getSeriesSet().getSeries()) {
            chart.getSeriesSet().deleteSeries(old.getId());
        }
        for (ChartSeries s : shown.series()) {
            ILineSeries<?> line = (ILineSeries<?>) chart.getSeriesSet().createSeries(SeriesType.LINE, s.name());
            line.setXSeries(s.x());
            line.setYSeries(s.y());
        }
        Kit.name(chart, shown.name());
        Kit.name(chart.getPlotArea().getControl(), shown.name() + ", " + shown.series().size() + " series");
        chart.suspendUpdate(false);
        colour();
        range();
        chart.redraw();
    }

    private void colour() {
        if (chart.isDisposed()) {
            return;
        }
        chart.setBackground(kit.color(Ink.PAPER));
        chart.setBackgroundInPlotArea(kit.color(Ink.PAPER));
        IAxis x = chart.getAxisSet().getXAxis(0);
        IAxis y = chart.getAxisSet().getYAxis(0);
        axis(x, data.xTitle());
        axis(y, data.yTitle());
        if (!data.categories().isEmpty()) {
            x.setCategorySeries(data.categories().toArray(String[]::new));
        }
        x.enableCategory(!data.categories().isEmpty());
        chart.getLegend().setVisible(data.series().size() > 1);
        chart.getLegend().setPosition(SWT.BOTTOM);
        chart.getLegend().setBackground(kit.color(Ink.PAPER));
        chart.getLegend().setForeground(kit.color(Ink.INK));
        chart.getLegend().setFont(kit.type().font(Role.BODY));
        ISeries<?>[] shown = chart.getSeriesSet().getSeries();
        for (int i = 0; i < shown.length; i++) {
            series((ILineSeries<?>) shown[i], data.series().get(i), i);
        }
    }

    private void axis(IAxis axis, String title) {
        axis.getTitle().setText(title);
        axis.getTitle().setVisible(!title.isEmpty());
        axis.getTitle().setForeground(kit.color(Ink.INK));
        axis.getTitle().setFont(kit.type().font(Role.BODY));
        axis.getTick().setForeground(kit.color(Ink.QUIET));
        axis.getTick().setFont(kit.type().font(Role.BODY));
        axis.getTick().setFormat(new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        axis.getTick().setTickMarkStepHint(kit.grid().steps(16));
        axis.getGrid().setForeground(kit.color(Ink.LINE));
        axis.getGrid().setStyle(axis.getDirection() == IAxis.Direction.Y ? LineStyle.DOT : LineStyle.NONE);
    }

    private void series(ILineSeries<?> line, ChartSeries s, int index) {
        var colour = kit.color(Palette.series(index));
        line.setLineColor(colour);
        line.setLineWidth(2);
        line.setLineStyle(s.joined() ? DASHES[index % DASHES.length] : LineStyle.NONE);
        line.setSymbolColor(colour);
        line.setSymbolType(s.marked() ? MARKERS[index % MARKERS.length] : PlotSymbolType.NONE);
        line.setSymbolSize(kit.grid().steps(1) + 1);
        line.setAntialias(SWT.ON);
        IErrorBar bar = line.getYErrorBar();
        bar.setVisible(s.minus().length > 0);
        if (s.minus().length > 0) {
            bar.setType(IErrorBar.ErrorBarType.BOTH);
            bar.setMinusErrors(s.minus());
            bar.setPlusErrors(s.plus());
            bar.setColor(colour);
            bar.setLineWidth(2);
        }
    }

    /** Everything in sight, the band and the intervals too, with a little air. */
    private void range() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (ChartSeries s : data.series()) {
            for (int i = 0; i < s.y().length; i++) {
                low = Math.min(low, s.y()[i] - (s.minus().length == 0 ? 0 : s.minus()[i]));
                high = Math.max(high, s.y()[i] + (s.plus().length == 0 ? 0 : s.plus()[i]));
            }
        }
        for (Double end : new Double[] {data.bandLow(), data.bandHigh()}) {
            if (end != null) {
                low = Math.min(low, end);
                high = Math.max(high, end);
            }
        }
        chart.getAxisSet().adjustRange();
        if (low <= high) {
            double air = low == high ? Math.max(Math.abs(low) * 0.1, 0.1) : (high - low) * 0.08;
            chart.getAxisSet().getYAxis(0).setRange(new Range(low - air, high + air));
        }
    }

    private void paintBand(GC gc) {
        if (!data.banded()) {
            return;
        }
        IAxis y = chart.getAxisSet().getYAxis(0);
        var size = chart.getPlotArea().getSize();
        int top = data.bandHigh() == null ? 0 : y.getPixelCoordinate(data.bandHigh());
        int bottom = data.bandLow() == null ? size.y : y.getPixelCoordinate(data.bandLow());
        gc.setBackground(kit.color(Ink.BAND));
        gc.fillRectangle(0, top, size.x, Math.max(2, bottom - top));
    }

    /** Writes a picture as the screen shows it. */
    public void exportPng(Path file) throws IOException {
        Image image = new Image(getDisplay(), Math.max(1, chart.getSize().x), Math.max(1, chart.getSize().y));
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

    /** Writes the chart as SVG. Throws IllegalStateException when no writer was set. */
    public void exportSvg(Path file) throws IOException {
        if (svg == null) {
            throw new IllegalStateException("Nothing here writes SVG.");
        }
        Files.writeString(file, svg.apply(data));
    }

    /** Writes the numbers as CSV. */
    public void exportCsv(Path file) throws IOException {
        Files.writeString(file, data.csv());
    }
}
