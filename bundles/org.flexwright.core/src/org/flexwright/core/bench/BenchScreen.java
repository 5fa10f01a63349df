package org.flexwright.core.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.model.StepState;

/**
 * One screen of the bench view, ready to be drawn.
 *
 * @param trial    code of the trial
 * @param cup      what is written on the cup, or the trial's code
 * @param place    which screen it is
 * @param places   all screens of the trial in order, to walk through
 * @param steps    number of steps
 * @param state    where the step stands; null at the end
 * @param title    what to do, a few words
 * @param sentence what to do now, one sentence
 * @param figures  key figures, the main ones first
 * @param taps     what can be done, the main one first
 * @param clock    time since contact
 * @param marks    marks on the clock in order of time; those done stand last
 * @param gate     what must be so before this step; null when it has no gate
 * @param cautions usual cautions of this step
 * @param next     what comes after this screen, in words with its planned time; empty at the end
 * @param notices  what else there is to say: a step left behind, a note waiting, a clock put back
 */
public record BenchScreen(String trial, String cup, BenchPlace place, List<BenchPlace> places, int steps, StepState state, String title, String sentence,
        List<BenchFigure> figures, List<BenchTap> taps, BenchClock clock, List<BenchMark> marks, BenchGate gate, List<BenchCaution> cautions, String next,
        List<String> notices) {
    public BenchScreen {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(next, "next");
        places = List.copyOf(places);
        figures = List.copyOf(figures);
        taps = List.copyOf(taps);
        marks = List.copyOf(marks);
        cautions = List.copyOf(cautions);
        notices = List.copyOf(notices);
    }

    /** The tap of that key; empty when it is not offered here. */
    public Optional<BenchTap> tap(String key) {
        return taps.stream().filter(t -> t.key().equals(key)).findFirst();
    }

    /** The figure of that name; empty when it is not here. */
    public Optional<BenchFigure> figure(String name) {
        return figures.stream().filter(f -> f.name().equals(name)).findFirst();
    }

    /** The screen before this one; empty at the first. */
    public Optional<BenchPlace> before() {
        int at = places.indexOf(place);
        return at > 0 ? Optional.of(places.get(at - 1)) : Optional.empty();
    }

    /** The screen after this one; empty at the last. */
    public Optional<BenchPlace> after() {
        int at = places.indexOf(place);
        return at >= 0 && at + 1 < places.size() ? Optional.of(places.get(at + 1)) : Optional.empty();
    }
}
