package org.flexwright.workbench.bench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** Large keys for a number, and what was typed so far above them. A keyboard's characters come in through {@link #key}. */
final class NumberPad extends Composite {

    private static final String[] KEYS = {"7", "8", "9", "4", "5", "6", "1", "2", "3", "0", ".", "\u232b"};
    private static final int COLUMNS = 3;

    private final Typed typed = new Typed();
    private final Entry entry;
    private final BenchLook look;
    private final Runnable changed;
    private String what = "";
    private String unit = "";
    private String ghost = "";

    /**
     * An empty pad.
     *
     * @param changed called after each character
     */
    NumberPad(Composite parent, BenchLook look, Runnable changed) {
        super(parent, SWT.NONE);
        this.look = look;
        this.changed = changed;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        GridLayout layout = new GridLayout(COLUMNS, true);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        entry = new Entry(this);
        entry.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS, 1));
        for (String key : KEYS) {
            Tap tap = new Tap(this, look, Tap.Weight.KEY, key, () -> tap(key));
            tap.setLayoutData(Grid.fill());
            if (key.equals(KEYS[KEYS.length - 1])) {
                Kit.name(tap, "Delete the last digit");
            }
        }
        Kit.name(this, "Number pad");
        space();
    }

    /** Takes the spacing of the look again. */
    void space() {
        GridLayout layout = (GridLayout) getLayout();
        layout.horizontalSpacing = look.px(6);
        layout.verticalSpacing = look.px(6);
    }

    /** Asks for something else; what was typed goes. */
    void ask(String name, String inUnit) {
        typed.clear();
        name(name, inUnit);
    }

    /** Says what the number is, without taking it away. */
    void name(String name, String inUnit) {
        what = name;
        unit = inUnit;
        tell();
    }

    /** Shows a live reading faintly while nothing is typed. */
    void ghost(String words) {
        if (!words.equals(ghost)) {
            ghost = words;
            entry.redraw();
        }
    }

    /** Takes what was typed away. */
    void clear() {
        typed.clear();
        tell();
    }

    /** Puts a number there, as if it had been typed. */
    void put(String text) {
        typed.set(text);
        tell();
    }

    /** What was typed. */
    Typed typed() {
        return typed;
    }

    /** A key of a keyboard. True when it was one for the pad. */
    boolean key(char character, int code) {
        if (code == SWT.BS || code == SWT.DEL) {
            typed.back();
        } else if (character >= ' ' && character != SWT.DEL) {
            typed.add(character);
        } else {
            return false;
        }
        tell();
        changed.run();
        return true;
    }

    private void tap(String key) {
        if (key.equals(KEYS[KEYS.length - 1])) {
            typed.back();
        } else if (!key.equals(".") || !typed.hasPoint()) {
            typed.add(key.charAt(0));
        }
        tell();
        changed.run();
    }

    private void tell() {
        Kit.name(entry, what + ": " + (typed.isEmpty() ? "nothing typed" : typed.text() + " " + unit));
        entry.redraw();
    }

    /** What was typed, with its unit. */
    private final class Entry extends BenchPart {
        Entry(Composite parent) {
            super(parent, NumberPad.this.look, Ink.FIELD, Size.ENTRY, "nothing typed", SWT.NO_FOCUS);
        }

        private String words() {
            return typed.isEmpty() ? ghost.isEmpty() ? unit : ghost : typed.text() + (hasUnit() ? "" : " " + unit);
        }

        private boolean hasUnit() {
            return typed.text().chars().anyMatch(Character::isLetter);
        }

        private Size size() {
            return extent(words(), Size.ENTRY, 0).x <= getSize().x - look().px(16) ? Size.ENTRY : Size.TEXT;
        }

        @Override
        List<Shown> shown() {
            return List.of(new Shown(words(), size(), typed.isEmpty() ? Ink.QUIET : Ink.INK, Ink.FIELD));
        }

        @Override
        boolean whole() {
            return extent(words(), size(), 0).x <= getSize().x - look().px(12) && extent(words(), size(), 0).y <= getSize().y;
        }

        @Override
        public Point computeSize(int wHint, int hHint, boolean flush) {
            return new Point(wHint == SWT.DEFAULT ? look().px(250) : wHint, look().line(Size.ENTRY) + look().px(8));
        }

        @Override
        void paint(GC gc) {
            Point size = getSize();
            gc.setBackground(look().color(Ink.FIELD));
            gc.fillRectangle(0, 0, size.x, size.y);
            gc.setForeground(look().color(Ink.ACCENT));
            gc.setLineWidth(3);
            gc.drawRectangle(1, 1, size.x - 3, size.y - 3);
            gc.setFont(look().font(size()));
            Point extent = gc.textExtent(words());
            gc.setForeground(look().color(typed.isEmpty() ? Ink.QUIET : Ink.INK));
            int right = size.x - look().px(10);
            gc.drawText(words(), right - extent.x, (size.y - extent.y) / 2, true);
        }
    }
}
