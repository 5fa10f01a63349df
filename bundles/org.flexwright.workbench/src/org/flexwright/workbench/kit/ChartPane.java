package org.flexwright.workbench.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.text.Format;
import java.text.ParsePosition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
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
import org.flexwright.core.view.PlotWindow;
import org.flexwright.core.view.Tick;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * Draws a plot model in the program's colours: axis titles with unit, target band behind the data, each series with its own colour,
 * marker and dash. Exports itself as PNG, SVG and CSV.
 * Once it is {@linkplain #explore explored}, wheel, mouse and keys zoom and shift it, and {@linkplain #showMarks marks} on it can be moved.
 */
public final class ChartPane extends Composite {

    private static final List<PlotSymbolType> MARKERS = List.of(PlotSymbolType.CIRCLE, PlotSymbolType.SQUARE, PlotSymbolType.DIAMOND,
            PlotSymbolType.TRIANGLE, PlotSymbolType.INVERTED_TRIANGLE, PlotSymbolType.CROSS);
    private static final List<LineStyle> DASHES = List.of(LineStyle.SOLID, LineStyle.DASH, LineStyle.DOT, LineStyle.DASHDOT,
            LineStyle.DASHDOTDOT);

    private static final int MARK_ROWS = 4;
    /** A series with more points is drawn without smoothing: nobody sees it, and the hand is not kept waiting. */
    private static final int DENSE = 800;
    /** More markers than these are drawn smaller. */
    private static final int MANY = 60;

    private final Kit kit;
    private final Chart chart;
    private PlotModel plot;
    private Function<PlotModel, String> svg;
    private Function<ChartWindow, PlotModel> finest;
    private ChartHand hand;
    private boolean due;
    private Consumer<ChartWindow> explorer;
    private Consumer<Double> pointer = place -> { };
    private BiConsumer<String, Double> mover = (name, place) -> { };
    private Consumer<String> chooser = name -> { };
    private ChartWindow whole;
    private ChartWindow window;
    private List<ChartMark> marks = List.of();
    private ChartMark carried;
    private String chosen = "";

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
        chart.getPlotArea().addCustomPaintListener(painter(false, (gc, y, size) -> paintMarks(gc, size)));
        chart.addListener(SWT.Resize, event -> settle());
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

    /** Shows another plot, whole. */
    public void show(PlotModel shown) {
        whole = new ChartWindow(shown.x().min(), shown.x().max(), shown.y().min(), shown.y().max());
        window = whole;
        draw(shown);
        settle();
    }

    /** Shows the same plot drawn with other points: finer for the window it shows, or with what has come to it. The window stays. */
    public void refine(PlotModel finer) {
        draw(finer);
    }

    private void draw(PlotModel shown) {
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
        style();
        chart.suspendUpdate(false);
        named(shown.title() + ", " + shown.x().title() + " across, " + shown.y().title() + " up");
        chart.updateLayout(); // the axes are placed by the legend and the words of before
        chart.redraw();
    }

    /** When the chart gets another size, it places its axes by the size its plot had before: once more when the plot has its own. */
    private void settle() {
        if (!due) {
            due = true;
            getDisplay().asyncExec(() -> {
                due = false;
                if (!chart.isDisposed()) {
                    chart.updateLayout();
                    chart.redraw();
                }
            });
        }
    }

    private void colour() {
        if (!chart.isDisposed()) {
            chart.suspendUpdate(true); // else each setting lays everything out anew
            style();
            chart.suspendUpdate(false);
        }
    }

    private void style() {
        chart.setBackground(kit.color(Ink.PAPER));
        chart.setBackgroundInPlotArea(kit.color(Ink.PAPER));
        axis(chart.getAxisSet().getXAxis(0), plot == null ? null : plot.x());
        axis(chart.getAxisSet().getYAxis(0), plot == null ? null : plot.y());
        if (plot != null) {
            range();
        }
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
    }

    private void range() {
        chart.getAxisSet().getXAxis(0).setRange(new Range(window.left(), window.right()));
        chart.getAxisSet().getYAxis(0).setRange(new Range(window.low(), window.high()));
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
        line.setSymbolSize(model.points().size() > MANY ? kit.grid().steps(0.5) : kit.grid().steps(1) + 1);
        line.setAntialias(model.points().size() > DENSE ? SWT.OFF : SWT.ON);
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

    /** From now on wheel, mouse and keys zoom and shift the plot; the listener hears of each new window and may {@link #refine} the plot for it. */
    public void explore(Consumer<ChartWindow> listener) {
        explorer = listener;
        hand = new ChartHand(this, chart.getPlotArea().getControl()); // a plot that is only looked at takes no keys
        Kit.describe(chart.getPlotArea().getControl(), "Plus and minus zoom across, star and slash upwards, arrows shift, Home shows the whole. "
                + "Page down takes the next mark, arrows then move it, Enter puts it down, Escape lets go of it.");
    }

    /** What of the plot is seen; null while nothing is shown. */
    public ChartWindow window() {
        return window;
    }

    /** All of the plot; null while nothing is shown. */
    public ChartWindow everything() {
        return whole;
    }

    /** How many points there are across. */
    public int pointsAcross() {
        return Math.max(2, chart.getPlotArea().getSize().x);
    }

    /** Marks along the horizontal axis, instead of those before. */
    public void showMarks(List<ChartMark> shown) {
        marks = List.copyOf(shown);
        carried = null;
        if (marks.stream().noneMatch(mark -> mark.name().equals(chosen))) {
            chosen = "";
        }
        redrawPlot();
    }

    /** The marks that stand there. */
    public List<ChartMark> marks() {
        return marks;
    }

    /** Called with the name of a mark and its new place when a person has moved it. */
    public void whenMarkMoved(BiConsumer<String, Double> listener) {
        mover = listener;
    }

    /** Called with the name of the mark a person chose on the plot, or with nothing when none is chosen any more. */
    public void whenMarkChosen(Consumer<String> listener) {
        chooser = listener;
    }

    /** Called with the place across the mouse is at, or null when it has left. */
    public void whenPointed(Consumer<Double> listener) {
        pointer = listener;
    }

    /** Chooses a mark by its name, or none; it comes into sight. */
    public void chooseMark(String name) {
        chosen = name;
        carried = null;
        marks.stream().filter(mark -> mark.name().equals(name)).findFirst().ifPresent(mark -> bringIn(mark.position()));
        redrawPlot();
    }

    /** The chosen mark, or empty. */
    public String chosenMark() {
        return chosen;
    }

    /** Shows everything again. */
    public void whole() {
        see(whole);
    }

    /** Looks at another window; what lies beyond the whole is not shown. */
    public void see(ChartWindow wanted) {
        if (explorer == null || whole == null) {
            return;
        }
        ChartWindow next = wanted.within(whole);
        if (!next.equals(window)) {
            window = next;
            chart.suspendUpdate(true);
            range();
            chart.suspendUpdate(false);
            chart.redraw();
            explorer.accept(window);
        }
    }

    /** Draws everything across {@code factor} times as wide, about the middle or the chosen mark. */
    public void zoom(double factor) {
        if (whole != null) {
            zoomAcross(factor, middle());
        }
    }

    boolean explored() {
        return explorer != null && whole != null && plot != null;
    }

    private IAxis across() {
        return chart.getAxisSet().getXAxis(0);
    }

    private double upAt(int y) {
        return chart.getAxisSet().getYAxis(0).getDataCoordinate(y);
    }

    int middle() {
        return chosenMark(marks).map(mark -> across().getPixelCoordinate(mark.position())).filter(x -> x >= 0 && x <= pointsAcross()).orElse(pointsAcross() / 2);
    }

    void zoomAcross(double factor, int x) {
        see(window.widened(factor, across().getDataCoordinate(x)));
    }

    void zoomUp(double factor, int y) {
        see(window.heightened(factor, upAt(y)));
    }

    void zoomTo(Rectangle frame) {
        double right = across().getDataCoordinate(frame.x + frame.width);
        double left = across().getDataCoordinate(frame.x);
        double high = upAt(frame.y);
        double low = upAt(frame.y + frame.height);
        if (left < right && low < high) {
            see(new ChartWindow(left, right, low, high));
        }
    }

    void shift(double part, double up) {
        see(window.moved(part, up));
    }

    void pointed(Point at) {
        pointer.accept(at == null ? null : across().getDataCoordinate(at.x));
    }

    /** The mark nearest to a place on the screen, or null when there is none within so many points. */
    ChartMark markNear(int x, int reach) {
        ChartMark best = null;
        int least = reach + 1;
        for (ChartMark mark : marks) {
            int away = Math.abs(across().getPixelCoordinate(mark.position()) - x);
            if (away < least) {
                least = away;
                best = mark;
            }
        }
        return best;
    }

    private Optional<ChartMark> chosenMark(List<ChartMark> among) {
        return carried != null && carried.name().equals(chosen) ? Optional.of(carried)
                : among.stream().filter(mark -> mark.name().equals(chosen)).findFirst();
    }

    boolean chosenMovable() {
        return chosenMark(marks).filter(ChartMark::movable).isPresent();
    }

    void choose(String name) {
        if (!name.equals(chosen)) {
            settleCarried();
            chosen = name;
            redrawPlot();
            chooser.accept(name);
        }
    }

    void chooseNext(int way) {
        List<ChartMark> inOrder = marks.stream().sorted(Comparator.comparingDouble(ChartMark::position)).toList();
        if (inOrder.isEmpty()) {
            return;
        }
        int at = inOrder.stream().map(ChartMark::name).toList().indexOf(chosen);
        int next = at < 0 ? way > 0 ? 0 : inOrder.size() - 1 : Math.floorMod(at + way, inOrder.size());
        choose(inOrder.get(next).name());
        bringIn(inOrder.get(next).position());
    }

    private void bringIn(double place) {
        if (window != null && (place < window.left() || place > window.right())) {
            double half = (window.right() - window.left()) / 2;
            see(new ChartWindow(place - half, place + half, window.low(), window.high()));
        }
    }

    /** Carries a mark to a place on the screen; it is not put down yet. */
    void carry(String name, int x) {
        int inside = Math.min(Math.max(x, 0), pointsAcross());
        marks.stream().filter(mark -> mark.name().equals(name)).findFirst().ifPresent(mark -> carried = mark.at(across().getDataCoordinate(inside)));
        redrawPlot();
    }

    /** Carries the chosen mark by so many points of the screen. */
    void nudge(int points) {
        double step = (window.right() - window.left()) / pointsAcross();
        chosenMark(marks).ifPresent(mark -> {
            carried = mark.at(Math.min(Math.max(mark.position() + points * step, whole.left()), whole.right()));
            bringIn(carried.position());
            redrawPlot();
        });
    }

    void putDown(String name) {
        if (carried != null && carried.name().equals(name)) {
            settleCarried();
        }
    }

    /** A mark that was carried is put down where it is. */
    void settleCarried() {
        if (carried != null) {
            ChartMark moved = carried;
            List<ChartMark> now = new ArrayList<>(marks);
            now.replaceAll(mark -> mark.name().equals(moved.name()) ? moved : mark);
            marks = List.copyOf(now); // it stays there until the page shows what it has made of it
            carried = null;
            mover.accept(moved.name(), moved.position());
        }
    }

    /** A mark that was carried goes back; without one, no mark is chosen any more. */
    void dropCarried() {
        if (carried != null) {
            carried = null;
            redrawPlot();
        } else {
            choose("");
        }
    }

    /** The plot has lost the focus: what was carried by keys is put down. */
    void letGo() {
        settleCarried();
    }

    private void redrawPlot() {
        if (!chart.isDisposed()) {
            chart.getPlotArea().getControl().redraw();
        }
    }

    private void paintMarks(GC gc, Point size) {
        gc.setFont(kit.type().font(Role.BODY));
        List<ChartMark> shown = marks.stream().map(mark -> carried != null && carried.name().equals(mark.name()) ? carried : mark).toList();
        List<Integer> ends = new ArrayList<>();
        for (ChartMark mark : shown.stream().sorted(Comparator.comparingDouble(ChartMark::position)).toList()) {
            int x = across().getPixelCoordinate(mark.position());
            if (x >= 0 && x <= size.x) {
                paintMark(gc, mark, x, size, ends);
            }
        }
        Rectangle frame = hand == null ? null : hand.pulled();
        if (frame != null) {
            gc.setForeground(kit.color(Ink.ACCENT));
            gc.setLineStyle(SWT.LINE_DASH);
            gc.drawRectangle(frame.x, frame.y, Math.min(frame.width, size.x - 1), Math.min(frame.height, size.y - 1));
            gc.setLineStyle(SWT.LINE_SOLID);
        }
        if (explored() && chart.getPlotArea().getControl().isFocusControl()) {
            gc.setForeground(kit.color(Ink.ACCENT));
            gc.setLineWidth(2);
            gc.drawRectangle(1, 1, size.x - 2, size.y - 2);
            gc.setLineWidth(1);
        }
    }

    /** A line down the plot with its words at the head, in the first row in which they do not run into others; without a row, the line alone. */
    private void paintMark(GC gc, ChartMark mark, int x, Point size, List<Integer> ends) {
        boolean isChosen = mark.name().equals(chosen);
        gc.setForeground(kit.color(mark.counts() ? Ink.ACCENT : Ink.QUIET));
        gc.setLineStyle(mark.counts() ? SWT.LINE_SOLID : SWT.LINE_DOT);
        gc.setLineWidth(isChosen ? 3 : 1);
        gc.drawLine(x, 0, x, size.y);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        Point words = gc.textExtent(mark.words());
        int gap = kit.grid().steps(1);
        int begin = x + gap + words.x + gap > size.x ? x - gap - words.x : x + gap; // at the right edge they stand left of the line
        int row = 0;
        while (row < ends.size() && ends.get(row) > begin && !isChosen) {
            row++;
        }
        if (row >= MARK_ROWS) {
            return;
        }
        if (row == ends.size()) {
            ends.add(0);
        }
        ends.set(row, Math.max(ends.get(row), begin + words.x + gap));
        int top = gap / 2 + row * (words.y + gap / 2);
        gc.setBackground(kit.color(isChosen ? Ink.BAND : Ink.PAPER));
        gc.fillRectangle(begin - 1, top, words.x + 2, words.y);
        gc.setForeground(kit.color(mark.counts() ? Ink.INK : Ink.QUIET));
        gc.drawText(mark.words(), begin, top, true);
    }

    /** What is seen, as a plot of its own: cut off at the edges of the window. */
    public PlotModel seen() {
        return explorer == null ? plot : PlotWindow.cut(plot, window.left(), window.right(), window.low(), window.high());
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
        Files.writeString(file, svg.apply(seen()));
    }

    /** What is written as CSV, for a window: points as they are, where fewer are drawn. */
    public void setFinest(Function<ChartWindow, PlotModel> finest) {
        this.finest = finest;
    }

    /** Writes the numbers of what is seen as CSV. */
    public void exportCsv(Path file) throws IOException {
        PlotModel all = finest == null || window == null ? null : finest.apply(window);
        PlotModel written = all == null ? seen() : PlotWindow.cut(all, window.left(), window.right(), window.low(), window.high());
        Files.writeString(file, written.table().csv());
    }
}
