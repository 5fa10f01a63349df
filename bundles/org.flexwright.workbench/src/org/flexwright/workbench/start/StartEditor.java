package org.flexwright.workbench.start;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Trial;
import org.flexwright.workbench.OnlyInput;
import org.flexwright.workbench.UnsavedEditor;
import org.flexwright.workbench.bench.BenchWindow;
import org.flexwright.workbench.commands.Commands;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;
import org.flexwright.workbench.settings.Settings;

/** What a window without a project shows: new, open, the example, and the projects worked on before. */
public final class StartEditor extends UnsavedEditor {

    private static final String ID = "org.flexwright.workbench.start";
    private static final OnlyInput INPUT = new OnlyInput("Start", "Open or make a project");

    private static final int WIDEST = 100;
    /** Projects touched before that have no cup in the hand any more. */
    private static final Duration LATELY = Duration.ofDays(3);

    private Kit kit;
    private ScrollPane page;
    private Composite cups;
    private Composite before;
    private Button first;

    /** Shows the start page of a window. */
    public static void show(IWorkbenchWindow window) {
        try {
            window.getActivePage().openEditor(INPUT, ID);
        } catch (PartInitException e) {
            ILog.get().error("The start page cannot be opened.", e);
        }
    }

    /** Closes it. */
    public static void hide(IWorkbenchWindow window) {
        IEditorPart start = window.getActivePage().findEditor(INPUT);
        if (start != null) {
            window.getActivePage().closeEditor(start, false);
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        super.init(site, input);
        kit = site.getService(Kit.class);
    }

    @Override
    public void createPartControl(Composite parent) {
        page = new ScrollPane(parent, kit, 1, new Spacing(12, 10, 6, 8));
        cups = kit.pane(page.body(), 1, Spacing.FIELDS);
        cups.setLayoutData(Grid.wide());
        ((GridData) cups.getLayoutData()).exclude = true;
        Composite head = kit.pane(page.body(), 1, Spacing.FIELDS);
        head.setLayoutData(Grid.wide());
        kit.figure(head, "Small soft parts, from need to recipe");
        Prose.quiet(head, kit, "A project holds what the part must do, what it is measured against, every trial with what was planned and what"
                + " happened, and what came out.").setLayoutData(Grid.wide());
        Composite ways = kit.pane(page.body(), 2, new Spacing(0, 0, 5, 3));
        ways.setLayoutData(Grid.wide());
        first = way(ways, "&New project…", Commands.NEW, "Say what is to be made and what it must do.");
        way(ways, "Open the &example", Commands.EXAMPLE, "An invented project, to look around and try things in.");
        way(ways, "&Open a project…", Commands.OPEN, "A folder whose name ends in .flexwright.");
        before = kit.pane(page.body(), 1, Spacing.GROUPS);
        before.setLayoutData(Grid.wide());
        kit.cap(before, WIDEST);
        page.reflow();
        look();
    }

    private Button way(Composite parent, String words, String command, String sentence) {
        Button button = kit.action(parent, words, () -> Commands.run(getSite().getService(IHandlerService.class), command));
        button.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        Prose.quiet(parent, kit, sentence).setLayoutData(Grid.wide());
        return button;
    }

    /** Looks at the folders off the screen's thread: one of them may lie on a slow disk. */
    private void look() {
        List<Path> folders = getSite().getService(Settings.class).recent();
        if (folders.isEmpty()) {
            return;
        }
        Registries registries = getSite().getService(ProjectService.class).registries();
        Job job = Job.createSystem("Looking for projects worked on before", (IProgressMonitor monitor) -> {
            List<RecentCard> cards = new ArrayList<>();
            List<RunningCup> running = new ArrayList<>();
            for (Path folder : folders) {
                Recent.of(folder).ifPresent(recent -> {
                    cards.add(card(recent));
                    if (recent.touched().isAfter(Instant.now().minus(LATELY))) {
                        running.addAll(RunningCup.in(folder, registries, Instant.now()));
                    }
                });
            }
            if (!page.isDisposed()) {
                page.getDisplay().asyncExec(() -> {
                    if (!before.isDisposed()) {
                        list(cards);
                        run(running);
                    }
                });
            }
        });
        job.schedule();
    }

    /** Cups whose clock runs stand above everything else: one touch leads back to the screen that is to do now. */
    private void run(List<RunningCup> running) {
        for (RunningCup cup : running) {
            cup.show(cups, kit, () -> Trouble.guard(getSite().getShell(), "Not opened", () -> back(cup)));
        }
        ((GridData) cups.getLayoutData()).exclude = running.isEmpty();
        page.reflow();
    }

    private void back(RunningCup cup) {
        IWorkbenchWindow window = getSite().getWorkbenchWindow();
        ProjectService projects = window.getService(ProjectService.class);
        projects.open(cup.folder());
        projects.find(cup.trial()).ifPresent(found -> BenchWindow.open(window, (Trial) found));
    }

    private static RecentCard card(Recent recent) {
        try {
            return RecentCard.of(recent);
        } catch (IOException e) {
            ILog.get().warn("The picture of " + recent.title() + " cannot be read.", e);
            return new RecentCard(recent, null);
        }
    }

    private void list(List<RecentCard> cards) {
        if (before.isDisposed() || cards.isEmpty()) {
            return;
        }
        for (Control old : before.getChildren()) {
            old.dispose();
        }
        boolean waiting = cards.stream().anyMatch(card -> card.recent().unsaved());
        kit.heading(before, "Worked on before");
        if (waiting) {
            Prose.text(before, kit, "Edits that were not saved are kept and come back when their project is opened.").setLayoutData(Grid.wide());
        }
        for (RecentCard card : cards) {
            card.show(before, kit, () -> Trouble.guard(getSite().getShell(), "Not opened",
                    () -> getSite().getService(ProjectService.class).open(card.recent().folder()))).setLayoutData(Grid.wide());
        }
        page.reflow();
    }

    @Override
    public void setFocus() {
        first.setFocus();
    }
}
