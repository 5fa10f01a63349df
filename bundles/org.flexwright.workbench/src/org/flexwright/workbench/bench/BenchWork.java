package org.flexwright.workbench.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ILog;
import org.flexwright.core.bench.Bench;
import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.bench.BenchCup;
import org.flexwright.core.bench.BenchMark;
import org.flexwright.core.bench.BenchPlace;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityException;
import org.flexwright.workbench.pages.session.ReadingPlan;
import org.flexwright.workbench.project.Trouble;

/** One trial at the bench: what the engine says of it now, and taps on it. Everything goes through the project's session. */
final class BenchWork {

    private final Supplier<Optional<ProjectSession>> projects;
    private final Bench bench;
    private final Registries registries;
    private final Clock clock;
    private Trial trial;
    private String place;

    BenchWork(Supplier<Optional<ProjectSession>> projects, Registries registries, Clock clock, Trial trial) {
        this.projects = projects;
        this.bench = new Bench(registries);
        this.registries = registries;
        this.clock = clock;
        this.trial = trial;
    }

    Trial trial() {
        return trial;
    }

    /** True while the trial is in the open project. */
    boolean alive() {
        return projects.get().filter(s -> s.project().getTrials().contains(trial)).isPresent();
    }

    Instant now() {
        return clock.instant();
    }

    /** Goes to another cup. */
    void go(Trial other) {
        trial = other;
        place = null;
    }

    /** Looks at another screen of the trial; null: the one to do now. */
    void look(String key) {
        place = key;
    }

    /** True while a screen is looked at that is not the one to do now. */
    boolean elsewhere() {
        return place != null;
    }

    BenchScreen screen() {
        return bench.view(trial, now(), place);
    }

    List<BenchMark> marks() {
        return bench.marks(trial, now());
    }

    BenchClock clockNow() {
        return BenchClock.of(trial, now());
    }

    /** The cups at the bench, this one among them even when it is not begun. */
    List<BenchCup> cups() {
        List<BenchCup> cups = new ArrayList<>(projects.get().map(s -> bench.cups(s.project(), now())).orElse(List.of()));
        if (cups.stream().noneMatch(c -> c.trial() == trial)) {
            BenchScreen screen = bench.view(trial, now());
            cups.add(0, new BenchCup(trial, screen.cup(), screen.clock(), screen.place().title(), null));
        }
        cups.sort(Comparator.comparingInt(c -> session().project().getTrials().indexOf(c.trial()))); // a tap must not move away under a finger
        return cups;
    }

    /** The trial of the open project with that id. */
    Optional<Trial> find(String id) {
        return projects.get().flatMap(s -> s.project().getTrials().stream().filter(t -> id.equals(t.getId())).findFirst());
    }

    /** True when the screen is a step in which the pieces of the trial are read. */
    boolean reads(BenchScreen screen) {
        return step(screen) != null && registries.findStepKind(step(screen).getKind()).filter(StepKind::reads).isPresent();
    }

    private Step step(BenchScreen screen) {
        return screen.place().part() == BenchPlace.Part.WORK ? trial.getSteps().get(screen.place().step()) : null;
    }

    /** What can be read on the pieces of the trial. */
    List<ReadingPlan.What> whats() {
        return BenchReading.whats(session(), registries, trial);
    }

    /** Begins to read and hands that on; gives back why not, or an empty sentence when it went through. */
    String read(ReadingPlan.What what, Consumer<BenchReading> begun) {
        return guarded(() -> begun.accept(BenchReading.begin(session(), registries, trial, step(screen()), now(), what)));
    }

    /** Does a tap; gives back why not, or an empty sentence when it went through and is written down. */
    String tap(BenchTap tap, String given) {
        String refusal = guarded(() -> BenchTaps.tap(session(), bench, trial, now(), place, tap.key(), given));
        if (refusal.isEmpty()) {
            place = null;
        }
        return refusal;
    }

    /** Keeps that a picture was taken now; the file comes later, when the hands are clean. */
    String picture(BenchScreen screen) {
        return guarded(() -> session().execute(trial.getCode() + ": a picture was taken", edit -> BenchTaps.note(edit, trial,
                screen.place().step() < trial.getSteps().size() ? trial.getSteps().get(screen.place().step()) : null, NoteKind.PHOTO, "", null)));
    }

    /** Name of the edit that undo would take back; empty when there is none. */
    String undoName() {
        return projects.get().filter(ProjectSession::canUndo).map(ProjectSession::undoName).orElse("");
    }

    private ProjectSession session() {
        return projects.get().orElseThrow();
    }

    private static String guarded(Runnable work) {
        try {
            work.run();
            return "";
        } catch (RefusedException | StoreException | QuantityException e) {
            return e.getMessage();
        } catch (RuntimeException e) {
            ILog.get().error("A tap at the bench broke off.", e);
            return Trouble.unexpected();
        }
    }
}
