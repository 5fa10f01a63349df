package org.flexwright.workbench.pages.recording;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.recording.ChannelWish;
import org.flexwright.core.recording.ColumnUse;
import org.flexwright.core.recording.ImportSettings;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.TableFormat;
import org.flexwright.core.recording.TableGuess;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Instrument;
import org.flexwright.model.Recording;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Sessions;
import org.flexwright.workbench.project.LongJob;

/**
 * What a file of an instrument means: guessed from its first lines and from the last file of that kind, shown, and put right by a person. It is
 * read through off the screen's thread; nothing changes in the project before that went well.
 */
final class TakeInDialog extends Dialog {

    private static final int WIDE = 108;
    private static final int HIGH = 44;
    private static final int ROWS = 4;
    private static final int MOST_COLUMNS = 40;
    private static final List<String> SEPARATORS = List.of(";", ",", TableFormat.TAB, TableFormat.BLANKS, "|", ":");

    private final Kit kit;
    private final PageContext context;
    private final Path file;
    private final List<? extends Specimen> pieces;
    private final Specimen first;
    private final BiConsumer<Recording, RecordingData> made;
    private final Map<ChannelWish, Line> lines = new LinkedHashMap<>();

    private PickBox<Specimen> piece;
    private PickBox<RecordingKind> kinds;
    private PickBox<Session> session;
    private PickBox<Instrument> instrument;
    private Text title;
    private Text cycle;
    private Prose summary;
    private ScrollPane scroll;
    private Composite meaning;
    private Composite asked;
    private Prose state;
    private ProgressBar bar;
    private PickBox<String> separator;
    private Button comma;
    private Text skip;
    private Table preview;
    private FormModel form;
    private TableGuess guess;
    private ImportSettings settings;
    private String refused = "";
    private Job job;

    /** What one column the kind can use is taken from. */
    private final class Line {
        private final PickBox<ColumnUse> column;
        private final Text unit;
        private final Button turned;

        Line(Composite parent, ChannelWish wish) {
            kit.text(parent, wish.title() + (wish.required() ? "" : " (if there)")).setLayoutData(Grid.natural());
            column = new PickBox<>(parent, kit, "Column of " + wish.title(), "none", use -> "column " + use.column() + (use.name().isEmpty() ? "" : ": " + use.name()));
            column.control().setLayoutData(Grid.wide());
            unit = kit.field(parent, "Unit of " + wish.title(), SWT.SINGLE);
            unit.setMessage(wish.unit());
            unit.setLayoutData(Grid.natural());
            kit.chars(unit, 8);
            turned = new Button(parent, SWT.CHECK);
            turned.setText("sign turned");
            kit.dress(turned, Ink.INK, Ink.PANEL, Role.BODY);
            Kit.name(turned, "Sign of " + wish.title() + " turned");
            ColumnUse now = settings.columns().stream().filter(use -> use.role() == wish.role()).findFirst().orElse(null);
            column.show(guess.columns(), now == null ? null : guess.columns().get(now.column() - 1));
            unit.setText(now == null || now.unit() == null ? "" : now.unit());
            turned.setSelection(now != null && now.reversed());
            column.whenChosen(use -> {
                unit.setText(use == null || use.unit() == null ? "" : use.unit());
                look();
            });
            unit.addListener(SWT.Modify, event -> look());
            turned.addListener(SWT.Selection, event -> look());
        }
    }

