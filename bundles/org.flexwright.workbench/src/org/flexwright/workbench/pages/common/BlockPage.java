package org.flexwright.workbench.pages.common;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;

/** A page of blocks below one another that scrolls up and down, with one place for what could not be done. */
public abstract class BlockPage implements EditorPage {

    private final PageContext context;
    private final ScrollPane pane;
    private final Doing doing;
    private boolean stale;

    /** An empty page; the subclass fills {@link #body()} and then calls {@link #settle()}. */
    protected BlockPage(Composite parent, PageContext context) {
        this.context = context;
        pane = new ScrollPane(parent, context.kit(), 1, new Spacing(6, 4, 4, 4));
        pane.addListener(SWT.Paint, event -> catchUp());
        Settling.keep(context.kit(), pane, () -> { });
        Notice notice = new Notice(pane.body(), context.kit(), 1);
        doing = new Doing(context.session(), sentence -> {
            notice.say(sentence);
            if (!sentence.isEmpty()) {
                pane.reveal(notice);
            }
        });
    }

    /** The page as the project is now; called when something changed and the page is in sight, else as soon as it is. */
    protected abstract void refresh();

    /** Pages out of sight are brought up to date when they come into sight. */
    @Override
    public final void changed(Set<EObject> touched) {
        if (pane.isVisible()) {
            refresh();
            pane.reflow();
        } else {
            stale = true;
        }
    }

    private void catchUp() {
        if (stale) {
            stale = false;
            pane.getDisplay().asyncExec(() -> {
                if (!pane.isDisposed()) {
                    refresh();
                    pane.reflow();
                }
            });
        }
    }

    /** What the page works with. */
    protected final PageContext context() {
        return context;
    }

    /** Colours, type, spacing. */
    protected final Kit kit() {
        return context.kit();
    }

    /** Makes edits and says on the page what cannot be done. */
    protected final Doing doing() {
        return doing;
    }

    /** Where the blocks go. */
    protected final Composite body() {
        return pane.body();
    }

    /** True when the project can be changed. */
    protected final boolean writable() {
        return !context.session().readOnly();
    }

    /** Lays out now, and once more when the system has taken in the fonts. */
    protected final void settle() {
        pane.reflow();
        Settling.later(context.kit(), pane);
    }

    /** Computes the page's height again. */
    protected final void reflow() {
        pane.reflow();
    }

    @Override
    public final Control control() {
        return pane;
    }

    @Override
    public void setFocus() {
        pane.setFocus();
        pane.top(); // the first field that takes the focus may stand far below
    }
}
