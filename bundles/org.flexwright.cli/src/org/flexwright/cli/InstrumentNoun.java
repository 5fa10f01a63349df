package org.flexwright.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Instruments;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gauges and balances: what they show, how well, and when they were checked. */
@Command(name = "instrument", description = "Gauges and balances: what they show, how well, and when they were checked.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright instrument add --name \"bench durometer\" --kind durometer --unit \"Shore A\" --resolution 0.5 --accuracy 1" },
        subcommands = { InstrumentNoun.Add.class, InstrumentNoun.Change.class, InstrumentNoun.Check.class, InstrumentNoun.Show.class })
final class InstrumentNoun extends Noun {

    /** What can be said of a gauge. */
    static final class Facts {
        /** Rules look for some of these words, so others would pass them by unnoticed. */
        private static final List<String> KINDS = List.of("durometer", "balance", "force gauge", "calliper", "micrometer", "stopwatch", "camera",
                "thermometer", "other");

        @Option(names = "--kind", description = "durometer, balance, force gauge, calliper, micrometer, stopwatch, camera, thermometer or other.")
        String kind;
        @Option(names = "--unit", description = "Unit of resolution, accuracy and spread.")
        String unit;
        @Option(names = "--scale", description = "Which scale it reads, e.g. Shore A.")
        String scale;
        @Option(names = "--resolution", description = "One step of the display.")
        String resolution;
        @Option(names = "--accuracy", description = "Half width given by its maker or check.")
        String accuracy;
        @Option(names = "--spread", description = "Standard deviation of single readings on one piece, if it is known.")
        String spread;
        @Option(names = "--spread-from", description = "Where the spread comes from: a gauge study, a certificate, experience.")
        String spreadFrom;
        @Option(names = "--check-every", description = "How long a check holds, e.g. 365d.")
        String every;

        Inputs inputs() {
            return new Inputs().put("kind", kind == null ? null : Find.one("kind of instrument", KINDS, k -> k, kind)).put("scale", scale).put("resolution", resolution)
                    .put("accuracy", accuracy).put("spread", spread).put("spreadFrom", spreadFrom).put("checkEveryDays", every);
        }
    }

