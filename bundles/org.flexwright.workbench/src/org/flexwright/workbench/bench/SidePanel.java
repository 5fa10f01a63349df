package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** What can be answered in this step, beside its story: a tap for each number or choice, yes and no at once where that is the question. */
final class SidePanel extends Composite {

    private static final int PAIR = 2;

    private final BenchLook look;
    private final Consumer<BenchTap> ask;
    private final BiConsumer<BenchTap, String> answer;
    private final Runnable more;
    private final List<Control> made = new ArrayList<>();
    private List<BenchTap> offered = List.of();

    /**
     * An empty panel.
     *
     * @param ask    asks for what a tap needs
     * @param answer does a tap with what is given
     * @param more   shows what has no room
     */
    SidePanel(Composite parent, BenchLook look, Consumer<BenchTap> ask, BiConsumer<BenchTap, String> answer, Runnable more) {
        super(parent, SWT.NONE);
        this.look = look;
        this.ask = ask;
        this.answer = answer;
        this.more = more;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        Kit.name(this, "Answers");
        addListener(SWT.Resize, event -> place());
    }

    /** Shows what can be answered. */
    void show(List<BenchTap> taps) {
        if (!words(taps).equals(words(offered))) {
            offered = List.copyOf(taps);
            place();
        } else {
            offered = List.copyOf(taps);
        }
    }

    private static List<String> words(List<BenchTap> taps) {
        return taps.stream().map(t -> t.key() + t.label()).toList();
    }

    private void place() {
        made.forEach(Control::dispose);
        made.clear();
        Point size = getSize();
        if (size.x == 0 || size.y == 0) {
            return;
        }
        int y = 0;
        for (int i = 0; i < offered.size(); i++) {
            int reserve = i + 1 < offered.size() ? look.target() + look.gap() : 0;
            int height = height(offered.get(i), size.x);
            if (y + height + reserve > size.y) {
                add(new Tap(this, look, Tap.Weight.PLAIN, "\u25b8\u00a0more", more::run), 0, y, size.x, look.target());
                return;
            }
            put(offered.get(i), i, y, size.x, height);
            y += height + look.gap();
        }
    }

    private boolean pair(BenchTap tap) {
        return tap.kind() == BenchTap.Kind.CHOICE && tap.choices().size() == PAIR;
    }

    private int height(BenchTap tap, int width) {
        int words = wordsHeight(tap.label(), width - 2 * look.px(10));
        return pair(tap) ? words + look.px(2) + look.target() : Math.max(look.target(), words + look.px(10));
    }

    private int wordsHeight(String words, int width) {
        var layout = new org.eclipse.swt.graphics.TextLayout(getDisplay());
        layout.setFont(look.font(Size.STRONG));
        layout.setWidth(Math.max(1, width));
        layout.setText(words);
        int height = layout.getBounds().height;
        layout.dispose();
        return height;
    }

    private void put(BenchTap tap, int index, int y, int width, int height) {
        if (!pair(tap)) {
            add(new Tap(this, look, Tap.Weight.PLAIN, tap.label(), () -> ask.accept(offered.get(index))), 0, y, width, height);
            return;
        }
        Words question = new Words(this, look, "Question", Size.STRONG, Ink.PAPER);
        question.show(tap.label() + "?", Ink.INK);
        int words = height - look.target() - look.px(2);
        add(question, look.px(4), y, width - look.px(4), words);
        int each = (width - look.gap()) / PAIR;
        for (int n = 0; n < PAIR; n++) {
            BenchTap.Choice choice = tap.choices().get(n);
            Tap made = new Tap(this, look, Tap.Weight.PLAIN, choice.label(), () -> answer.accept(offered.get(index), choice.value()));
            made.show(choice.label(), tap.label() + ": " + choice.label());
            add(made, n * (each + look.gap()), y + words + look.px(2), each, look.target());
        }
    }

    private void add(Control control, int x, int y, int width, int height) {
        control.setBounds(x, y, width, height);
        made.add(control);
    }
}
