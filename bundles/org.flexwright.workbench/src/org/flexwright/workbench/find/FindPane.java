package org.flexwright.workbench.find;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.naming.Names;
import org.flexwright.core.search.Answer;
import org.flexwright.core.search.Hit;
import org.flexwright.core.search.SavedSearches;
import org.flexwright.core.search.ThingKind;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Decision;
import org.flexwright.model.SavedSearch;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.settings.Settings;

/**
 * One field; below it what was understood, and what was found, by kind, as it is typed. With nothing typed: saved searches, what was asked and
 * opened before. Down goes into the results, Enter opens, Delete takes a saved search away, Escape empties the field.
 */
final class FindPane {
    private static final String HINT = "Type what you remember: snapped 40-44 A last year  ·  a lot number  ·  a word of a note  ·  wall 1.4-1.5 mm  ·  trials > 0.8 N not silicone";
    /** While the project is read, and after an edit, the answer is asked for again, milliseconds. */
    private static final int AGAIN = 250;

    private final IWorkbenchWindow window;
    private final Kit kit;
    private final ProjectService projects;
    private final Settings settings;
    private final Finder finder;
    private final Composite root;
    private final Text field;
    private final Button save;
    private final Prose understood;
    private final Prose left;
    private final Table table;
    private final Composite detail;
    private final Prose because;
    private final ProjectListener watcher = new Watcher();
    private List<Row> rows = List.of();
    private boolean waiting;

