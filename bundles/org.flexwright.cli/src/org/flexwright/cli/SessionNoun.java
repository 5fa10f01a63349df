package org.flexwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Times at the bench. */
@Command(name = "session", description = "Times at the bench: room, person, gauges, control piece, and what was read.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright session add --code S1 --room 23degC --humidity 45 --conditioned 2h --control K1" },
        subcommands = { SessionNoun.Add.class, SessionNoun.Change.class, SessionRead.class, SessionNoun.Show.class })
final class SessionNoun extends Noun {

    /** What can be said of a session. */
    static final class Facts {
        @Option(names = "--at", description = "When; now when left out.")
        String at;
        @Option(names = "--room", description = "Room temperature, e.g. 23degC.")
        String room;
        @Option(names = "--humidity", description = "Room humidity, e.g. 45%%RH.")
        String humidity;
        @Option(names = "--bench", description = "Which room or bench.")
        String bench;
        @Option(names = "--conditioned", description = "How long the pieces lay in this room before the first reading, e.g. 2h.")
        String conditioned;
        @Option(names = "--who", description = "Who is at the bench.")
        String who;
        @Option(names = "--instrument", description = "Instrument used; repeat for more.")
        List<String> instruments = List.of();
        @Option(names = "--control", description = "Code of the control piece that is read at its start.")
        String control;

        Inputs inputs() {
            return new Inputs().put("at", at).put("roomC", room).put("roomRh", humidity).put("room", bench).put("conditioningHours", conditioned).put("who", who);
        }
    }

