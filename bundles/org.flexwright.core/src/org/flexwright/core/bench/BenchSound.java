package org.flexwright.core.bench;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Which sound to make when marks change; the window plays it. */
public enum BenchSound {
    /** None. */
    NONE,
    /** Something comes within a minute. */
    SOON,
    /** Something is due, or may be any moment now. */
    DUE,
    /** Something is past. */
    OVER;

    /** The most urgent sound for what changed from one look to the next; a mark seen first makes none, so that reopening is quiet. */
    public static BenchSound between(List<BenchMark> before, List<BenchMark> now) {
        Map<String, BenchMark.State> known = before.stream().collect(Collectors.toMap(BenchMark::key, BenchMark::state, (a, b) -> a));
        BenchSound sound = NONE;
        for (BenchMark mark : now) {
            BenchMark.State was = known.get(mark.key());
            BenchSound its = was == null || was == mark.state() ? NONE : OF.apply(mark.state());
            sound = its.compareTo(sound) > 0 ? its : sound;
        }
        return sound;
    }

    private static final Function<BenchMark.State, BenchSound> OF = state -> switch (state) {
        case COMING, DONE -> NONE;
        case SOON -> SOON;
        case WITHIN, DUE -> DUE;
        case OVER -> OVER;
    };
}
