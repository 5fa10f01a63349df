package org.flexwright.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.Figures;
import org.flexwright.core.batch.BatchCard;
import org.flexwright.core.batch.BatchPlan;
import org.flexwright.core.batch.BatchPlanner;
import org.flexwright.core.batch.BatchProgress;
import org.flexwright.core.batch.BatchRun;
import org.flexwright.core.batch.BatchWish;
import org.flexwright.core.batch.Batches;
import org.flexwright.core.batch.LotPick;
import org.flexwright.core.batch.MaterialNeed;
import org.flexwright.core.batch.PartCheck;
import org.flexwright.core.batch.Schedule;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Batch;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** So many of a recipe. */
@Command(name = "batch", description = "So many of a recipe: pots, order of work, lots, cost.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright batch plan R1 --parts 10 --start 2027-04-12" },
        subcommands = { BatchNoun.Plan.class, BatchNoun.Make.class, BatchNoun.Show.class, BatchNoun.Card.class, BatchNoun.Close.class, BatchNoun.Bridge.class })
final class BatchNoun extends Noun {

    /** A verb that plans. */
    abstract static class Planning extends ProjectCall {
        @Parameters(paramLabel = "RECIPE", description = "Code of the recipe, R1 for its newest version.")
        String recipe;
        @Option(names = "--parts", required = true, description = "Good parts wanted.")
        int parts;
        @Option(names = "--spares", description = "Parts on top against rejects; proposed when left out.")
        Integer spares;
        @Option(names = "--mould", split = ";", description = "Moulds that are there, separated by ;. Else the recipe's own.")
        List<String> moulds = List.of();
        @Option(names = "--start", description = "Day or moment work may begin, 2027-04-12 or 2027-04-12T09:00; else now.")
        String start;
        @Option(names = "--needed-by", description = "Day it is needed by.")
        String neededBy;
        @Option(names = "--reject-limit", description = "Rejects at which the batch stops to be looked at.")
        Integer rejectLimit;

        Recipe recipe(ProjectSession session) {
            return Find.recipe(session.project(), recipe);
        }

        BatchWish wish(CliServices services, Project project, int wanted, Integer extra) {
            if (rejectLimit != null && rejectLimit < 0) {
                throw new UsageException("A limit of rejects is 0 or more; got " + rejectLimit + ".");
            }
            ZoneId zone = services.clock().getZone();
            List<Mould> there = moulds.stream().map(code -> Find.mould(project, code)).toList();
            LocalDate by = neededBy == null ? null : day("needed-by", neededBy);
            return BatchWish.of(wanted, start(services.clock().instant(), zone), zone).withSpares(extra).withMoulds(there).withAgreed(rejectLimit, by);
        }

        private Instant start(Instant now, ZoneId zone) {
            if (start == null) {
                return now;
            }
            if (start.length() > "2027-04-12".length()) {
                return switch (FieldDescriptors.of(ModelPackage.Literals.BATCH__START_AT).read(start)) {
                    case FieldInput.Rejected no -> throw new UsageException(no.sentence());
                    case FieldInput.Read read -> (Instant) read.value();
                };
            }
            return day("start", start).atTime(LocalTime.MIDNIGHT).atZone(zone).toInstant();
        }

        private static LocalDate day(String option, String typed) {
            return switch (FieldDescriptors.of(ModelPackage.Literals.BATCH__NEEDED_BY).read(typed)) {
                case FieldInput.Rejected no -> throw new UsageException("--" + option + ": " + no.sentence());
                case FieldInput.Read read -> (LocalDate) read.value();
            };
        }

        /** The plan, or the reply says why there is none. */
        BatchPlan plan(CliServices services, Recipe of, BatchWish wish, Project project, Reply reply) {
            return switch (BatchPlanner.plan(project, of, wish, services.registries())) {
                case Outcome.Refused<BatchPlan> no -> {
                    reply.refuse(no.input(), no.why().text(), no.remedy().text());
                    yield null;
                }
                case Outcome.Done<BatchPlan> done -> done.results();
            };
        }
    }