    TakeInDialog(Shell parent, PageContext context, Path file, List<? extends Specimen> pieces, Specimen first, BiConsumer<Recording, RecordingData> made) {
        super(parent);
        this.kit = context.kit();
        this.context = context;
        this.file = file;
        this.pieces = pieces;
        this.first = first;
        this.made = made;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Take in a recording");
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        scroll = new ScrollPane(parent, kit, 1, Spacing.PANEL);
        GridData room = Grid.fill();
        room.widthHint = kit.type().chars(Role.BODY, WIDE);
        room.heightHint = Math.min(kit.type().lineHeight(Role.BODY) * HIGH, parent.getMonitor().getClientArea().height * 7 / 10);
        scroll.setLayoutData(room);
        Composite area = scroll.body();
        kit.label(area, file.getFileName().toString(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        Composite head = kit.pane(area, 4, new Spacing(0, 0, 2, 1));
        head.setLayoutData(Grid.wide());
        kit.text(head, "Of piece").setLayoutData(Grid.natural());
        piece = new PickBox<>(head, kit, "Piece it was recorded of", null, Names::of);
        piece.control().setLayoutData(Grid.wide());
        piece.show(pieces, first);
        kit.text(head, "What it is").setLayoutData(Grid.natural());
        kinds = new PickBox<>(head, kit, "What was recorded", null, RecordingKind::title);
        kinds.control().setLayoutData(Grid.wide());
        kit.text(head, "Session").setLayoutData(Grid.natural());
        session = new PickBox<>(head, kit, "Session", "none", Sessions::words);
        session.control().setLayoutData(Grid.wide());
        kit.text(head, "Instrument").setLayoutData(Grid.natural());
        instrument = new PickBox<>(head, kit, "Instrument", "not said", Names::of);
        instrument.control().setLayoutData(Grid.wide());
        kit.text(head, "Title").setLayoutData(Grid.natural());
        title = kit.field(head, "Title", SWT.SINGLE);
        title.setLayoutData(Grid.wide());
        kit.text(head, "Cycle").setLayoutData(Grid.natural());
        cycle = kit.field(head, "Which loading of the piece it is, from 1", SWT.SINGLE);
        cycle.setMessage("1, 2, …");
        cycle.setLayoutData(Grid.wide());
        cycle.addListener(SWT.Modify, event -> look());
        summary = Prose.quiet(area, kit, "");
        summary.setLayoutData(Grid.wide());
        state = new Prose(area, kit, "", Ink.STOP, Role.BODY);
        state.setLayoutData(Grid.wide());
        Kit.name(state, "What is to be said");
        meaning = kit.pane(area, 1, Spacing.FIELDS);
        meaning.setLayoutData(Grid.wide());
        asked = kit.pane(area, 1, Spacing.FIELDS);
        asked.setLayoutData(Grid.wide());
        boolean sound = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".wav");
        RecordingFormat wanted = sound ? RecordingFormat.SOUND : RecordingFormat.TABLE;
        List<RecordingKind> fitting = context.registries().recordingKinds().stream().filter(kind -> kind.format() == wanted).toList();
        kinds.show(fitting, likely(fitting));
        kinds.whenChosen(kind -> begin(null));
        return scroll;
    }

    /** The kind of the last recording when the file has what it needs, else the one that finds most in it, else any. */
    private RecordingKind likely(List<RecordingKind> fitting) {
        String last = fitting.stream().flatMap(kind -> Recordings.last(context.session().project(), kind.id()).stream()).max(Comparator.comparing(Recording::getAt,
                Comparator.nullsFirst(Comparator.naturalOrder()))).map(Recording::getKind).orElse("");
        RecordingKind best = null;
        int most = Integer.MIN_VALUE;
        for (RecordingKind kind : fitting) {
            int found = found(kind) + (kind.id().equals(last) ? MOST_COLUMNS : 0);
            if (found > most) {
                most = found;
                best = kind;
            }
        }
        return best;
    }

    /** How many columns of the file a kind can use; 0 when it lacks one, and for what is no table. */
    private int found(RecordingKind kind) {
        if (kind.format() != RecordingFormat.TABLE) {
            return 0;
        }
        try {
            TableGuess first = TableGuess.of(file, kind);
            Set<ChannelRole> roles = new HashSet<>(first.columns().stream().map(ColumnUse::role).toList());
            return kind.missing(roles).isPresent() ? -MOST_COLUMNS : (int) first.columns().stream().filter(use -> use.role() != ChannelRole.OTHER).count();
        } catch (RefusedException e) {
            return 0; // said when the dialog is open
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        bar = new ProgressBar(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        bar.setVisible(false);
        Kit.name(bar, "How far it is read");
        ((GridLayout) parent.getLayout()).numColumns++;
        createButton(parent, IDialogConstants.OK_ID, "Take in", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        begin(null);
    }

    /** Guesses anew, with a way of cutting lines that a person gave, or without one. */
    private void begin(TableFormat format) {
        RecordingKind kind = kinds.chosen();
        refused = "";
        if (kind == null) {
            refused = "No plugin here reads such a file.";
            look();
            return;
        }
        summary.setWords(kind.summary());
        try {
            guess = kind.format() == RecordingFormat.SOUND ? null : format == null ? TableGuess.of(file, kind) : TableGuess.of(file, kind, format);
            settings = Recordings.defaults(context.session().project(), kind, guess);
        } catch (RefusedException e) {
            refused = e.getMessage();
            if (format == null) {
                guess = null;
                settings = null;
            }
        }
        if (format == null) {
            List<Session> sessions = context.session().project().getSessions();
            session.show(sessions, settings == null ? null : today(sessions));
            instrument.show(context.session().project().getInstruments(), settings == null ? null : settings.instrument());
            ask(kind);
        }
        if (refused.isEmpty() || format == null) {
            showMeaning(kind);
        }
        look();
        scroll.reflow();
    }

    private static Session today(List<Session> sessions) {
        Session last = sessions.isEmpty() ? null : sessions.getLast();
        return last != null && last.getAt() != null && LocalDate.ofInstant(last.getAt(), ZoneId.systemDefault()).equals(LocalDate.now()) ? last : null;
    }

    private static void empty(Composite pane) {
        for (Control old : pane.getChildren()) {
            old.dispose();
        }
    }

    private void showMeaning(RecordingKind kind) {
        empty(meaning);
        lines.clear();
        preview = null;
        if (guess == null || settings == null) {
            return;
        }
        Composite cut = Flow.pane(meaning, kit, Ink.PAPER);
        cut.setLayoutData(Grid.wide());
        kit.text(cut, "Between columns");
        separator = new PickBox<>(cut, kit, "What stands between two columns", null, s -> s);
        List<String> offered = new ArrayList<>(SEPARATORS);
        if (!offered.contains(guess.format().separator())) {
            offered.add(guess.format().separator());
        }
        separator.show(offered, guess.format().separator());
        separator.whenChosen(s -> again());
        comma = new Button(cut, SWT.CHECK);
        comma.setText("Decimal comma");
        kit.dress(comma, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(comma, "Decimal comma");
        comma.setSelection(guess.format().decimalComma());
        comma.addListener(SWT.Selection, event -> again());
        kit.text(cut, "Lines before the figures");
        skip = kit.field(cut, "Lines before the figures", SWT.SINGLE);
        skip.setText(String.valueOf(guess.format().skipLines()));
        skip.addListener(SWT.DefaultSelection, event -> again());
        skip.addListener(SWT.FocusOut, event -> {
            if (!skip.getText().strip().equals(String.valueOf(guess.format().skipLines()))) {
                again();
            }
        });
        table();
        Composite grid = kit.pane(meaning, 4, Spacing.FIELDS, Ink.PANEL);
        kit.columns(grid, 4, new Spacing(3, 2, 3, 1));
        grid.setLayoutData(Grid.wide());
        kind.channels().forEach(wish -> lines.put(wish, new Line(grid, wish)));
    }

    private void again() {
        int skipped;
        try {
            skipped = Integer.parseInt(skip.getText().strip());
        } catch (NumberFormatException e) {
            skipped = -1;
        }
        if (skipped < 0) {
            refused = "\"" + skip.getText().strip() + "\" is no number of lines: type 0, 1, 2 …";
            look();
        } else {
            begin(new TableFormat(separator.chosen(), comma.getSelection(), skipped));
        }
    }

    /** The first rows as they are cut now. */
    private void table() {
        preview = new Table(meaning, SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        kit.dress(preview, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(preview, "First rows of the file");
        preview.setHeaderVisible(true);
        int count = Math.min(guess.columns().size(), MOST_COLUMNS);
        for (int i = 0; i < count; i++) {
            ColumnUse use = guess.columns().get(i);
            TableColumn column = new TableColumn(preview, SWT.RIGHT);
            column.setText(use.name().isEmpty() ? "column " + (i + 1) : use.name());
        }
        for (List<String> row : guess.rows().stream().limit(ROWS).toList()) {
            TableItem item = new TableItem(preview, SWT.NONE);
            for (int i = 0; i < Math.min(count, row.size()); i++) {
                item.setText(i, row.get(i));
            }
        }
        new TableColumn(preview, SWT.LEFT); // the last column takes the room that is left
        for (TableColumn column : preview.getColumns()) {
            column.setWidth(Math.max(kit.type().chars(Role.BODY, Math.max(10, column.getText().length() + 3)), 40));
        }
        kit.rows(preview);
        GridData data = Grid.wide();
        data.heightHint = (ROWS + 1) * kit.type().lineHeight(Role.BODY) * 8 / 5;
        preview.setLayoutData(data);
    }

    /** What the kind asks, with what was said the last time. */
    private void ask(RecordingKind kind) {
        empty(asked);
        if (form != null) {
            form.close();
            form = null;
        }
        if (kind.details() == null || settings == null) {
            return;
        }
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(kind.details());
        form = FormModel.scratch(context.session(), fields);
        for (FieldDescriptor field : fields) {
            EStructuralFeature feature = kind.details().getEStructuralFeature(field.name());
            if (settings.details() != null && feature != null && settings.details().eIsSet(feature)) {
                form.type(field.name(), field.print(settings.details().eGet(feature)));
                form.settle(field.name());
            }
        }
        if (!settings.remembered().isEmpty()) {
            Prose.quiet(asked, kit, "As with the last one of its kind; put right what is different now:").setLayoutData(Grid.wide());
        }
        new FormPane(asked, kit, Bindings.of(form, false)).setLayoutData(Grid.wide());
        form.addListener(name -> look());
    }

    /** The columns as they are chosen now. */
    private List<ColumnUse> columns() {
        List<ColumnUse> columns = new ArrayList<>(guess.columns().stream().map(use -> use.withRole(ChannelRole.OTHER)).toList());
        List<ColumnUse> twice = new ArrayList<>();
        lines.forEach((wish, line) -> {
            ColumnUse use = line.column.chosen();
            if (use != null) {
                String unit = line.unit.getText().strip();
                ColumnUse meant = use.withRole(wish.role()).withUnit(unit.isEmpty() && !wish.unit().isEmpty() ? null : unit).withReversed(line.turned.getSelection());
                if (columns.get(use.column() - 1).role() == ChannelRole.OTHER) {
                    columns.set(use.column() - 1, meant);
                } else {
                    twice.add(meant);
                }
            }
        });
        columns.addAll(twice);
        return columns;
    }

    /** What still has to be said, or nothing. */
    private String lacking() {
        if (!refused.isEmpty()) {
            return refused;
        }
        RecordingKind kind = kinds.chosen();
        if (kind.format() == RecordingFormat.TABLE) {
            List<ColumnUse> columns = columns();
            Set<Integer> used = new HashSet<>();
            for (ColumnUse use : columns) {
                if (use.role() != ChannelRole.OTHER && !used.add(use.column())) {
                    return "Column " + use.column() + " cannot mean two things: choose another column for one of them, or none.";
                }
            }
            List<Message> still = TableGuess.asked(columns, kind);
            if (!still.isEmpty()) {
                return still.getFirst().text();
            }
        }
        if (!cycle.getText().isBlank() && !cycle.getText().strip().matches("[1-9][0-9]{0,5}")) {
            return "\"" + cycle.getText().strip() + "\" is no cycle: type 1 for the first loading of the piece, 2 for the second and so on, or nothing.";
        }
        return form == null || form.problems().isEmpty() ? "" : form.problems().values().iterator().next();
    }

    private void look() {
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok == null || ok.isDisposed()) {
            return;
        }
        String lacking = lacking();
        if (!lacking.equals(state.words())) {
            state.setWords(lacking);
            scroll.reflow();
        }
        ok.setEnabled(lacking.isEmpty() && job == null);
    }

    private ImportSettings settled(RecordingKind kind) {
        ImportSettings now = settings;
        if (kind.format() == RecordingFormat.TABLE) {
            now = now.withTable(guess.format()).withColumns(columns());
        }
        if (form != null) {
            EObject details = EcoreUtil.create(kind.details());
            Set<String> remembered = new HashSet<>();
            for (FieldDescriptor field : form.fields()) {
                EStructuralFeature feature = kind.details().getEStructuralFeature(field.name());
                Object value = form.value(field.name());
                if (feature != null && value != null) {
                    details.eSet(feature, value);
                }
                if (settings.remembered().contains(field.name()) && Objects.equals(value, settings.details().eGet(feature))) {
                    remembered.add(field.name());
                }
            }
            now = now.withDetails(details, remembered);
        }
        String words = title.getText().strip();
        return now.withRecord(words.isEmpty() ? null : words, null, session.chosen(), instrument.chosen(), cycle.getText().isBlank() ? null
                : Integer.valueOf(cycle.getText().strip()));
    }

    @Override
    protected void okPressed() {
        String lacking = lacking();
        if (!lacking.isEmpty() || job != null) {
            look();
            return;
        }
        RecordingKind kind = kinds.chosen();
        ImportSettings now = settled(kind);
        Path folder = context.session().folder();
        busy(true);
        Display display = getShell().getDisplay();
        job = new LongJob<>("Reading " + file.getFileName(), display, watch -> Recordings.prepare(folder, file, kind, now, new Shown(watch, display)), this::take,
                this::fail);
        job.schedule();
    }

    private void busy(boolean is) {
        bar.setVisible(is);
        bar.setSelection(0);
        getButton(IDialogConstants.OK_ID).setEnabled(!is);
    }

    private void take(Recordings.Prepared prepared) {
        if (getShell() == null || getShell().isDisposed()) {
            return; // it was ended meanwhile
        }
        Recording[] added = new Recording[1];
        try {
            context.session().execute("Take in recording " + prepared.stored().fileName(), edit -> added[0] = Recordings.add(edit, piece.chosen(), prepared));
        } catch (RefusedException e) {
            fail(e.getMessage());
            return;
        }
        super.okPressed();
        made.accept(added[0], prepared.data());
    }

    private void fail(String why) {
        if (getShell() == null || getShell().isDisposed()) {
            return;
        }
        job = null;
        busy(false);
        look();
        state.setWords(why);
        scroll.reflow();
        scroll.reveal(state);
    }

    @Override
    public boolean close() {
        if (job != null) {
            job.cancel();
        }
        if (form != null) {
            form.close();
            form = null;
        }
        return super.close();
    }

    /** Shows in the dialog how far it is. */
    private final class Shown implements Watch {
        private final Watch watch;
        private final Display display;
        private int percent;

        Shown(Watch watch, Display display) {
            this.watch = watch;
            this.display = display;
        }

        @Override
        public void done(long part, long whole) {
            watch.done(part, whole);
            int now = whole <= 0 ? 0 : (int) (100 * part / whole);
            if (now > percent && !display.isDisposed()) {
                percent = now;
                display.asyncExec(() -> {
                    if (!bar.isDisposed()) {
                        bar.setSelection(now);
                    }
                });
            }
        }

        @Override
        public boolean cancelled() {
            return watch.cancelled();
        }
    }
}
