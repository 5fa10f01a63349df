package org.flexwright.workbench.kit;

/**
 * Margins and gaps of a pane, in steps of the grid (a step is 4 points at 100 %).
 *
 * @param marginX left and right margin
 * @param marginY upper and lower margin
 * @param gapX    between columns
 * @param gapY    between rows
 */
public record Spacing(int marginX, int marginY, int gapX, int gapY) {
    /** No margins, fields 8 points apart. */
    public static final Spacing FIELDS = new Spacing(0, 0, 2, 2);
    /** No margins, groups 16 points apart. */
    public static final Spacing GROUPS = new Spacing(0, 0, 4, 4);
    /** A page: 24 points at the edges, groups 16 points apart. */
    public static final Spacing PAGE = new Spacing(6, 6, 4, 4);
    /** A panel: 16 points at the edges, fields 8 points apart. */
    public static final Spacing PANEL = new Spacing(4, 4, 2, 2);
    /** Things on a line that belong together: no margins, 4 points apart. */
    public static final Spacing TIGHT = new Spacing(0, 0, 1, 1);
    /** Nothing at all. */
    public static final Spacing NONE = new Spacing(0, 0, 0, 0);
}