    @Command(name = "add", description = "Add a session: room, person, instruments, control piece.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright session add --code S1 --room 23degC --humidity 45 --conditioned 2h --who Kim --instrument \"bench durometer\" --control K1" })
    static final class Add extends ProjectCall {
        @Option(names = "--code", description = "Short code; the next free one when left out.")
        String code;
        @Mixin
        Facts facts = new Facts();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Project project = session.project();
            Session added = ModelFactory.eINSTANCE.createSession();
            added.setAt(services.clock().instant());
            added.setWho(services.who());
            facts.inputs().put("code", code).fill(added, services.clock());
            added.setControlPiece(facts.control == null ? null : Find.controlPiece(project, facts.control));
            facts.instruments.forEach(name -> added.getInstruments().add(Find.instrument(project, name)));
            session.execute("Add session" + Words.tail(" ", code), edit -> BenchSessions.add(edit, added));
            return new Reply(id()).words("session", added.getCode());
        }
    }

    @Command(name = "change", description = "Say more of a session.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright session change S1 --conditioned 2h --control K1" })
    static final class Change extends ProjectCall {
        @Parameters(paramLabel = "SESSION", description = "Code of the session.")
        String code;
        @Mixin
        Facts facts = new Facts();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Project project = session.project();
            Session of = Find.session(project, code);
            Inputs inputs = facts.inputs();
            if (inputs.isEmpty() && facts.control == null && facts.instruments.isEmpty()) {
                throw new UsageException("Say what to change: --conditioned, --control, or another of the options.");
            }
            var values = inputs.read(of, services.clock());
            var gauges = facts.instruments.stream().map(name -> Find.instrument(project, name)).toList();
            var control = facts.control == null ? null : Find.controlPiece(project, facts.control);
            session.execute("Change session " + of.getCode(), edit -> {
                values.forEach((feature, value) -> edit.set(of, feature, value));
                if (control != null) {
                    edit.set(of, ModelPackage.Literals.SESSION__CONTROL_PIECE, control);
                }
                if (!gauges.isEmpty()) {
                    edit.set(of, ModelPackage.Literals.SESSION__INSTRUMENTS, gauges);
                }
            });
            return Show.one(services, session, new Reply(id()), of);
        }
    }

    @Command(name = "show", aliases = "list", description = "Show sessions; of one of them all that was read, how its control piece read, and what the rules say.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright session show S1" })
    static final class Show extends ProjectCall {
        @Parameters(arity = "0..1", paramLabel = "SESSION", description = "Code of the session; all in short when left out.")
        String code;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            if (code != null) {
                return one(services, session, reply, Find.session(session.project(), code));
            }
            if (session.project().getSessions().isEmpty()) {
                reply.line("No session is in the project yet.");
            }
            for (Session each : session.project().getSessions()) {
                int count = BenchSessions.measurements(session.project(), each).stream().mapToInt(m -> m.getReadings().size()).sum();
                boolean off = ControlReading.all(each, services.registries().properties()).stream().anyMatch(ControlReading::off);
                reply.line(head(each) + ", " + Words.count(count, "reading") + (off ? ", " + Doubts.word() : ""));
                Map<String, Object> row = facts(each);
                row.put("readings", count);
                row.put("controlOff", off);
                reply.item(row);
            }
            return reply;
        }

        static Reply one(CliServices services, ProjectSession session, Reply reply, Session of) {
            Project project = session.project();
            reply.words("session", Objects.toString(of.getCode(), ""));
            reply.line(head(of));
            if (!of.getInstruments().isEmpty()) {
                reply.line("  gauges: " + String.join(", ", of.getInstruments().stream().map(Names::of).toList()));
            }
            List<ControlReading> controls = ControlReading.all(of, services.registries().properties());
            controls.forEach(c -> reply.line("  " + (c.off() ? Doubts.word() + "  " : "") + c.property().title() + ": " + c.sentence() + "   ["
                    + c.source().display() + "]"));
            if (controls.isEmpty()) {
                reply.line("  " + (of.getControlPiece() == null ? "no control piece" : "control piece " + of.getControlPiece().getCode()
                        + ": not read yet in this session, or nothing to compare with"));
            }
            Map<String, Object> facts = facts(of);
            facts.put("controls", controls.stream().map(Show::control).toList());
            reply.item(facts);
            for (Measurement m : BenchSessions.measurements(project, of)) {
                read(services, m, reply);
            }
            services.registries().findings().check(project, services.clock().instant()).stream().filter(f -> f.subject().equals(of.getId()))
                    .forEach(f -> reply.finding(f, "Session " + Objects.toString(of.getCode(), ""), FindingService.overridden(f, project).isPresent()));
            return reply;
        }

        private static void read(CliServices services, Measurement m, Reply reply) {
            String id = m.getKey() == null ? "" : Objects.toString(m.getKey().getProperty(), "");
            PropertyDef def = services.registries().findProperty(id).orElse(null);
            String values = def == null ? Words.count(m.getReadings().size(), "reading") + "; the plugin of this property is not here" : String.join("; ", m.getReadings().stream()
                    .map(r -> ReadingPrinter.print(def, r) + (r.getLeftOut() == null ? "" : " (left out: " + r.getLeftOut() + ")")).toList());
            String piece = m.eContainer() instanceof Specimen s ? Names.path(s) : "";
            reply.line("  " + piece + "  " + (def == null ? id : def.title()) + "  " + values);
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("piece", piece);
            row.put("property", id);
            row.put("readings", values);
            reply.item(row);
        }

        private static Map<String, Object> control(ControlReading control) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("property", control.property().id());
            row.put("median", control.median());
            row.put("usual", control.before());
            row.put("difference", control.difference());
            row.put("limit", Double.isNaN(control.limit()) ? null : control.limit());
            row.put("limitFrom", control.basis().name().toLowerCase(java.util.Locale.ROOT));
            row.put("off", control.off());
            return row;
        }

        private static Map<String, Object> facts(Session session) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("session", session.getCode());
            row.put("at", Objects.toString(session.getAt(), null));
            row.put("who", session.getWho());
            row.put("roomC", session.getRoomC());
            row.put("roomRh", session.getRoomRh());
            row.put("conditioningHours", session.getConditioningHours());
            row.put("control", session.getControlPiece() == null ? null : session.getControlPiece().getCode());
            return row;
        }

        private static String head(Session session) {
            List<String> words = new ArrayList<>();
            words.add(Objects.toString(session.getCode(), "(no code)"));
            words.add(Words.moment(session.getAt()));
            words.add(Objects.toString(session.getWho(), ""));
            words.add(Objects.toString(session.getRoom(), ""));
            words.add(said(ModelPackage.Literals.SESSION__ROOM_C, session.getRoomC()));
            words.add(said(ModelPackage.Literals.SESSION__ROOM_RH, session.getRoomRh()));
            words.add(session.getConditioningHours() == null ? "" : "pieces conditioned for " + said(ModelPackage.Literals.SESSION__CONDITIONING_HOURS, session
                    .getConditioningHours()));
            return String.join(", ", words.stream().filter(w -> !w.isBlank()).toList());
        }

        private static String said(EAttribute feature, Double value) {
            return value == null ? "" : FieldText.show(FieldDescriptors.of(feature), value);
        }
    }
}