    FindPane(Composite parent, IWorkbenchWindow window) {
        this.window = window;
        kit = window.getService(Kit.class);
        projects = window.getService(ProjectService.class);
        settings = window.getService(Settings.class);
        finder = window.getService(Finder.class);
        root = kit.pane(parent, 1, Spacing.NONE);
        Composite head = kit.pane(root, 2, Spacing.PANEL);
        head.setLayoutData(Grid.wide());
        field = kit.field(head, "Find", SWT.NONE);
        field.setLayoutData(Grid.wide());
        save = kit.action(head, "Save this search", this::save);
        save.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        understood = Prose.quiet(head, kit, HINT);
        understood.setLayoutData(Grid.wide(2));
        left = new Prose(head, kit, "", Ink.CAUTION, Role.BODY);
        left.setLayoutData(Grid.wide(2));
        kit.hairline(root);
        Composite below = kit.pane(root, 1, Spacing.NONE);
        below.setLayoutData(Grid.fill());
        TableColumnLayout columns = new TableColumnLayout();
        below.setLayout(columns);
        table = new Table(below, SWT.SINGLE | SWT.FULL_SELECTION);
        kit.dress(table, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(table, "Results");
        column(columns, 5, 26);
        column(columns, 7, 30);
        column(columns, 2, 18);
        kit.rows(table);
        detail = kit.pane(root, 1, Spacing.PANEL, Ink.PANEL);
        detail.setLayoutData(Grid.wide());
        because = Prose.text(detail, kit, "");
        because.setLayoutData(Grid.wide());
        field.addListener(SWT.Modify, event -> ask());
        field.addListener(SWT.KeyDown, this::keyInField);
        table.addListener(SWT.DefaultSelection, event -> choose(table.getSelectionIndex()));
        table.addListener(SWT.KeyDown, this::keyInTable);
        table.addListener(SWT.Selection, event -> {
            skipHead(1);
            explain();
        });
        kit.whenDressed(table, this::paint);
        projects.addListener(watcher);
        root.addListener(SWT.Dispose, event -> projects.removeListener(watcher));
        ask();
    }

    private void column(TableColumnLayout layout, int weight, int chars) {
        TableColumn column = new TableColumn(table, SWT.LEFT);
        layout.setColumnData(column, new ColumnWeightData(weight, kit.type().chars(Role.BODY, chars)));
    }

    /** The field with all its words selected, to be typed over. */
    void ready() {
        field.setFocus();
        field.selectAll();
    }

    void setFocus() {
        field.setFocus();
    }

    private void keyInField(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN && !rows.isEmpty()) {
            table.setFocus();
            table.setSelection(Math.max(0, table.getSelectionIndex()));
            skipHead(1);
            explain();
            event.doit = false;
        } else if (event.keyCode == SWT.ESC) {
            field.setText("");
            event.doit = false;
        } else if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            choose(first());
            event.doit = false;
        }
    }

    private void keyInTable(Event event) {
        int at = table.getSelectionIndex();
        if (event.keyCode == SWT.ARROW_UP && at <= first()) {
            field.setFocus();
            event.doit = false;
        } else if (event.keyCode == SWT.ARROW_UP && rows.get(at - 1) instanceof Row.Head) {
            table.setSelection(at - 1); // the key itself goes on to the line above the heading
        } else if (event.keyCode == SWT.ESC) {
            ready();
        } else if (event.keyCode == SWT.DEL && at >= 0 && rows.get(at) instanceof Row.Saved saved) {
            change("Remove the search " + saved.search().getName(), () -> projects.session().ifPresent(s -> s.execute("Remove the search " + saved.search().getName(),
                    edit -> edit.remove(saved.search()))));
        }
    }

    private void skipHead(int step) {
        int at = table.getSelectionIndex();
        if (at >= 0 && at < rows.size() && rows.get(at) instanceof Row.Head && at + step < rows.size()) {
            table.setSelection(at + step);
        }
    }

    private int first() {
        for (int i = 0; i < rows.size(); i++) {
            if (!(rows.get(i) instanceof Row.Head)) {
                return i;
            }
        }
        return -1;
    }

    private void choose(int at) {
        if (at < 0 || at >= rows.size()) {
            return;
        }
        switch (rows.get(at)) {
            case Row.Found found -> {
                settings.asked(field.getText().strip());
                open(found.hit());
            }
            case Row.Saved saved -> put(saved.search().getQuery());
            case Row.Asked asked -> put(asked.query());
            case Row.Opened opened -> projects.find(opened.thing().address()).ifPresent(thing -> SubjectEditors.open(window, thing));
            case Row.Head head -> skipHead(1);
        }
    }

    private void put(String query) {
        field.setText(query);
        field.setSelection(query.length());
        field.setFocus();
    }

    /** Opens the thing at the page that shows the place in which the word stands. */
    private void open(Hit hit) {
        Optional<EObject> place = projects.find(hit.opens()).or(() -> projects.find(hit.address()));
        place.ifPresent(thing -> {
            if (SubjectEditors.open(window, thing) instanceof SubjectEditor editor) {
                stage(thing).ifPresent(editor::show);
                editor.reveal(thing, "");
            }
        });
    }

    private static Optional<Stage> stage(EObject thing) {
        for (EObject at = thing; at != null && !(at instanceof Trial); at = at.eContainer()) {
            if (at instanceof Specimen) {
                return Optional.of(Stage.MEASURE);
            }
            if (at instanceof Step || at instanceof BenchNote || at instanceof Decision) {
                return Optional.of(Stage.MAKE);
            }
        }
        return Optional.empty();
    }

    private void save() {
        String query = field.getText().strip();
        change("Save the search", () -> projects.session().ifPresent(s -> s.execute("Save the search " + query, edit -> SavedSearches.save(edit, query, query))));
    }

    /** Changes the project; what stands in the way is said where the searcher looks. */
    private void change(String what, Runnable change) {
        try {
            change.run();
            showSave();
            if (field.getText().isBlank()) {
                start();
            }
        } catch (RefusedException | StoreException e) {
            left.setWords(what + ": " + e.getMessage());
            explain();
        }
    }

    private void showSave() {
        String query = field.getText().strip();
        boolean kept = projects.session().map(s -> s.project().getSearches().stream().map(SavedSearch::getQuery).anyMatch(query::equals)).orElse(false);
        boolean can = projects.session().map(s -> !s.readOnly()).orElse(false);
        save.setEnabled(!query.isEmpty() && !kept && can);
    }

    private void ask() {
        showSave();
        String typed = field.getText();
        if (!finder.ready() || typed.isBlank()) {
            start();
            return;
        }
        finder.ask(typed, found -> {
            if (!root.isDisposed() && field.getText().equals(typed)) {
                show(found);
            }
        });
    }

    private void again() {
        if (!waiting && !root.isDisposed()) {
            waiting = true;
            root.getDisplay().timerExec(AGAIN, () -> {
                waiting = false;
                if (!root.isDisposed()) {
                    ask();
                }
            });
        }
    }

    /** With nothing typed: what was kept, asked and opened before. */
    private void start() {
        List<Row> all = new ArrayList<>();
        projects.session().ifPresent(session -> {
            group(all, "Saved searches", session.project().getSearches().stream().<Row>map(Row.Saved::new).toList());
            group(all, "Asked before", settings.asked().stream().<Row>map(Row.Asked::new).toList());
            String id = String.valueOf(session.project().getId());
            group(all, "Opened before", settings.looked().stream().filter(t -> t.project().equals(id)).flatMap(t -> projects.find(t.address()).<Row>map(thing -> new Row.Opened(t,
                    Names.kind(thing) + "  " + Names.where(thing))).stream()).toList());
        });
        understood.setWords(projects.session().isPresent() ? HINT : "Open a project first: everything in it is found from here.", Ink.QUIET);
        left.setWords("");
        fill(all);
    }

    private static void group(List<Row> all, String head, List<Row> rows) {
        if (!rows.isEmpty()) {
            all.add(new Row.Head(head));
            all.addAll(rows);
        }
    }

    private void show(Answer found) {
        List<Row> all = new ArrayList<>();
        Map<ThingKind, List<Row>> groups = new LinkedHashMap<>();
        found.hits().forEach(hit -> groups.computeIfAbsent(hit.kind(), k -> new ArrayList<>()).add(new Row.Found(hit)));
        groups.forEach((kind, those) -> {
            int count = found.counts().get(kind);
            group(all, kind.title() + "  " + count + (those.size() < count ? ", the first " + those.size() + " shown" : ""), those);
        });
        String said = found.understood().isEmpty() ? "Nothing was understood." : "Looked for: " + found.said();
        String reading = found.unread() == 0 ? "" : "   Still reading " + found.unread() + (found.unread() == 1 ? " thing" : " things") + " of the project.";
        String count = found.total() > 0 || found.understood().isEmpty() ? "" : found.unread() > 0 ? "   Nothing yet." : "   Nothing in the project has all of that.";
        understood.setWords(said + count + reading, Ink.QUIET);
        left.setWords(String.join("   ", found.left().stream().map(s -> Character.toUpperCase(s.charAt(0)) + s.substring(1) + (s.endsWith("?") ? "" : ".")).toList()));
        if (found.total() == 0 && found.unread() == 0 && !found.understood().isEmpty()) {
            all.add(new Row.Head("Take a word away, or give the beginning of a longer word. Words in quotes are looked for exactly so."));
        }
        fill(all);
        if (found.unread() > 0) {
            again();
        }
    }

    private void fill(List<Row> all) {
        rows = List.copyOf(all);
        table.setRedraw(false);
        int at = table.getSelectionIndex();
        table.removeAll();
        for (Row row : rows) {
            new TableItem(table, SWT.NONE).setText(row.cells().toArray(String[]::new));
        }
        paint();
        if (at >= 0 && at < rows.size()) {
            table.setSelection(at);
        }
        table.setRedraw(true);
        explain();
    }

    /** The chosen thing, else the first, with every reason for which it was found. */
    private void explain() {
        int at = table.getSelectionIndex() < 0 ? first() : table.getSelectionIndex();
        boolean found = at >= 0 && at < rows.size() && rows.get(at) instanceof Row.Found;
        if (found) {
            Hit hit = ((Row.Found) rows.get(at)).hit();
            List<String> lines = new ArrayList<>(List.of(hit.name() + (hit.line().isEmpty() || hit.name().contains(hit.line()) ? "" : ".  " + hit.line())));
            hit.why().forEach(why -> lines.add(why.line()));
            because.setWords(String.join("\n", lines));
        }
        shown(detail, found);
        shown(left, !left.words().isEmpty());
        root.layout(true, true);
    }

    private static void shown(Control control, boolean visible) {
        control.setVisible(visible);
        ((GridData) control.getLayoutData()).exclude = !visible;
    }

    private void paint() {
        for (int i = 0; i < table.getItemCount() && i < rows.size(); i++) {
            TableItem item = table.getItem(i);
            boolean head = rows.get(i) instanceof Row.Head;
            item.setFont(kit.type().font(head ? Role.STRONG : Role.BODY));
            item.setForeground(kit.color(Ink.INK));
            item.setForeground(1, kit.color(Ink.QUIET));
            item.setForeground(2, kit.color(Ink.QUIET));
        }
    }

    private final class Watcher implements ProjectListener {
        @Override
        public void opened() {
            ask();
        }

        @Override
        public void closed() {
            showSave();
            start();
        }

        @Override
        public void changed(Set<EObject> touched) {
            again();
        }
    }
}
