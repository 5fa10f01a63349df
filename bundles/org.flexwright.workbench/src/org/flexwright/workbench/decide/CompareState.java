package org.flexwright.workbench.decide;

import java.util.HashSet;
import java.util.Set;

import org.flexwright.core.view.Comparison;

/** How a person arranged the comparison: what is hidden, by what it is sorted, what is unfolded, which cell is looked at. */
final class CompareState {

    /** Row or column of a heading. */
    static final int HEADING = -1;

    private final Set<String> hidden = new HashSet<>();
    private final Set<String> unfolded = new HashSet<>();
    private String sortedBy = "";
    private boolean ascending = true;
    private Comparison all;
    private Comparison shown;
    private int row;
    private int column;

    /** Takes a comparison made anew; the arrangement stays. */
    void take(Comparison made) {
        all = made;
        arrange();
    }

    private void arrange() {
        Comparison next = all.hiding(hidden);
        int by = rowOf(sortedBy);
        shown = by < 0 ? next : next.sorted(by, ascending);
        row = Math.clamp(row, HEADING, Math.max(HEADING, shown.rows().size() - 1));
        column = Math.clamp(column, HEADING, Math.max(HEADING, shown.columns().size() - 1));
    }

    private int rowOf(String targetId) {
        for (int i = 0; i < all.rows().size(); i++) {
            if (all.rows().get(i).targetId().equals(targetId)) {
                return i;
            }
        }
        return HEADING;
    }

    /** The comparison as it is arranged. */
    Comparison shown() {
        return shown;
    }

    /** The comparison with every column. */
    Comparison all() {
        return all;
    }

    /** Sorts by a row: first upwards, then downwards, then not at all. */
    void sort(int by) {
        String id = shown.rows().get(by).targetId();
        if (!id.equals(sortedBy)) {
            sortedBy = id;
            ascending = true;
        } else if (ascending) {
            ascending = false;
        } else {
            sortedBy = "";
        }
        arrange();
    }

    /** Sign of how a row sorts; empty when it does not. */
    String sortSign(int of) {
        return !shown.rows().get(of).targetId().equals(sortedBy) || sortedBy.isEmpty() ? "" : ascending ? "↑" : "↓";
    }

    /** Hides a column, or shows it again. */
    void hide(String id, boolean hide) {
        if (hide) {
            hidden.add(id);
        } else {
            hidden.remove(id);
        }
        arrange();
    }

    /** True when the column is hidden. */
    boolean isHidden(String id) {
        return hidden.contains(id);
    }

    /** How many columns are hidden. */
    int hiddenCount() {
        return (int) all.columns().stream().filter(c -> hidden.contains(c.id())).count();
    }

    /** Shows every column. */
    void showAll() {
        hidden.clear();
        arrange();
    }

    /** Folds what did not change on a route, or unfolds it. */
    void fold(String route) {
        if (!unfolded.remove(route)) {
            unfolded.add(route);
        }
    }

    /** True when what did not change on the route is shown. */
    boolean isUnfolded(String route) {
        return unfolded.contains(route);
    }

    int row() {
        return row;
    }

    int column() {
        return column;
    }

    /** Looks at a cell or heading. */
    void look(int newRow, int newColumn) {
        row = Math.clamp(newRow, HEADING, Math.max(HEADING, shown.rows().size() - 1));
        column = Math.clamp(newColumn, HEADING, Math.max(HEADING, shown.columns().size() - 1));
    }
}
