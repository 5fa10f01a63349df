package org.flexwright.workbench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A project worked on before, with its picture, ready to be shown.
 *
 * @param recent  the project
 * @param picture its picture, small; null when it has none
 */
record RecentCard(Recent recent, ImageData picture) {

    private static final int WIDTH = 96;
    private static final int HEIGHT = 64;

    /** Reads the picture and makes it small. */
    static RecentCard of(Recent recent) throws IOException {
        if (recent.picture().isEmpty()) {
            return new RecentCard(recent, null);
        }
        Path file = recent.picture().get();
        try (var in = Files.newInputStream(file)) {
            ImageData whole = new ImageData(in);
            double scale = Math.min(2.0 * WIDTH / whole.width, 2.0 * HEIGHT / whole.height);
            return new RecentCard(recent, whole.scaledTo(Math.max(1, (int) (whole.width * scale)), Math.max(1, (int) (whole.height * scale))));
        } catch (SWTException e) {
            throw new IOException(file + " is no picture.", e);
        }
    }

    /** The card with its button. */
    Composite show(Composite parent, Kit kit, Runnable open) {
        Composite card = kit.pane(parent, 3, new Spacing(0, 0, 4, 0));
        Canvas frame = new Canvas(card, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        kit.dress(frame, Ink.QUIET, Ink.PANEL, Role.HEADING);
        Kit.name(frame, "Picture of " + recent.title());
        GridData size = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        size.widthHint = WIDTH;
        size.heightHint = HEIGHT;
        frame.setLayoutData(size);
        Image image = picture == null ? null : new Image(parent.getDisplay(), picture);
        frame.addPaintListener(event -> {
            var area = frame.getClientArea();
            if (image == null) {
                String letter = recent.title().substring(0, 1);
                var extent = event.gc.textExtent(letter);
                event.gc.drawText(letter, (area.width - extent.x) / 2, (area.height - extent.y) / 2, true);
            } else {
                var whole = image.getBounds();
                double scale = Math.min((double) area.width / whole.width, (double) area.height / whole.height);
                int w = (int) (whole.width * scale);
                int h = (int) (whole.height * scale);
                event.gc.setInterpolation(SWT.HIGH);
                event.gc.drawImage(image, 0, 0, whole.width, whole.height, (area.width - w) / 2, (area.height - h) / 2, w, h);
            }
        });
        frame.addDisposeListener(event -> {
            if (image != null) {
                image.dispose();
            }
        });
        Composite words = kit.pane(card, 1, Spacing.TIGHT);
        words.setLayoutData(Grid.wide());
        kit.label(words, recent.title(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).format(recent.touched().atZone(ZoneId.systemDefault()));
        kit.quiet(words, when + (recent.unsaved() ? "  ·  edits wait to be saved" : "")).setLayoutData(Grid.wide());
        var where = kit.quiet(words, recent.folder().toString());
        where.setLayoutData(Grid.wide());
        Button button = kit.action(card, "Open", open);
        Kit.name(button, "Open " + recent.title());
        return card;
    }
}
