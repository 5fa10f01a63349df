package org.flexwright.core.batch;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.ProcessKind.EstimateLine;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepTime;
import org.flexwright.model.Mould;
import org.flexwright.model.Step;

/**
 * Puts pots or runs on the clock. From weighing to the full mould nothing comes between; everything else finds the first free stretch of one person's day. A mould is used
 * again when its parts are out and its turn is over.
 */
final class Scheduler {
    private static final double MILLIS_A_MINUTE = 60_000;

    private final BatchWish wish;
    private final StepKinds kinds;
    private final int potStep;
    private final int fillStep;
    private final Calendar calendar;
    private final List<Schedule.Item> items = new ArrayList<>();
    private final Map<Object, Instant> free = new IdentityHashMap<>();
    private final List<Times> times = new ArrayList<>();
    private Estimate hands = Estimate.exact(0, Source.commonPractice("planned times of the steps, and usual times where none is planned"));

    /**
     * When things happen in a run.
     *
     * @param mould   the mould; null when none is known
     * @param begin   first stretch
     * @param contact A and B meet; null without pots
     * @param filled  mould full; null without pots
     * @param free    mould or machine free again
     */
    record Times(Mould mould, Instant begin, Instant contact, Instant filled, Instant free) {
    }

    Scheduler(BatchWish wish, StepKinds kinds, int potStep, int fillStep) {
        this.wish = wish;
        this.kinds = kinds;
        this.potStep = potStep;
        this.fillStep = fillStep;
        this.calendar = new Calendar(wish.zone(), wish.opens(), wish.closes());
    }

    Schedule schedule() {
        return new Schedule(items);
    }

    List<Times> times() {
        return times;
    }

    Estimate hands() {
        return hands;
    }

    /** A run whose steps say how long they take. */
    void add(RunDraft run, List<Mould> moulds) {
        Object place = place(moulds);
        Mould mould = place instanceof Mould m ? m : null;
        int first = items.size();
        Instant at = later(wish.start(), free.get(place));
        for (int step = 0; step < (potStep < 0 ? 0 : potStep); step++) {
            at = work(run, step, at, at);
        }
        Instant contact = null;
        Instant filled = null;
        if (potStep >= 0) {
            int last = Math.max(potStep, fillStep);
            Instant pour = calendar.take(at, wet(run, last));
            for (int step = potStep; step <= last; step++) {
                pour = stretch(run, step, pour);
                contact = step == potStep ? pour : contact;
            }
            filled = fillStep >= 0 ? pour : null;
            at = pour;
        }
        Instant out = null;
        for (int step = potStep < 0 ? 0 : Math.max(potStep, fillStep) + 1; step < run.trial.getSteps().size(); step++) {
            Double after = run.time(step, fillStep, kinds).map(StepTime::afterFill).orElse(null);
            boolean opens = after != null && filled != null;
            Instant end = work(run, step, opens ? filled.plus(minutes(after)) : at, at);
            out = opens ? end : out;
            at = later(at, end);
        }
        Instant again = out == null ? at : out;
        if (mould != null && mould.getTurnMinutes() != null && filled != null) {
            again = later(again, filled.plus(minutes(mould.getTurnMinutes())));
        }
        free.put(place, again);
        Instant begin = items.size() == first ? wish.start() : items.subList(first, items.size()).stream().map(Schedule.Item::start).min(Instant::compareTo).orElseThrow();
        times.add(new Times(mould, begin, contact, filled, again));
    }

    /** A run of a route that says only how long it takes in all: hands first, then by itself. */
    void add(RunDraft run, List<EstimateLine> lines, String title) {
        Estimate work = sum(lines, EstimateLine.Meaning.HANDS);
        Estimate whole = sum(lines, EstimateLine.Meaning.ELAPSED);
        Instant at = later(wish.start(), free.get(this));
        Duration busy = minutes(work.likely());
        Instant begin = calendar.take(at, busy);
        items.add(new Schedule.Item(run.number, -1, title, begin, begin.plus(busy), Schedule.Kind.HANDS));
        Instant end = later(begin.plus(busy), begin.plus(minutes(whole.likely())));
        if (end.isAfter(begin.plus(busy))) {
            items.add(new Schedule.Item(run.number, -1, title, begin.plus(busy), end, Schedule.Kind.ALONE));
        }
        hands = plus(hands, work);
        free.put(this, end);
        times.add(new Times(null, begin, null, null, end));
    }

    private static Estimate sum(List<EstimateLine> lines, EstimateLine.Meaning meaning) {
        Estimate sum = Estimate.exact(0, Source.commonPractice());
        for (EstimateLine line : lines) {
            if (line.meaning() == meaning) {
                sum = plus(sum, line.unit().equals("h") ? line.value().times(60) : line.value());
            }
        }
        return sum;
    }

    private Object place(List<Mould> moulds) {
        return moulds.isEmpty() ? this : moulds.stream().min(java.util.Comparator.comparing(m -> free.getOrDefault(m, Instant.MIN))).orElseThrow();
    }

    private Duration wet(RunDraft run, int last) {
        Duration length = Duration.ZERO;
        for (int step = potStep; step <= last; step++) {
            Optional<StepTime> time = run.time(step, fillStep, kinds);
            length = length.plus(minutes(time.map(t -> t.hands().likely() + t.alone()).orElse(0.0)));
        }
        return length;
    }

    /** A stretch whose place is taken already; says when it ends. */
    private Instant stretch(RunDraft run, int step, Instant start) {
        Optional<StepTime> time = run.time(step, fillStep, kinds);
        Instant end = start.plus(minutes(time.map(t -> t.hands().likely() + t.alone()).orElse(0.0)));
        time.ifPresent(t -> {
            items.add(new Schedule.Item(run.number, step, title(run, step), start, end, Schedule.Kind.HANDS));
            hands = plus(hands, t.hands());
        });
        return end;
    }

    /** Hands where the day has room for them, then what passes by itself; says when both are over. */
    private Instant work(RunDraft run, int step, Instant earliest, Instant otherwise) {
        Optional<StepTime> time = run.time(step, fillStep, kinds);
        if (time.isEmpty()) {
            return otherwise;
        }
        Instant at = earliest;
        Duration busy = minutes(time.get().hands().likely());
        if (!busy.isZero()) {
            Instant start = calendar.take(earliest, busy);
            at = start.plus(busy);
            items.add(new Schedule.Item(run.number, step, title(run, step), start, at, Schedule.Kind.HANDS));
            hands = plus(hands, time.get().hands());
        }
        if (time.get().alone() > 0) {
            Instant end = at.plus(minutes(time.get().alone()));
            items.add(new Schedule.Item(run.number, step, title(run, step), at, end, Schedule.Kind.ALONE));
            at = end;
        }
        return at;
    }

    private static String title(RunDraft run, int step) {
        Step at = run.trial.getSteps().get(step);
        return at.getTitle() == null || at.getTitle().isBlank() ? at.getKind() : at.getTitle();
    }

    private static Duration minutes(double minutes) {
        return Duration.ofMillis(Math.round(minutes * MILLIS_A_MINUTE));
    }

    private static Instant later(Instant one, Instant other) {
        return other == null || one.isAfter(other) ? one : other;
    }

    private static Estimate plus(Estimate one, Estimate other) {
        return new Estimate(one.low() + other.low(), one.likely() + other.likely(), one.high() + other.high(), one.source());
    }
}
