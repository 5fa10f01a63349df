package org.flexwright.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** The window's sign, drawn in the program's colours: a dome on its rim, pressed from above. */
final class WindowIcon {

    private static final int[] SIZES = {16, 32, 48, 128};

    private WindowIcon() {
    }

    /** Draws it for a window in the sizes systems ask for. */
    static void put(Shell shell, Kit kit) {
        Image[] images = new Image[SIZES.length];
        for (int i = 0; i < SIZES.length; i++) {
            int size = SIZES[i];
            images[i] = new Image(shell.getDisplay(), (gc, width, height) -> draw(gc, size, kit), size, size);
        }
        shell.setImages(images);
        shell.addDisposeListener(event -> {
            for (Image image : images) {
                image.dispose();
            }
        });
    }

    private static void draw(GC gc, int size, Kit kit) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(kit.color(Ink.ACCENT));
        gc.fillRectangle(0, 0, size, size);
        gc.setForeground(kit.color(Ink.PAPER));
        gc.setLineWidth(Math.max(2, size / 10));
        gc.setLineCap(SWT.CAP_ROUND);
        int edge = size / 6;
        int rim = size * 3 / 4;
        gc.drawArc(edge * 3 / 2, size * 7 / 16, size - 3 * edge, size * 5 / 8, 0, 180);
        gc.drawLine(edge, rim, size - edge, rim);
        gc.drawLine(size / 2, size / 8, size / 2, size * 5 / 16);
    }
}
