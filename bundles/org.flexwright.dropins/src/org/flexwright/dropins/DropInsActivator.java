package org.flexwright.dropins;

import org.flexwright.core.registry.ActivationFailures;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Takes the dropped plugins in; the product starts it after its own bundles and before the application. */
public final class DropInsActivator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        Installer installer = new Installer(context);
        installer.install(PluginFolders.of(System::getProperty, System::getenv));
        context.registerService(new String[] { DropIns.class.getName(), ActivationFailures.class.getName() }, installer.result(), null);
    }

    @Override
    public void stop(BundleContext context) {
        // the framework withdraws the service; the plugins stay for the next start, which looks at the folders again
    }
}
