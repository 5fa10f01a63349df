package org.flexwright.workbench.project;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;

/** Tells a person that something did not work: one sentence, and where the rest is written. */
public final class Trouble {

    private Trouble() {
    }

    /** Runs the work; what it throws becomes one sentence and an entry in the log. True when it went through. */
    public static boolean guard(Shell shell, String what, Runnable work) {
        try {
            work.run();
            return true;
        } catch (StoreException | RefusedException e) {
            ILog.get().warn(e.getMessage(), e);
            tell(shell, what, e.getMessage());
        } catch (RuntimeException e) {
            ILog.get().error(what, e);
            tell(shell, what, unexpected());
        }
        return false;
    }

    /** Says one sentence. */
    public static void tell(Shell shell, String what, String sentence) {
        MessageDialog.openInformation(shell, what, sentence);
    }

    /** What is said of a defect of the program. */
    public static String unexpected() {
        return "Something in the program went wrong; nothing of the project is lost. The details are in the log, " + log() + ".";
    }

    /** Where the log is. */
    public static String log() {
        return Platform.getLogFileLocation().toOSString();
    }
}
