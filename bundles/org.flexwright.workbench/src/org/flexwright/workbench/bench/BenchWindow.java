package org.flexwright.workbench.bench;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.balance.BalanceSource;
import org.flexwright.core.bench.ClockWatch;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.settings.Settings;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;

/**
 * The bench view: a window of its own over the whole screen, one for each window of the workbench. Leaving it stops nothing; the clock is the wall's.
 */
public final class BenchWindow {

    private static final String KEY = "org.flexwright.workbench.bench";

    private final Shell shell;
    private final Display display;
    private final ProjectService projects;
    private final BenchLook look;
    private final BenchPane pane;
    private final BenchWork work;
    private final BenchDesk desk;
    private final Sounds sounds;
    private final Listener keys = this::key;
    private final ProjectListener watcher = new ProjectListener() {
        @Override
        public void closed() {
            shell.close();
        }

        @Override
        public void changed(Set<EObject> touched) {
            again();
        }
    };

    private BenchWindow(IWorkbenchWindow window, Trial trial, Clock clock) {
        display = window.getShell().getDisplay();
        projects = window.getService(ProjectService.class);
        Kit kit = window.getService(Kit.class);
        Settings settings = window.getService(Settings.class);
        shell = new Shell(display, SWT.SHELL_TRIM);
        shell.setText("At the bench");
        Rectangle least = shell.computeTrim(0, 0, BenchLook.LEAST_WIDTH, BenchLook.LEAST_HEIGHT);
        shell.setMinimumSize(least.width, least.height);
        shell.setLayout(new FillLayout());
        shell.setImages(window.getShell().getImages());
        look = new BenchLook(display, kit);
        sounds = new Sounds(display, settings::benchSound);
        pane = new BenchPane(shell, look);
        work = new BenchWork(projects::session, projects.registries(), clock, trial);
        desk = new BenchDesk(pane, look, work, sounds, new ClockWatch(clock), new Kept(settings), new BalanceDesk(display, BenchWindow::balances), shell::close);
        shell.setData(KEY, this);
        shell.addListener(SWT.Resize, event -> fit());
        shell.addListener(SWT.Dispose, event -> gone());
        display.addFilter(SWT.KeyDown, keys);
        projects.addListener(watcher);
    }

    /** Shows a trial at the bench of that window, in place of what was there. */
    public static BenchWindow open(IWorkbenchWindow window, Trial trial) {
        return open(window, trial, Clock.systemUTC());
    }

    /** The same by another clock. */
    static BenchWindow open(IWorkbenchWindow window, Trial trial, Clock clock) {
        BenchWindow open = of(window);
        if (open == null) {
            open = new BenchWindow(window, trial, clock);
            window.getShell().setData(KEY, open);
            open.shell.setFullScreen(true);
            open.shell.open();
            open.fit();
            open.desk.mainTap().setFocus();
            open.tick();
        } else {
            open.desk.show(trial);
            open.shell.forceActive();
        }
        return open;
    }

    /** The bench view of that window; null when it is not open. */
    public static BenchWindow of(IWorkbenchWindow window) {
        return window.getShell().getData(KEY) instanceof BenchWindow bench && !bench.shell.isDisposed() ? bench : null;
    }

    /** Says a sentence on the bench view of any window that is open; false when none is. No dialog stands over a running clock. */
    public static boolean told(IWorkbench workbench, String sentence) {
        for (IWorkbenchWindow window : workbench.getWorkbenchWindows()) {
            BenchWindow bench = of(window);
            if (bench != null) {
                bench.desk.tell(sentence);
                return true;
            }
        }
        return false;
    }

    /** Its shell. */
    public Shell shell() {
        return shell;
    }

    BenchDesk desk() {
        return desk;
    }

    BenchLook look() {
        return look;
    }

    private static List<BalanceSource> balances() {
        BundleContext context = FrameworkUtil.getBundle(BenchWindow.class).getBundleContext();
        try {
            return context.getServiceReferences(BalanceSource.class, null).stream().map(context::getService).filter(Objects::nonNull).toList();
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException("A null filter is no filter.", e);
        }
    }

    private void fit() {
        var area = shell.getClientArea();
        if (look.fit(area.width, area.height)) {
            look.again(shell);
            desk.resized();
            shell.layout(true, true);
            desk.refresh();
        }
    }

    private void again() {
        if (!shell.isDisposed()) {
            if (work.alive()) {
                desk.refresh();
            } else {
                shell.close(); // its trial was taken away
            }
        }
    }

    /** From one change of the shown second to the next, each time by the wall clock, so that nothing adds up. */
    private void tick() {
        display.timerExec(desk.untilNextSecond(), () -> {
            if (!shell.isDisposed()) {
                desk.tick();
                tick();
            }
        });
    }

    private void key(Event event) {
        if (event.widget instanceof Control control && !control.isDisposed() && control.getShell() == shell && !(control instanceof Text)
                && desk.key(event.character, event.keyCode, event.stateMask)) {
            event.doit = false;
            event.type = SWT.None;
        }
    }

    private void gone() {
        display.removeFilter(SWT.KeyDown, keys);
        projects.removeListener(watcher);
        desk.close();
        sounds.close();
        look.dispose();
    }

    /** Settings of the bench in those of the program. */
    private record Kept(Settings settings) implements BenchSettings {
        @Override
        public boolean sound() {
            return settings.benchSound();
        }

        @Override
        public void setSound(boolean on) {
            settings.setBenchSound(on);
        }
    }
}
