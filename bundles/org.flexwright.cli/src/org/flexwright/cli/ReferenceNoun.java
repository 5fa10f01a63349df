package org.flexwright.cli;

import java.util.List;
import java.util.Map;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.ReferencePart;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The part to re-create. */
@Command(name = "reference", description = "The part to re-create: its condition and what is known of it.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright reference add --name \"last good dome\" --condition \"no cracks, crown shiny\" --age 12a" },
        subcommands = { ReferenceNoun.Add.class, ReferenceNoun.Read.class, ReferenceNoun.Show.class })
final class ReferenceNoun extends Noun {

    @Command(name = "add", description = "Describe a reference part.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright reference add --name \"last good dome\" --condition \"no cracks, crown shiny\" --age 12a" })
    static final class Add extends ProjectCall {
        @Option(names = "--name", required = true, description = "What you call it.")
        String name;
        @Option(names = "--condition", description = "Worn, swollen, hardened: in your words.")
        String condition;
        @Option(names = "--age", description = "Its age, e.g. \"12 years\" or 12a.")
        String age;
        @Option(names = "--thickness", description = "Thickness at the spot that is measured, e.g. 1.45mm.")
        String thickness;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            StockNouns.refuseTwice("reference part", session.project().getReferenceParts(), ReferencePart::getName, name);
            ReferencePart part = ModelFactory.eINSTANCE.createReferencePart();
            part.setPieceKind(PieceKind.PART);
            new Inputs().put("name", name).put("code", name).put("condition", condition).put("ageYears", age).put("thickness", thickness).fill(part,
                    services.clock());
            session.execute("Add reference part", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__REFERENCE_PARTS, part));
            return new Reply(id()).words("reference", name);
        }
    }

    static ReferencePart find(ProjectSession session, String name) {
        var all = session.project().getReferenceParts();
        if (name == null && all.size() == 1) {
            return all.get(0);
        }
        if (name == null) {
            throw new UsageException(all.isEmpty() ? "There is no reference part yet: flexwright reference add makes one."
                    : "There is more than one reference part: say which with --name.");
        }
        return Find.one("reference part", all, ReferencePart::getName, name);
    }

    @Command(name = "read", description = "Put readings on the reference part; say whether they are measured or estimated.",
            mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright reference read --property peak-force --readings \"0.80N\" --known measured" })
    static final class Read extends ProjectCall {
        @Option(names = "--name", description = "Which reference part, when there is more than one.")
        String name;
        @Option(names = "--known", description = "measured or estimated.")
        String known = "measured";
        @Mixin
        ReadOptions options = new ReadOptions();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            ReferencePart part = find(session, name);
            Knowledge knowledge = Find.word("kind of knowledge", List.of(Knowledge.MEASURED, Knowledge.ESTIMATED), known);
            options.read(services, session.project(), part);
            session.execute("Read " + options.property().title() + " of the reference part", edit -> {
                Measurement measurement = options.add(edit, part);
                edit.set(measurement, ModelPackage.Literals.MEASUREMENT__KNOWLEDGE, knowledge);
            });
            Reply reply = new Reply(id()).words("reference", part.getName());
            return options.reply(reply, part);
        }
    }

    @Command(name = "show", description = "Show what is known of the reference part.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright reference show" })
    static final class Show extends ProjectCall {
        @Option(names = "--name", description = "Only this one.")
        String name;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            if (name != null || session.project().getReferenceParts().isEmpty()) {
                show(services, find(session, name), reply);
            } else {
                session.project().getReferenceParts().forEach(part -> show(services, part, reply));
            }
            return reply;
        }

        private static void show(CliServices services, ReferencePart part, Reply reply) {
            reply.words("reference", part.getName());
            reply.line(part.getName() + Words.tail(": ", part.getCondition()) + (part.getAgeYears() == null ? "" : ", " + FieldText.digits(part.getAgeYears())
                    + " years old"));
            for (Measurement measurement : part.getMeasurements()) {
                String property = measurement.getKey().getProperty();
                String values = services.registries().properties().find(property).map(def -> String.join("; ", measurement.getReadings().stream()
                        .map(r -> ReadingPrinter.print(def, r)).toList())).orElse(measurement.getReadings().size() + " readings");
                reply.line("  " + property + "  " + values + "  " + Words.of(measurement.getKnowledge()));
                reply.words(property, values);
                reply.item(Map.of("reference", part.getName(), "property", property, "readings", values, "known", Words.of(measurement.getKnowledge())));
            }
        }
    }
}
