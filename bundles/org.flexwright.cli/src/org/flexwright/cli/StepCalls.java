package org.flexwright.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.naming.Find;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.GramsOfParts;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.core.trial.MaterialUses;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PartRole;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is done at the bench: steps, weighing, prompts. */
final class StepCalls {
    private StepCalls() {
    }

    static void describe(CliServices services, Step step, Reply reply) {
        StepKind kind = services.registries().findStepKind(step.getKind()).orElse(null);
        if (kind == null) {
            reply.line("        its plugin is not here: details are kept as they are");
        }
        StepCard.lines(step, kind).stream().filter(l -> !l.planned().isEmpty() || !l.actual().isEmpty()).forEach(l -> reply.line("        " + text(l)));
    }

    /** Fields of a step nobody filled in yet, with the names they are set by. */
    private static void openFields(Step step, Reply reply) {
        if (step.getDetails() == null || step.getDetails() instanceof AnyType) {
            return;
        }
        List<FieldDescriptor> open = FieldDescriptors.ofClass(step.getDetails().eClass()).stream().filter(f -> empty(step.getDetails(), f)).toList();
        if (!open.isEmpty()) {
            reply.line("  may be set: " + Inputs.names(open));
        }
    }

    private static boolean empty(EObject details, FieldDescriptor field) {
        EStructuralFeature feature = details.eClass().getEStructuralFeature(field.name());
        return details.eGet(feature) == null || !details.eIsSet(feature);
    }

    private static String text(CardLine line) {
        StringBuilder text = new StringBuilder(String.format("%-30s", line.label()));
        if (!line.planned().isEmpty()) {
            text.append(" planned ").append(line.actual().isEmpty() ? line.planned() : String.format("%-14s", line.planned()));
        }
        if (!line.actual().isEmpty()) {
            text.append(" actual ").append(line.actual()).append(line.origin().isEmpty() ? "" : " (" + line.origin() + ")");
        }
        if (!line.difference().isEmpty()) {
            text.append("  ").append(line.difference()).append(line.outside() ? " outside the own limit " + line.limit() : "");
        }
        return text.toString();
    }

    /** A verb about one step of a trial. */
    abstract static class OneStep extends TrialNoun.OneTrial {
        @Option(names = "--session", description = "Code of the session.")
        String session;

        protected final Session session(ProjectSession project) {
            return session == null ? null : Find.session(project.project(), session);
        }
    }

