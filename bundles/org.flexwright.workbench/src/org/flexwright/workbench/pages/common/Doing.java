package org.flexwright.workbench.pages.common;

import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.quantity.QuantityException;
import org.flexwright.workbench.project.Trouble;

/** Edits of a page. What cannot be done is said in one sentence on the page itself: no dialog stands over work at the bench. */
public final class Doing {

    private final ProjectSession session;
    private final Consumer<String> notice;

    /**
     * Edits of a project.
     *
     * @param notice shows a sentence; called with an empty one when all went well
     */
    public Doing(ProjectSession session, Consumer<String> notice) {
        this.session = session;
        this.notice = notice;
    }

    /** Makes one step that can be undone by its name. True when it went through. */
    public boolean edit(String name, Consumer<Edit> work) {
        return run(() -> session.execute(name, work));
    }

    /** Runs work that may refuse with a sentence. True when it went through. */
    public boolean run(Runnable work) {
        String said;
        try {
            work.run();
            said = "";
        } catch (RefusedException | StoreException | QuantityException e) {
            said = e.getMessage();
        } catch (RuntimeException e) {
            ILog.get().error("An edit broke off.", e);
            said = Trouble.unexpected();
        }
        notice.accept(said);
        return said.isEmpty();
    }

    /** Says a sentence without doing anything. */
    public void say(String sentence) {
        notice.accept(sentence);
    }
}
