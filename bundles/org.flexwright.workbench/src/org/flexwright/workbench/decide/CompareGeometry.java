package org.flexwright.workbench.decide;

import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.Comparison.Column;
import org.flexwright.core.view.Comparison.Group;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Type.Role;

/**
 * Where everything stands in the comparison, before scrolling.
 *
 * @param unit        a step of the grid
 * @param line        height of a line of text
 * @param left        width of the targets at the left
 * @param columnWidth width of a trial
 * @param groupHeight height of the routes' names, with what is unfolded below them
 * @param headHeight  height of all headings above the cells
 * @param rowHeight   height of a row
 * @param strips      true when each cell has its strip; where there is too little room the words alone stand
 * @param titles      lines of a trial's title
 * @param factors     lines of differing factors
 * @param frozen      true when the headings stay while the cells scroll; where there is too little room they scroll along
 * @param rows        how many rows
 * @param columns     how many columns
 */
record CompareGeometry(int unit, int line, int left, int columnWidth, int groupHeight, int headHeight, int rowHeight, boolean strips, int titles, int factors, boolean frozen, int rows,
        int columns) {

    private static final int LEFT_CHARS = 24;
    private static final int COLUMN_CHARS = 26;
    /** So many differing factors stand above a column; more are told by the tool tip. */
    static final int MOST_FACTORS = 4;
    private static final double STRIP = 6;
    /** So many rows are to be seen before headings may be long. */
    private static final int ROWS = 3;

    /** Measures an arrangement for a window of that height: where it is low, headings are short. */
    static CompareGeometry of(Kit kit, CompareState state, int height) {
        Comparison shown = state.shown();
        int unit = kit.grid().steps(1);
        int line = kit.type().lineHeight(Role.BODY);
        int factors = shown.columns().stream().mapToInt(c -> Math.min(MOST_FACTORS + 1, c.differing().size())).max().orElse(0);
        int unfolded = shown.groups().stream().filter(g -> state.isUnfolded(g.route())).mapToInt(g -> Math.max(1, g.unchanged().size())).max().orElse(0);
        int group = line * (1 + unfolded) + 2 * unit;
        int row = 2 * line + kit.grid().steps(STRIP) + 5 * unit;
        int full = group + line * (3 + factors) + 4 * unit;
        boolean whole = height <= 0 || full + ROWS * row <= height;
        int head = whole ? full : group + 2 * line + 3 * unit;
        boolean strips = whole || head + row <= height;
        return new CompareGeometry(unit, line, kit.type().chars(Role.BODY, LEFT_CHARS) + 6 * unit, kit.type().chars(Role.BODY, COLUMN_CHARS) + 4 * unit, group,
                head, strips ? row : 2 * line + 4 * unit, strips, whole ? 2 : 1, whole ? factors : 0, strips, shown.rows().size(), shown.columns().size());
    }

    int width() {
        return left + columns * columnWidth;
    }

    int height() {
        return headHeight + rows * rowHeight;
    }

    int x(int column) {
        return left + column * columnWidth;
    }

    int y(int row) {
        return headHeight + row * rowHeight;
    }

    /** A cell or heading as it stands before scrolling. */
    Rectangle cell(int row, int column) {
        int x = column < 0 ? 0 : x(column);
        int y = row < 0 ? groupHeight : y(row);
        return new Rectangle(x, y, column < 0 ? left : columnWidth, row < 0 ? headHeight - groupHeight : rowHeight);
    }

    /** Height that stays above the scrolling cells. */
    int stays() {
        return frozen ? headHeight : 0;
    }

    /** Row and column at a place in the window; headings are -1, nothing is -2. The row of route names is -3 in {@code y}. */
    Point at(int px, int py, int scrollX, int scrollY) {
        int column = px < left ? -1 : (px + scrollX - left) / columnWidth;
        int down = frozen && py < headHeight ? py : py + scrollY;
        int row = down < groupHeight ? -3 : down < headHeight ? -1 : (down - headHeight) / rowHeight;
        return new Point(column >= columns ? -2 : column, row >= rows ? -2 : row);
    }

    /** First and last column of a route. */
    static int[] span(List<Column> columns, Group group) {
        int first = -1;
        int last = -1;
        for (int i = 0; i < columns.size(); i++) {
            if (!columns.get(i).reference() && columns.get(i).route().equals(group.route())) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        return new int[] {first, last};
    }
}
