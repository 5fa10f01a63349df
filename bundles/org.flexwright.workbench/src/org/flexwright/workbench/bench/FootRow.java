package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.bench.Choices.Choice;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** The foot of the view: at the right, always at the same place and very large, the one thing to do now; left of it what else there is. */
final class FootRow extends Composite {

    /** This part of the width belongs to the main tap. */
    private static final double MAIN_SHARE = 0.5;

    private static final String MORE = "\u25b8\u00a0more";

    private final BenchLook look;
    private final Tap main;
    private final List<Tap> sides = new ArrayList<>();
    private List<Choice> offered = List.of();
    private Runnable doMain = () -> { };
    private Runnable more = () -> { };

    FootRow(Composite parent, BenchLook look) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        Kit.name(this, "Taps");
        main = new Tap(this, look, Tap.Weight.MAIN, "", () -> doMain.run());
        addListener(SWT.Resize, event -> place());
    }

    /** The main tap; it stays the same whatever it does, so that a trembling finger does not do the next thing too. */
    Tap main() {
        return main;
    }

    /**
     * Shows what can be done.
     *
     * @param words  on the main tap; empty when nothing is to do, then it is there but cannot be touched
     * @param able   whether it can be touched now
     * @param action what the main tap does
     * @param beside what else there is
     * @param others shows what of it has no room
     */
    void show(String words, boolean able, Runnable action, List<Choice> beside, Runnable others) {
        doMain = action;
        more = others;
        main.show(words.isEmpty() ? "\u2013" : words, words.isEmpty() ? "Nothing to do here" : words);
        main.allow(able && !words.isEmpty());
        if (!words(beside).equals(words(offered)) || sides.isEmpty() != beside.isEmpty()) {
            offered = List.copyOf(beside);
            place();
        } else {
            offered = List.copyOf(beside);
        }
    }

    private static List<String> words(List<Choice> choices) {
        return choices.stream().map(c -> c.words() + c.weight()).toList();
    }

    private void place() {
        Point size = getSize();
        if (size.x == 0) {
            return;
        }
        sides.forEach(Tap::dispose);
        sides.clear();
        int room = (int) (size.x * (1 - MAIN_SHARE));
        List<Integer> widths = new ArrayList<>();
        boolean all = offered.stream().mapToInt(c -> width(c.words()) + look.gap()).sum() <= room;
        int count = 0;
        int used = 0;
        for (int i = 0; i < offered.size(); i++) {
            int width = width(offered.get(i).words());
            int reserve = !all && i + 1 < offered.size() ? width(MORE) + look.gap() : 0;
            if (used + width + look.gap() + reserve > room) {
                break;
            }
            used += width + look.gap();
            widths.add(width);
            count++;
        }
        int x = 0;
        for (int i = 0; i < count; i++) {
            int at = i;
            Tap tap = new Tap(this, look, offered.get(i).weight(), offered.get(i).words(), () -> run(at));
            tap.setBounds(x, 0, widths.get(i), size.y);
            sides.add(tap);
            x += widths.get(i) + look.gap();
        }
        if (count < offered.size()) {
            Tap tap = new Tap(this, look, Tap.Weight.PLAIN, MORE, () -> more.run());
            int width = width(MORE);
            tap.setBounds(x, 0, width, size.y);
            sides.add(tap);
        }
        int share = (int) (size.x * MAIN_SHARE);
        main.setBounds(size.x - share, 0, share, size.y);
    }

    private void run(int at) {
        if (at < offered.size()) {
            offered.get(at).action().run();
        }
    }

    /** Wide enough for the words on two lines. */
    private int width(String words) {
        int one = main.extent(words, Size.STRONG, 0).x;
        int side = 2 * look.px(12);
        int width = Math.max(look.target(), one / 2 + side);
        while (width < one + side && !main.fits(words, Size.STRONG, width - side, height())) {
            width += look.px(8);
        }
        return Math.max(look.target(), width);
    }

    private int height() {
        return getSize().y - look.px(4);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? look.px(600) : wHint, Math.max(look.target(), 2 * look.line(Size.STRONG) + look.px(8)));
    }
}