    @Command(name = "step", description = "Plan or carry out a step: add it, set fields, plan a material, confirm, start, finish, skip.",
            mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial step T05 weigh --set ownLimit=2%% --use A=PU-A/L12:22.88g --use B=PU-B/L7:21.57g",
                    "         flexwright trial step T05 weigh --material filler.parts=10 --material filler.partsOf=of_b --plan",
                    "         flexwright trial step T05 mixing.degas --add --before fill", "Without options the step is shown." })
    static final class StepCall extends OneStep {
        @Parameters(index = "1", paramLabel = "STEP", description = "Number, kind or title of the step.")
        String step;
        @Option(names = "--add", description = "Add a step beyond the route's usual ones: STEP is its kind, see plugin list.")
        boolean add;
        @Option(names = "--before", paramLabel = "STEP", description = "Where it is added: before this step; else at the end.")
        String before;
        @Option(names = "--set", paramLabel = "FIELD=VALUE", description = "A field of the step, by its name or the words beside it; repeat for more.")
        List<String> set = List.of();
        @Option(names = "--use", paramLabel = "ROLE=LOT:MASS", description = "A material: role, grade or grade/lot, planned mass; repeat for more.")
        List<String> uses = List.of();
        @Option(names = "--material", paramLabel = "ROLE.FIELD=VALUE", description = "A field of a material: parts, partsBy, partsOf, moisture, dried, lot, grade, premix;"
                + " ROLE may be its place in the step. Repeat for more.")
        List<String> materials = List.of();
        @Option(names = "--plan", description = "Plan the grams that follow from the parts.")
        boolean plan;
        @Option(names = "--as-planned", description = "Confirm the copied values of this step as planned.")
        boolean confirm;
        @Option(names = "--start", description = "Start it now.")
        boolean start;
        @Option(names = "--done", description = "It is done now.")
        boolean done;
        @Option(names = "--skip", description = "It is left out.")
        boolean skip;

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            if (before != null && !add) {
                throw new UsageException("--before says where a step is added: give --add too.");
            }
            Trial trial = trial(project);
            StepKind kind = add ? Find.named("step kind", services.registries().stepKinds(), StepKind::id, StepKind::title, step) : null;
            int place = !add ? trial.getSteps().indexOf(Find.step(trial, step))
                    : before == null ? trial.getSteps().size() : trial.getSteps().indexOf(Find.step(trial, before));
            Inputs inputs = new Inputs();
            Settings.read(set, services.workingFolder()).forEach(inputs::put);
            Session at = session(project);
            boolean changes = add || !inputs.isEmpty() || !uses.isEmpty() || !materials.isEmpty() || plan || confirm || start || done || skip || at != null;
            if (changes) {
                String title = add ? kind.title() : trial.getSteps().get(place).getTitle();
                project.execute("Step " + title + " of " + trial.getCode(), edit -> {
                    Step target = add ? Trials.addStep(edit, trial, kind, place) : trial.getSteps().get(place);
                    details(services, target, inputs).forEach((feature, value) -> set(edit, target, feature, value, inputs.typed(feature)));
                    uses.forEach(use -> UseInputs.use(edit, target.getUses(), use, role -> MaterialUses.add(edit, target, role)));
                    new UseInputs(services, edit, target.getUses()).read(materials, role -> MaterialUses.add(edit, target, role));
                    if (plan) {
                        plan(services, edit, trial, target);
                    }
                    if (at != null) {
                        edit.set(target, ModelPackage.Literals.STEP__SESSION, at);
                    }
                    state(edit, target);
                });
            }
            Step target = trial.getSteps().get(place);
            Reply reply = new Reply(id()).words("trial", trial.getCode()).words("step", target.getTitle()).words("state", Words.of(target
                    .getState()));
            reply.line(trial.getCode() + ", " + target.getTitle() + " (" + target.getKind() + "): " + Words.of(target.getState()));
            describe(services, target, reply);
            if (!changes || add) {
                openFields(target, reply);
            }
            advise(services, trial, target, reply);
            return reply;
        }

        private void state(Edit edit, Step target) {
            if (confirm) {
                Trials.confirmAsPlanned(edit, target);
            }
            if (start) {
                Trials.start(edit, target);
            }
            if (done) {
                Trials.finish(edit, target);
            }
            if (skip) {
                edit.set(target, ModelPackage.Literals.STEP__STATE, StepState.SKIPPED);
            }
        }

        private static Map<EStructuralFeature, Object> details(CliServices services, Step target, Inputs inputs) {
            if (inputs.isEmpty()) {
                return Map.of();
            }
            if (target.getDetails() == null || target.getDetails() instanceof AnyType) {
                throw new UsageException("The step " + target.getTitle() + " has no fields here"
                        + (services.registries().findStepKind(target.getKind()).isEmpty() ? ": its plugin is absent." : "."));
            }
            return inputs.read(target.getDetails(), services.clock());
        }

        private static void set(Edit edit, Step target, EStructuralFeature feature, Object value, String typed) {
            edit.set(target.getDetails(), feature, value);
            Provenances.keep(edit, target.getDetails(), feature, Origin.TYPED, null, typed);
        }

        private static void plan(CliServices services, Edit edit, Trial trial, Step target) {
            GramsOfParts grams = services.registries().findStepKind(target.getKind()).flatMap(kind -> kind.gramsOfParts(target, trial)).orElseThrow(() -> new UsageException(
                    "The step " + target.getTitle() + " has no parts to plan from: give them with --material, e.g. A.parts=100."));
            MaterialUses.plan(edit, target, grams);
        }
    }

    static void advise(CliServices services, Trial trial, Step step, Reply reply) {
        for (StepAdvice advice : services.registries().advice(step, trial)) {
            Value value = Value.band(advice.value(), advice.unit());
            reply.result(advice.name(), value);
            reply.line("  " + advice.label() + ": " + value.display() + "   [" + value.source() + "]");
            if (advice.remark() != null) {
                reply.remark(advice.remark());
            }
        }
    }

    @Command(name = "weigh", description = "Write down what the balance says; get the true ratio and what to add.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial weigh T05 --role A --net 24.88g", "Or: flexwright trial weigh T05 --role B --gross 33.57g --tare 12g" })
    static final class Weigh extends OneStep {
        @Option(names = "--step", description = "Number, kind or title of the step; the first one that uses this role when left out.")
        String step;
        @Option(names = "--role", required = true, description = "A, B, filler, pigment...")
        String role;
        @Option(names = "--net", description = "Net mass.")
        String net;
        @Option(names = "--gross", description = "Gross mass.")
        String gross;
        @Option(names = "--tare", description = "Mass of the cup.")
        String tare;
        @Option(names = "--correction", description = "This was added to mend the ratio.")
        boolean correction;
        @Option(names = "--instrument", description = "Name of the balance.")
        String instrument;

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            Trial trial = trial(project);
            PartRole part = Find.role(role);
            Step target = step == null ? firstWith(trial, part) : Find.step(trial, step);
            MaterialUse use = target.getUses().stream().filter(u -> u.getRole() == part).findFirst().orElseThrow(() -> new UsageException(
                    "The step " + target.getTitle() + " uses no " + Words.of(part) + ": plan it with flexwright trial step --use."));
            Instrument balance = instrument == null ? null : Find.instrument(project.project(), instrument);
            Double grossG = mass(gross);
            Double tareG = mass(tare);
            Double netG = mass(net);
            Session at = session(project);
            project.execute("Weigh " + Words.of(part) + " of " + trial.getCode(), edit -> {
                Weighings.add(edit, use, grossG, tareG, netG, correction, balance);
                if (at != null) {
                    edit.set(target, ModelPackage.Literals.STEP__SESSION, at);
                }
                if (target.getState() == StepState.PLANNED) {
                    Trials.start(edit, target);
                }
            });
            Reply reply = new Reply(id()).input("trial", trial.getCode()).input("role", Words.of(part));
            double actual = Weighings.actual(use);
            double added = use.getWeighings().get(use.getWeighings().size() - 1).getNet();
            reply.result("actual", Value.number(actual, "g", "weighed"));
            String all = use.getWeighings().size() == 1 ? "" : ", " + grams(actual) + " in " + Words.count(use.getWeighings().size(), "weighing");
            reply.line(trial.getCode() + ", " + name(use) + ": " + grams(added) + " weighed" + all);
            advise(services, trial, target, reply);
            return reply;
        }

        private static String grams(double mass) {
            return Value.number(mass, "g", "").display();
        }

        private static String name(MaterialUse use) {
            String grade = use.getGrade() == null ? "" : use.getGrade().getCode();
            return Words.of(use.getRole()) + Words.tail(", ", grade) + (use.getLot() == null ? "" : "/" + use.getLot().getCode());
        }

        private static Double mass(String typed) {
            return typed == null ? null : Double.valueOf(QuantityParser.parse(typed, QuantityKind.MASS).canonical());
        }

        private static Step firstWith(Trial trial, PartRole role) {
            return trial.getSteps().stream().filter(s -> s.getUses().stream().anyMatch(u -> u.getRole() == role)).findFirst().orElseThrow(
                    () -> new UsageException("No step of " + trial.getCode() + " uses " + Words.of(role)
                            + ": plan it with flexwright trial step --use."));
        }
    }

    @Command(name = "prompts", description = "Show the usual cautions for what is really in each step, and which were acknowledged.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial prompts T05" })
    static final class Prompts extends TrialNoun.OneTrial {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            Trial trial = trial(project);
            Reply reply = new Reply(id()).words("trial", trial.getCode());
            reply.line("The product's own data sheet, local codes and licensed practice win over what stands here.");
            for (Step step : trial.getSteps()) {
                for (HazardPrompt prompt : services.registries().prompts(step, trial)) {
                    boolean given = Acknowledgements.given(project.project(), prompt.id(), step.getSession(), null);
                    reply.line(step.getTitle() + ": " + prompt.hazard().text());
                    reply.line("    " + prompt.controls().text() + "   [" + prompt.source().display() + "]" + (given ? "   acknowledged" : ""));
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("step", step.getTitle());
                    row.put("prompt", prompt.id());
                    row.put("hazard", prompt.hazard().text());
                    row.put("controls", prompt.controls().text());
                    row.put("source", prompt.source().display());
                    row.put("needsSheet", prompt.needsSheet());
                    row.put("acknowledged", given);
                    reply.item(row);
                }
            }
            return reply;
        }
    }

    @Command(name = "acknowledge", description = "Say that a person read the cautions of a step, and the data sheets by date and revision.",
            mixinStandardHelpOptions = true, footer = { "",
                    "Example: flexwright trial acknowledge T05 weigh --session S3 --who Kim --sheet-date 2026-01-15 --sheet-revision 4" })
    static final class Acknowledge extends OneStep {
        @Parameters(index = "1", paramLabel = "STEP", description = "Number, kind or title of the step.")
        String step;
        @Option(names = "--add", description = "Add a step beyond the route's usual ones: STEP is its kind, see plugin list.")
        boolean add;
        @Option(names = "--before", paramLabel = "STEP", description = "Where it is added: before this step; else at the end.")
        String before;
        @Option(names = "--who", required = true, description = "The person who read them.")
        String who;
        @Option(names = "--lot", description = "Only for this lot; else for every lot of the step.")
        String lot;
        @Option(names = "--sheet-date", description = "Date of the data sheet that was read.")
        String sheetDate;
        @Option(names = "--sheet-revision", description = "Its revision.")
        String sheetRevision;

        @Override
        protected Reply work(CliServices services, ProjectSession project) {
            Trial trial = trial(project);
            Step target = Find.step(trial, step);
            Session at = session(project) == null ? target.getSession() : session(project);
            LocalDate date = date();
            List<HazardPrompt> prompts = services.registries().prompts(target, trial);
            List<Lot> lots = lot == null ? Acknowledgements.lots(target) : List.of(Find.lot(project.project(), lot));
            project.execute("Acknowledge cautions of " + target.getTitle(), edit -> {
                for (HazardPrompt prompt : prompts) {
                    for (Lot each : lots.isEmpty() ? java.util.Collections.<Lot>singletonList(null) : lots) {
                        Acknowledgements.add(edit, prompt.id(), at, each, target, who, date, sheetRevision, prompt.needsSheet());
                    }
                }
                if (at != null && target.getSession() == null) {
                    edit.set(target, ModelPackage.Literals.STEP__SESSION, at);
                }
            });
            return new Reply(id()).words("trial", trial.getCode()).words("step", target.getTitle()).result("prompts", Value.number(prompts.size(),
                    "1", Reply.OWN_RECORD));
        }

        private LocalDate date() {
            try {
                return sheetDate == null ? null : LocalDate.parse(sheetDate);
            } catch (DateTimeParseException e) {
                throw new UsageException("\"" + sheetDate + "\" is no date: write it like 2026-01-15.");
            }
        }
    }
}
