package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Control;

/** The 4-point grid, scaled with the text. */
public final class Grid {

    private final Type type;

    Grid(Type type) {
        this.type = type;
    }

    /** That many steps of the grid, in points. */
    public int steps(double count) {
        return (int) Math.round(count * 4 * type.percent() / 100.0);
    }

    /** Between fields: 8 points at 100 %. */
    public int gap() {
        return steps(2);
    }

    /** Between groups: 16 points at 100 %. */
    public int group() {
        return steps(4);
    }

    /** At the edges of a page: 24 points at 100 %. */
    public int edge() {
        return steps(6);
    }

    GridLayout layout(int columns, Spacing spacing) {
        GridLayout layout = new GridLayout(columns, false);
        space(layout, spacing);
        return layout;
    }

    void space(GridLayout layout, Spacing spacing) {
        layout.marginWidth = steps(spacing.marginX());
        layout.marginHeight = steps(spacing.marginY());
        layout.horizontalSpacing = steps(spacing.gapX());
        layout.verticalSpacing = steps(spacing.gapY());
    }

    /** Fills its cell and takes what room is left in both directions. */
    public static GridData fill() {
        return new GridData(SWT.FILL, SWT.FILL, true, true);
    }

    /** Fills its cell and takes what width is left. */
    public static GridData wide() {
        return new GridData(SWT.FILL, SWT.CENTER, true, false);
    }

    /** Takes what width is left over several columns. */
    public static GridData wide(int columns) {
        return new GridData(SWT.FILL, SWT.CENTER, true, false, columns, 1);
    }

    /** As large as it wants to be, left in its cell. */
    public static GridData natural() {
        return new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
    }

    /** Shows a control of a grid, or hides it and gives its room to the others; lay out afterwards. */
    public static void shown(Control control, boolean shown) {
        ((GridData) control.getLayoutData()).exclude = !shown;
        control.setVisible(shown);
    }
}
