package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.ageing.AgedValue;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.AgeingSeries;
import org.flexwright.core.ageing.AgeingState;
import org.flexwright.core.ageing.Drift;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Readings taken again as pieces grow older. */
@Command(name = "ageing", description = "Readings taken again as pieces grow older: plan them, see what is due, see what age did.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright ageing due" }, subcommands = { AgeingNoun.New.class, AgeingNoun.Due.class, AgeingNoun.Show.class, AgeingNoun.Skip.class })
final class AgeingNoun extends Noun {
    private static PropertyDef property(CliServices services, AgeingPlan plan) {
        return Find.property(services.registries().properties(), plan.getKey() == null ? "" : String.valueOf(plan.getKey().getProperty()));
    }

    private static String age(AgeingPoint point) {
        return AgeSpan.textOfDays(point.getDays());
    }

    /** By number from 1 in the order of the list, or by title. */
    private static AgeingPlan plan(Project project, String typed) {
        List<AgeingPlan> all = project.getAgeingPlans();
        if (typed.strip().matches("\\d{1,4}")) {
            int number = Integer.parseInt(typed.strip());
            if (number < 1 || number > all.size()) {
                throw new UsageException(all.isEmpty() ? "There is no ageing plan yet; flexwright ageing new makes one." : "There is no ageing plan " + number
                        + "; there are " + all.size() + ".");
            }
            return all.get(number - 1);
        }
        return Find.one("ageing plan", all, p -> p.getTitle() == null ? "" : p.getTitle(), typed);
    }

