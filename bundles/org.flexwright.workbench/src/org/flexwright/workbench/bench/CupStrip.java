package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** The cups at the bench, one tap each with its clock and what it waits for; beside them the taps that lead elsewhere. */
final class CupStrip extends Composite {

    /**
     * A cup.
     *
     * @param id    id of the trial
     * @param brief its name and clock
     * @param shape how its next mark stands, as a sign; empty when it has none
     * @param due   what is due in it; empty when nothing is
     * @param heard all of it in words
     */
    record Cup(String id, String brief, String shape, String due, String heard) {
    }

    private final BenchLook look;
    private final Consumer<String> chosen;
    private final List<Tap> cups = new ArrayList<>();
    private final List<Tap> ways = new ArrayList<>();
    private List<Cup> shown = List.of();
    private String current = "";

    /**
     * An empty strip.
     *
     * @param chosen told the id of the cup that was touched; empty for "all of them", when not all have room
     */
    CupStrip(Composite parent, BenchLook look, Consumer<String> chosen) {
        super(parent, SWT.NONE);
        this.look = look;
        this.chosen = chosen;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        Kit.name(this, "Cups");
        addListener(SWT.Resize, event -> place());
    }

    /** Adds a tap at the right. */
    Tap way(String words, String heard, Runnable action) {
        Tap tap = new Tap(this, look, Tap.Weight.PLAIN, words, action);
        tap.show(words, heard);
        ways.add(tap);
        return tap;
    }

    /** Shows the cups; the one with that id is the one on the screen. */
    void show(List<Cup> all, String id) {
        boolean same = all.stream().map(Cup::id).toList().equals(shown.stream().map(Cup::id).toList()) && id.equals(current);
        shown = List.copyOf(all);
        current = id;
        if (!same) {
            cups.forEach(Tap::dispose);
            cups.clear();
            for (Cup cup : shown) {
                boolean here = cup.id.equals(id);
                cups.add(new Tap(this, look, here ? Tap.Weight.CHOSEN : Tap.Weight.PLAIN, "", () -> chosen.accept(cup.id)));
            }
        }
        place();
    }

    private void place() {
        Point size = getSize();
        if (size.x == 0) {
            return;
        }
        int right = size.x;
        for (int i = ways.size() - 1; i >= 0; i--) {
            Tap way = ways.get(i);
            int width = way.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
            way.setBounds(right - width, 0, width, size.y);
            right -= width + look.gap();
        }
        int count = cups.size();
        if (count == 0) {
            return;
        }
        int each = (right - (count - 1) * look.gap()) / count;
        for (int i = 0; i < count; i++) {
            Cup cup = shown.get(i);
            Tap tap = cups.get(i);
            String marked = (cup.brief + "  " + cup.shape).strip();
            String whole = (marked + " " + cup.due).strip();
            int room = each - 2 * look.px(10);
            tap.show(tap.extent(whole, Size.STRONG, 0).x <= room ? whole : tap.extent(marked, Size.STRONG, 0).x <= room ? marked : cup.brief, cup.heard);
            tap.setBounds(i * (each + look.gap()), 0, each, size.y);
        }
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? look.px(600) : wHint, look.target());
    }
}