    @Command(name = "add", description = "Add an instrument.", mixinStandardHelpOptions = true, footer = { "",
            "Example: flexwright instrument add --name \"bench durometer\" --kind durometer --unit \"Shore A\" --resolution 0.5 --accuracy 1 --check-every 365d" })
    static final class Add extends ProjectCall {
        @Option(names = "--name", required = true, description = "What you call it.")
        String name;
        @Mixin
        Facts facts = new Facts();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Project project = session.project();
            StockNouns.refuseTwice("instrument", project.getInstruments(), Instrument::getName, name);
            Instrument instrument = ModelFactory.eINSTANCE.createInstrument();
            facts.inputs().put("name", name).fill(instrument, services.clock());
            instrument.setUnit(facts.unit);
            session.execute("Add instrument " + name, edit -> edit.add(project, ModelPackage.Literals.PROJECT__INSTRUMENTS, instrument));
            return new Reply(id()).words("instrument", name);
        }
    }

    @Command(name = "change", description = "Say more of an instrument.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright instrument change \"bench durometer\" --spread 0.6 --spread-from \"30 readings on K1\" --check-every 365d" })
    static final class Change extends ProjectCall {
        @Parameters(paramLabel = "NAME", description = "What you call it.")
        String name;
        @Mixin
        Facts facts = new Facts();

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Instrument instrument = Find.instrument(session.project(), name);
            Inputs inputs = facts.inputs();
            if (inputs.isEmpty() && facts.unit == null) {
                throw new UsageException("Say what to change: --spread, --check-every, or another of the options.");
            }
            var values = inputs.read(instrument, services.clock());
            session.execute("Change instrument " + instrument.getName(), edit -> {
                values.forEach((feature, value) -> edit.set(instrument, feature, value));
                if (facts.unit != null) {
                    edit.set(instrument, ModelPackage.Literals.INSTRUMENT__UNIT, facts.unit);
                }
            });
            return Show.of(services, new Reply(id()), List.of(instrument));
        }
    }

    @Command(name = "check", description = "Note that an instrument was checked against something known.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright instrument check \"bench durometer\" --on 2026-05-04 --note \"test block 60 read 60.5\"" })
    static final class Check extends ProjectCall {
        @Parameters(paramLabel = "NAME", description = "What you call it.")
        String name;
        @Option(names = "--on", description = "Day of the check; today when left out.")
        String on;
        @Option(names = "--note", description = "Against what it was checked and what it read.")
        String note;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Instrument instrument = Find.instrument(session.project(), name);
            Instrument probe = ModelFactory.eINSTANCE.createInstrument();
            new Inputs().put("checkedOn", on).fill(probe, services.clock());
            LocalDate day = probe.getCheckedOn() == null ? Instruments.day(services.clock().instant()) : probe.getCheckedOn();
            session.execute("Check of " + instrument.getName(), edit -> Instruments.check(edit, instrument, day, note));
            return Show.of(services, new Reply(id()), List.of(instrument));
        }
    }

    @Command(name = "show", aliases = "list", description = "Show instruments, and which check is overdue.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright instrument show" })
    static final class Show extends ProjectCall {
        @Parameters(arity = "0..1", paramLabel = "NAME", description = "What you call it; all when left out.")
        String name;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            List<Instrument> shown = name == null ? session.project().getInstruments() : List.of(Find.instrument(session.project(), name));
            return of(services, new Reply(id()), shown);
        }

        static Reply of(CliServices services, Reply reply, List<Instrument> instruments) {
            if (instruments.isEmpty()) {
                reply.line("No instrument is in the project yet.");
            }
            LocalDate today = Instruments.day(services.clock().instant());
            instruments.forEach(instrument -> one(reply, instrument, today));
            return reply;
        }

        private static void one(Reply reply, Instrument instrument, LocalDate today) {
            List<String> words = new ArrayList<>();
            words.add(Objects.toString(instrument.getKind(), ""));
            words.add(Objects.toString(instrument.getScale(), ""));
            words.add(amount("step ", instrument, instrument.getResolution()));
            words.add(amount("accuracy ± ", instrument, instrument.getAccuracy()));
            words.add(amount("own spread ", instrument, instrument.getSpread()) + (instrument.getSpread() == null ? "" : " (standard deviation, " + Objects.toString(
                    instrument.getSpreadFrom(), "where from is not said") + ")"));
            words.add(check(instrument, today));
            reply.line(instrument.getName() + ": " + String.join(", ", words.stream().filter(w -> !w.isBlank()).toList()));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("instrument", instrument.getName());
            row.put("unit", instrument.getUnit());
            row.put("resolution", instrument.getResolution());
            row.put("accuracy", instrument.getAccuracy());
            row.put("spread", instrument.getSpread());
            row.put("spreadFrom", instrument.getSpreadFrom());
            row.put("checkedOn", Objects.toString(instrument.getCheckedOn(), null));
            row.put("due", Instruments.due(instrument).map(LocalDate::toString).orElse(null));
            row.put("overdue", Instruments.overdue(instrument, today));
            reply.item(row);
        }

        private static String amount(String before, Instrument instrument, Double value) {
            return value == null ? "" : before + FieldText.digits(value) + Words.tail(" ", instrument.getUnit());
        }

        private static String check(Instrument instrument, LocalDate today) {
            String last = instrument.getCheckedOn() == null ? "no check noted" : "checked on " + instrument.getCheckedOn() + Words.tail(" (", instrument.getCheckNote())
                    + (instrument.getCheckNote() == null || instrument.getCheckNote().isBlank() ? "" : ")");
            return last + (Instruments.overdue(instrument, today) ? ", ▲ check overdue" + Instruments.due(instrument).map(d -> " since " + d).orElse("")
                    : Instruments.due(instrument).map(d -> ", holds until " + d).orElse(""));
        }
    }
}