    @Command(name = "plan", description = "Plan a batch and say what it takes; nothing is changed.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch plan R1 --parts 10 --start 2027-04-12 --mould M1" })
    static final class Plan extends Planning {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id()).input("recipe", recipe).input("parts", parts);
            BatchPlan plan = plan(services, recipe(session), wish(services, session.project(), parts, spares), session.project(), reply);
            if (plan != null) {
                describe(plan, reply);
            }
            return reply;
        }
    }

    static void describe(BatchPlan plan, Reply reply) {
        ZoneId zone = plan.wish().zone();
        reply.line(plan.parts() + " parts of " + plan.recipe().getCode() + " v" + plan.recipe().getVersion() + ": " + plan.wish().wanted() + " wanted, "
                + (plan.parts() - plan.wish().wanted()) + " spare");
        reply.line("  " + plan.spares().why());
        reply.line("  " + plan.why());
        String word = plan.ofPots() ? "pot" : "run";
        for (BatchRun run : plan.runs()) {
            reply.line("  " + word + " " + run.number() + "  " + Words.count(run.parts(), "part") + ", " + Figures.of(run.mass(), "g") + (run.mould() == null ? "" : ", mould " + run
                    .mould().getCode()) + "; begins " + moment(run.begin(), zone) + (run.contact() == null ? "" : ", contact " + moment(run.contact(), zone) + ", full " + moment(run
                            .filled(), zone)) + (run.pot() == null || run.pot().workingTime() == null ? ""
                                    : "; working time " + Figures.of(run.pot().workingTime().low(), "min", 3) + " at least"));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put(word, run.number());
            row.put("parts", run.parts());
            row.put("grams", run.mass());
            row.put("mould", run.mould() == null ? null : run.mould().getCode());
            row.put("begin", Objects.toString(run.begin(), null));
            row.put("contact", Objects.toString(run.contact(), null));
            row.put("filled", Objects.toString(run.filled(), null));
            row.put("lots", plan.needs().stream().flatMap(need -> need.picks().stream()).filter(pick -> pick.run() == run.number()).map(BatchNoun::lot).toList());
            reply.item(row);
        }
        for (MaterialNeed need : plan.needs()) {
            reply.line("  " + need.name() + ": " + Figures.of(need.grams(), "g") + (need.lots().isEmpty() ? "" : " out of " + String.join(", ", need.lots().stream().map(lot -> lot
                    .getCode()).toList())));
            need.sentences().forEach(sentence -> reply.line("    " + sentence));
            if (need.missing() > 0) {
                reply.result("missing " + need.name(), Value.number(need.missing(), "g", Reply.OWN_RECORD));
            }
        }
        reply.line("  order of work:");
        for (Schedule.Item item : plan.schedule().items()) {
            reply.line("    " + moment(item.start(), zone) + " to " + moment(item.end(), zone) + "  " + word + " " + item.run() + "  " + item.title() + (item
                    .kind() == Schedule.Kind.ALONE ? " (by itself)" : ""));
        }
        CostCall.describe(plan.cost(), reply);
        reply.result("pots", Value.number(plan.runs().size(), "1", plan.why()));
        reply.result("parts", Value.number(plan.parts(), "1", Reply.OWN_RECORD));
        reply.result("hours", Value.band(BatchPlanner.hours(plan.hands()), "h"));
        reply.line("  time with hands on it: " + Value.band(BatchPlanner.hours(plan.hands()), "h").display() + "; ready " + moment(plan.schedule().ready(), zone));
        plan.remarks().forEach(reply::remark);
    }

    private static Map<String, Object> lot(LotPick pick) {
        return Map.of("lot", String.valueOf(pick.lot().getCode()), "grams", pick.grams());
    }

    private static String moment(Instant at, ZoneId zone) {
        return at == null ? "?" : java.time.format.DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").format(at.atZone(zone));
    }

    @Command(name = "make", description = "Plan a batch and make it: one trial a pot.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch make R1 --parts 10 --start 2027-04-12 --reject-limit 2" })
    static final class Make extends Planning {
        @Option(names = "--code", description = "Code of the batch; the next free one when left out.")
        String code;
        @Option(names = "--title", description = "A few words.")
        String title;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id()).input("recipe", recipe).input("parts", parts);
            BatchPlan plan = plan(services, recipe(session), wish(services, session.project(), parts, spares), session.project(), reply);
            if (plan == null) {
                return reply;
            }
            Batch[] made = new Batch[1];
            session.execute("Make batch of " + plan.recipe().getCode(), edit -> made[0] = Batches.create(edit, plan, services.registries(), code, title));
            reply.line("Batch " + made[0].getCode() + ": " + String.join(", ", made[0].getPots().stream().map(Trial::getCode).toList()));
            describe(plan, reply);
            if (!plan.newLots().isEmpty()) {
                reply.line("  flexwright batch bridge " + recipe + " --parts " + parts + " makes the bridge trial.");
            }
            return reply.words("batch", made[0].getCode());
        }
    }

    @Command(name = "bridge", description = "Make the two-part trial that tells whether another lot is alike.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch bridge R1 --parts 10 --start 2027-04-12" })
    static final class Bridge extends Planning {
        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id()).input("recipe", recipe);
            BatchPlan all = plan(services, recipe(session), wish(services, session.project(), parts, spares), session.project(), reply);
            BatchPlan two = all == null ? null : plan(services, recipe(session), wish(services, session.project(), 2, 0), session.project(), reply);
            if (two == null) {
                return reply;
            }
            List<Trial> made = new ArrayList<>();
            session.execute("Bridge trial of " + all.recipe().getCode(), edit -> made.addAll(Batches.bridge(edit, two, all, services.registries())));
            made.forEach(trial -> reply.line("Trial " + trial.getCode() + ": " + trial.getTitle()));
            return reply.words("trial", String.join(", ", made.stream().map(Trial::getCode).toList()));
        }
    }

    @Command(name = "show", description = "Show where a batch stands, or all batches.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch show B01" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "BATCH", arity = "0..1", description = "Code of the batch.")
        String batch;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<Batch> all = batch == null ? session.project().getBatches() : List.of(Find.batch(session.project(), batch));
            all.forEach(one -> describe(services, session, one, reply));
            if (all.isEmpty()) {
                reply.line("There is no batch yet: flexwright batch make makes one from a recipe.");
            }
            return reply;
        }

        private static void describe(CliServices services, ProjectSession session, Batch batch, Reply reply) {
            BatchProgress progress = BatchProgress.of(batch, services.registries(), services.clock().getZone());
            reply.line(batch.getCode() + "  " + batch.getTitle() + (batch.getClosedAt() == null ? "" : ", closed " + Words.moment(batch.getClosedAt())));
            for (BatchProgress.Row row : progress.rows()) {
                reply.line("  pot " + row.number() + "  " + row.pot().getCode() + "  " + row.state() + ", " + row.made() + " of " + Objects.toString(row.wanted(), "?") + " parts" + (row
                        .failed() == 0 ? "" : ", " + row.failed() + " rejected") + (row.next().isEmpty() ? "" : "; next: " + row.next()));
                reply.item(Map.of("batch", batch.getCode(), "pot", row.number(), "trial", row.pot().getCode(), "state", row.state(), "made", row.made(), "rejected", row.failed(),
                        "next", row.next()));
            }
            reply.result("good " + batch.getCode(), Value.number(progress.good(), "1", Reply.OWN_RECORD));
            reply.result("rejects " + batch.getCode(), Value.number(progress.rejects(), "1", Reply.OWN_RECORD));
            if (!progress.rejectSentence().isEmpty()) {
                reply.line("  " + progress.rejectSentence());
            }
            for (PartCheck check : PartCheck.of(session.project(), batch, services.registries().properties())) {
                reply.line("  " + check.sentence());
            }
        }
    }

    @Command(name = "card", description = "The cards of a batch, one a pot, to lie beside the balance.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch card B01 --pot 1" })
    static final class Card extends ProjectCall {
        @Parameters(paramLabel = "BATCH", description = "Code of the batch.")
        String batch;
        @Option(names = "--pot", description = "Only this pot, by its number.")
        Integer pot;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Batch of = Find.batch(session.project(), batch);
            List<BatchCard> cards = BatchCard.of(of, services.registries());
            if (pot != null && (pot < 1 || pot > cards.size())) {
                throw new UsageException(of.getCode() + " has pots 1 to " + cards.size() + ", not " + pot + ".");
            }
            Reply reply = new Reply(id()).input("batch", of.getCode());
            for (BatchCard card : pot == null ? cards : List.of(cards.get(pot - 1))) {
                card.text().forEach(reply::line);
                reply.line("");
                reply.item(Map.of("title", card.title(), "facts", card.facts(), "steps", card.steps().stream().map(step -> Map.of("step", step.number(), "title", step.title(), "lines",
                        step.lines().stream().map(line -> Map.of("label", line.label(), "planned", line.planned(), "actual", line.actual())).toList())).toList()));
            }
            return reply;
        }
    }

    @Command(name = "close", description = "Close a batch: its pots reserve nothing any more.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright batch close B01" })
    static final class Close extends ProjectCall {
        @Parameters(paramLabel = "BATCH", description = "Code of the batch.")
        String batch;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Batch of = Find.batch(session.project(), batch);
            session.execute("Close batch " + of.getCode(), edit -> Batches.close(edit, of));
            return new Reply(id()).words("batch", of.getCode()).words("closed", Words.moment(of.getClosedAt()));
        }
    }
}
