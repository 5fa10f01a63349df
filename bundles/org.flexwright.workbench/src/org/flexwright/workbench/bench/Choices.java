package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Several things to choose from by one touch, or a field for own words, in the place of the screen's story; the clock stays in sight above. */
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

    private static final int MOST_COLUMNS = 3;
    private static final String MORE = "\u25b8\u00a0more";

    private final BenchLook look;
    private final Words head;
    private final Words help;
    private final List<Tap> taps = new ArrayList<>();
    private Text own;
    private int first;
    private List<Choice> all = List.of();

    Choices(Composite parent, BenchLook look) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        head = new Words(this, look, "Choose", Size.TITLE, Ink.PAPER);
        help = new Words(this, look, "Help", Size.TEXT, Ink.PAPER);
        Kit.name(this, "Choices");
        addListener(SWT.Resize, event -> place());
    }

    /**
     * Shows things to choose from.
     *
     * @param title what is chosen
     * @param words one sentence; empty for none
     * @param given what there is
     */
    void show(String title, String words, List<Choice> given) {
        begin(title, words, given);
        place();
    }

    /** Shows a field for own words. */
    void write(String title, String words) {
        begin(title, words, List.of());
        own = new Text(this, SWT.BORDER | SWT.SINGLE);
        look.dress(own, Ink.INK, Ink.FIELD, Size.TEXT);
        Kit.name(own, title);
        place();
        own.setFocus();
    }

    private void begin(String title, String words, List<Choice> given) {
        head.show(title, Ink.INK);
        help.show(words, Ink.QUIET);
        all = List.copyOf(given);
        first = 0;
        if (own != null) {
            own.dispose();
            own = null;
        }
    }

    /** What is chosen now. */
    String title() {
        return head.words();
    }

    /** What was written; empty when nothing. */
    String written() {
        return own == null || own.isDisposed() ? "" : own.getText().strip();
    }

    /** The field for own words; null when there is none. */
    Text field() {
        return own;
    }

    private void place() {
        taps.forEach(Tap::dispose);
        taps.clear();
        Point size = getSize();
        if (size.x == 0) {
            return;
        }
        int y = head.computeSize(size.x, SWT.DEFAULT).y;
        head.setBounds(0, 0, size.x, y);
        y += look.px(4);
        int helped = help.words().isEmpty() ? 0 : help.computeSize(size.x, SWT.DEFAULT).y;
        help.setBounds(0, y, size.x, helped);
        y += helped == 0 ? 0 : helped + look.px(6);
        if (own != null) {
            own.setBounds(0, y, size.x, Math.max(look.target(), own.computeSize(SWT.DEFAULT, SWT.DEFAULT).y));
        }
        fill(y, size.x, size.y - y);
    }

    /** As many columns as show the most of them, each wide and high enough for its words. */
    private void fill(int top, int width, int room) {
        int columns = 1;
        int rows = 1;
        for (int n = 1; n <= MOST_COLUMNS; n++) {
            int cell = (width - (n - 1) * look.gap()) / n;
            int high = all.stream().mapToInt(c -> height(c.words, cell)).max().orElse(look.target());
            boolean wide = all.stream().allMatch(c -> head.fits(c.words, Size.STRONG, cell - 2 * look.px(10), Integer.MAX_VALUE));
            int fit = Math.max(1, (room + look.gap()) / (high + look.gap()));
            if (wide && Math.min(all.size(), n * fit) > Math.min(all.size(), columns * rows)) {
                columns = n;
                rows = fit;
            }
        }
        int capacity = columns * rows;
        boolean paged = all.size() > capacity;
        List<Choice> shown = paged ? all.subList(first, Math.min(all.size(), first + Math.max(1, capacity - 1))) : all;
        int used = Math.max(1, (shown.size() + (paged ? 1 : 0) + columns - 1) / columns);
        int cell = (width - (columns - 1) * look.gap()) / columns;
        int high = Math.min((room - (used - 1) * look.gap()) / used, look.px(110));
        for (int i = 0; i < shown.size(); i++) {
            add(shown.get(i), i, columns, top, cell, high);
        }
        if (paged) {
            int next = first + shown.size() < all.size() ? first + shown.size() : 0;
            add(new Choice(MORE, () -> later(next)), shown.size(), columns, top, cell, high);
        }
    }

    private int height(String words, int cell) {
        return Math.max(look.target(), head.extent(words, Size.STRONG, cell - 2 * look.px(10)).y + look.px(10));
    }

    private void later(int next) {
        first = next;
        getDisplay().asyncExec(() -> {
            if (!isDisposed()) {
                place();
            }
        });
    }

    private void add(Choice choice, int at, int columns, int top, int width, int height) {
        Tap tap = new Tap(this, look, choice.weight, choice.words, choice.action);
        tap.setBounds(at % columns * (width + look.gap()), top + at / columns * (height + look.gap()), width, height);
        taps.add(tap);
    }
}
