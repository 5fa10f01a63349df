package org.flexwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.KeptVersion;
import org.flexwright.core.exchange.Difference;
import org.flexwright.core.exchange.Differences;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.StoreException;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.model.Importance;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.model.Project;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The project as a whole. */
@Command(name = "project", description = "A project as a whole: new, show, check, override, restore.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright project show --project dome.flexwright" },
        subcommands = { ProjectNoun.New.class, ProjectNoun.Show.class, ProjectNoun.Check.class, ProjectNoun.GoAgainst.class,
                ProjectNoun.Restore.class })
final class ProjectNoun extends Noun {

    @Command(name = "new", description = "Make a new project folder.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright project new dome.flexwright --title \"Tactile dome\" --need \"clicks clearly\"" })
    static final class New extends Call {
        @Parameters(paramLabel = "FOLDER", description = "Folder to make; its name ends in .flexwright.")
        Path folder;
        @Option(names = "--title", required = true, description = "What is being made.")
        String title;
        @Option(names = "--job", description = "The job in your words.")
        String job;
        @Option(names = "--need", description = "Something it must do; repeat for more.")
        List<String> must = List.of();
        @Option(names = "--nice", description = "Something that would be nice; repeat for more.")
        List<String> nice = List.of();

        @Override
        protected Reply reply(CliServices services) {
            ProjectStore store = services.store();
            try (ProjectSession session = store.create(services.workingFolder().resolve(folder), title)) {
                session.execute("Describe the job", edit -> {
                    edit.set(edit.project(), ModelPackage.Literals.PROJECT__JOB, job);
                    must.forEach(text -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__NEEDS, need(text, Importance.MUST)));
                    nice.forEach(text -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__NEEDS, need(text, Importance.NICE)));
                });
                session.save();
                return new Reply(id()).words("folder", session.folder().getFileName().toString()).words("title", title);
            }
        }
    }

    static Need need(String text, Importance importance) {
        if (text.isBlank()) {
            throw new UsageException("A need cannot be empty: say what the part must do.");
        }
        Need need = ModelFactory.eINSTANCE.createNeed();
        need.setText(text);
        need.setImportance(importance);
        return need;
    }

    @Command(name = "show", description = "Show what the project holds.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright project show --project dome.flexwright --json" })
    static final class Show extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Project project = session.project();
            Reply reply = new Reply(id());
            reply.line(project.getTitle() + (project.isInvented() ? "   (invented demonstration data)" : ""));
            if (project.getJob() != null) {
                reply.line(project.getJob());
            }
            reply.words("title", String.valueOf(project.getTitle()));
            project.getNeeds().forEach(n -> reply.line("  " + (n.getImportance() == Importance.MUST ? "must  " : "nice  ") + n.getText()));
            project.getReferenceParts().forEach(r -> reply.line("  reference part  " + r.getName()));
            for (TargetSheet sheet : project.getTargetSheets()) {
                reply.line("  target sheet v" + sheet.getVersion() + (sheet.getFrozenAt() == null ? " (open)" : " (frozen)") + ": " + Words.count(sheet
                        .getTargets().size(), "target"));
            }
            project.getGrades().forEach(grade -> material(grade, reply));
            project.getInstruments().forEach(i -> reply.line("  instrument  " + i.getName() + Words.tail(", ", i.getKind()) + (i.getResolution() == null ? ""
                    : ", steps of " + FieldText.digits(i.getResolution()) + Words.tail(" ", i.getUnit()))));
            project.getControlPieces().forEach(c -> reply.line("  control piece  " + c.getCode()));
            project.getSessions().forEach(s -> reply.line("  session  " + s.getCode() + "  " + Words.moment(s.getAt()) + (s.getRoomC() == null ? "" : ", "
                    + FieldText.digits(s.getRoomC()) + " °C") + (s.getRoomRh() == null ? "" : ", " + FieldText.digits(s.getRoomRh()) + " %RH")));
            for (Trial trial : project.getTrials()) {
                reply.line("  trial  " + trial.getCode() + "  " + Words.of(trial.getState()) + "  " + orEmpty(trial.getTitle()) + Words.tail("   -> ", trial
                        .getConclusion()));
                reply.item(Map.of("trial", trial.getCode(), "state", Words.of(trial.getState()), "title", orEmpty(trial.getTitle()), "conclusion",
                        orEmpty(trial.getConclusion())));
            }
            project.getRecipes().forEach(r -> reply.line("  recipe  " + r.getCode() + " v" + r.getVersion()));
            reply.result("needs", Value.number(project.getNeeds().size(), "1", Reply.OWN_RECORD));
            reply.result("trials", Value.number(project.getTrials().size(), "1", Reply.OWN_RECORD));
            reply.result("sessions", Value.number(project.getSessions().size(), "1", Reply.OWN_RECORD));
            session.missingPlugins().forEach(m -> reply.line("  missing plugin: " + m.plugin() + " " + m.version() + " (" + m.nsURI() + ")"));
            return reply;
        }
    }

    private static void material(MaterialGrade grade, Reply reply) {
        reply.line("  material  " + grade.getCode() + "  " + Words.of(grade.getRole()) + Words.tail(", ", grade.getName()) + Words.tail(", family ", grade
                .getFamily()));
        grade.getLots().forEach(lot -> reply.line("      lot  " + lot.getCode() + (lot.getOpened() == null ? "" : ", opened " + lot.getOpened()) + (lot
                .getExpires() == null ? "" : ", expires " + lot.getExpires())));
    }

    static String orEmpty(String text) {
        return text == null ? "" : text;
    }

    @Command(name = "check", description = "Say everything the rules find. Status 1 when a stop finding stands without a reason.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright project check --project dome.flexwright" })
    static final class Check extends ProjectCall {
        @Option(names = "--trial", description = "Only this trial.")
        String trial;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Project project = session.project();
            Trial only = trial == null ? null : Find.trial(project, trial);
            FindingService service = services.registries().findings();
            Reply reply = new Reply(id());
            int count = 0;
            for (Finding finding : service.check(project, services.clock().instant())) {
                EObject subject = session.find(finding.subject()).orElse(null);
                if (only == null || inside(subject, only)) {
                    reply.finding(finding, Names.path(subject), FindingService.overridden(finding, project).isPresent());
                    count++;
                }
            }
            reply.result("findings", Value.number(count, "1", "the plugins' rules"));
            reply.line(count == 0 ? "Nothing found by the rules that are here." : Words.count(count, "finding") + ":");
            services.registries().failures().forEach(f -> reply.notice(f.what() + ": " + f.why()));
            return reply;
        }

        private static boolean inside(EObject subject, Trial trial) {
            for (EObject o = subject; o != null; o = o.eContainer()) {
                if (o == trial) {
                    return true;
                }
            }
            return false;
        }
    }

    @Command(name = "override", description = "Go against a stop finding, with a reason. It lapses when the values it rests on change.",
            mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright project override --rule moulding.cure-poison --trial T03 --reason \"cup test cured\"" })
    static final class GoAgainst extends ProjectCall {
        @Option(names = "--rule", required = true, description = "Id of the rule, as flexwright project check names it.")
        String rule;
        @Option(names = "--trial", required = true, description = "Trial it speaks of.")
        String trial;
        @Option(names = "--reason", required = true, description = "Why, in a sentence.")
        String reason;
        @Option(names = "--who", description = "Who decides.")
        String who;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial about = Find.trial(session.project(), trial);
            if (reason.isBlank()) {
                throw new UsageException("A reason is needed: say in a sentence why you go against the finding.");
            }
            FindingService service = services.registries().findings();
            List<Finding> found = service.check(session.project(), services.clock().instant()).stream().filter(f -> f.rule().equals(rule)
                    && Check.inside(session.find(f.subject()).orElse(null), about)).toList();
            if (found.isEmpty()) {
                Find.one("rule", services.registries().rules(), FindingRule::id, rule);
                throw new UsageException("The rule " + rule + " says nothing about " + about.getCode()
                        + "; flexwright project check lists what stands.");
            }
            session.execute("Go against " + rule, edit -> found.forEach(f -> FindingService.override(edit, f, reason, who == null ? services.who()
                    : who)));
            return new Reply(id()).input("rule", rule).input("trial", about.getCode()).words("reason", reason).result("findings", Value.number(found.size(),
                    "1", Reply.OWN_RECORD));
        }
    }

    /** How many differences stand beside a kept state. */
    private static final int DIFFERENCES = 3;

    /** The kept states, newest first, each with what was changed after it. */
    private static void listed(ProjectStore store, Path folder, List<KeptVersion> kept, Reply reply) {
        if (kept.isEmpty()) {
            return;
        }
        try (ProjectSession now = store.openReadOnly(folder)) {
            Project later = now.project();
            for (KeptVersion k : kept) {
                String changed;
                List<Difference> differences = List.of();
                try {
                    Project then = store.kept(k);
                    differences = Differences.between(then, now.unknown(), later, now.unknown());
                    later = then;
                    changed = differences.isEmpty() ? "nothing" : Words.count(differences.size(), "change");
                } catch (StoreException damaged) {
                    changed = "not known: " + damaged.getMessage();
                }
                reply.line(String.format("%4d  put aside %s  %d bytes; changed after it: %s", k.number(), Words.moment(k.at()), k.bytes(), changed));
                differences.stream().limit(DIFFERENCES).forEach(d -> reply.line("          " + d.text()));
                if (differences.size() > DIFFERENCES) {
                    reply.line("          ... and " + (differences.size() - DIFFERENCES) + " more");
                }
                reply.item(Map.of("state", k.number(), "at", k.at().toString(), "bytes", k.bytes(), "changedAfter", differences.stream().map(Difference::text)
                        .toList()));
            }
        } catch (StoreException unreadable) {
            // the present state is what cannot be read: that is when a person needs the list most
            kept.forEach(k -> reply.line(String.format("%4d  put aside %s  %d bytes", k.number(), Words.moment(k.at()), k.bytes())).item(Map.of("state", k.number(),
                    "at", k.at().toString(), "bytes", k.bytes())));
            reply.notice(unreadable.getMessage());
        }
    }

    @Command(name = "restore", description = "List earlier saved states, or bring one back. The present state is kept first.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright project restore --project dome.flexwright --state 3" })
    static final class Restore extends Call {
        @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
        Path project;
        @Option(names = "--state", description = "Number of the state to bring back; without it they are listed.")
        Integer state;

        @Override
        protected Reply reply(CliServices services) {
            ProjectStore store = services.store();
            Path folder = ProjectCall.folder(services, project);
            List<KeptVersion> kept = store.kept(folder);
            Reply reply = new Reply(id());
            if (state == null) {
                listed(store, folder, kept, reply);
                if (kept.isEmpty()) {
                    reply.line("There is no earlier state yet: one is kept at every save.");
                }
                return reply;
            }
            KeptVersion chosen = kept.stream().filter(k -> k.number() == state).findFirst().orElseThrow(() -> new UsageException(
                    "There is no state " + state + (kept.isEmpty() ? " yet: one is kept at every save." : "; there are " + String.join(", ", kept.stream().map(k -> String.valueOf(k.number()))
                            .toList()) + ".")));
            store.restore(folder, chosen);
            return reply.input("state", state).words("restored", "state " + state + " of " + Words.moment(chosen.at()));
        }
    }
}
