package org.flexwright.workbench.kit;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * A label that remembers how large its words are at each width. A page of nested grids asks each of its labels many times over, and the
 * system breaks the lines anew for each question; it also does so each time a label is told to stay where it is.
 */
final class Words extends Label {
    private final Kit kit;
    private final Map<Integer, Point> sizes = new HashMap<>();
    private String measured = "";
    private Font in;
    private long when = -1;
    private boolean placed;

    Words(Composite parent, Kit kit) {
        super(parent, SWT.WRAP);
        this.kit = kit;
    }

    @Override
    protected void checkSubclass() {
        // nothing of how a label works is changed, only how often it is asked
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        if (hHint != SWT.DEFAULT) {
            return super.computeSize(wHint, hHint, changed);
        }
        forgetWhatChanged();
        Point size = sizes.get(wHint);
        if (size == null) {
            size = super.computeSize(wHint, SWT.DEFAULT, true);
            if (size.x > 0) { // words that were never in sight have no width yet
                sizes.put(wHint, size);
            }
        }
        return new Point(size.x, size.y);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        forgetWhatChanged();
        Rectangle now = getBounds();
        if (!placed || now.x != x || now.y != y || now.width != width || now.height != height) {
            super.setBounds(x, y, width, height);
            placed = true;
        }
    }

    @Override
    public void setBounds(Rectangle bounds) {
        setBounds(bounds.x, bounds.y, bounds.width, bounds.height);
    }

    private void forgetWhatChanged() {
        if (!measured.equals(getText()) || !getFont().equals(in)) {
            measured = getText();
            in = getFont();
            sizes.clear();
            placed = false;
        }
        if (when != kit.measured()) {
            when = kit.measured();
            sizes.clear();
        }
    }
}
