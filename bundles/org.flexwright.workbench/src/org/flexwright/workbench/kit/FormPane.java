package org.flexwright.workbench.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * All fields of a form in reading order, with the help of the field in focus at its foot. Labels stand left of the fields, above them
 * where the form is narrow; a wide form has two columns. It does not scroll by itself: put it into a {@link ScrollPane}.
 */
public final class FormPane extends Composite {

    private static final int NARROW = 56;
    private static final int WIDE = 132;
    /** A column of fields is not wider than this, so that lines of text stay readable. */
    private static final int SINGLE = 92;
    private static final int LONGEST_LABEL = 30;

    private final Kit kit;
    private final Composite grid;
    private final Prose help;
    private final List<FieldControl> controls = new ArrayList<>();

    /** A form of these fields. */
    public FormPane(Composite parent, Kit kit, List<? extends FieldBinding> fields) {
        super(parent, SWT.NONE);
        this.kit = kit;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, Spacing.FIELDS);
        kit.dress(this, Ink.INK, null, Role.BODY);
        grid = new Composite(this, SWT.NONE);
        grid.setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(grid, 1, new Spacing(0, 0, 6, 2));
        kit.dress(grid, Ink.INK, null, Role.BODY);
        grid.setLayoutData(Grid.wide());
        int longest = 8;
        for (FieldBinding field : fields) {
            FieldControl control = new FieldControl(grid, kit, field);
            control.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            control.input().addListener(SWT.FocusIn, event -> explain(control));
            longest = Math.max(longest, field.field().label().length() + 1);
            controls.add(control);
        }
        int chars = Math.min(longest, LONGEST_LABEL);
        controls.forEach(control -> control.setLabelChars(chars));
        help = Prose.quiet(this, kit, " ");
        help.setLayoutData(Grid.wide());
        addListener(SWT.Resize, event -> fold());
        kit.whenDressed(this, this::fold);
    }

    private void explain(FieldControl control) {
        String words = control.help();
        help.setWords(words.isEmpty() ? " " : control.field().label() + ": " + words);
        ScrollPane.reflowAround(help);
    }

    private void fold() {
        int width = getClientArea().width;
        if (width == 0) {
            return;
        }
        int narrow = kit.type().chars(Role.BODY, NARROW);
        int columns = width > kit.type().chars(Role.BODY, WIDE) && controls.size() > 4 ? 2 : 1;
        boolean stacked = width < narrow;
        GridLayout layout = (GridLayout) grid.getLayout();
        controls.forEach(control -> control.setStacked(stacked));
        int right = Math.max(0, width - kit.type().chars(Role.BODY, columns > 1 ? 2 * SINGLE : SINGLE));
        if (layout.numColumns != columns || layout.marginRight != right) {
            layout.marginRight = right;
            layout.numColumns = columns;
            layout.makeColumnsEqualWidth = columns > 1;
            ScrollPane.reflowAround(this);
        }
    }

    /** The field with that name. */
    public Optional<FieldControl> control(String name) {
        return controls.stream().filter(c -> c.field().name().equals(name)).findFirst();
    }

    /** All fields in order. */
    public List<FieldControl> controls() {
        return List.copyOf(controls);
    }

    /** Puts the focus into a field; false when there is none of that name. */
    public boolean reveal(String name) {
        return control(name).map(FieldControl::setFocus).orElse(false);
    }

    @Override
    public boolean setFocus() {
        return !controls.isEmpty() && !controls.get(0).isDisposed() && controls.get(0).setFocus();
    }
}
