package org.flexwright.workbench.pages.common;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A table of things of the project: numbers right-aligned with their unit in the heading, rows high enough to read, columns that share the
 * width. What is chosen stays chosen when it is shown again.
 *
 * @param <T> what stands in a row
 */
public final class Listing<T> {

    private static final double ROW = 1.6;
    private static final double PADDING = 5;

    private final Kit kit;
    private final Table table;
    private final List<Column<T>> columns;
    private final int most;
    private List<T> things = List.of();
    private boolean showing;

    /**
     * A column.
     *
     * @param title  heading, with the unit
     * @param chars  least width in characters
     * @param number true when its cells stand right-aligned
     * @param words  what stands in a cell
     * @param ink    colour of the words
     */
    public record Column<T>(String title, int chars, boolean number, Function<T, String> words, Function<T, Ink> ink) {
        /** A column of words. */
        public static <T> Column<T> text(String title, int chars, Function<T, String> words) {
            return new Column<>(title, chars, false, words, thing -> Ink.INK);
        }

        /** A column of numbers. */
        public static <T> Column<T> number(String title, int chars, Function<T, String> words) {
            return new Column<>(title, chars, true, words, thing -> Ink.INK);
        }
    }

    /**
     * An empty table.
     *
     * @param name what people hear
     * @param most rows shown at once before it scrolls; 0: as many as its layout gives room for
     */
    public Listing(Composite parent, Kit kit, String name, int most, List<Column<T>> columns) {
        this(parent, kit, name, most, columns, SWT.NONE);
    }

    /** An empty table whose rows can be ticked. */
    public static <T> Listing<T> ticked(Composite parent, Kit kit, String name, int most, List<Column<T>> columns) {
        return new Listing<>(parent, kit, name, most, columns, SWT.CHECK);
    }

    private Listing(Composite parent, Kit kit, String name, int most, List<Column<T>> columns, int ticks) {
        this.kit = kit;
        this.most = most;
        this.columns = List.copyOf(columns);
        table = new Table(parent, ticks | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        kit.dress(table, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(table, name);
        table.setHeaderVisible(true);
        for (Column<T> column : columns) {
            TableColumn made = new TableColumn(table, column.number() ? SWT.RIGHT : SWT.LEFT);
            made.setText(column.title());
            made.setMoveable(false);
        }
        kit.rows(table);
        table.addListener(SWT.Resize, event -> fit());
        kit.whenDressed(table, this::dressAgain);
    }

    private int rowHeight() {
        return (int) Math.round(kit.type().lineHeight(Role.BODY) * ROW);
    }

    private void dressAgain() {
        table.setHeaderBackground(kit.color(Ink.PANEL));
        table.setHeaderForeground(kit.color(Ink.QUIET));
        fill();
        fit();
    }

    /**
     * Columns get what they need at least; what is left goes to the columns of words. Where there is too little room the rightmost columns
     * give way, down to two.
     */
    private void fit() {
        int width = table.getClientArea().width;
        if (width <= 0) {
            return;
        }
        int shown = columns.size();
        while (shown > 2 && sum(shown, false) > width) {
            shown--;
        }
        int left = width - sum(shown, false);
        int words = sum(shown, true);
        for (int i = 0; i < columns.size(); i++) {
            int more = !columns.get(i).number() && words > 0 ? (int) ((long) left * wanted(i) / words) : 0;
            int wide = i < shown ? Math.max(kit.type().chars(Role.BODY, 5), wanted(i) + more) : 0;
            if (table.getColumn(i).getWidth() != wide) {
                table.getColumn(i).setWidth(wide);
                table.getColumn(i).setResizable(wide > 0);
            }
        }
    }

    private int wanted(int column) {
        return kit.type().chars(Role.BODY, columns.get(column).chars()) + kit.grid().steps(PADDING);
    }

    private int sum(int shown, boolean wordsOnly) {
        int sum = 0;
        for (int i = 0; i < shown; i++) {
            sum += wordsOnly && columns.get(i).number() ? 0 : wanted(i);
        }
        return sum;
    }

    /** The control; its layout data must be a GridData when a number of rows was given. */
    public Table control() {
        return table;
    }

    /** Shows these; the chosen one stays chosen if it is among them. */
    public void show(List<? extends T> shown) {
        things = List.copyOf(shown);
        fill();
        if (most > 0 && table.getLayoutData() instanceof GridData data) {
            int rows = Math.clamp(things.size(), 1, most);
            int height = table.getHeaderHeight() + rows * Math.max(table.getItemHeight(), rowHeight()) + 4;
            if (data.heightHint != height) {
                data.heightHint = height;
                table.requestLayout();
            }
        }
    }

    private void fill() {
        showing = true;
        try {
            T chosen = chosen();
            table.setRedraw(false);
            while (table.getItemCount() > things.size()) {
                table.remove(table.getItemCount() - 1);
            }
            for (int i = 0; i < things.size(); i++) {
                TableItem item = i < table.getItemCount() ? table.getItem(i) : new TableItem(table, SWT.NONE);
                fill(item, things.get(i));
            }
            choose(chosen);
        } finally {
            table.setRedraw(true);
            showing = false;
        }
    }

    private void fill(TableItem item, T thing) {
        item.setData(thing);
        for (int i = 0; i < columns.size(); i++) {
            item.setText(i, columns.get(i).words().apply(thing));
            item.setForeground(i, kit.color(columns.get(i).ink().apply(thing)));
        }
    }

    /** The chosen thing, or null. */
    @SuppressWarnings("unchecked") // items hold what was shown
    public T chosen() {
        TableItem[] selected = table.getSelection();
        return selected.length == 0 ? null : (T) selected[0].getData();
    }

    /** Chooses a thing without telling anybody; null: none. */
    public void choose(T thing) {
        int at = thing == null ? -1 : new ArrayList<>(things).indexOf(thing);
        if (at < 0) {
            table.deselectAll();
        } else if (table.getSelectionIndex() != at) {
            table.setSelection(at);
        }
    }

    /** Called when a person chooses a thing. */
    public void whenChosen(Consumer<T> listener) {
        table.addListener(SWT.Selection, event -> {
            if (!showing && event.detail != SWT.CHECK) {
                listener.accept(chosen());
            }
        });
    }

    /** Ticks those rows and no others, without telling anybody. */
    public void tick(Predicate<T> ticked) {
        for (int i = 0; i < things.size() && i < table.getItemCount(); i++) {
            boolean on = ticked.test(things.get(i));
            if (table.getItem(i).getChecked() != on) {
                table.getItem(i).setChecked(on);
            }
        }
    }

    /** Called with the thing and whether it is ticked now when a person ticks a row or takes the tick away. */
    @SuppressWarnings("unchecked") // items hold what was shown
    public void whenTicked(BiConsumer<T, Boolean> listener) {
        table.addListener(SWT.Selection, event -> {
            if (event.detail == SWT.CHECK) {
                listener.accept((T) event.item.getData(), ((TableItem) event.item).getChecked());
            }
        });
    }

    /** Called on Enter or a double click. */
    public void whenOpened(Consumer<T> listener) {
        table.addListener(SWT.DefaultSelection, event -> listener.accept(chosen()));
    }
}
