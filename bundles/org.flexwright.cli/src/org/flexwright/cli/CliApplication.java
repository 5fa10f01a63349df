package org.flexwright.cli;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.FrameworkUtil;

/** The command line as an application; its result is the exit status of the process. */
public final class CliApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        context.applicationRunning();
        System.out.println("flexwright " + FrameworkUtil.getBundle(CliApplication.class).getVersion());
        System.out.flush();
        return Integer.valueOf(0);
    }

    @Override
    public void stop() {
        // nothing runs beside start()
    }
}
