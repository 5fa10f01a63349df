package org.flexwright.cli;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.flexwright.core.bench.Bench;
import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.bench.BenchCup;
import org.flexwright.core.bench.BenchFigure;
import org.flexwright.core.bench.BenchMark;
import org.flexwright.core.bench.BenchPlace;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The bench view by commands: one step at a time, with the clock since first contact. */
@Command(name = "bench", description = "A trial at the bench: one step at a time, the clock since A and B met, what may be done now.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright bench show T07" },
        subcommands = { BenchNoun.Show.class, BenchNoun.Tap.class, BenchNoun.Cups.class, BenchNoun.Sort.class })
final class BenchNoun extends Noun {

    @Command(name = "show", description = "Show the step to do now, its figures, what may be tapped, the clock and its marks.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright bench show T07", "         flexwright bench show T07 --at 1/use/0" })
    static final class Show extends TrialNoun.OneTrial {
        @Option(names = "--at", paramLabel = "SCREEN", description = "Another screen than the one to do now; --json lists them.")
        String at;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            return screen(new Reply(id()), new Bench(services.registries()).view(trial(session), services.clock().instant(), at));
        }
    }

    @Command(name = "tap", description = "Do what the bench view offers; bench show lists it.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright bench tap T07 weigh 22.9g", "         flexwright bench tap T07 dump \"Thickened too far\"" })
    static final class Tap extends TrialNoun.OneTrial {
        @Parameters(index = "1", paramLabel = "TAP", description = "Key of the tap: start, weigh, field/minutes, go, odd ...")
        String key;
        @Parameters(index = "2", arity = "0..1", paramLabel = "GIVEN", description = "Number, choice, reason or words, where the tap asks for it.")
        String given;
        @Option(names = "--at", paramLabel = "SCREEN", description = "The screen it is offered on; else the one to do now.")
        String at;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Bench bench = new Bench(services.registries());
            Trial trial = trial(session);
            Instant now = services.clock().instant();
            if (key.equals("undo")) {
                throw new UsageException("Each command saves what it did; flexwright project restore brings an earlier state back.");
            }
            BenchTaps.tap(session, bench, trial, now, at, key, given);
            return screen(new Reply(id()).input("tap", key).input("given", given), bench.view(trial, now));
        }
    }

    @Command(name = "cups", description = "Show the cups whose clocks run, the most urgent first.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright bench cups" })
    static final class Cups extends ProjectCall {
        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            List<BenchCup> cups = new Bench(services.registries()).cups(session.project(), services.clock().instant());
            if (cups.isEmpty()) {
                reply.line("No trial is being made.");
            }
            for (BenchCup cup : cups) {
                BenchMark due = cup.nextDue();
                reply.line(cup.clock().text() + "   " + cup.cup() + "   " + cup.doing() + (due == null ? "" : "   " + mark(due)));
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("trial", cup.trial().getCode());
                row.put("cup", cup.cup());
                clock(cup.clock(), row);
                row.put("doing", cup.doing());
                row.put("due", due == null ? null : row(due));
                reply.item(row);
            }
            return reply;
        }
    }

    @Command(name = "sort", description = "Say later what a note of the bench was; without words, list those that wait.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright bench sort T07 1 \"a hair in the cup\"" })
    static final class Sort extends TrialNoun.OneTrial {
        @Parameters(index = "1", arity = "0..1", paramLabel = "NUMBER", description = "Number of the waiting note, from 1.")
        Integer number;
        @Parameters(index = "2", arity = "0..1", paramLabel = "WORDS", description = "What it was.")
        String words;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Trial trial = trial(session);
            List<BenchNote> waiting = trial.getNotes().stream().filter(n -> n.getSortedAt() == null).toList();
            if (number != null) {
                if (number < 1 || number > waiting.size()) {
                    throw new UsageException(trial.getCode() + " has " + waiting.size() + " notes that wait; " + number + " is none of them.");
                }
                session.execute("Sort out a note of " + trial.getCode(), edit -> BenchTaps.sort(edit, waiting.get(number - 1), words));
            }
            Reply reply = new Reply(id()).words("trial", trial.getCode());
            List<BenchNote> left = trial.getNotes().stream().filter(n -> n.getSortedAt() == null).toList();
            reply.line(left.isEmpty() ? "No note waits." : "Notes that wait:");
            int place = 1;
            for (BenchNote note : left) {
                String text = note.getNote() == null ? note.getKind().getLiteral() : note.getNote();
                reply.line("  " + place + "  " + note.getAt() + "  " + text);
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("number", place++);
                row.put("kind", note.getKind().getLiteral());
                row.put("at", String.valueOf(note.getAt()));
                row.put("words", note.getNote());
                reply.item(row);
            }
            return reply;
        }
    }

    private static Reply screen(Reply reply, BenchScreen screen) {
        reply.words("trial", screen.trial()).words("cup", screen.cup()).words("screen", screen.place().key()).words("title", screen.title())
                .words("sentence", screen.sentence()).words("clock", screen.clock().text()).words("next", screen.next());
        reply.line(screen.clock().text() + "   " + screen.cup() + "   " + screen.title() + "   (" + screen.place().key() + ")");
        reply.line(screen.sentence());
        screen.notices().forEach(notice -> reply.line("note     " + notice));
        for (BenchFigure figure : screen.figures()) {
            String band = figure.band().isEmpty() ? "" : " (" + figure.band() + ")";
            reply.line("  " + figure.label() + ": " + (figure.number() + band + " " + figure.unit()).strip() + "   [" + figure.origin() + "]");
            Map<String, Object> row = row("figure", figure.name(), figure.label());
            row.put("number", figure.number());
            row.put("unit", figure.unit());
            row.put("band", figure.band());
            row.put("source", figure.origin());
            row.put("severity", figure.severity() == null ? null : word(figure.severity()));
            reply.item(row);
        }
        screen.cautions().stream().filter(c -> !c.acknowledged()).forEach(c -> {
            reply.line("  caution  " + c.hazard());
            reply.line("           " + c.controls() + "   [" + c.source() + "]");
        });
        if (screen.gate() != null) {
            for (GatePoint point : screen.gate().points()) {
                reply.line("  " + word(point.state()) + "  " + point.title() + ": " + point.sentence().text() + "   [" + point.source().display() + "]");
                Map<String, Object> row = row("gate", point.name(), point.title());
                row.put("state", word(point.state()));
                row.put("sentence", point.sentence().text());
                row.put("source", point.source().display());
                reply.item(row);
            }
        }
        for (BenchMark mark : screen.marks()) {
            reply.line("  " + mark(mark));
            reply.item(row(mark));
        }
        for (BenchTap tap : screen.taps()) {
            reply.line("  tap " + tap.key() + "   " + tap.label() + given(tap));
            Map<String, Object> row = row("tap", tap.key(), tap.label());
            row.put("kind", word(tap.kind()));
            row.put("rank", word(tap.rank()));
            row.put("unit", tap.field() == null ? "" : tap.field().unit());
            row.put("choices", tap.choices().stream().map(BenchTap.Choice::value).toList());
            row.put("offered", tap.offered());
            reply.item(row);
        }
        if (!screen.next().isEmpty()) {
            reply.line("Next: " + screen.next());
        }
        for (BenchPlace place : screen.places()) {
            Map<String, Object> row = row("screen", place.key(), place.title());
            row.put("standing", word(place.standing()));
            reply.item(row);
        }
        return reply;
    }

    private static String mark(BenchMark mark) {
        return mark.shape() + " " + mark.label() + " " + mark.text() + ", " + mark.word() + "   [" + mark.source() + "]";
    }

    private static Map<String, Object> row(BenchMark mark) {
        Map<String, Object> row = row("mark", mark.key(), mark.label());
        row.put("low", mark.low().toString());
        row.put("likely", mark.likely().toString());
        row.put("high", mark.high().toString());
        row.put("state", word(mark.state()));
        row.put("source", mark.source());
        return row;
    }

    private static void clock(BenchClock clock, Map<String, Object> row) {
        row.put("clock", clock.text());
        row.put("contact", clock.contact() == null ? null : clock.contact().toString());
        row.put("seconds", clock.elapsed() == null ? null : clock.elapsed().toMillis() / 1000.0);
        row.put("state", word(clock.state()));
    }

    private static Map<String, Object> row(String what, String name, String label) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("what", what);
        row.put("name", name);
        row.put("label", label);
        return row;
    }

    /** What a tap asks for; of a choice the words it takes. */
    private static String given(BenchTap tap) {
        if (tap.kind() == BenchTap.Kind.TOUCH) {
            return "";
        }
        List<String> choices = tap.choices().stream().map(BenchTap.Choice::value).toList();
        return " <" + (tap.kind() == BenchTap.Kind.CHOICE && !choices.isEmpty() ? String.join(" | ", choices) : word(tap.kind())) + ">";
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
