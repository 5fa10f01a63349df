package org.flexwright.core.view;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;

/**
 * The steps of a trial on one clock: time from the first contact of A and B.
 *
 * @param contact the moment of contact; null when nothing tells
 * @param clock   time since contact as shown large, {@code 4:12}; empty before contact
 * @param lines   one a step
 */
public record TimeLine(Instant contact, String clock, List<Line> lines) {

    /**
     * A step.
     *
     * @param stepId        id of the step
     * @param title         its title
     * @param state         where it stands
     * @param shape         check, filled or open circle, dash
     * @param plannedStart  planned time from contact; empty when not planned
     * @param actualStart   time from contact it began; empty when it did not
     * @param planned       planned length; empty when not planned
     * @param taken         time it took, or has taken so far; empty before it began
     * @param minutesFromContact where it stands on the line: actual start if it began, else planned; null when neither is known
     * @param minutes       its length on the line: taken, else planned; null when neither is known
     * @param late          true when it is past its planned start, or past its planned length while it runs
     */
    public record Line(String stepId, String title, StepState state, String shape, String plannedStart, String actualStart, String planned,
            String taken, Double minutesFromContact, Double minutes, boolean late) {
        public Line {
            Objects.requireNonNull(state, "state");
        }
    }

    public TimeLine {
        lines = List.copyOf(lines);
    }

    /** The line of a trial as it stands at that moment. */
    public static TimeLine of(Trial trial, Instant now) {
        Instant contact = contactOf(trial);
        List<Line> lines = new ArrayList<>();
        for (Step step : trial.getSteps()) {
            lines.add(line(step, contact, now));
        }
        return new TimeLine(contact, contact == null || now.isBefore(contact) ? "" : clock(minutes(contact, now)), lines);
    }

    /**
     * The moment of contact: as said at the bench, else when the step planned at 0 began. Without such a plan, when the first step began that has a planned start,
     * less that start; without any plan of times, when the second of A and B was first weighed into the same cup. Null when nothing tells.
     */
    public static Instant contactOf(Trial trial) {
        if (trial.getContactAt() != null) {
            return trial.getContactAt();
        }
        return trial.getSteps().stream().filter(s -> s.getStartedAt() != null && s.getPlannedStart() != null && s.getPlannedStart() == 0).map(Step::getStartedAt).findFirst()
                .or(() -> trial.getSteps().stream().filter(s -> s.getStartedAt() != null && s.getPlannedStart() != null && s.getPlannedStart() > 0)
                        .map(s -> s.getStartedAt().minus(Duration.ofMillis(Math.round(s.getPlannedStart() * 60_000)))).findFirst())
                .or(() -> trial.getSteps().stream().flatMap(s -> bothIn(s).stream()).min(Instant::compareTo))
                .orElse(null);
    }

    private static Optional<Instant> bothIn(Step step) {
        Optional<Instant> a = firstWeighed(step, PartRole.COMPONENT_A);
        Optional<Instant> b = firstWeighed(step, PartRole.COMPONENT_B);
        return a.isEmpty() || b.isEmpty() ? Optional.empty() : a.get().isAfter(b.get()) ? a : b;
    }

    private static Optional<Instant> firstWeighed(Step step, PartRole role) {
        return step.getUses().stream().filter(u -> u.getRole() == role).flatMap(u -> u.getWeighings().stream()).map(Weighing::getAt).filter(Objects::nonNull)
                .min(Instant::compareTo);
    }

    private static Line line(Step step, Instant contact, Instant now) {
        Double start = contact == null || step.getStartedAt() == null ? null : minutes(contact, step.getStartedAt());
        Double taken = step.getStartedAt() == null || step.getState() == StepState.SKIPPED ? null : taken(step, now);
        Double planned = step.getPlannedStart();
        boolean overdue = contact != null && step.getState() == StepState.PLANNED && planned != null && minutes(contact, now) > planned;
        boolean overlong = step.getState() == StepState.RUNNING && taken != null && step.getPlannedDuration() != null && taken > step.getPlannedDuration();
        return new Line(step.getId() == null ? "" : step.getId(), step.getTitle() == null ? "" : step.getTitle(), step.getState(), shape(step.getState()),
                planned == null ? "" : clock(planned), start == null ? "" : clock(start), step.getPlannedDuration() == null ? "" : length(step.getPlannedDuration()),
                taken == null ? "" : length(taken), start == null ? planned : start, taken == null ? step.getPlannedDuration() : taken, overdue || overlong);
    }

    private static Double taken(Step step, Instant now) {
        Instant end = step.getEndedAt() != null ? step.getEndedAt() : step.getState() == StepState.RUNNING ? now : null;
        return end == null ? null : minutes(step.getStartedAt(), end);
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }

    private static String shape(StepState state) {
        return switch (state) {
            case DONE -> "\u2713";
            case RUNNING -> "\u25cf";
            case PLANNED -> "\u25cb";
            case SKIPPED -> "\u2013";
        };
    }

    /** Minutes and seconds up to four hours, then hours or days: {@code 4:12}, {@code 16 h}, {@code 3 d}; a minus sign before contact. */
    public static String clock(double minutes) {
        double size = Math.abs(minutes);
        String sign = minutes < 0 && size * 60 >= 1 ? "\u2212" : "";
        if (size >= 240) {
            return sign + length(size);
        }
        long seconds = Math.round(Math.floor(size * 60 + 1e-6));
        return sign + String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    private static String length(double minutes) {
        if (minutes < 1) {
            return Message.of(TimeLine.class, "line.seconds", String.valueOf(Math.round(minutes * 60))).text();
        }
        if (minutes < 240) {
            return clock(minutes);
        }
        return minutes < 72 * 60 ? Message.of(TimeLine.class, "line.hours", FieldText.digits(Math.rint(minutes / 6) / 10)).text()
                : Message.of(TimeLine.class, "line.days", FieldText.digits(Math.rint(minutes / 144) / 10)).text();
    }
}
