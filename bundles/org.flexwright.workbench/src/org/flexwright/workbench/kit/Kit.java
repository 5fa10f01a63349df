package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * Makes and dresses controls: colours, font and spacing by name, so that all of them can be dressed again when the theme or the size of
 * text changes. One for a display; get it from the workbench's services ({@code site.getService(Kit.class)}) or the page's context.
 */
public final class Kit {

    private static final String LOOK = "org.flexwright.look";
    private static final String SPACING = "org.flexwright.spacing";
    private static final String CHARS = "org.flexwright.chars";
    private static final String REDRESS = "org.flexwright.redress";
    private static final String NAME = "org.flexwright.name";
    private static final String SETTLING_NOW = "org.flexwright.settling";
    private static final String DESCRIPTION = "org.flexwright.description";
    /** After this long, milliseconds, the toolkit has taken in new fonts. */
    private static final int SETTLING = 60;
    /** Tells the platform's style engine that this control is dressed by us. */
    private static final String STYLE_ENGINE_OFF = "org.eclipse.e4.ui.css.disabled";

    private final Display display;
    private final Palette palette;
    private final Type type;
    private final Grid grid;
    private long measured;

    private record Look(Ink text, Ink ground, Role role) {
    }

    private record Chars(Role role, int count) {
    }

    /** Dresses all shells of the display again whenever the palette or the type changes. */
    public Kit(Display display, Palette palette, Type type) {
        this.display = display;
        this.palette = palette;
        this.type = type;
        this.grid = new Grid(type);
        palette.addListener(this::redressAll);
        type.addListener(this::redressAll);
    }

    /** Colours by name. */
    public Palette palette() {
        return palette;
    }

    /** Fonts by role. */
    public Type type() {
        return type;
    }

    /** The 4-point grid. */
    public Grid grid() {
        return grid;
    }

    /**
     * The system has drawn once since controls were made or dressed: sizes of words in a font that is not the system's own are not trusted
     * any more. Lay out afterwards.
     */
    public void settled() {
        if (type.percent() != 100) {
            measured++;
        }
    }

    /** How often words had to be measured anew. */
    long measured() {
        return measured;
    }

    /** A colour by name, short for {@code palette().get(ink)}. */
    public Color color(Ink ink) {
        return palette.get(ink);
    }

    /** A pane on paper with a grid of columns. */
    public Composite pane(Composite parent, int columns, Spacing spacing) {
        return pane(parent, columns, spacing, Ink.PAPER);
    }

    /** A pane on the given ground with a grid of columns. */
    public Composite pane(Composite parent, int columns, Spacing spacing, Ink ground) {
        Composite pane = new Composite(parent, SWT.NONE);
        pane.setBackgroundMode(SWT.INHERIT_DEFAULT);
        columns(pane, columns, spacing);
        return dress(pane, Ink.INK, ground, Role.BODY);
    }

    /** Gives a composite a grid of columns whose spacing follows the size of text. */
    public void columns(Composite composite, int columns, Spacing spacing) {
        composite.setLayout(grid.layout(columns, spacing));
        composite.setData(SPACING, spacing);
    }

    /** Keeps a pane's columns to a width that is easily read, however wide the pane becomes. */
    public void cap(Composite pane, int characters) {
        Runnable set = () -> {
            GridLayout layout = (GridLayout) pane.getLayout();
            int free = Math.max(0, pane.getSize().x - type.chars(Role.BODY, characters));
            if (layout.marginRight != free) {
                layout.marginRight = free;
                pane.layout(true, true);
            }
        };
        pane.addListener(SWT.Resize, event -> set.run());
        whenDressed(pane, set);
    }

    /** Running text; wraps when its grid data limits its width. */
    public Label text(Composite parent, String words) {
        return label(parent, words, Ink.INK, Role.BODY);
    }

    /** Secondary text. */
    public Label quiet(Composite parent, String words) {
        return label(parent, words, Ink.QUIET, Role.BODY);
    }

    /** A heading. */
    public Label heading(Composite parent, String words) {
        return label(parent, words, Ink.INK, Role.HEADING);
    }

