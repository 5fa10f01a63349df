package org.flexwright.workbench.calculate;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the calculations. */
public final class CalculationsHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        CalculationsEditor.show(HandlerUtil.getActiveWorkbenchWindowChecked(event), null);
        return null;
    }
}
