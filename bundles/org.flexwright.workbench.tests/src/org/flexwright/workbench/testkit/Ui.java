package org.flexwright.workbench.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.commands.NotEnabledException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;

/** A person at the window: finds controls by their name or words, types, clicks, waits, takes pictures. Runs on the screen's thread. */
public final class Ui {

    /** How long a condition may take before the test gives up, milliseconds: generous, for a busy machine. */
    private static final long PATIENCE = 30_000;

    /** What the toolkit may take to draw what was set, before a picture is taken, milliseconds. */
    private static final long DRAWING = 300;

    private Ui() {
    }

    /** The window. */
    public static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    /** The window's project. */
    public static ProjectService projects() {
        return window().getService(ProjectService.class);
    }

    /** The kit. */
    public static Kit kit() {
        return window().getService(Kit.class);
    }

    /** Handles events until none waits. */
    public static void pump() {
        while (Display.getCurrent().readAndDispatch()) {
            // goes on
        }
    }

    /** Handles events until the condition holds; fails with what was waited for. */
    public static void await(String what, BooleanSupplier condition) {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + PATIENCE * 1_000_000;
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("Waited in vain: " + what);
            }
            if (!display.readAndDispatch()) {
                display.timerExec(20, () -> { }); // wakes the loop
                display.sleep();
            }
        }
        pump();
    }

    /** Lets the toolkit take in and draw what was set. */
    public static void rest() {
        long drawn = System.nanoTime() + DRAWING * 1_000_000;
        await("the screen is drawn", () -> System.nanoTime() > drawn);
    }

    /** All controls of a kind below a composite that are visible. */
    public static <T extends Control> List<T> all(Control root, Class<T> kind) {
        List<T> found = new ArrayList<>();
        walk(root, control -> {
            if (kind.isInstance(control)) {
                found.add(kind.cast(control));
            }
        });
        return found;
    }

    /** Visits a control and all visible ones below it. */
    public static void walk(Control root, Consumer<Control> visitor) {
        if (root.isDisposed() || !root.isVisible()) {
            return;
        }
        visitor.accept(root);
        if (root instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                walk(child, visitor);
            }
        }
    }

    /** The visible control of that kind whose name or words are those. */
    public static <T extends Control> T find(Control root, Class<T> kind, String words) {
        return find(root, kind, words, control -> words.equals(Kit.nameOf(control)) || words.equals(words(control)));
    }

    /** The first visible control of that kind that the test wants. */
    public static <T extends Control> T find(Control root, Class<T> kind, String what, Predicate<T> wanted) {
        List<T> all = all(root, kind);
        return all.stream().filter(wanted).findFirst().orElseThrow(() -> new AssertionError("There is no " + kind.getSimpleName() + " \"" + what
                + "\"; there are " + all.stream().map(c -> Kit.nameOf(c) + "/" + words(c)).toList()));
    }

    /** The words a control shows, without mnemonics. */
    public static String words(Control control) {
        String words = control instanceof Label label ? label.getText() : control instanceof Button button ? button.getText()
                : control instanceof Text text ? text.getText() : control instanceof Combo combo ? combo.getText() : "";
        return words.replace("&&", "\u0000").replace("&", "").replace("\u0000", "&");
    }

    /** True when something below shows those words. */
    public static boolean shows(Control root, String words) {
        return all(root, Control.class).stream().anyMatch(control -> words(control).contains(words));
    }

    /** Types into a field as a person who replaces what stands there. */
    public static void type(Text field, String words) {
        field.setFocus();
        field.setText(words);
        pump();
    }

    /** Chooses in a list. */
    public static void choose(Combo combo, String words) {
        combo.select(combo.indexOf(words));
        combo.notifyListeners(SWT.Selection, new Event());
        pump();
    }

    /** Presses a button. */
    public static void click(Button button) {
        if (!button.isEnabled()) {
            throw new AssertionError("The button " + words(button) + " cannot be pressed.");
        }
        button.notifyListeners(SWT.Selection, new Event());
        pump();
    }

    /** Presses the button with those words. */
    public static void click(Control root, String words) {
        click(find(root, Button.class, words));
    }

    /** Clicks on a control that is no button. */
    public static void mouse(Control control) {
        Event event = new Event();
        event.button = 1;
        control.notifyListeners(SWT.MouseDown, event);
        control.notifyListeners(SWT.MouseUp, event);
        pump();
    }

    /** Runs a command as a menu or key does. */
    public static void command(String id) {
        try {
            window().getService(IHandlerService.class).executeCommand(id, null);
        } catch (NotEnabledException e) {
            throw new AssertionError("The command " + id + " is not enabled.", e);
        } catch (CommandException e) {
            throw new AssertionError("The command " + id + " does not run.", e);
        }
        pump();
    }

    /** Does the work in the dialog of that title, which the action opens and waits for. */
    public static void inDialog(String title, Runnable action, Consumer<Shell> work) {
        Display display = Display.getCurrent();
        Throwable[] broken = new Throwable[1];
        boolean[] met = new boolean[1];
        Runnable[] look = new Runnable[1];
        long end = System.nanoTime() + PATIENCE * 1_000_000;
        look[0] = () -> {
            Shell dialog = shell(title);
            if (dialog == null) {
                if (System.nanoTime() < end) {
                    display.timerExec(50, look[0]);
                }
                return;
            }
            met[0] = true;
            try {
                work.accept(dialog);
            } catch (Throwable e) { // handed on below: it must not vanish in the dialog's own event loop
                broken[0] = e;
            } finally {
                if (!dialog.isDisposed()) {
                    dialog.close();
                }
            }
        };
        display.timerExec(50, look[0]);
        action.run();
        if (broken[0] != null) {
            throw new AssertionError(title + ": " + broken[0].getMessage(), broken[0]);
        }
        if (!met[0]) {
            throw new AssertionError("No dialog " + title + " was opened.");
        }
        pump();
    }

    private static Shell shell(String title) {
        for (Shell shell : Display.getCurrent().getShells()) {
            if (!shell.isDisposed() && shell.isVisible() && shell.getText().equals(title)) {
                return shell;
            }
        }
        return null;
    }

    /** Takes a picture of a control into target/pictures. */
    public static Path picture(Control control, String name) {
        rest();
        Image image = new Image(control.getDisplay(), Math.max(1, control.getSize().x), Math.max(1, control.getSize().y));
        GC gc = new GC(image);
        try {
            control.print(gc);
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {image.getImageData()};
            Path file = Path.of(System.getProperty("flexwright.pictures", "target/pictures")).toAbsolutePath().resolve(name + ".png");
            Files.createDirectories(file.getParent());
            try (var out = Files.newOutputStream(file)) {
                loader.save(out, SWT.IMAGE_PNG);
            }
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
