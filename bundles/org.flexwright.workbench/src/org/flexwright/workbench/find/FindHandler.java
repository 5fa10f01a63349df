package org.flexwright.workbench.find;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the search field. */
public final class FindHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        FindEditor.show(HandlerUtil.getActiveWorkbenchWindowChecked(event));
        return null;
    }
}
