package org.flexwright.workbench;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.workbench.find.Finder;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.kit.Type;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.EditorPages;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.StatusWords;
import org.flexwright.workbench.project.SwtModelThread;
import org.flexwright.workbench.settings.PlatformFonts;
import org.flexwright.workbench.settings.Settings;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/** Gives parts the services of the shell: one kit, one set of pages and settings for all windows, one project service a window. */
public final class ShellServices extends AbstractServiceFactory {

    private final Map<IWorkbenchWindow, ProjectService> projects = new HashMap<>();
    private final Map<IWorkbenchWindow, Finder> finders = new HashMap<>();
    private final Map<IWorkbenchWindow, StatusWords> status = new HashMap<>();
    private Settings settings;
    private Kit kit;
    private EditorPages pages;
    private Registries registries;
    private ProjectStore store;

    @Override
    public Object create(@SuppressWarnings("rawtypes") Class wanted, IServiceLocator parent, IServiceLocator locator) {
        if (wanted == Settings.class) {
            return settings();
        }
        if (wanted == Kit.class) {
            return kit();
        }
        if (wanted == EditorPages.class) {
            return pages();
        }
        IWorkbenchWindow window = locator.getService(IWorkbenchWindow.class);
        if (window == null) {
            return null; // asked outside any window
        }
        if (wanted == Finder.class) {
            return finders.computeIfAbsent(window, w -> new Finder(w.getShell().getDisplay(), projects(w)));
        }
        return wanted == ProjectService.class ? projects(window) : status.computeIfAbsent(window, w -> new StatusWords());
    }

    private Settings settings() {
        if (settings == null) {
            settings = new Settings(InstanceScope.INSTANCE.getNode("org.flexwright.workbench"));
        }
        return settings;
    }

    private Kit kit() {
        if (kit == null) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            Display display = workbench.getDisplay();
            var colours = workbench.getThemeManager().getCurrentTheme().getColorRegistry();
            Type type = new Type(display, settings().textPercent());
            PlatformFonts.follow(type);
            kit = new Kit(display, new Palette(colours, display), type);
        }
        return kit;
    }

    private EditorPages pages() {
        if (pages == null) {
            pages = new EditorPages(offered(EditorPageProvider.class));
        }
        return pages;
    }

    private ProjectService projects(IWorkbenchWindow window) {
        return projects.computeIfAbsent(window, w -> new ProjectService(w.getShell().getDisplay(), registries(), store(), settings()));
    }

    private Registries registries() {
        if (registries == null) {
            List<Registries> found = offered(Registries.class);
            if (found.isEmpty()) {
                ILog.get().error("The registries of the plugins did not start; the window works without any plugin.");
                registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
            } else {
                registries = found.get(0);
            }
            registries.failures().forEach(f -> ILog.get().warn(f.plugin() + ": " + f.what() + ": " + f.why()));
        }
        return registries;
    }

    private ProjectStore store() {
        if (store == null) {
            Bundle own = FrameworkUtil.getBundle(ShellServices.class);
            Display display = PlatformUI.getWorkbench().getDisplay();
            store = new ProjectStore(new StoreContext(new SwtModelThread(display), Clock.systemUTC(), System.getProperty("user.name", ""),
                    own.getVersion().toString(), registries().packages()));
        }
        return store;
    }

    private static <T> List<T> offered(Class<T> type) {
        BundleContext context = FrameworkUtil.getBundle(ShellServices.class).getBundleContext();
        List<T> found = new ArrayList<>();
        try {
            for (ServiceReference<T> reference : context.getServiceReferences(type, null)) {
                T service = context.getService(reference);
                if (service == null) {
                    ILog.get().error(reference.getBundle().getSymbolicName() + " offers a " + type.getSimpleName() + " that did not start.");
                } else {
                    found.add(service);
                }
            }
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException("A null filter is no filter.", e);
        }
        return found;
    }
}