    @Command(name = "new", description = "Plan readings at several ages.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright ageing new --property peak-force --pieces \"T08/P1;T08/P2;T08/P3\" --support \"smooth base, rim free\" --ages \"1d;7d;30d;365d\"" })
    static final class New extends ProjectCall {
        @Option(names = "--property", required = true, description = "What is read: id of the property or its title.")
        String property;
        @Option(names = "--pieces", required = true, description = "The pieces, separated by ;, e.g. \"T08/P1;T08/P2\".")
        String pieces;
        @Option(names = "--ages", defaultValue = "1d;7d;30d;365d", description = "Ages, separated by ;, each with its unit; usual are ${DEFAULT-VALUE}.")
        String ages;
        @Option(names = "--title", description = "A few words.")
        String title;
        @Option(names = "--from", description = "From when age counts; each piece from when it was made when left out.")
        String from;
        @Mixin
        TargetNoun.Conditions conditions = new TargetNoun.Conditions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            PropertyDef def = Find.property(services.registries().properties(), property);
            List<Specimen> specimens = new ArrayList<>();
            for (String one : pieces.split(";")) {
                specimens.add(Find.piece(session.project(), one.strip()));
            }
            PropertyKey key = conditions.on(specimens.getFirst(), services);
            key.setProperty(def.id());
            List<Double> days = new ArrayList<>();
            for (String one : ages.split(";")) {
                days.add(days(one.strip()));
            }
            AgeingPlan typed = ModelFactory.eINSTANCE.createAgeingPlan();
            new Inputs().put("from", from).fill(typed, services.clock());
            AgeingPlan[] made = new AgeingPlan[1];
            session.execute("Plan ageing readings of " + def.title(), edit -> made[0] = AgeingPlans.add(edit, title == null ? def.title() + " over age" : title, key, specimens, days, typed.getFrom()));
            Reply reply = new Reply(id()).words("plan", String.valueOf(session.project().getAgeingPlans().size())).words("property", def.id());
            checks(services, reply, made[0], def, true);
            return reply;
        }

        private static double days(String typed) {
            return switch (FieldDescriptors.of(ModelPackage.Literals.AGEING_POINT__DAYS).read(typed)) {
                case FieldInput.Rejected no -> throw new UsageException(no.sentence());
                case FieldInput.Read read when read.value() instanceof Double days -> days;
                case FieldInput.Read none -> throw new UsageException("An age is missing: give ages with their unit, separated by ;, such as \"1d;7d\".");
            };
        }
    }

    private static void checks(CliServices services, Reply reply, AgeingPlan plan, PropertyDef def, boolean all) {
        reply.line(Drift.title(plan, def) + "   (" + def.id() + ")");
        Instant now = services.clock().instant();
        for (AgeingPoint point : AgeingPlans.points(plan)) {
            List<AgeingCheck> at = AgeingPlans.checks(plan, def, now).stream().filter(c -> c.point() == point).filter(c -> all || c.state() == AgeingState.DUE
                    || c.state() == AgeingState.COMING).toList();
            AgeingCheck.byState(at).forEach((state, names) -> reply.line(String.format("  %-6s ± %-7s %-12s %s%s", age(point), AgeSpan.textOfDays(AgeingPlans.give(point)), state.word(), String
                    .join(", ", names), at.getFirst().due() == null ? "" : "   from " + Words.moment(at.getFirst().due())) + Words.tail("   because ", point.getSkipped())));
            at.forEach(c -> reply.item(row(c, def)));
        }
    }

    private static Map<String, Object> row(AgeingCheck check, PropertyDef def) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("plan", Drift.title(check.plan(), def));
        row.put("property", def.id());
        row.put("piece", Names.piece(check.piece()));
        row.put("days", check.point().getDays());
        row.put("give", AgeingPlans.give(check.point()));
        row.put("due", check.due() == null ? null : check.due().toString());
        row.put("state", Words.of(check.state()));
        return row;
    }

    @Command(name = "due", description = "What is to be read now, and what comes next.", mixinStandardHelpOptions = true, footer = { "", "Example: flexwright ageing due" })
    static final class Due extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<AgeingCheck> open = AgeingPlans.open(session.project(), services.registries().properties(), services.clock().instant());
            for (AgeingCheck check : open) {
                PropertyDef def = property(services, check.plan());
                reply.line(String.format("%-9s %-9s %-8s %s   from %s, give or take %s", check.state().word(), Names.piece(check.piece()), age(check.point()), Drift.title(check.plan(), def), Words
                        .moment(check.due()), AgeSpan.textOfDays(AgeingPlans.give(check.point()))));
                reply.item(row(check, def));
            }
            if (open.isEmpty()) {
                reply.line(session.project().getAgeingPlans().isEmpty() ? "There is no ageing plan yet: flexwright ageing new makes one." : "Nothing is due, and nothing more is coming.");
            }
            return reply;
        }
    }

    @Command(name = "show", aliases = "list", description = "Show a plan, or all: what was read, and what age did to each piece.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright ageing show 1 --csv drift.csv" })
    static final class Show extends ProjectCall {
        @Parameters(paramLabel = "PLAN", arity = "0..1", description = "Its number or title; all when left out.")
        String plan;
        @Option(names = "--csv", paramLabel = "FILE", description = "Write the values as a table; needs one plan.")
        Path csv;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<AgeingPlan> plans = plan == null ? session.project().getAgeingPlans() : List.of(plan(session.project(), plan));
            if (csv != null && plans.size() != 1) {
                throw new UsageException("A table holds one plan: say which, by its number or title.");
            }
            for (AgeingPlan one : plans) {
                PropertyDef def = property(services, one);
                checks(services, reply, one, def, true);
                drift(services, reply, Drift.of(one, def));
            }
            if (plans.isEmpty()) {
                reply.line("There is no ageing plan yet: flexwright ageing new makes one.");
            }
            return reply;
        }

        private void drift(CliServices services, Reply reply, Drift drift) {
            for (AgeingSeries series : drift.series()) {
                List<String> values = new ArrayList<>();
                for (AgedValue value : series.values()) {
                    values.add(AgeSpan.textOfDays(value.days()) + ": " + drift.text(value));
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("piece", series.name());
                    row.put("days", value.days());
                    row.put("low", Double.isInfinite(value.low()) ? null : value.low());
                    row.put("high", Double.isInfinite(value.high()) ? null : value.high());
                    row.put("half", value.half());
                    row.put("unit", drift.unit());
                    row.put("readings", value.readings());
                    row.put("session", value.session() == null ? null : value.session().getCode());
                    reply.item(row);
                }
                reply.line("  " + series.name() + "   " + String.join("   ", values));
            }
            reply.line("  " + drift.sentence().text());
            drift.remarks().forEach(remark -> reply.line("  " + remark.text()));
            if (csv != null) {
                try {
                    Files.writeString(services.workingFolder().resolve(csv), drift.table().csv());
                } catch (IOException e) {
                    throw new CliException("The table " + csv + " cannot be written.", e);
                }
            }
        }
    }

    @Command(name = "skip", description = "Say why the readings at an age are not taken.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright ageing skip 1 --age 7d --reason \"away that week\"" })
    static final class Skip extends ProjectCall {
        @Parameters(paramLabel = "PLAN", description = "Its number or title.")
        String plan;
        @Option(names = "--age", required = true, description = "Which age, with its unit.")
        String age;
        @Option(names = "--reason", required = true, description = "Why; empty takes it back.")
        String reason;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            AgeingPlan of = plan(session.project(), plan);
            double days = New.days(age);
            AgeingPoint point = AgeingPlans.points(of).stream().filter(p -> Math.abs(p.getDays() - days) < 1e-6).findFirst().orElseThrow(() -> new UsageException(
                    "The plan has no age of " + AgeSpan.textOfDays(days) + "; it has " + String.join(", ", AgeingPlans.points(of).stream().map(AgeingNoun::age)
                            .toList()) + "."));
            session.execute("Leave out an ageing reading", edit -> AgeingPlans.skip(edit, point, reason));
            Reply reply = new Reply(id());
            checks(services, reply, of, property(services, of), true);
            return reply;
        }
    }
}
