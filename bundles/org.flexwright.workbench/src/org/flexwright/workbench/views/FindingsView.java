package org.flexwright.workbench.views;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Severity;
import org.flexwright.core.naming.Names;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.kit.WordRow;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;

/** All findings about the project: worst first, filtered by level and words; Enter or a double click goes to the place. */
public final class FindingsView extends ViewPart {

    private static final String ALL = "ALL";

    private final ProjectListener watcher = new Watcher();
    private Kit kit;
    private ProjectService projects;
    private Composite root;
    private WordRow levels;
    private Text filter;
    private TableViewer table;
    private Composite found;
    private ScrollPane detail;
    private EmptyState nothing;
    private Set<Severity> shown = EnumSet.allOf(Severity.class);

    @Override
    public void createPartControl(Composite parent) {
        kit = getSite().getService(Kit.class);
        projects = getSite().getService(ProjectService.class);
        root = kit.pane(parent, 1, Spacing.NONE);
        root.setLayout(new StackLayout());
        nothing = new EmptyState(root, kit, "What deserves a look in the project stands here; there is nothing now.", null, null);
        projects.addListener(watcher);
        show();
    }

    /** Made with the first finding. */
    private void makeTable() {
        found = kit.pane(root, 1, Spacing.NONE);
        Composite bar = kit.pane(found, 2, new Spacing(2, 1, 4, 0));
        bar.setLayoutData(Grid.wide());
        levels = new WordRow(bar, kit, "Levels", Ink.PAPER);
        levels.setLayoutData(Grid.wide());
        levels.whenChosen(this::choose);
        filter = kit.field(bar, "Filter the findings", SWT.SEARCH);
        filter.setMessage("filter");
        filter.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        kit.chars(filter, 24);
        filter.addListener(SWT.Modify, event -> {
            table.refresh();
            showDetail();
        });
        SashForm sash = new SashForm(found, SWT.HORIZONTAL);
        sash.setLayoutData(Grid.fill());
        kit.dress(sash, Ink.INK, Ink.LINE, Role.BODY);
        Composite left = kit.pane(sash, 1, Spacing.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        left.setLayout(columns);
        table = new TableViewer(left, SWT.SINGLE | SWT.FULL_SELECTION);
        table.setContentProvider(ArrayContentProvider.getInstance());
        kit.dress(table.getTable(), Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(table.getTable(), "Findings");
        table.getTable().setHeaderVisible(true);
        column(columns, "Level", 1, 12, Cell.LEVEL);
        column(columns, "Where", 3, 20, Cell.WHERE);
        column(columns, "What", 7, 30, Cell.WHAT);
        kit.rows(table.getTable());
        table.addFilter(new org.eclipse.jface.viewers.ViewerFilter() {
            @Override
            public boolean select(org.eclipse.jface.viewers.Viewer viewer, Object parent, Object element) {
                return matches((Finding) element);
            }
        });
        table.addOpenListener(event -> reveal());
        table.addSelectionChangedListener(event -> showDetail());
        detail = new ScrollPane(sash, kit, 1, new Spacing(2, 2, 0, 0));
        sash.setWeights(62, 38);
        sash.setSashWidth(1);
        kit.whenDressed(table.getTable(), () -> table.refresh(true));
    }

    private void column(TableColumnLayout layout, String title, int weight, int chars, Cell cell) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, kit.type().chars(Role.BODY, chars)));
        column.setLabelProvider(new StyledCellLabelProvider(StyledCellLabelProvider.COLORS_ON_SELECTION) {
            @Override
            public void update(ViewerCell line) {
                // the row repaints itself when its words change; asking for its bounds, as the inherited method does, takes seconds with thousands of rows
                fill(line, (Finding) line.getElement(), cell);
            }
        });
    }

    private enum Cell {
        LEVEL, WHERE, WHAT
    }

    private void fill(ViewerCell line, Finding finding, Cell cell) {
        line.setFont(kit.type().font(Role.BODY));
        line.setForeground(kit.color(Ink.INK));
        switch (cell) {
            case LEVEL -> {
                Mark mark = Mark.of(finding.severity());
                line.setText(mark.text());
                line.setForeground(kit.color(mark.ink()));
            }
            case WHERE -> line.setText(where(finding));
            case WHAT -> line.setText(finding.message().text());
        }
    }

    private String where(Finding finding) {
        return projects.find(finding.subject()).map(Names::where).orElse("");
    }

    private boolean matches(Finding finding) {
        String words = filter.getText().strip().toLowerCase(Locale.ROOT);
        return shown.contains(finding.severity()) && (words.isEmpty()
                || (where(finding) + " " + finding.message().text()).toLowerCase(Locale.ROOT).contains(words));
    }

    private void choose(String level) {
        shown = level.equals(ALL) ? EnumSet.allOf(Severity.class) : EnumSet.of(Severity.valueOf(level));
        table.refresh();
        showDetail();
    }

    private void show() {
        List<Finding> findings = projects.findings();
        if (!findings.isEmpty() && table == null) {
            makeTable();
        }
        if (table != null) {
            showLevels(findings);
        }
        ((StackLayout) root.getLayout()).topControl = findings.isEmpty() ? nothing : found;
        root.layout();
        if (table != null) {
            table.setInput(findings);
            showDetail();
        }
        setPartName(findings.isEmpty() ? "Findings" : "Findings  " + findings.size());
    }

    private void showLevels(List<Finding> findings) {
        String before = levels.selected() == null ? ALL : levels.selected();
        levels.clear();
        levels.add(ALL, "All  " + findings.size(), "Every level");
        for (Severity severity : List.of(Severity.STOP, Severity.CAUTION, Severity.NOTE)) {
            long count = findings.stream().filter(f -> f.severity() == severity).count();
            Mark mark = Mark.of(severity);
            levels.add(severity.name(), mark.text() + "  " + count, "Only findings of level " + mark.word());
        }
        levels.select(before);
        levels.getParent().layout(true, true);
    }

    /** The chosen finding, else the worst there is to see; null when there is none. */
    private Finding selected() {
        Finding chosen = (Finding) ((IStructuredSelection) table.getSelection()).getFirstElement();
        return chosen == null ? projects.findings().stream().filter(this::matches).findFirst().orElse(null) : chosen;
    }

    private void showDetail() {
        for (Control old : detail.body().getChildren()) {
            old.dispose();
        }
        Finding finding = selected();
        if (finding == null) {
            Prose.quiet(detail.body(), kit, "No finding is of this level and has these words.").setLayoutData(Grid.wide());
        } else {
            FindingStrip strip = FindingStrip.of(detail.body(), kit, finding);
            strip.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            strip.action("Go there", this::reveal);
        }
        detail.reflow();
    }

    private void reveal() {
        Finding finding = selected();
        if (finding != null) {
            projects.find(finding.subject()).ifPresent(thing -> SubjectEditors.reveal(getSite().getWorkbenchWindow(), thing, finding.feature()));
        }
    }

    @Override
    public void setFocus() {
        if (table != null && !projects.findings().isEmpty()) {
            table.getTable().setFocus();
        } else {
            root.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (projects != null) {
            projects.removeListener(watcher);
        }
        super.dispose();
    }

    private final class Watcher implements ProjectListener {
        @Override
        public void closed() {
            show();
        }

        @Override
        public void findingsChanged() {
            show();
        }
    }
}
