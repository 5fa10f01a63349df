package org.flexwright.workbench.pages.common;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Type.Role;

/** Photos in small with their captions; Enter or a double click opens one. Files are read away from the screen's thread. */
public final class Photos extends Composite {

    private static final int HEIGHT = 32;

    private final Kit kit;
    private final ProjectSession session;
    private List<Attachment> shown = List.of();

    /** No photos yet. */
    public Photos(Composite parent, Kit kit, ProjectSession session) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.session = session;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = layout.marginTop = layout.marginBottom = layout.marginRight = 0;
        layout.spacing = kit.grid().group();
        setLayout(layout);
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(this, "Photos");
    }

    /** Shows the photos among these. */
    public void show(List<Attachment> attachments) {
        List<Attachment> photos = attachments.stream().filter(a -> a.getKind() == AttachmentKind.PHOTO && a.getPath() != null).toList();
        if (photos.equals(shown)) {
            return;
        }
        shown = photos;
        for (Control old : getChildren()) {
            old.dispose();
        }
        photos.forEach(Photo::new);
        layout();
        ScrollPane.reflowAround(this);
    }

    /** One photo with its caption below. */
    private final class Photo extends Canvas {
        private final Path file;
        private final String caption;
        private Image image;
        private String trouble = "…";

        Photo(Attachment attachment) {
            super(Photos.this, SWT.DOUBLE_BUFFERED);
            file = session.folder().resolve(attachment.getPath()).normalize();
            String words = attachment.getCaption() == null || attachment.getCaption().isBlank() ? attachment.getFileName() : attachment.getCaption();
            caption = words == null ? "" : words;
            kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
            Kit.name(this, "Photo: " + caption);
            setToolTipText(caption);
            addListener(SWT.Paint, event -> paint(event.gc));
            addListener(SWT.MouseDoubleClick, event -> open());
            addListener(SWT.KeyDown, event -> {
                if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
                    open();
                }
            });
            addListener(SWT.FocusIn, event -> redraw());
            addListener(SWT.FocusOut, event -> redraw());
            addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
            addListener(SWT.Dispose, event -> {
                if (image != null) {
                    image.dispose();
                }
            });
            if (file.startsWith(session.folder())) {
                load();
            } else {
                trouble = "outside the project";
            }
        }

        private void open() {
            if (image != null) {
                Program.launch(file.toString());
            }
        }

        private void load() {
            int height = height();
            Job job = Job.createSystem("Reading a photo", (IProgressMonitor monitor) -> {
                ImageData small = null;
                try {
                    ImageData data = new ImageData(file.toString());
                    small = data.scaledTo(Math.max(1, data.width * height / data.height), height);
                } catch (SWTException e) {
                    small = null; // told in the photo's place
                }
                ImageData read = small;
                if (!getDisplay().isDisposed()) {
                    getDisplay().asyncExec(() -> take(read));
                }
                return Status.OK_STATUS;
            });
            job.schedule();
        }

        private void take(ImageData data) {
            if (isDisposed()) {
                return;
            }
            if (data == null) {
                trouble = "cannot be shown";
            } else {
                image = new Image(getDisplay(), data);
            }
            Photos.this.layout(true, true);
            ScrollPane.reflowAround(Photos.this);
            redraw();
        }

        private int height() {
            return kit.grid().steps(HEIGHT);
        }

        @Override
        public Point computeSize(int wHint, int hHint, boolean changed) {
            int width = image == null ? height() : image.getBounds().width;
            return new Point(Math.max(width, kit.type().chars(Role.BODY, 24)) + 4, height() + 2 * kit.type().lineHeight(Role.BODY) + kit.grid().gap());
        }

        private void paint(GC gc) {
            Point size = getSize();
            gc.setBackground(kit.color(Ink.PANEL));
            gc.setForeground(kit.color(Ink.QUIET));
            gc.setFont(kit.type().font(Role.BODY));
            if (image == null) {
                gc.fillRectangle(2, 2, size.x - 4, height());
                gc.drawText(trouble, kit.grid().gap(), height() / 2, true);
            } else {
                Rectangle bounds = image.getBounds();
                gc.drawImage(image, 2, 2);
                gc.setForeground(kit.color(Ink.LINE));
                gc.drawRectangle(2, 2, bounds.width - 1, bounds.height - 1);
            }
            gc.setForeground(kit.color(Ink.INK));
            TextLayout words = new TextLayout(getDisplay());
            words.setFont(kit.type().font(Role.BODY));
            words.setWidth(size.x - 4);
            words.setText(caption);
            words.draw(gc, 2, height() + kit.grid().steps(1));
            words.dispose();
            if (isFocusControl()) {
                gc.setForeground(kit.color(Ink.ACCENT));
                gc.setLineWidth(2);
                gc.drawRectangle(1, 1, size.x - 2, size.y - 2);
            }
        }
    }
}
