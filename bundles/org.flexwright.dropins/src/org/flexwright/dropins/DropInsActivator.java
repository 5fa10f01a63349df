package org.flexwright.dropins;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Takes the dropped plugins in; the product starts it after its own bundles and before the application. */
public final class DropInsActivator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        Installer installer = new Installer(context);
        installer.install(PluginFolders.of(System::getProperty, System::getenv));
        context.registerService(DropIns.class, installer.result(), null);
    }

    @Override
    public void stop(BundleContext context) {
        // the framework withdraws the service; the plugins stay for the next start, which looks at the folders again
    }
}
