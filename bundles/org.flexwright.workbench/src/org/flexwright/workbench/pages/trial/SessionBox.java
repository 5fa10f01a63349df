package org.flexwright.workbench.pages.trial;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Session;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Sessions;

/** The bench session a step belongs to, with an action that begins one now. */
final class SessionBox implements StepPart {

    private final StepPlace place;
    private final Composite pane;
    private final PickBox<Session> box;

    SessionBox(Composite parent, StepPlace place) {
        this.place = place;
        pane = Flow.pane(parent, place.kit(), Ink.PAPER);
        box = new PickBox<>(pane, place.kit(), "Session of this step", "none yet", Sessions::words);
        box.whenChosen(this::choose);
        box.control().setEnabled(place.writable());
        if (place.writable()) {
            place.kit().action(pane, "Begin a session no&w", () -> place.doing().edit("begin a session", edit -> {
                Session begun = BenchSessions.begin(edit);
                edit.set(place.step(), ModelPackage.Literals.STEP__SESSION, begun);
            }));
        }
        refresh();
    }

    private void choose(Session session) {
        place.doing().edit("choose the session", edit -> edit.set(place.step(), ModelPackage.Literals.STEP__SESSION, session));
    }

    @Override
    public void refresh() {
        box.show(List.copyOf(place.page().session().project().getSessions()).reversed(), place.step().getSession());
    }

    Control control() {
        return pane;
    }
}
