package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.recording.FoundMark;
import org.flexwright.model.Recording;
import org.flexwright.testing.Say;

/** The marks of one recording: found ones, unless a person put them elsewhere. */
final class Marks {
    private final Recording recording;
    private final List<FoundMark> found = new ArrayList<>();

    Marks(Recording recording) {
        this.recording = recording;
    }

    /** Where a movable mark lies; its title is the word {@code curve.mark.NAME}. */
    double at(String name, double place) {
        FoundMark mark = FoundMark.movable(recording, name, title(name), place);
        found.add(mark);
        return mark.position();
    }

    /** A mark that only shows a place. */
    void show(String name, double place) {
        found.add(new FoundMark(name, title(name), place, false, false));
    }

    boolean byHand(String name) {
        return found.stream().anyMatch(m -> m.name().equals(name) && m.byHand());
    }

    private static String title(String name) {
        return Say.message("curve.mark." + name).text();
    }

    List<FoundMark> all() {
        return List.copyOf(found);
    }
}
