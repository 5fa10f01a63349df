package org.flexwright.workbench.decide;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Entry;
import org.flexwright.model.Project;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Settling;
import org.flexwright.workbench.project.Attaching;

/** All trials side by side, the reference first; below what stands behind the cell one looks at. */
final class ComparisonPage implements EditorPage {

    private static final int HINT = 118;

    private final PageContext context;
    private final Kit kit;
    private final Composite root;
    private final EmptyState empty;
    private final Composite full;
    private final CompareState state = new CompareState();
    private final SashForm sash;
    private final CompareGrid grid;
    private final BehindCell behind;
    private final Button pooled;
    private final Button columns;
    private final Prose hint;
    private boolean due;

    ComparisonPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        root = kit.pane(parent, 1, Spacing.NONE);
        root.setLayout(new StackLayout());
        empty = new EmptyState(root, kit, "Trials stand here side by side against the targets. It takes a target sheet with a target, and a trial.", null, null);
        full = kit.pane(root, 1, Spacing.NONE);
        Composite bar = kit.pane(full, 3, new Spacing(6, 1, 4, 0));
        bar.setLayoutData(Grid.wide());
        columns = kit.action(bar, "&Trials…", this::chooseColumns);
        columns.setLayoutData(Grid.natural());
        pooled = new Button(bar, SWT.CHECK);
        pooled.setText("Judge by the route's s&pread");
        kit.dress(pooled, Ink.INK, null, Role.BODY);
        Kit.name(pooled, "Judge by the route's spread");
        pooled.setToolTipText("With few parts the spread of trials made alike says more than three parts can; it is then named in the reason");
        pooled.addListener(SWT.Selection, event -> compare());
        pooled.setLayoutData(Grid.natural());
        hint = Prose.quiet(bar, kit, "");
        hint.setLayoutData(Grid.wide());
        bar.addListener(SWT.Resize, event -> showHint(bar));
        kit.hairline(full);
        sash = new SashForm(full, SWT.VERTICAL);
        sash.setLayoutData(Grid.fill());
        kit.dress(sash, Ink.INK, Ink.LINE, Role.BODY);
        sash.setSashWidth(2);
        behind = new BehindCell(sash, context, this::close);
        grid = new CompareGrid(sash, kit, state, this::look, this::showBehind, this::showArrangement);
        behind.moveBelow(grid);
        sash.setWeights(58, 42);
        behind.setVisible(false);
        grid.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE && behind.isVisible()) {
                event.doit = false;
                close();
            }
        });
        if (!context.session().readOnly()) {
            grid.whenDropped(this::attach);
        }
        compare();
        Settling.keep(kit, root, () -> { });
    }

    private void compare() {
        due = false;
        Project project = context.session().project();
        state.take(Comparison.of(project, context.registries().properties(), context.registries()::findProcessKind, pooled.getSelection()));
        boolean nothing = state.all().rows().isEmpty() || state.all().columns().stream().allMatch(Comparison.Column::reference);
        ((StackLayout) root.getLayout()).topControl = nothing ? empty : full;
        root.layout();
        grid.refresh();
        showArrangement();
        look();
    }

    /** The hint shows where there is room for it on the line. */
    private void showHint(Composite bar) {
        boolean room = bar.getClientArea().width > kit.type().chars(Role.BODY, HINT);
        if (room == ((GridData) hint.getLayoutData()).exclude) {
            ((GridData) hint.getLayoutData()).exclude = !room;
            hint.setVisible(room);
            root.getDisplay().asyncExec(() -> { // not while it is being laid out
                if (!full.isDisposed()) {
                    full.layout(true, true);
                }
            });
        }
    }

    private void showBehind() {
        if (!behind.getVisible()) {
            behind.setVisible(true);
            sash.layout();
        }
    }

    private void close() {
        behind.setVisible(false);
        sash.layout();
        grid.setFocus();
    }

    private void look() {
        behind.show(state);
    }

    private void showArrangement() {
        int hidden = state.hiddenCount();
        hint.setWords(hidden == 0 ? "Click a cell for its readings, a target to sort by it; H hides a trial." : hidden + (hidden == 1 ? " trial is hidden" : " trials are hidden"));
        hint.getParent().layout(true, true);
    }

    private void chooseColumns() {
        Menu menu = new Menu(columns);
        MenuItem all = new MenuItem(menu, SWT.PUSH);
        all.setText("Show all");
        all.addListener(SWT.Selection, event -> {
            state.showAll();
            arranged();
        });
        new MenuItem(menu, SWT.SEPARATOR);
        for (Comparison.Column column : state.all().columns()) {
            MenuItem item = new MenuItem(menu, SWT.CHECK);
            item.setText(Kit.plain((column.reference() ? "◇ " : "") + column.code() + "  " + column.title()));
            item.setSelection(!state.isHidden(column.id()));
            item.addListener(SWT.Selection, event -> {
                state.hide(column.id(), !item.getSelection());
                arranged();
            });
        }
        menu.setVisible(true);
        menu.addListener(SWT.Hide, event -> root.getDisplay().asyncExec(menu::dispose));
    }

    private void arranged() {
        grid.refresh();
        showArrangement();
        look();
    }

    private void attach(CompareGrid.Dropped dropped) {
        context.projects().find(dropped.trialId()).filter(Entry.class::isInstance)
                .ifPresent(owner -> Attaching.attach(root.getShell(), context.projects(), dropped.file(), (Entry) owner));
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        if (!due) {
            due = true; // several edits in a row are compared once
            root.getDisplay().asyncExec(() -> {
                if (!root.isDisposed() && due) {
                    compare();
                }
            });
        }
    }

    @Override
    public void setFocus() {
        if (((StackLayout) root.getLayout()).topControl == full) {
            grid.setFocus();
        } else {
            root.setFocus();
        }
    }
}
