package org.flexwright.core.batch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.PotRequest;
import org.flexwright.core.process.ProcessKind.EstimateLine;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Batch;
import org.flexwright.model.Mould;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/**
 * Where a batch stands.
 *
 * @param batch    the batch
 * @param rows     one a pot
 * @param schedule the order of work as planned from its beginning
 * @param hands    min of a person's time, as planned
 * @param good     good parts so far
 * @param rejects  rejects so far
 */
public record BatchProgress(Batch batch, List<Row> rows, Schedule schedule, Estimate hands, int good, int rejects) {

    /**
     * A pot.
     *
     * @param number from 1
     * @param pot    its trial
     * @param wanted parts it is to give; null when nobody said
     * @param made   parts that came out
     * @param failed of those, rejects
     * @param state  where it stands, in a word
     * @param next   the step to do next; empty when there is none
     * @param begin  when it was planned to begin; null when nothing tells
     */
    public record Row(int number, Trial pot, Integer wanted, int made, int failed, String state, String next, Instant begin) {
    }

    public BatchProgress {
        rows = List.copyOf(rows);
    }

    /** Where it stands now. */
    public static BatchProgress of(Batch batch, Registries kinds, ZoneId zone) {
        Scheduler scheduler = schedule(batch, kinds, zone);
        Schedule schedule = scheduler.schedule();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < batch.getPots().size(); i++) {
            Trial pot = batch.getPots().get(i);
            int number = i + 1;
            Instant begin = schedule.items().stream().filter(item -> item.run() == number).map(Schedule.Item::start).findFirst().orElse(null);
            int made = (int) pot.getParts().stream().filter(part -> part.getPieceKind() == PieceKind.PART).count();
            int failed = (int) pot.getParts().stream().filter(part -> part.getPieceKind() == PieceKind.PART && Spares.rejected(part)).count();
            rows.add(new Row(number, pot, pot.getPartsWanted(), made, failed, Names.word(pot.getState()), next(pot), begin));
        }
        int made = rows.stream().mapToInt(Row::made).sum();
        int rejects = rows.stream().mapToInt(Row::failed).sum();
        return new BatchProgress(batch, rows, schedule, scheduler.hands(), made - rejects, rejects);
    }

    private static String next(Trial pot) {
        boolean over = pot.getState() == TrialState.MADE || pot.getState() == TrialState.FAILED || pot.getState() == TrialState.DISCARDED;
        return over ? "" : pot.getSteps().stream().filter(step -> step.getState() == StepState.RUNNING || step.getState() == StepState.PLANNED).findFirst()
                .map(step -> step.getTitle() == null ? step.getKind() : step.getTitle()).orElse("");
    }

    /** What the count of rejects says, in a sentence; empty when no limit was agreed and nothing was rejected. */
    public String rejectSentence() {
        if (batch.getRejectLimit() == null) {
            return rejects == 0 ? "" : say("rejects", rejects);
        }
        return say(rejects >= Math.max(1, batch.getRejectLimit()) ? "stop" : "limit", rejects, batch.getRejectLimit());
    }

    /** True when the agreed number of rejects is reached. */
    public boolean stopped() {
        return batch.getRejectLimit() != null && rejects >= Math.max(1, batch.getRejectLimit());
    }

    private static Scheduler schedule(Batch batch, Registries kinds, ZoneId zone) {
        Instant start = batch.getStartAt() == null ? batch.getCreatedAt() : batch.getStartAt();
        if (start == null || batch.getPots().isEmpty()) {
            return new Scheduler(BatchWish.of(1, Instant.EPOCH, zone), kinds, -1, -1);
        }
        Trial first = batch.getPots().getFirst();
        int pot = -1;
        int fill = -1;
        for (int i = 0; i < first.getSteps().size(); i++) {
            Step step = first.getSteps().get(i);
            StepKind kind = kinds.findStepKind(step.getKind()).orElse(null);
            if (kind != null && pot < 0 && kind.pots(step, first, new PotRequest(1, 1, null, null, null, 0, null)).isPresent()) {
                pot = i;
            } else if (kind != null && pot >= 0 && fill < 0 && kind.fillsMould()) {
                fill = i;
            }
        }
        Scheduler scheduler = new Scheduler(BatchWish.of(1, start, zone), kinds, pot, fill);
        List<Mould> moulds = batch.getPots().stream().map(Trial::getMould).filter(java.util.Objects::nonNull).distinct().toList();
        for (int i = 0; i < batch.getPots().size(); i++) {
            RunDraft draft = new RunDraft(batch.getPots().get(i), i + 1);
            var route = draft.trial.getRoute() == null ? null : kinds.findProcessKind(draft.trial.getRoute()).orElse(null);
            var lines = pot >= 0 || route == null ? List.<EstimateLine>of() : route.estimate(draft.trial);
            if (lines.stream().anyMatch(line -> line.meaning() == EstimateLine.Meaning.ELAPSED)) {
                scheduler.add(draft, lines, route.title());
            } else {
                scheduler.add(draft, moulds.isEmpty() ? List.of() : draft.trial.getMould() == null ? moulds : List.of(draft.trial.getMould()));
            }
        }
        return scheduler;
    }

    private static String say(String key, Object... args) {
        return Message.of(BatchProgress.class, "progress." + key, args).text();
    }
}
