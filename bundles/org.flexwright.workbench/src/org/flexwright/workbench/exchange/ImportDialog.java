package org.flexwright.workbench.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.ImportChange;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.exchange.ImportOptions;
import org.flexwright.core.exchange.ImportPlan;
import org.flexwright.core.exchange.ImportRefusal;
import org.flexwright.core.exchange.Shadow;
import org.flexwright.core.exchange.TableImport;
import org.flexwright.core.Watch;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.Snapshot;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.project.LongJob;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Shows what taking tables in would change, and does it as one step when it is confirmed. */
public final class ImportDialog extends Dialog {
    private static final int ROWS = 14;
    private static final int WIDE = 130;

    private final Kit kit;
    private final ProjectService projects;
    private final Path place;
    private Label state;
    private TableViewer table;
    private Button remove;
    private Button commas;
    private Job looking;
    private ImportOptions options = ImportOptions.PLAIN;

    /** A dialog about the tables at that place. */
    public ImportDialog(Shell parent, Kit kit, ProjectService projects, Path place) {
        super(parent);
        this.kit = kit;
        this.projects = projects;
        this.place = place;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Import tables");
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = kit.pane(parent, 1, Spacing.PAGE, Ink.PANEL);
        area.setLayoutData(Grid.fill());
        kit.text(area, "From " + place.getFileName() + ". Nothing changes before you take it in; it is one step that can be undone.").setLayoutData(Grid.wide());
        Composite choices = kit.pane(area, 2, Spacing.GROUPS, Ink.PANEL);
        choices.setLayoutData(Grid.wide());
        remove = choice(choices, "Remove what is in its table no more");
        commas = choice(choices, "Commas in numbers are decimal signs");
        state = kit.text(area, "Reading…");
        state.setLayoutData(Grid.wide());
        Kit.name(state, "What would change");
        Composite list = kit.pane(area, 1, Spacing.NONE, Ink.PAPER);
        GridData fill = Grid.fill();
        fill.widthHint = kit.type().chars(Role.BODY, WIDE);
        fill.heightHint = kit.type().chars(Role.BODY, ROWS * 3);
        list.setLayoutData(fill);
        TableColumnLayout columns = new TableColumnLayout();
        list.setLayout(columns);
        table = new TableViewer(list, SWT.SINGLE | SWT.FULL_SELECTION);
        table.setContentProvider(ArrayContentProvider.getInstance());
        kit.dress(table.getTable(), Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(table.getTable(), "List of what would change");
        table.getTable().setHeaderVisible(true);
        column(columns, "What", 2, 9, line -> line.what);
        column(columns, "About", 7, 30, line -> line.about);
        column(columns, "From", 4, 18, line -> line.from);
        column(columns, "To", 4, 18, line -> line.to);
        column(columns, "Table, row", 3, 14, line -> line.where);
        kit.rows(table.getTable());
        // a refusal or a note is a whole sentence, longer than a cell
        Text whole = kit.field(area, "The chosen line in full", SWT.READ_ONLY | SWT.MULTI | SWT.WRAP);
        GridData lines = Grid.wide();
        lines.widthHint = kit.type().chars(Role.BODY, WIDE);
        lines.heightHint = kit.type().chars(Role.BODY, 6);
        whole.setLayoutData(lines);
        table.addSelectionChangedListener(event -> whole.setText(table.getStructuredSelection().getFirstElement() instanceof Line line ? line.full() : ""));
        return area;
    }

    private Button choice(Composite parent, String words) {
        Button button = new Button(parent, SWT.CHECK);
        button.setText(words);
        kit.dress(button, Ink.INK, Ink.PANEL, Role.BODY);
        Kit.name(button, words);
        button.setLayoutData(Grid.natural());
        button.addListener(SWT.Selection, event -> look());
        return button;
    }

    private record Line(String what, String about, String from, String to, String where, boolean refused) {
        String full() {
            String change = from.isEmpty() && to.isEmpty() ? "" : ": " + from + " → " + to;
            return what + (where.isEmpty() ? "" : " (" + where + ")") + ": " + about + change;
        }
    }

    private interface Words {
        String of(Line line);
    }

    private void column(TableColumnLayout layout, String title, int weight, int chars, Words words) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, kit.type().chars(Role.BODY, chars)));
        column.setLabelProvider(new StyledCellLabelProvider(StyledCellLabelProvider.COLORS_ON_SELECTION) {
            @Override
            public void update(ViewerCell cell) {
                Line line = (Line) cell.getElement();
                cell.setFont(kit.type().font(Role.BODY));
                cell.setForeground(kit.color(line.refused ? Ink.CAUTION : Ink.INK));
                cell.setText(words.of(line));
            }
        });
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Take in", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        look();
    }

    /** Works out what would change, on a copy of the project. */
    private void look() {
        stop();
        options = new ImportOptions(remove.getSelection(), commas.getSelection() ? ImportOptions.Decimal.COMMA : ImportOptions.Decimal.ASK, true);
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        state.setText("Reading…");
        Snapshot now = projects.session().orElseThrow().snapshot();
        List<DetailsPackage> packages = projects.registries().packages();
        ImportOptions asked = options;
        Job[] mine = new Job[1];
        looking = new LongJob<>("Reading tables", getShell().getDisplay(), watch -> {
            try (Shadow shadow = Shadow.of(now, packages)) {
                return TableImport.plan(shadow.session(), packages, place, asked, watch);
            }
        }, plan -> {
            if (looking == mine[0] && !state.isDisposed()) {
                show(plan);
            }
        }, why -> {
            if (looking == mine[0] && !state.isDisposed()) {
                state.setText(Kit.plain(why));
                table.setInput(List.of());
                state.getParent().layout();
            }
        });
        mine[0] = looking;
        looking.schedule();
    }

    private void show(ImportPlan plan) {
        List<Line> lines = new ArrayList<>();
        for (ImportRefusal r : plan.refusals()) {
            String where = r.row() == 0 ? r.table() : r.table() + ", row " + r.row();
            lines.add(new Line("refused", r.column().isEmpty() ? r.why().text() : r.column() + ": " + r.why().text(), "", "", where, true));
        }
        for (ImportChange c : plan.changes()) {
            String where = c.row() == 0 ? c.table() : c.table() + ", row " + c.row();
            String about = c.column().isEmpty() ? c.about().strip() : c.about() + ", " + c.column();
            lines.add(new Line(word(c.kind()), about, one(c.from()), one(c.to()), where, false));
        }
        for (Message note : plan.notes()) {
            lines.add(new Line("note", note.text(), "", "", "", false));
        }
        table.setInput(lines);
        if (!lines.isEmpty()) {
            table.getTable().select(0);
            table.setSelection(table.getSelection());
        }
        String counts = plan.count(Kind.ADDED) + " added, " + plan.count(Kind.CHANGED) + " changed, " + plan.count(Kind.MOVED) + " in another order, " + plan.count(
                Kind.REMOVED) + " removed";
        state.setText(plan.refused() > 0 ? plan.refused() + " refused: nothing can be taken in until they are put right" : plan.count() == 0
                ? "Nothing would change" : counts);
        state.getParent().layout();
        getButton(IDialogConstants.OK_ID).setEnabled(plan.refused() == 0 && plan.count() > 0);
    }

    private static String one(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    private static String word(Kind kind) {
        return switch (kind) {
            case ADDED -> "added";
            case CHANGED -> "changed";
            case MOVED -> "order";
            case REMOVED -> "removed";
        };
    }

    @Override
    protected void okPressed() {
        boolean done = Trouble.guard(getShell(), "Not taken in", () -> projects.session().ifPresent(session -> {
            try {
                // worked out again: the project may have changed since
                ImportPlan plan = TableImport.plan(session, projects.registries().packages(), place, options, Watch.NONE);
                session.execute("Import tables", plan::apply);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }));
        if (done) {
            super.okPressed();
        }
    }

    private void stop() {
        if (looking != null) {
            looking.cancel();
        }
    }

    @Override
    public boolean close() {
        stop();
        return super.close();
    }
}
