package org.flexwright.workbench.start;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.bench.Bench;
import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.bench.BenchCup;
import org.flexwright.core.naming.Names;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.session.StoreException;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/**
 * A cup whose clock runs in a project that is not open: the program was closed, or ended, over it.
 *
 * @param folder  folder of its project
 * @param project title of the project
 * @param trial   id of its trial
 * @param cup     what is written on the cup
 * @param contact when its components met
 * @param doing   what is to do in it
 */
record RunningCup(Path folder, String project, String trial, String cup, Instant contact, String doing) {

    /** Older ones are no cup in the hand any more. */
    private static final Duration RECENT = Duration.ofDays(3);
    private static final int SECOND = 1000;

    /** Cups that run in a project, read without opening it for work; may be called off the screen's thread. Nothing of the project is touched. */
    static List<RunningCup> in(Path folder, Registries registries, Instant now) {
        StoreContext reader = new StoreContext(ModelThread.current(), Clock.systemUTC(), "", "", registries.packages());
        try (ProjectSession session = new ProjectStore(reader).openReadOnly(folder)) {
            String title = Names.of(session.project());
            return new Bench(registries).cups(session.project(), now).stream().filter(c -> runs(c, now))
                    .map(c -> new RunningCup(folder, title, c.trial().getId(), c.cup(), c.clock().contact(), c.doing())).toList();
        } catch (StoreException e) {
            ILog.get().info("No cup was looked for in " + folder + ": " + e.getMessage());
            return List.of(); // opening it will say what is wrong
        }
    }

    private static boolean runs(BenchCup cup, Instant now) {
        return cup.trial().getState() == TrialState.MAKING && cup.clock().contact() != null && cup.clock().state() != BenchClock.State.STOPPED
                && cup.clock().contact().isAfter(now.minus(RECENT));
    }

    /** The line with its clock and the way back; the clock runs while it is shown. */
    void show(Composite parent, Kit kit, Runnable back) {
        Composite line = kit.pane(parent, 2, new Spacing(4, 3, 4, 1), Ink.BAND);
        line.setLayoutData(Grid.wide());
        Composite words = kit.pane(line, 1, Spacing.TIGHT, Ink.BAND);
        words.setLayoutData(Grid.wide());
        Label clock = kit.label(words, words(), Ink.INK, Role.FIGURE);
        clock.setLayoutData(Grid.wide());
        kit.label(words, "Next: " + doing + ". " + project, Ink.INK, Role.BODY).setLayoutData(Grid.wide());
        Button button = kit.action(line, "Back to the &bench", back);
        button.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        Kit.name(button, "Back to the bench: cup " + cup);
        tick(clock);
    }

    private String words() {
        Duration since = Duration.between(contact, Instant.now());
        return "Cup " + cup + " is running: " + org.flexwright.core.view.TimeLine.clock(Math.max(0, since.toMillis()) / 60_000.0) + " since contact";
    }

    private void tick(Label clock) {
        clock.getDisplay().timerExec(SECOND, () -> {
            if (!clock.isDisposed()) {
                clock.setText(words());
                tick(clock);
            }
        });
    }
}
