package org.flexwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.report.photo.CodeReader;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Trials, from idea to conclusion. */
@Command(name = "trial", description = "One try: plan it, weigh, make, measure, conclude, compare.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright trial new --route moulding.cast --title \"first pour\"" },
        subcommands = { TrialNoun.New.class, TrialNoun.Copy.class, TrialNoun.Show.class, StepCalls.StepCall.class, StepCalls.Weigh.class,
                TrialNoun.PartCall.class, TrialNoun.Read.class, HowReadCall.class, LeaveOutCall.class, TrialNoun.StatusCall.class, TrialNoun.Conclude.class, TrialNoun.Attach.class,
                StepCalls.Prompts.class, StepCalls.Acknowledge.class, CompareCall.class, BudgetCall.class, CausesCall.class, PlotsCall.class })
final class TrialNoun extends Noun {

    /** A verb about one trial. */
    abstract static class OneTrial extends ProjectCall {
        @Parameters(paramLabel = "TRIAL", description = "Code of the trial.")
        String code;

        protected final Trial trial(ProjectSession session) {
            return Find.trial(session.project(), code);
        }
    }

    @Command(name = "new", description = "Plan a trial on a route.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial new --route moulding.cast --code T05 --title \"polyurethane, printed mould\"" })
    static final class New extends ProjectCall {
        @Option(names = "--route", required = true, description = "Id of the route or its title; flexwright plugin list names them.")
        String route;
        @Option(names = "--code", description = "Code; the next free one when left out.")
        String code;
        @Option(names = "--title", description = "A few words.")
        String title;
        @Option(names = "--idea", description = "What is changed and what is expected.")
        String idea;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            ProcessKind kind = Find.named("route", services.registries().processKinds(), ProcessKind::id, ProcessKind::title, route);
            Trial[] made = new Trial[1];
            session.execute("New trial", edit -> made[0] = Trials.create(edit, kind, services.registries()::findStepKind, code, title, idea));
            Reply reply = new Reply(id()).words("trial", made[0].getCode()).words("route", kind.id());
            reply.line("Trial " + made[0].getCode() + " on the route " + kind.title() + ":");
            describeSteps(services, made[0], reply);
            kind.estimate(made[0]).forEach(e -> reply.result(e.label(), Value.band(e.value(), e.unit())));
            kind.estimate(made[0]).forEach(e -> reply.line("  " + e.label() + ": about " + Value.band(e.value(), e.unit()).display() + "   [" + e.value()
                    .source().display() + "]"));
            return reply;
        }
    }

    static void describeSteps(CliServices services, Trial trial, Reply reply) {
        int number = 1;
        for (Step step : trial.getSteps()) {
            String unconfirmed = step.isUnconfirmed() ? "  (copied, not confirmed)" : "";
            reply.line(String.format("  %2d  %-10s %-18s %s%s", number, Words.of(step.getState()), step.getKind(), step.getTitle(), unconfirmed));
            StepCalls.describe(services, step, reply);
            number++;
        }
    }

    @Command(name = "copy", description = "Copy a trial's plan. Copied values count as unconfirmed until each step is confirmed.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial copy T05 --title \"5 phr powder\"" })
    static final class Copy extends OneTrial {
        @Option(names = "--code", paramLabel = "NEW", description = "Code of the copy; the next free one when left out.")
        String newCode;
        @Option(names = "--title", description = "A few words.")
        String title;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial from = trial(session);
            Trial[] made = new Trial[1];
            session.execute("Copy " + from.getCode(), edit -> made[0] = Trials.copy(edit, from, newCode, title));
            Reply reply = new Reply(id()).words("trial", made[0].getCode()).words("basedOn", from.getCode());
            reply.line("Trial " + made[0].getCode() + ", a copy of the plan of " + from.getCode() + ":");
            describeSteps(services, made[0], reply);
            return reply;
        }
    }

    @Command(name = "show", description = "Show a trial: steps planned and actual, parts, every reading.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial show T05" })
    static final class Show extends OneTrial {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            Reply reply = new Reply(id()).words("trial", trial.getCode()).words("state", Words.of(trial.getState()));
            reply.line(trial.getCode() + "  " + ProjectNoun.orEmpty(trial.getTitle()) + "  " + Words.of(trial.getState()) + (trial
                    .getStateReason() == null ? "" : ": " + trial.getStateReason()));
            if (trial.getBasedOn() != null) {
                reply.line("based on " + trial.getBasedOn().getCode());
            }
            if (trial.getIdea() != null) {
                reply.line("idea: " + trial.getIdea());
            }
            describeSteps(services, trial, reply);
            Doubts doubts = Doubts.of(session.project(), services.registries().properties());
            for (Part part : trial.getParts()) {
                reply.line("  part " + part.getCode() + "  " + Words.of(part.getPieceKind()) + (part.isFailed() ? "  failed: "
                        + ProjectNoun.orEmpty(part.getFailReason()) : ""));
                part.getMeasurements().forEach(m -> readings(services, part, m, doubts, reply));
            }
            trial.getAttachments().forEach(a -> reply.line("  " + Words.of(a.getKind()) + "  " + a.getPath() + Words.tail(": ", a.getCaption())));
            if (trial.getCost() != null || trial.getHours() != null) {
                reply.line("Spent:" + (trial.getCost() == null ? "" : " " + FieldText.show(FieldDescriptors.of(ModelPackage.Literals.TRIAL__COST), trial
                        .getCost())) + (trial.getHours() == null ? ""
                        : " " + FieldText.digits(trial.getHours()) + " h of work"));
            }
            if (trial.getConclusion() != null) {
                reply.line("Conclusion: " + trial.getConclusion()).words("conclusion", trial.getConclusion());
            }
            return reply;
        }

        private static void readings(CliServices services, Part part, Measurement measurement, Doubts doubts, Reply reply) {
            String property = measurement.getKey().getProperty();
            String values = services.registries().properties().find(property).map(def -> String.join("; ", measurement.getReadings().stream()
                    .map(r -> ReadingPrinter.print(def, r) + (r.getLeftOut() == null ? "" : " (left out: " + r.getLeftOut() + ")")).toList())).orElse(measurement.getReadings().size()
                            + " readings; the plugin of this property is not here");
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("part", part.getCode());
            row.put("property", property);
            row.put("readings", values);
            row.put("inDoubt", doubts.of(measurement.getSession()).map(ControlReading::sentence).orElse(null));
            reply.line("      " + property + "  " + values + Words.tail(", ", conditions(measurement)) + Words.tail("  ", doubts.word(measurement))).item(row);
        }
    }

    private static String conditions(Measurement measurement) {
        PropertyKey key = measurement.getKey();
        return String.join(", ", Stream.of(key.getSpot(), key.getSupport(), key.getDwell() == null ? null : "dwell " + FieldText.digits(key.getDwell()) + " s",
                measurement.getSession() == null ? null : measurement.getSession().getCode()).filter(java.util.Objects::nonNull).toList());
    }

    @Command(name = "part", description = "Add a part or test piece, or say that one failed.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial part T05 --code P1 --thickness 1.5mm --made-at 2026-05-05T09:00" })
    static final class PartCall extends OneTrial {
        @Option(names = "--code", paramLabel = "PART", description = "Code of the part; the next free one when left out.")
        String part;
        @Option(names = "--kind", description = "part, test piece or witness button.")
        String kind;
        @Option(names = "--thickness", description = "Thickness at the spot that is measured.")
        String thickness;
        @Option(names = "--made-at", description = "From when its age counts, e.g. 2026-05-05T09:00.")
        String madeAt;
        @Option(names = "--failed", paramLabel = "WHY", description = "It failed, and why.")
        String failed;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            Part probe = org.flexwright.model.ModelFactory.eINSTANCE.createPart();
            probe.setPieceKind(PieceKind.PART);
            new Inputs().put("pieceKind", kind).put("thickness", thickness).put("madeAt", madeAt).fill(probe, services.clock());
            Part known = trial.getParts().stream().filter(p -> p.getCode().equalsIgnoreCase(part)).findFirst().orElse(null);
            String[] done = new String[1];
            session.execute(known == null ? "Add part" : "Part " + known.getCode() + " failed", edit -> {
                Part target = known != null && failed != null ? known
                        : Trials.addPart(edit, trial, part, probe.getPieceKind(), probe.getThickness(), probe.getMadeAt());
                if (failed != null) {
                    Trials.fail(edit, target, failed);
                }
                done[0] = target.getCode();
            });
            return new Reply(id()).words("trial", trial.getCode()).words("part", done[0]);
        }
    }

    @Command(name = "read", description = "Put readings on a part, every single one.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial read T05 --part P1 --property shore-a --readings \"46;47;46;45;46\" --dwell 3s --spot flange" })
    static final class Read extends OneTrial {
        @Option(names = "--part", required = true, description = "Code of the part.")
        String part;
        @Mixin
        ReadOptions options = new ReadOptions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            Part piece = Find.part(trial, part);
            options.read(services, session.project(), piece);
            session.execute("Read " + options.property().title() + " of " + trial.getCode() + " " + piece.getCode(), edit -> options.add(edit,
                    piece));
            Reply reply = new Reply(id()).words("trial", trial.getCode()).words("part", piece.getCode());
            return options.reply(reply, piece);
        }
    }

    @Command(name = "status", description = "Say where a trial stands; failed and discarded need a reason.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial status T03 discarded --reason \"face stayed tacky\"" })
    static final class StatusCall extends OneTrial {
        @Parameters(index = "1", paramLabel = "STATE", description = "planned, making, made, failed or discarded.")
        String state;
        @Option(names = "--reason", description = "Why.")
        String reason;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            TrialState to = Find.word("state", TrialState.VALUES, state);
            session.execute(trial.getCode() + " is " + Words.of(to), edit -> Trials.status(edit, trial, to, reason));
            return new Reply(id()).words("trial", trial.getCode()).words("state", Words.of(to));
        }
    }

    @Command(name = "conclude", description = "Write down in one sentence what was learned.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright trial conclude T05 \"below the band: stiffen\" --cost 12.50 --hours 3.5" })
    static final class Conclude extends OneTrial {
        @Parameters(index = "1", paramLabel = "SENTENCE", description = "What was learned.")
        String sentence;
        @Option(names = "--cost", description = "What it cost.")
        String cost;
        @Option(names = "--hours", description = "Hours of work.")
        String hours;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            var values = new Inputs().put("cost", cost).put("hours", hours).read(trial, services.clock());
            session.execute("Conclude " + trial.getCode(), edit -> {
                Trials.conclude(edit, trial, sentence);
                values.forEach((feature, value) -> edit.set(trial, feature, value));
            });
            return new Reply(id()).words("trial", trial.getCode()).words("conclusion", trial.getConclusion());
        }
    }

    @Command(name = "attach", description = "Copy a photo, settings file, data sheet or curve into the project. A photo without a trial goes to the trial whose label is in it.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial attach T05 rim.png --kind photo --caption \"rim, scale 10 mm\"",
                    "Example: flexwright trial attach rim.jpg" })
    static final class Attach extends ProjectCall {
        @Parameters(arity = "1..2", paramLabel = "[TRIAL] FILE", description = "Code of the trial and the file; the file alone when it is a photo with a label in it.")
        List<String> names;
        @Option(names = "--kind", description = "photo, settings, data sheet, curve or other.")
        String kind = "photo";
        @Option(names = "--caption", description = "Words under it.")
        String caption;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            AttachmentKind type = Find.word("kind", AttachmentKind.VALUES, kind);
            Trial named = names.size() == 2 ? Find.trial(session.project(), names.get(0)) : null;
            String file = names.get(names.size() - 1);
            Path from = services.workingFolder().resolve(file);
            if (!Files.isReadable(from) || !Files.isRegularFile(from)) {
                throw new CliException("The file " + file + " cannot be read: it is not there, is no file, or may not be read.", null);
            }
            Trial trial = named == null ? shown(from, type, session) : named;
            Attachment copied = Attachments.copyIn(session, from, type, caption, trial);
            Reply reply = new Reply(id()).words("trial", trial.getCode()).words("copied to", copied.getPath()).words("sha256", copied.getSha256());
            return named == null ? reply.words("found by", "label in the photo") : reply;
        }

        private static Trial shown(Path photo, AttachmentKind type, ProjectSession session) {
            if (type != AttachmentKind.PHOTO) {
                throw new UsageException("Say which trial the file belongs to: only a photo can show a label.");
            }
            CodeReader.Proposal proposal = CodeReader.propose(photo, session.project());
            return proposal.trial().orElseThrow(() -> new UsageException(proposal.refusal()));
        }
    }
}
