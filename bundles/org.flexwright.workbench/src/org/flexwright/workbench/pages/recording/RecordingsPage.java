package org.flexwright.workbench.pages.recording;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.naming.Names;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.Readout;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.ChartMark;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.ChartWindow;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.ChartFiles;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;

/**
 * What instruments recorded of some pieces: the ticked ones drawn over each other, of the chosen one its marks, results and how it is read.
 */
final class RecordingsPage implements EditorPage {

    /** More are not ticked by themselves when the page opens: each is held in memory while it is shown. */
    private static final int TICKED = 6;
    /** So many points are drawn for each one across the screen. */
    private static final int FINE = 2;
    private static final int MOST = 7;
    /** A longer curve is written thinned too; the raw file has every row. */
    private static final int WRITTEN = 100_000;
    private static final double ZOOM = 1.6;
    private static final String NO_PIECE = "A recording belongs to a piece: add a part on the page Parts and readings first.";

    private final PageContext context;
    private final Kit kit;
    private final Composite root;
    private final Notice notice;
    private final Doing doing;
    private final EmptyState none;
    private final Composite full;
    private final PickBox<RecordingPlot> which;
    private final Composite stack;
    private final Composite message;
    private final Prose words;
    private final ChartPane chart;
    private final Label readout;
    private final ScrollPane side;
    private final Listing<Recording> list;
    private final PickBox<Recording> over;
    private final ResultsBlock results;
    private final MarksBlock marks;
    private final RemarksBlock remarks;
    private final SettingsBlock settings;
    private final Curves curves;
    private final PlotFeed feed;
    private final Set<Recording> ticked = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Recording> known = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Recording> guests = new ArrayList<>();
    private Recording chosen;
    private String plotId = "";
    private List<PlotFeed.Curve> drawn = List.of();
    private boolean stale;

    RecordingsPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        root = kit.pane(parent, 1, Spacing.NONE);
        notice = new Notice(root, kit, 1);
        doing = new Doing(context.session(), notice::say);
        Composite one = kit.pane(root, 1, Spacing.NONE);
        one.setLayout(new StackLayout());
        one.setLayoutData(Grid.fill());
        none = new EmptyState(one, kit, "What an instrument has recorded of a piece is drawn here: force over travel, a strip that is stretched, "
                + "bounces by their sound. The file is kept as it came.", writable() ? "Take in a file…" : null, () -> takeIn());
        full = kit.pane(one, 1, Spacing.NONE);
        Composite edge = kit.pane(full, 1, new Spacing(6, 3, 0, 1));
        edge.setLayoutData(Grid.wide());
        Composite bar = Flow.pane(edge, kit, Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit.text(bar, "Curve");
        which = new PickBox<>(bar, kit, "Curve to draw", null, RecordingPlot::title);
        Button whole = kit.action(bar, "&Whole", () -> chart().whole());
        whole.setToolTipText("Shows everything again (Home, or a double click)");
        Button nearer = kit.action(bar, "+", () -> chart().zoom(ZOOM));
        Kit.name(nearer, "Nearer");
        nearer.setToolTipText("Draws the curve wider: the wheel, plus, or pull up a frame with the mouse");
        Button further = kit.action(bar, "−", () -> chart().zoom(1 / ZOOM));
        Kit.name(further, "Further off");
        further.setToolTipText("Draws the curve narrower: the wheel, or minus");
        if (writable()) {
            kit.action(bar, "&Take in a file…", () -> takeIn());
        }
        Composite halves = kit.pane(full, 1, Spacing.NONE);
        halves.setLayoutData(Grid.fill());
        Composite left = kit.pane(halves, 1, new Spacing(2, 0, 0, 0));
        stack = kit.pane(left, 1, Spacing.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(Grid.fill());
        chart = new ChartPane(stack, kit);
        ChartFiles.actions(bar, kit, context, chart, notice::say);
        message = kit.pane(stack, 1, Spacing.PANEL);
        words = Prose.quiet(message, kit, "");
        words.setLayoutData(Grid.wide());
        readout = kit.quiet(left, " ");
        readout.setLayoutData(Grid.wide());
        Kit.name(readout, "Under the mouse");
        side = new ScrollPane(halves, kit, 1, new Spacing(4, 0, 4, 4));
        halves.setLayout(new Halves(kit, left, side));
        list = Listing.ticked(side.body(), kit, "Recordings: ticked are drawn", MOST, List.of(Column.text("Piece", 7, this::piece), Column.text("Recording", 30,
                this::title)));
        list.control().setLayoutData(Grid.wide());
        list.whenChosen(this::choose);
        list.whenTicked(this::tick);
        over = new PickBox<>(side.body(), kit, "Lay another one over these", "Lay another one over these…", RecordingsPage::from);
        over.control().setLayoutData(Grid.wide()); // its words are long: it takes the width there is, and asks for none
        over.whenChosen(this::layOver);
        results = new ResultsBlock(side.body(), context, doing);
        marks = new MarksBlock(side.body(), context, doing, name -> chart().chooseMark(name));
        remarks = new RemarksBlock(side.body(), kit);
        settings = new SettingsBlock(side.body(), context);
        curves = new Curves(root.getDisplay(), context.session(), context.registries(), this::arrived);
        feed = new PlotFeed(root.getDisplay());
        which.whenChosen(plot -> {
            plotId = plot.id();
            draw();
        });
        chart.setFinest(window -> PlotFeed.now(drawn, window, WRITTEN).orElse(null));
        chart.explore(this::looked);
        chart.whenMarkMoved(this::moveMark);
        chart.whenMarkChosen(marks::choose);
        chart.whenPointed(this::pointed);
        TakeIn.dropped(root, context, this::takeIn);
        root.addListener(SWT.Dispose, event -> {
            curves.close();
            feed.close();
        });
        root.addListener(SWT.Paint, event -> catchUp());
        refresh();
        Settling.keep(kit, root, () -> { });
    }

    /** The chart, for what is made before it. */
    private ChartPane chart() {
        return chart;
    }

    private String piece(Recording recording) {
        if (guest(recording)) {
            return Names.of(recording.eContainer());
        }
        return recording.eContainer() instanceof Specimen specimen ? Objects.toString(specimen.getCode(), "–") : "–";
    }

    /** Code and title; what keeps it from being drawn stands before them, where it is seen in a narrow column. */
    private String title(Recording recording) {
        String words = Objects.toString(recording.getTitle(), recording.getFile() == null ? "" : Objects.toString(recording.getFile().getFileName(), ""));
        Curves.State state = curves.of(recording);
        String first = !counts(recording) ? "left out: " + recording.getLeftOut() + " · " : state.busy() ? "reading… " : state.trouble().isEmpty() ? "" : "■ cannot be read · ";
        return first + (Objects.toString(recording.getCode(), "") + "  " + words).strip() + (recording.getCycle() == null ? "" : ", cycle " + recording.getCycle());
    }

    private boolean writable() {
        return !context.session().readOnly();
    }

    private List<Specimen> pieces() {
        return switch (context.subject()) {
            case Trial trial -> List.copyOf(trial.getParts());
            case Specimen piece -> List.of(piece);
            default -> List.of((Specimen) context.subject().eContainer());
        };
    }

    private List<Recording> own() {
        return context.subject() instanceof Recording one ? List.of(one) : pieces().stream().flatMap(piece -> piece.getRecordings().stream()).toList();
    }

    /** Those of the page's pieces and those laid over them from elsewhere. */
    private List<Recording> all() {
        List<Recording> all = new ArrayList<>(own());
        guests.removeIf(guest -> !(guest.eContainer() instanceof Specimen) || all.contains(guest));
        all.addAll(guests);
        return all;
    }

    /** Recordings of the same kind on other pieces of the project; reference parts come first. */
    private List<Recording> elsewhere() {
        List<Recording> here = all();
        return chosen == null ? List.of() : Recordings.all(context.session().project()).filter(r -> !here.contains(r) && counts(r) && Objects.equals(r.getKind(), chosen
                .getKind())).toList();
    }

    private void layOver(Recording guest) {
        if (guest != null) {
            guests.add(guest);
            known.add(guest);
            ticked.add(guest);
            refresh();
        }
    }

    private static String from(Recording recording) {
        return Names.path(recording.eContainer()) + ": " + Recordings.name(recording);
    }

    private boolean guest(Recording recording) {
        return guests.contains(recording);
    }

    private static boolean counts(Recording recording) {
        return recording.getLeftOut() == null || recording.getLeftOut().isBlank();
    }

    private void takeIn() {
        if (pieces().isEmpty()) {
            doing.say(NO_PIECE);
        } else {
            TakeIn.ask(root.getShell(), this::takeIn);
        }
    }

    private void takeIn(Path file) {
        List<Specimen> there = pieces();
        if (there.isEmpty()) {
            doing.say(NO_PIECE);
            return;
        }
        // the next piece without a recording, for a maker who goes through them in order
        Specimen first = there.stream().filter(piece -> piece.getRecordings().isEmpty()).findFirst().orElse(there.getFirst());
        new TakeInDialog(root.getShell(), context, file, there, first, (made, data) -> {
            curves.given(made, data);
            ticked.add(made);
            known.add(made);
            choose(made);
        }).open();
    }

    private void choose(Recording recording) {
        if (recording != chosen) {
            chosen = recording;
            refresh();
        }
    }

    private void tick(Recording recording, boolean on) {
        if (on) {
            ticked.add(recording);
        } else {
            ticked.remove(recording);
        }
        refresh();
    }

    /** The page as the project is now. */
    private void refresh() {
        List<Recording> all = all();
        boolean empty = all.isEmpty();
        StackLayout layout = (StackLayout) full.getParent().getLayout();
        layout.topControl = empty ? none : full;
        full.getParent().layout();
        ticked.retainAll(all);
        known.retainAll(all);
        if (chosen == null || !all.contains(chosen)) {
            chosen = all.stream().filter(RecordingsPage::counts).findFirst().orElse(empty ? null : all.getFirst());
        }
        for (Recording recording : all) { // new ones are drawn with the others
            if (known.add(recording) && ticked.size() < TICKED && counts(recording) && chosen != null && Objects.equals(recording.getKind(), chosen.getKind())) {
                ticked.add(recording);
            }
        }
        Set<Recording> shown = Collections.newSetFromMap(new IdentityHashMap<>());
        shown.addAll(ticked);
        if (chosen != null) {
            shown.add(chosen);
        }
        curves.want(shown);
        settings.show(chosen);
        arrived();
    }

    /** Something was read, or something else is looked at. */
    private void arrived() {
        if (root.isDisposed()) {
            return;
        }
        List<Recording> all = all();
        list.show(all);
        list.tick(ticked::contains);
        list.choose(chosen);
        Curves.State state = curves.of(chosen);
        Look look = state.look();
        List<RecordingPlot> plots = look == null ? List.of() : look.plots();
        RecordingPlot plot = plots.stream().filter(p -> p.id().equals(plotId)).findFirst().orElse(plots.isEmpty() ? null : plots.getFirst());
        plotId = plot == null ? plotId : plot.id();
        which.show(plots, plot);
        which.control().getParent().layout();
        List<Recording> elsewhere = elsewhere();
        over.show(elsewhere, null);
        Grid.shown(over.control(), !elsewhere.isEmpty());
        results.show(chosen, look, others());
        marks.show(chosen, look, plot);
        remarks.show(look, state.trouble());
        draw();
        side.reflow();
    }

    /** What else is shown of the same kind and has been read. */
    private List<ResultsBlock.Found> others() {
        return own().stream().filter(r -> ticked.contains(r) && r != chosen && counts(r) && Objects.equals(r.getKind(), chosen.getKind())).filter(r -> curves.of(r).look() != null)
                .map(r -> new ResultsBlock.Found(r, curves.of(r).look())).toList();
    }

    private RecordingPlot plotOf(Recording recording) {
        Look look = curves.of(recording).look();
        return look == null ? null : look.plots().stream().filter(p -> p.id().equals(plotId)).findFirst().orElse(null);
    }

    private String nameOf(Recording recording) {
        String code = recording.eContainer() instanceof Specimen specimen && specimen.getCode() != null ? specimen.getCode() : "";
        String piece = guest(recording) ? Names.path(recording.eContainer()) : code;
        boolean alone = all().stream().filter(r -> r.eContainer() == recording.eContainer()).count() < 2;
        boolean cycles = all().stream().anyMatch(r -> r.eContainer() == recording.eContainer() && !Objects.equals(r.getCycle(), recording.getCycle()));
        String cycle = recording.getCycle() == null || !cycles ? "" : ", cycle " + recording.getCycle();
        return (alone && !piece.isEmpty() ? piece : (piece + " " + Objects.toString(recording.getCode(), "")).strip()) + cycle;
    }

    private void draw() {
        if (chosen == null) {
            return;
        }
        List<PlotFeed.Curve> now = new ArrayList<>();
        for (Recording recording : all()) {
            boolean fits = recording == chosen || ticked.contains(recording) && Objects.equals(recording.getKind(), chosen.getKind());
            RecordingPlot plot = fits ? plotOf(recording) : null;
            if (plot != null) {
                now.add(new PlotFeed.Curve(nameOf(recording), plot));
            }
        }
        Curves.State state = curves.of(chosen);
        words.setWords(state.busy() ? "Reading…" : state.trouble().isEmpty() ? "Nothing can be drawn yet; what is missing stands beside it." : state.trouble());
        message.layout();
        boolean some = !now.isEmpty();
        ((StackLayout) stack.getLayout()).topControl = some ? chart : message;
        stack.layout();
        if (some && !now.equals(drawn)) {
            boolean same = now.stream().map(PlotFeed.Curve::name).toList().equals(drawn.stream().map(PlotFeed.Curve::name).toList())
                    && now.getFirst().plot().id().equals(drawn.getFirst().plot().id());
            ChartWindow window = same && chart.window() != null && !chart.window().equals(chart.everything()) ? chart.window() : null;
            feed.draw(now, window, FINE * Math.max(chart.pointsAcross(), 400), window == null ? this::showWhole : this::showPart);
        }
        drawn = now;
        showMarks();
    }

    private void showWhole(PlotModel plot) {
        if (!chart.isDisposed()) {
            chart.show(plot);
            readout.setText(" ");
        }
    }

    private void showPart(PlotModel plot) {
        if (!chart.isDisposed()) {
            chart.refine(plot);
        }
    }

    private void looked(ChartWindow window) {
        feed.draw(drawn, window, FINE * chart.pointsAcross(), this::showPart);
    }

    private void showMarks() {
        RecordingPlot plot = plotOf(chosen);
        Look look = curves.of(chosen).look();
        List<ChartMark> shown = look == null || plot == null || !plot.marksAcross() ? List.of() : look.marks().stream().map(this::mark).toList();
        if (!shown.equals(chart.marks())) {
            chart.showMarks(shown);
        }
    }

    private ChartMark mark(FoundMark mark) {
        boolean counts = Recordings.mark(chosen, mark.name()).map(RecordingMark::getLeftOut).isEmpty();
        return new ChartMark(mark.name(), mark.title(), mark.position(), mark.movable() && writable(), mark.byHand(), counts);
    }

    private void moveMark(String name, double place) {
        marks.choose(name);
        doing.edit("move a mark", edit -> Recordings.mark(edit, chosen, name, MarksBlock.rounded(place, chart.window(), chart.pointsAcross())));
    }

    private void pointed(Double place) {
        PlotModel plot = chart.plot();
        Point size = chart.getSize();
        String said = place == null || plot == null ? " " : Readout.at(plot, place, (chart.window().right() - chart.window().left()) / chart.pointsAcross(),
                (chart.window().high() - chart.window().low()) / Math.max(1, size.y));
        if (!said.equals(readout.getText())) {
            readout.setText(Kit.plain(said));
        }
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        if (root.isVisible()) {
            refresh();
        } else {
            stale = true;
        }
    }

    private void catchUp() {
        if (stale) {
            stale = false;
            root.getDisplay().asyncExec(() -> {
                if (!root.isDisposed()) {
                    refresh();
                }
            });
        }
    }

    @Override
    public void reveal(EObject object, String feature) {
        all().stream().filter(recording -> EcoreUtil.isAncestor(recording, object)).findFirst().ifPresent(this::choose);
    }

    @Override
    public void setFocus() {
        if (((StackLayout) full.getParent().getLayout()).topControl == full) {
            list.control().setFocus();
        } else {
            none.setFocus();
        }
    }
}
