package org.flexwright.workbench.pages.session;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Instruments;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Properties;

/** A time at the bench: room, person, gauges, control piece, and what was read. */
final class BenchPage extends BlockPage {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.SESSION__CODE, ModelPackage.Literals.SESSION__AT,
            ModelPackage.Literals.SESSION__ROOM, ModelPackage.Literals.SESSION__ROOM_C, ModelPackage.Literals.SESSION__ROOM_RH,
            ModelPackage.Literals.SESSION__CONDITIONING_HOURS, ModelPackage.Literals.SESSION__WHO,
            ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private static final int MOST = 14;

    private final Session session;
    private final FormPane form;
    private final FindingStrips findings;
    private final Block gauges;
    private final PickBox<ControlPiece> control;
    private final Prose controlRead;
    private final Prose nothing;
    private final Listing<Measurement> read;
    private final Map<Instrument, Button> ticks = new LinkedHashMap<>();

    BenchPage(Composite parent, PageContext context) {
        super(parent, context);
        session = (Session) context.subject();
        Block block = new Block(body(), kit(), "Room and person", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), session, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        findings = new FindingStrips(body(), context);
        gauges = new Block(body(), kit(), "Gauges on the bench", 1, Spacing.FIELDS);
        Block kept = new Block(body(), kit(), "Control piece", 1, Spacing.FIELDS);
        Prose.quiet(kept.body(), kit(), "A kept piece read at the start of each session: when it reads off, so does everything that day.").setLayoutData(Grid.wide());
        control = new PickBox<>(kept.body(), kit(), "Control piece of the session", "none", Names::of);
        control.control().setEnabled(writable());
        control.whenChosen(piece -> doing().edit("choose the control piece", edit -> edit.set(session, ModelPackage.Literals.SESSION__CONTROL_PIECE, piece)));
        controlRead = Prose.text(kept.body(), kit(), "");
        controlRead.setLayoutData(Grid.wide());
        Block done = new Block(body(), kit(), "Read in this session", 1, Spacing.FIELDS);
        nothing = Prose.quiet(done.body(), kit(), "Nothing yet.");
        nothing.setLayoutData(Grid.wide());
        read = new Listing<>(done.body(), kit(), "Read in this session", MOST, List.of(Column.text("Piece", 12, m -> m.eContainer() instanceof Specimen piece ? where(piece) : ""),
                Column.text("What", 26, m -> Properties.words(m.getKey(), context.registries().properties())),
                Column.number("Readings", 10, m -> String.valueOf(counting(m).size())), Column.text("Each of them", 34, this::readings),
                new Column<>("Doubt", 14, false, m -> off() ? Doubts.word() : "", m -> Ink.CAUTION)));
        read.control().setLayoutData(Grid.wide());
        show();
        findings.show();
        settle();
    }

    private Project project() {
        return context().session().project();
    }

    private void show() {
        List<Instrument> all = List.copyOf(project().getInstruments());
        if (!all.equals(List.copyOf(ticks.keySet())) || gauges.body().getChildren().length == 0) {
            fillGauges(all);
        }
        ticks.forEach((gauge, tick) -> tick.setSelection(session.getInstruments().contains(gauge)));
        control.show(project().getControlPieces(), session.getControlPiece());
        List<ControlReading> controls = ControlReading.all(session, context().registries().properties());
        controlRead.setWords(controls.isEmpty() ? session.getControlPiece() == null ? "No control piece: whether the gauge drifted cannot be told."
                : "Not read in this session yet, or nothing to compare it with: its usual reading can be entered in its own editor."
                : String.join("\n", controls.stream().map(c -> (c.off() ? "▲ " : "") + c.property().title() + ": " + c.sentence() + ".  Rests on: " + c.source().display())
                        .toList()), controls.stream().anyMatch(ControlReading::off) ? Ink.CAUTION : Ink.INK);
        List<Measurement> done = BenchSessions.measurements(project(), session);
        Grid.shown(nothing, done.isEmpty());
        Grid.shown(read.control(), !done.isEmpty());
        read.show(done);
    }

    private boolean off() {
        return Doubts.of(session, context().registries().properties()).isPresent();
    }

    private static List<Reading> counting(Measurement measurement) {
        return measurement.getReadings().stream().filter(Measurements::counts).toList();
    }

    private String readings(Measurement measurement) {
        return measurement.getKey() == null ? "" : context().registries().findProperty(measurement.getKey().getProperty())
                .map(def -> String.join("; ", counting(measurement).stream().map(r -> ReadingPrinter.print(def, r)).toList())).orElse("");
    }

    private void fillGauges(List<Instrument> all) {
        Composite body = gauges.emptied();
        ticks.clear();
        if (all.isEmpty()) {
            Prose.quiet(body, kit(), "No gauge is in the project yet; add instruments in the project tree.").setLayoutData(Grid.wide());
            return;
        }
        Composite row = Flow.pane(body, kit(), Ink.PAPER);
        row.setLayoutData(Grid.wide());
        for (Instrument gauge : all) {
            Button tick = new Button(row, SWT.CHECK);
            kit().dress(tick, Ink.INK, null, Role.BODY);
            boolean overdue = Instruments.overdue(gauge, session.getAt() == null ? LocalDate.now() : Instruments.day(session.getAt()));
            String words = Names.of(gauge) + (overdue ? "  ▲ check overdue" : "");
            tick.setText(Kit.plain(words));
            Kit.name(tick, words);
            tick.setEnabled(writable());
            tick.addListener(SWT.Selection, event -> doing().edit(tick.getSelection() ? "take a gauge to the bench" : "put a gauge away", edit -> {
                List<Instrument> now = new ArrayList<>(session.getInstruments());
                if (tick.getSelection()) {
                    now.add(gauge);
                } else {
                    now.remove(gauge);
                }
                edit.set(session, ModelPackage.Literals.SESSION__INSTRUMENTS, now);
            }));
            ticks.put(gauge, tick);
        }
    }

    private static String where(Specimen piece) {
        String code = piece.getCode() == null ? "piece" : piece.getCode();
        return piece.eContainer() instanceof org.flexwright.model.Trial trial ? trial.getCode() + " " + code : code;
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
