package org.flexwright.workbench.bench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;

/** What is always there, one touch each: undo, a note, a picture, something odd, and the rest. */
final class ToolColumn extends Composite {

    private final BenchLook look;

    ToolColumn(Composite parent, BenchLook look) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Ink.INK, Ink.PAPER, Size.TEXT);
        Kit.name(this, "Always there");
        addListener(SWT.Resize, event -> place());
    }

    /** Adds a tap below the others. */
    Tap add(String words, String heard, Runnable action) {
        Tap tap = new Tap(this, look, Tap.Weight.PLAIN, words, action);
        tap.show(words, heard);
        return tap;
    }

    private void place() {
        Rectangle all = getClientArea();
        Control[] taps = getChildren();
        int each = (all.height - (taps.length - 1) * look.px(6)) / Math.max(1, taps.length);
        for (int i = 0; i < taps.length; i++) {
            taps[i].setBounds(0, i * (each + look.px(6)), all.width, each);
        }
    }
}
