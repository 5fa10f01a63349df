package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceLine;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;
import org.flexwright.core.balance.BalanceSource;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.bench.Choices.Choice;
import org.flexwright.workbench.bench.Story.Block;
import org.flexwright.workbench.bench.Tap.Weight;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * The balance at the bench: which one, what it shows now, and what of it may be taken. It speaks on its own thread; the screen looks at its latest word
 * when it has time and waits for nothing.
 */
final class BalanceDesk implements AutoCloseable {

    /** A reading older than this is not what lies on the pan now, milliseconds; own choice. */
    private static final long FRESH = 3_000;
    private static final String GRAM = "g";

    /** A place where a balance may be, with the way to reach it. */
    private record Place(BalanceSource source, BalanceSource.Place place) {
    }

    private final Display display;
    private final Supplier<List<BalanceSource>> sources;
    private final AtomicReference<BalanceLine> heard = new AtomicReference<>();
    private final AtomicReference<String> state = new AtomicReference<>("");
    private final AtomicBoolean told = new AtomicBoolean();
    private Runnable listener = () -> { };
    private List<Place> places = List.of();
    private boolean looked;
    private boolean bare;
    private BalanceConnection connection;
    private String name = "none";
    private BalanceLine last;
    private long lastAt;
    private String refusal = "";

    BalanceDesk(Display display, Supplier<List<BalanceSource>> sources) {
        this.display = display;
        this.sources = sources;
    }

    /** Called on the screen's thread when something new was heard; never more often than the screen can follow. */
    void listen(Runnable changed) {
        listener = changed;
    }

    boolean connected() {
        return connection != null;
    }

    String name() {
        return name;
    }

    /** What it shows now, with a mark for steady or moving; empty when nothing fresh was heard. */
    String live() {
        if (!fresh()) {
            return "";
        }
        if (last instanceof BalanceLine.Reading reading) {
            return (Boolean.TRUE.equals(reading.stable()) ? "\u25cf " : "\u25cb ") + words(reading);
        }
        return last instanceof BalanceLine.Refused refused && refused.grams() != null ? "~ " + number(refused.grams()) + " g" : "";
    }

    /** What it shows now, to be read from two metres; null when nothing fresh was heard. */
    Block shown() {
        if (!fresh()) {
            return null;
        }
        if (last instanceof BalanceLine.Reading reading) {
            boolean steady = Boolean.TRUE.equals(reading.stable());
            return new Block(words(reading), Size.FIGURE, Ink.INK, steady ? "On the balance \u25cf steady" : "On the balance \u25cb steady or not, it does not say", "");
        }
        return last instanceof BalanceLine.Refused refused && refused.grams() != null
                ? new Block(number(refused.grams()) + " g", Size.FIGURE, Ink.QUIET, "On the balance ~ still moving", "") : null;
    }

    /** A reading that may be taken, with its unit; empty when there is none, or it moves, or nothing lies on the pan. */
    String steady() {
        return fresh() && last instanceof BalanceLine.Reading reading && reading.grams() > 0 ? words(reading) : "";
    }

    /** What is wrong with what it says or with reaching it; empty when nothing is. */
    String trouble() {
        if (connection == null) {
            return "";
        }
        boolean refused = fresh() && last instanceof BalanceLine.Refused r && r.why() != BalanceLine.Why.UNSTABLE;
        return refused ? ((BalanceLine.Refused) last).sentence().text() : state.get();
    }

    private boolean fresh() {
        return last != null && System.nanoTime() / 1_000_000 - lastAt < FRESH;
    }

    private static String words(BalanceLine.Reading reading) {
        return number(reading.value()) + " " + reading.unit();
    }

    private static String number(double value) {
        return org.flexwright.core.field.FieldText.digits(value);
    }

    /** What was typed, by hand or by a balance that types, as a field reads it; empty when it is no reading, then {@link #refusal()} says why. */
    String read(String typed) {
        refusal = "";
        BalanceLine line = BalanceLine.parse(typed, GRAM, true);
        if (line instanceof BalanceLine.Reading reading) {
            return number(reading.value()) + " " + GRAM;
        }
        refusal = ((BalanceLine.Refused) line).sentence().text();
        return "";
    }

    String refusal() {
        return refusal;
    }

    /**
     * Balances to choose from. Looking for them may take a while and happens off the screen's thread.
     *
     * @param then  called when one was chosen
     * @param found called when more were found
     */
    List<Choice> offered(Runnable then, Runnable found) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("None: tap or type", connected() ? Weight.PLAIN : Weight.CHOSEN, () -> {
            close();
            then.run();
        }));
        for (Place place : places) {
            String title = place.place.title();
            choices.add(new Choice(title, title.equals(name) ? Weight.CHOSEN : Weight.PLAIN, () -> {
                connect(place);
                then.run();
            }));
        }
        choices.add(new Choice(bare ? "It writes no unit, grams are meant" : "It writes its unit with each number", () -> {
            bare = !bare;
            reconnect();
            found.run();
        }));
        if (!looked) {
            looked = true;
            look(found);
        }
        return choices;
    }

    /** Looks again when balances are next offered. */
    void lookAgain() {
        looked = false;
    }

    private void look(Runnable found) {
        List<BalanceSource> asked = sources.get();
        Job.createSystem("Looking for balances", (IProgressMonitor monitor) -> {
            List<Place> here = new ArrayList<>();
            asked.forEach(source -> source.places().forEach(place -> here.add(new Place(source, place))));
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (!here.equals(places)) {
                        places = here;
                        found.run();
                    }
                });
            }
        }).schedule();
    }

    private void reconnect() {
        Optional<Place> now = places.stream().filter(p -> p.place.title().equals(name)).findFirst();
        if (connected()) {
            now.ifPresent(this::connect);
        }
    }

    private void connect(Place place) {
        close();
        name = place.place.title();
        BalanceSettings settings = new BalanceSettings(place.source.id(), place.place.address(), BalanceSettings.USUAL_BAUD, GRAM, bare);
        connection = place.source.open(settings, new BalanceListener() {
            @Override
            public void line(BalanceLine line) {
                heard.set(line);
                tell();
            }

            @Override
            public void state(BalanceConnection.State now, String sentence) {
                state.set(now == BalanceConnection.State.LOST ? sentence : "");
                tell();
            }
        });
    }

    /** At most one word to the screen waits at a time: a talkative balance does not fill its queue. */
    private void tell() {
        if (!display.isDisposed() && told.compareAndSet(false, true)) {
            display.asyncExec(() -> {
                told.set(false);
                BalanceLine line = heard.getAndSet(null);
                if (line != null && connection != null) { // one that was let go has the last word no more
                    last = line;
                    lastAt = System.nanoTime() / 1_000_000;
                }
                listener.run();
            });
        }
    }

    /** Lets the balance go; a device that does not answer is let go on another thread. */
    @Override
    public void close() {
        BalanceConnection old = connection;
        connection = null;
        name = "none";
        last = null;
        state.set("");
        if (old != null) {
            Job.createSystem("Letting a balance go", (IProgressMonitor monitor) -> {
                old.close();
            }).schedule();
        }
    }
}
