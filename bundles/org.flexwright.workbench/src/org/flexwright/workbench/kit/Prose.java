package org.flexwright.workbench.kit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Layout;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** Sentences that wrap to the room there is, and never to lines of more than about 78 characters. */
public final class Prose extends Composite {

    private static final int LINE = 78;
    private static final int LEAST = 24;

    private final Label label;
    private final Kit kit;
    private final Role role;

    /** Prose in a text colour and role. */
    public Prose(Composite parent, Kit kit, String words, Ink ink, Role role) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.role = role;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        setLayout(new Wrapping());
        kit.dress(this, ink, null, role);
        label = kit.label(this, words, ink, role);
    }

    /** Running text. */
    public static Prose text(Composite parent, Kit kit, String words) {
        return new Prose(parent, kit, words, Ink.INK, Role.BODY);
    }

    /** Secondary text. */
    public static Prose quiet(Composite parent, Kit kit, String words) {
        return new Prose(parent, kit, words, Ink.QUIET, Role.BODY);
    }

    /** The words. */
    public String words() {
        return label.getText().replace("&&", "&");
    }

    /** Other words; the caller lays out again when their length may have changed the height. */
    public void setWords(String words) {
        label.setText(Kit.plain(words));
    }

    /** Other words in another colour. */
    public void setWords(String words, Ink ink) {
        kit.ink(label, ink);
        setWords(words);
    }

    private int most() {
        return kit.type().chars(role, LINE);
    }

    /** One label, never wider than a line may be. */
    private final class Wrapping extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flushCache) {
            Point natural = label.computeSize(SWT.DEFAULT, SWT.DEFAULT, flushCache);
            int width = Math.min(natural.x, most());
            if (wHint != SWT.DEFAULT) {
                width = Math.min(width, Math.max(wHint, 1));
            } else {
                width = Math.min(width, kit.type().chars(role, LEAST));
            }
            Point wrapped = width < natural.x ? label.computeSize(width, SWT.DEFAULT, flushCache) : natural;
            return new Point(width, wrapped.y);
        }

        @Override
        protected void layout(Composite composite, boolean flushCache) {
            Rectangle area = composite.getClientArea();
            label.setBounds(area.x, area.y, Math.min(area.width, most()), area.height);
        }
    }
}
