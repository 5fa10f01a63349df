package org.flexwright.workbench.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A row of words of which one is chosen and underlined: pages of an editor, stages of the work. The arrow keys go along it, Enter and
 * space choose.
 */
public final class WordRow extends Composite {

    private final Kit kit;
    private final Ink ground;
    private final List<Word> words = new ArrayList<>();
    private Consumer<String> chosen = id -> { };
    private String selected;

    /** An empty row on that ground. */
    public WordRow(Composite parent, Kit kit, String name, Ink ground) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.ground = ground;
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.wrap = false;
        layout.marginTop = layout.marginBottom = layout.marginLeft = layout.marginRight = 0;
        layout.spacing = kit.grid().steps(1);
        setLayout(layout);
        kit.dress(this, Ink.INK, ground, Role.BODY);
        Kit.name(this, name);
    }

    /** Called with a word's id when a person chooses it. */
    public void whenChosen(Consumer<String> listener) {
        this.chosen = listener;
    }

    /** Adds a word. */
    public void add(String id, String word, String hint) {
        Word added = new Word(id, word);
        added.setToolTipText(hint);
        words.add(added);
    }

    /** Takes all words away. */
    public void clear() {
        words.forEach(Word::dispose);
        words.clear();
        selected = null;
    }

    /** Shows a word as chosen without telling the listener; null: none. */
    public void select(String id) {
        selected = id;
        words.forEach(Word::redraw);
    }

    /** Id of the chosen word, or null. */
    public String selected() {
        return selected;
    }

    @Override
    public boolean setFocus() {
        return words.stream().filter(w -> !w.isDisposed() && w.id.equals(selected)).findFirst().map(Word::setFocus).orElse(false);
    }

    private void choose(String id) {
        select(id);
        chosen.accept(id);
    }

    private void along(Word from, int by) {
        words.get(Math.floorMod(words.indexOf(from) + by, words.size())).forceFocus();
    }

    /** One word: a small control of its own so that it can be reached, named and clicked. */
    private final class Word extends Canvas {
        private final String id;
        private final String text;
        private boolean hover;

        Word(String id, String text) {
            super(WordRow.this, SWT.DOUBLE_BUFFERED);
            this.id = id;
            this.text = text;
            kit.dress(this, Ink.INK, ground, Role.BODY);
            Kit.name(this, text);
            getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
                @Override
                public void getRole(AccessibleControlEvent event) {
                    event.detail = ACC.ROLE_TABITEM;
                }

                @Override
                public void getState(AccessibleControlEvent event) {
                    event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE | (id.equals(selected) ? ACC.STATE_SELECTED : 0);
                }
            });
            addListener(SWT.Paint, event -> paint(event.gc));
            addListener(SWT.MouseUp, event -> choose(id));
            addListener(SWT.MouseEnter, event -> hover(true));
            addListener(SWT.MouseExit, event -> hover(false));
            addListener(SWT.FocusIn, event -> redraw());
            addListener(SWT.FocusOut, event -> redraw());
            addListener(SWT.Traverse, this::traverse);
            addListener(SWT.KeyDown, this::key);
        }

        private void hover(boolean over) {
            hover = over;
            redraw();
        }

        private void traverse(Event event) {
            event.doit = switch (event.detail) {
                case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS, SWT.TRAVERSE_ESCAPE -> true;
                default -> false;
            };
        }

        private void key(Event event) {
            switch (event.keyCode) {
                case SWT.ARROW_LEFT -> along(this, -1);
                case SWT.ARROW_RIGHT -> along(this, 1);
                case SWT.CR, SWT.KEYPAD_CR, ' ' -> choose(id);
                default -> {
                    // not ours
                }
            }
        }

        @Override
        public Point computeSize(int wHint, int hHint, boolean changed) {
            GC gc = new GC(this);
            gc.setFont(kit.type().font(Role.STRONG));
            Point extent = gc.textExtent(text);
            gc.dispose();
            return new Point(extent.x + 2 * kit.grid().steps(2), extent.y + 2 * kit.grid().steps(1.5));
        }

        private void paint(GC gc) {
            Point size = getSize();
            boolean on = id.equals(selected);
            int line = Math.max(2, kit.grid().steps(0.75));
            gc.setBackground(kit.color(ground));
            gc.fillRectangle(0, 0, size.x, size.y);
            gc.setFont(kit.type().font(on ? Role.STRONG : Role.BODY));
            gc.setForeground(kit.color(on || hover ? Ink.INK : Ink.QUIET));
            Point extent = gc.textExtent(text);
            gc.drawText(text, (size.x - extent.x) / 2, (size.y - extent.y) / 2, true);
            if (on) {
                gc.setBackground(kit.color(Ink.ACCENT));
                gc.fillRectangle(kit.grid().steps(1), size.y - line, size.x - 2 * kit.grid().steps(1), line);
            }
            if (isFocusControl()) {
                gc.setForeground(kit.color(Ink.ACCENT));
                gc.setLineWidth(2);
                gc.drawRoundRectangle(1, 1, size.x - 3, size.y - 3, 4, 4);
            }
        }
    }
}
