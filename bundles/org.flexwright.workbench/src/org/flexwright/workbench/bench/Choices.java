package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Several things to choose from by one touch, in the place of the screen's story; the clock stays in sight above. */
final class Choices extends Composite {

    /**
     * One of them.
     *
     * @param words  words on it
     * @param weight how much it stands out
     * @param action what it does
     */
    record Choice(String words, Tap.Weight weight, Runnable action) {
        Choice(String words, Runnable action) {
            this(words, Tap.Weight.PLAIN, action);
        }
    }

    private final BenchLook look;
    private final Words head;
    private final Words help;
    private final Composite grid;
    private final List<Tap> taps = new ArrayList<>();
    private Text own;
    private int first;
    private List<Choice> all = List.of();

    Choices(Composite parent, BenchLook look) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        head = new Words(this, look, "Choose", Size.TITLE, Ink.PAPER);
        head.setLayoutData(Grid.wide());
        help = new Words(this, look, "Help", Size.TEXT, Ink.PAPER);
        help.setLayoutData(Grid.wide());
        grid = new Composite(this, SWT.NONE);
        look.dress(grid, Ink.INK, Ink.PAPER, Size.TEXT);
        grid.setLayoutData(Grid.fill());
        Kit.name(this, "Choices");
    }

    /**
     * Shows things to choose from.
     *
     * @param title what is chosen
     * @param words one sentence; empty for none
     * @param given what there is
     * @param typed name of a field for own words; empty for none
     */
    void show(String title, String words, List<Choice> given, String typed) {
        head.show(title, Ink.INK);
        help.show(words, Ink.QUIET);
        ((GridData) help.getLayoutData()).exclude = words.isEmpty();
        help.setVisible(!words.isEmpty());
        all = List.copyOf(given);
        first = 0;
        makeOwn(typed);
        fill();
    }

    private void makeOwn(String name) {
        if (own != null) {
            own.dispose();
            own = null;
        }
        if (!name.isEmpty()) {
            own = new Text(this, SWT.BORDER | SWT.SINGLE);
            look.dress(own, Ink.INK, Ink.FIELD, Size.TEXT);
            own.setMessage("own words, by keyboard");
            Kit.name(own, name);
            GridData data = Grid.wide();
            data.heightHint = Math.max(look.target() - look.px(12), look.line(Size.TEXT));
            own.setLayoutData(data);
        }
    }

    /** What was written; empty when nothing. */
    String written() {
        return own == null || own.isDisposed() ? "" : own.getText().strip();
    }

    /** The field for own words; null when there is none. */
    Text field() {
        return own;
    }

    private int columns() {
        int widest = all.stream().mapToInt(c -> c.words.length()).max().orElse(1);
        int width = getSize().x == 0 ? getParent().getClientArea().width : getSize().x;
        int wanted = widest * look.px(16) + look.px(40);
        return Math.clamp(width / Math.max(1, wanted), 1, 3);
    }

    private void fill() {
        taps.forEach(Tap::dispose);
        taps.clear();
        int columns = columns();
        GridLayout layout = new GridLayout(columns, true);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = look.gap();
        layout.verticalSpacing = look.gap();
        grid.setLayout(layout);
        int room = rows() * columns;
        List<Choice> shown = all.size() <= room ? all : all.subList(first, Math.min(all.size(), first + room - 1));
        shown.forEach(choice -> add(choice.words, choice.weight, choice.action));
        if (all.size() > room) {
            int next = first + room - 1 < all.size() ? first + room - 1 : 0;
            add("\u25b8 more", Tap.Weight.PLAIN, () -> getDisplay().asyncExec(() -> {
                if (!isDisposed()) {
                    first = next;
                    fill();
                }
            }));
        }
        layout(true, true);
    }

    private int rows() {
        int used = look.line(Size.TITLE) + (help.words().isEmpty() ? 0 : help.computeSize(Math.max(1, getSize().x), SWT.DEFAULT, true).y + look.gap())
                + (own == null ? 0 : look.target() + look.gap()) + look.gap();
        int height = getSize().y == 0 ? look.px(310) : getSize().y;
        return Math.max(1, (height - used + look.gap()) / (Math.max(look.target(), 2 * look.line(Size.STRONG) + look.px(12)) + look.gap()));
    }

    private void add(String words, Tap.Weight weight, Runnable action) {
        Tap tap = new Tap(grid, look, weight, words, action);
        tap.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        taps.add(tap);
    }
}
