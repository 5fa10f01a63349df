package org.flexwright.workbench.decide;

import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.flexwright.core.view.Comparison;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * The comparison as a grid: targets down, trials across. Arrow keys go from cell to cell, Enter looks behind a cell or sorts by a row,
 * H hides a column.
 */
final class CompareGrid extends Canvas {

    private final Kit kit;
    private final CompareState state;
    private final Runnable looked;
    private final Runnable opened;
    private final Runnable arranged;
    private CompareGeometry at;

    /**
     * An empty grid.
     *
     * @param looked   told when another cell is looked at
     * @param opened   told when a person wants to see what is behind it
     * @param arranged told when something was sorted, hidden or unfolded
     */
    CompareGrid(Composite parent, Kit kit, CompareState state, Runnable looked, Runnable opened, Runnable arranged) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.H_SCROLL);
        this.kit = kit;
        this.state = state;
        this.looked = looked;
        this.opened = opened;
        this.arranged = arranged;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "Trials side by side");
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_TABLE;
            }
        });
        addListener(SWT.Paint, event -> paint(event));
        addListener(SWT.Resize, event -> refresh());
        getVerticalBar().addListener(SWT.Selection, event -> redraw());
        getHorizontalBar().addListener(SWT.Selection, event -> redraw());
        addListener(SWT.MouseDown, this::mouseDown);
        addListener(SWT.MouseMove, this::mouseMove);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS, SWT.TRAVERSE_ESCAPE -> true;
            default -> false;
        });
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        kit.whenDressed(this, this::refresh);
    }

    /** Measures and draws again. */
    void refresh() {
        if (state.shown() != null) {
            at = CompareGeometry.of(kit, state, getClientArea().height);
            scrollBars();
            tell();
            redraw();
        }
    }

    private void paint(Event event) {
        if (at != null) {
            new ComparePainter(event.gc, kit, state, at, getClientArea(), getHorizontalBar().getSelection(), getVerticalBar().getSelection(), isFocusControl()).paint();
        }
    }

    private void scrollBars() {
        if (at == null) {
            return;
        }
        Rectangle window = getClientArea();
        bar(getHorizontalBar(), at.width() - at.left(), window.width - at.left(), at.columnWidth());
        bar(getVerticalBar(), at.height() - at.stays(), window.height - at.stays(), at.rowHeight());
    }

    private static void bar(ScrollBar bar, int whole, int part, int step) {
        boolean needed = part > 0 && part < whole;
        bar.setVisible(needed);
        bar.setEnabled(needed);
        bar.setValues(needed ? Math.min(bar.getSelection(), whole - part) : 0, 0, Math.max(1, whole), Math.max(1, Math.min(part, whole)), Math.max(1, step / 3),
                Math.max(1, part));
    }

    private void mouseDown(Event event) {
        forceFocus();
        if (at == null) {
            return;
        }
        Point hit = at.at(event.x, event.y, getHorizontalBar().getSelection(), getVerticalBar().getSelection());
        if (hit.y == -3) {
            fold(hit.x);
        } else if (hit.x >= -1 && hit.y >= -1) {
            state.look(hit.y, hit.x);
            act();
        }
    }

    private void fold(int column) {
        if (column >= 0) {
            Comparison.Column over = state.shown().columns().get(column);
            if (!over.reference()) {
                state.fold(over.route());
                refresh();
                arranged.run();
            }
        }
    }

    /** What a click or Enter does where one looks: sorts at a row's heading, else looks behind. */
    private void act() {
        if (state.column() == CompareState.HEADING && state.row() >= 0) {
            state.sort(state.row());
            arranged.run();
        }
        refresh();
        looked.run();
        if (state.row() >= 0 && state.column() >= 0) {
            opened.run();
        }
    }

    private void mouseMove(Event event) {
        if (at == null) {
            return;
        }
        Point hit = at.at(event.x, event.y, getHorizontalBar().getSelection(), getVerticalBar().getSelection());
        String words = words(hit.y, hit.x);
        if (!words.equals(getToolTipText())) {
            setToolTipText(words);
        }
    }

    private String words(int row, int column) {
        Comparison shown = state.shown();
        if (column >= 0 && row >= 0) {
            return CompareWords.cell(shown, row, column);
        }
        if (column >= 0 && row == CompareState.HEADING) {
            return CompareWords.column(shown.columns().get(column)) + ". H hides it.";
        }
        if (column == CompareState.HEADING && row >= 0) {
            return CompareWords.row(shown.rows().get(row), state.sortSign(row)) + ". Click to sort the trials by it.";
        }
        return "";
    }

    private void key(Event event) {
        if (at == null || (event.stateMask & SWT.MODIFIER_MASK) != 0) {
            return;
        }
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> look(state.row(), state.column() - 1);
            case SWT.ARROW_RIGHT -> look(state.row(), state.column() + 1);
            case SWT.ARROW_UP -> look(state.row() - 1, state.column());
            case SWT.ARROW_DOWN -> look(state.row() + 1, state.column());
            case SWT.HOME -> look(state.row(), CompareState.HEADING);
            case SWT.END -> look(state.row(), at.columns() - 1);
            case SWT.CR, SWT.KEYPAD_CR, ' ' -> act();
            case 'h' -> hide();
            case 'f' -> fold(state.column());
            default -> {
                // not ours
            }
        }
    }

    private void hide() {
        if (state.column() >= 0) {
            state.hide(state.shown().columns().get(state.column()).id(), true);
            refresh();
            arranged.run();
            looked.run();
        }
    }

    private void look(int row, int column) {
        state.look(row, column);
        intoSight();
        tell();
        redraw();
        if (state.row() >= 0 && state.column() >= 0) {
            looked.run();
        }
    }

    private void intoSight() {
        Rectangle window = getClientArea();
        if (state.column() >= 0) {
            scroll(getHorizontalBar(), at.x(state.column()) - at.left(), at.columnWidth(), window.width - at.left());
        }
        if (state.row() >= 0) {
            scroll(getVerticalBar(), at.y(state.row()) - at.stays(), at.rowHeight(), window.height - at.stays());
        }
    }

    private static void scroll(ScrollBar bar, int from, int length, int part) {
        int now = bar.getSelection();
        if (from < now) {
            bar.setSelection(from);
        } else if (from + length > now + part) {
            bar.setSelection(from + length - part);
        }
    }

    /** The name is what one looks at, so that it is heard on every step. */
    private void tell() {
        String words = words(state.row(), state.column());
        Kit.name(this, "Trials side by side" + (words.isEmpty() ? "" : ": " + words));
        if (isFocusControl()) {
            getAccessible().setFocus(ACC.CHILDID_SELF);
        }
    }

    /** Called with the trial's id when files are dropped on its column. */
    void whenDropped(Consumer<Dropped> listener) {
        CompareDrop.on(this, place -> {
            Point local = toControl(place);
            Point hit = at == null ? new Point(-2, -2) : at.at(local.x, local.y, getHorizontalBar().getSelection(), getVerticalBar().getSelection());
            return hit.x < 0 || state.shown().columns().get(hit.x).reference() ? null : state.shown().columns().get(hit.x).id();
        }, listener);
    }

    /**
     * A file dropped on a trial.
     *
     * @param trialId id of the trial
     * @param file    the file
     */
    record Dropped(String trialId, Path file) {
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = at == null ? kit.grid().steps(100) : at.width();
        int height = at == null ? kit.grid().steps(60) : at.height();
        return new Point(wHint == SWT.DEFAULT ? width : wHint, hHint == SWT.DEFAULT ? height : hHint);
    }
}
