package org.flexwright.workbench.project;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;

/** The one line at the foot of a window: what is being done or what a field means. On the screen's thread. */
public final class StatusWords {

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private String words = "";

    /** What it says now; empty when nothing. */
    public String words() {
        return words;
    }

    /** Says something else. */
    public void say(String line) {
        words = Objects.requireNonNull(line, "line");
        listeners.forEach(Runnable::run);
    }

    /** Calls back after each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Ends the calls. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