    /** A key figure. */
    public Label figure(Composite parent, String words) {
        return label(parent, words, Ink.INK, Role.FIGURE);
    }

    /** A label in any text colour and role. An ampersand is an ampersand. */
    public Label label(Composite parent, String words, Ink ink, Role role) {
        Label label = new Words(parent, this);
        label.setText(plain(words));
        return dress(label, ink, null, role);
    }

    /** Words as a label or button shows them: an ampersand is no mnemonic. */
    public static String plain(String words) {
        return words.replace("&", "&&");
    }

    /** A button that does something; {@code words} may carry a mnemonic. */
    public Button action(Composite parent, String words, Runnable doIt) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> doIt.run());
        name(button, words.replace("&", ""));
        return dress(button, null, null, Role.BODY);
    }

    /** A field for a line of text. */
    public Text field(Composite parent, String name, int style) {
        Text text = new Text(parent, SWT.BORDER | style);
        name(text, name);
        return dress(text, Ink.INK, Ink.FIELD, Role.BODY);
    }

    /** A hairline across its parent. */
    public Control hairline(Composite parent) {
        Composite line = new Composite(parent, SWT.NO_FOCUS);
        dress(line, null, Ink.LINE, Role.BODY);
        GridData data = Grid.wide();
        data.heightHint = 1;
        if (parent.getLayout() instanceof GridLayout layout) {
            data.horizontalSpan = layout.numColumns;
        }
        line.setLayoutData(data);
        return line;
    }

    /**
     * Dresses a control and remembers how.
     *
     * @param text   colour of its text; null leaves it to the system
     * @param ground colour behind it; null inherits its parent's
     * @param role   size of its text
     * @return the control
     */
    public <C extends Control> C dress(C control, Ink text, Ink ground, Role role) {
        control.setData(LOOK, new Look(text, ground, role));
        control.setData(STYLE_ENGINE_OFF, text == null && ground == null ? null : Boolean.TRUE);
        apply(control);
        if (control instanceof Text field && type.percent() != 100) {
            settle(field);
        }
        return control;
    }

    /** Lays a shell out again when the toolkit has drawn its new field once: before, it does not know the field's height. */
    private void settle(Text field) {
        Listener[] once = new Listener[1];
        once[0] = event -> {
            field.removeListener(SWT.Paint, once[0]);
            Shell shell = field.getShell();
            if (shell.getData(SETTLING_NOW) == null) {
                shell.setData(SETTLING_NOW, Boolean.TRUE); // one layout for all fields drawn together
                display.timerExec(SETTLING, () -> {
                    if (!shell.isDisposed()) {
                        shell.setData(SETTLING_NOW, null);
                        settled();
                        lay(shell);
                    }
                });
            }
        };
        field.addListener(SWT.Paint, once[0]);
    }

    /** Changes only the text's colour of a control that was dressed before. */
    public void ink(Control control, Ink text) {
        Look look = (Look) control.getData(LOOK);
        if (look.text != text) {
            dress(control, text, look.ground, look.role);
        }
    }

    /** Limits or sets a control's width in average characters; its layout data must be a GridData. */
    public void chars(Control control, int count) {
        Look look = (Look) control.getData(LOOK);
        control.setData(CHARS, new Chars(look == null ? Role.BODY : look.role, count));
        apply(control);
    }

    /**
     * Dresses a table or tree of ours: airy rows, and a selection whose ground leaves every text colour readable. Its label provider sets
     * the cells' colours also on the selection.
     */
    public void rows(Control lines) {
        if (lines instanceof Table table) {
            nudge(table);
        }
        lines.addListener(SWT.MeasureItem, event -> event.height = Math.max(event.height, type.lineHeight(Role.BODY) * 8 / 5));
        lines.addListener(SWT.EraseItem, event -> {
            if ((event.detail & SWT.SELECTED) != 0) {
                event.gc.setBackground(color(Ink.BAND));
                event.gc.fillRectangle(event.x, event.y, event.width, event.height);
                event.detail &= ~(SWT.SELECTED | SWT.HOT | SWT.BACKGROUND);
                event.gc.setForeground(color(Ink.INK));
            }
        });
    }

    /**
     * GTK gives the columns of a table that is made while its window is laid out no width and draws none of its rows until the table changes
     * its size: so its size is changed when that is seen.
     */
    private static void nudge(Table table) {
        table.addListener(SWT.Paint, event -> table.getDisplay().timerExec(SETTLING, () -> {
            if (!table.isDisposed() && withoutWidth(table)) {
                Point size = table.getSize();
                table.setSize(size.x, size.y - 1);
                table.setSize(size);
            }
        }));
    }

    private static boolean withoutWidth(Table table) {
        int last = table.getColumnCount() - 1;
        return last >= 0 && table.getItemCount() > 0 && table.getColumn(last).getWidth() > 0 && table.getItem(0).getBounds(last).width <= 0;
    }

    /** Runs now and whenever the control has to be dressed again: for what the kit cannot know, such as row heights or images. */
    public void whenDressed(Control control, Runnable again) {
        control.setData(REDRESS, again);
        again.run();
    }

    /** Names a control for people who hear the screen, and for tests. */
    public static void name(Control control, String name) {
        boolean first = control.getData(NAME) == null;
        control.setData(NAME, name);
        if (first) {
            control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
                @Override
                public void getName(AccessibleEvent event) {
                    event.result = (String) control.getData(NAME);
                }

                @Override
                public void getDescription(AccessibleEvent event) {
                    if (control.getData(DESCRIPTION) instanceof String words) {
                        event.result = words;
                    }
                }
            });
        }
    }

    /** Adds to a named control what is to be heard after its name: help, problem, state. */
    public static void describe(Control control, String words) {
        control.setData(DESCRIPTION, words);
    }

    /** The name given to a control, or empty. */
    public static String nameOf(Control control) {
        return control.getData(NAME) instanceof String name ? name : "";
    }

    /** The description given to a control, or empty. */
    public static String descriptionOf(Control control) {
        return control.getData(DESCRIPTION) instanceof String words ? words : "";
    }

    /** Dresses every control below again and lays it out. */
    public void redress(Composite root) {
        measured++;
        redressBelow(root);
        root.layout(true, true);
        root.redraw();
    }

    private void redressAll() {
        for (Shell shell : display.getShells()) {
            redress(shell);
        }
        display.timerExec(SETTLING, this::layAll); // GTK knows the new sizes only after it has drawn once
    }

    private void layAll() {
        measured++;
        for (Shell shell : display.getShells()) {
            lay(shell);
        }
    }

    private static void lay(Shell shell) {
        again(shell);
        shell.layout(true, true);
    }

    private static void again(Control control) {
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                again(child);
            }
        }
        if (control.getData(REDRESS) instanceof Runnable again) {
            again.run();
        }
    }

    private void redressBelow(Control control) {
        apply(control);
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                redressBelow(child);
            }
        }
        if (control.getData(REDRESS) instanceof Runnable again) {
            again.run();
        }
    }

    private void apply(Control control) {
        if (control.getData(LOOK) == null && (control instanceof CTabFolder || control instanceof CLabel)) {
            control.setFont(type.font(Role.BODY)); // the platform's own tabs and words
            if (control instanceof CTabFolder tabs) {
                tabs.setTabHeight(type.lineHeight(Role.BODY) + grid.steps(3));
            }
        }
        if (control.getData(LOOK) instanceof Look look) {
            control.setFont(type.font(look.role));
            if (look.text != null) {
                control.setForeground(color(look.text));
            }
            if (look.ground != null) {
                control.setBackground(color(look.ground));
            }
        }
        if (control.getData(SPACING) instanceof Spacing spacing && control instanceof Composite composite
                && composite.getLayout() instanceof GridLayout layout) {
            grid.space(layout, spacing);
        }
        if (control.getData(CHARS) instanceof Chars chars && control.getLayoutData() instanceof GridData data) {
            data.widthHint = type.chars(chars.role, chars.count);
        }
    }
}
