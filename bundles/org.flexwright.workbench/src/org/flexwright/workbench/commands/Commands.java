package org.flexwright.workbench.commands;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.handlers.IHandlerService;

/** Ids of the shell's commands, and running one from a button. */
public final class Commands {

    /** Makes a new project. */
    public static final String NEW = "org.flexwright.workbench.new";
    /** Opens a project. */
    public static final String OPEN = "org.flexwright.workbench.open";
    /** Opens the example. */
    public static final String EXAMPLE = "org.flexwright.workbench.example";
    /** Attaches a file. */
    public static final String ATTACH = "org.flexwright.workbench.attach";
    /** Plans a new trial. */
    public static final String NEW_TRIAL = "org.flexwright.workbench.newtrial";

    /** Goes to the bench. */
    public static final String BENCH = "org.flexwright.workbench.bench";

    private Commands() {
    }

    /** Runs a command. */
    public static void run(IHandlerService handlers, String command) {
        try {
            handlers.executeCommand(command, null);
        } catch (CommandException e) {
            ILog.get().error("Command " + command + " cannot be run.", e);
        }
    }
}
