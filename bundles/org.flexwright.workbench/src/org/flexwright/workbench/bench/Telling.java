package org.flexwright.workbench.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.bench.BenchCaution;
import org.flexwright.core.bench.BenchCup;
import org.flexwright.core.bench.BenchFigure;
import org.flexwright.core.bench.BenchGate;
import org.flexwright.core.bench.BenchMark;
import org.flexwright.core.bench.BenchPlace;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.find.Severity;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.bench.Story.Block;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;

/** Turns the screens of the bench into what is drawn: words in their order, sizes, colours and shapes. */
final class Telling {

    /** Longest origin that stands beside a figure, characters. */
    private static final int LONG = 24;

    private Telling() {
    }

    /** The title with the place of the step among all. */
    static String title(BenchScreen screen) {
        return screen.place().part() == BenchPlace.Part.END ? screen.title() : screen.place().step() + 1 + "/" + screen.steps() + "  " + screen.title();
    }

    /**
     * The story of a screen: figures first, then what to do, what stands at the gate, cautions, and what else there is.
     *
     * @param done  what was just done; null for nothing
     * @param large false when something else is the largest figure, such as the live reading of a balance
     */
    static List<Block> story(BenchScreen screen, Block done, boolean large) {
        List<Block> blocks = new ArrayList<>();
        List<BenchFigure> main = screen.figures().stream().filter(BenchFigure::main).sorted(Comparator.comparing(Telling::rank)).toList();
        main.stream().limit(1).forEach(f -> blocks.add(large ? large(f) : new Block(f.label() + "  " + number(f), Size.TITLE, ink(f), "", "")));
        main.stream().skip(1).filter(f -> f.severity() != null).forEach(f -> blocks.add(small(f)));
        if (done != null) {
            blocks.add(done);
        }
        boolean cautions = screen.place().part() == BenchPlace.Part.CAUTIONS;
        if (cautions) {
            cautions(screen.cautions(), blocks);
        }
        if (screen.place().part() != BenchPlace.Part.GATE || screen.gate() == null) {
            blocks.add(cautions ? Block.quiet(screen.sentence()) : Block.text(screen.sentence()));
        }
        if (screen.place().part() == BenchPlace.Part.GATE && screen.gate() != null) {
            gate(screen.gate(), blocks);
        }
        main.stream().skip(1).filter(f -> f.severity() == null).forEach(f -> blocks.add(small(f)));
        screen.figures().stream().filter(f -> !f.main()).forEach(f -> blocks.add(small(f)));
        screen.figures().stream().filter(f -> f.main() && isLong(f)).forEach(f -> blocks.add(Block.quiet(f.label() + ": " + f.origin())));
        screen.notices().forEach(notice -> blocks.add(Block.strong("\u25b2 " + notice, Ink.CAUTION)));
        if (!screen.next().isEmpty() && !cautions && screen.place().part() != BenchPlace.Part.GATE) {
            blocks.add(Block.quiet("Next: " + screen.next()));
        }
        return blocks;
    }

    /** One figure is read from two metres: what is to be added before what is wrong, and how long it runs last. */
    private static int rank(BenchFigure figure) {
        return figure.name().equals("running") ? 2 : figure.name().startsWith("add") || figure.name().startsWith("to") ? 0 : 1;
    }

    private static Block large(BenchFigure figure) {
        String shape = figure.severity() == null || figure.severity() == Severity.NOTE ? "" : Mark.of(figure.severity()).text() + "  ";
        return new Block(number(figure), Size.FIGURE, ink(figure), shape + figure.label(), with(figure));
    }

    private static Block small(BenchFigure figure) {
        if (figure.name().equals("proposal")) { // go, hold or dump: the word says it, its number is the deviation shown already
            return Block.strong("Proposed: " + figure.label(), ink(figure));
        }
        String shape = figure.severity() == null || figure.severity() == Severity.NOTE ? "" : Mark.of(figure.severity()).shape() + " ";
        return new Block(shape + figure.label() + "  " + number(figure), shape.isEmpty() ? Size.TEXT : Size.STRONG, ink(figure), "", with(figure));
    }

    private static String number(BenchFigure figure) {
        return figure.unit().isEmpty() ? figure.number() : figure.number() + "\u00a0" + figure.unit();
    }

    /** True when the origin is a sentence and not a word: then it stands further down. */
    private static boolean isLong(BenchFigure figure) {
        return figure.origin().length() > LONG;
    }

    private static String with(BenchFigure figure) {
        String band = figure.band().isEmpty() ? "" : "(" + figure.band() + ")";
        if (figure.main() && isLong(figure)) {
            return band;
        }
        return band.isEmpty() ? figure.origin() : figure.origin().isEmpty() ? band : band + ", " + figure.origin();
    }

    private static Ink ink(BenchFigure figure) {
        return figure.severity() == null || figure.severity() == Severity.NOTE ? Ink.INK : Mark.of(figure.severity()).ink();
    }

    /** All points at one glance, what stands against going on first; the sentences follow. */
    private static void gate(BenchGate gate, List<Block> blocks) {
        for (GatePoint point : gate.against()) {
            boolean open = point.state() == GatePoint.State.OPEN;
            blocks.add(Block.strong((open ? "\u2715 open: " : "? unknown: ") + point.title(), open ? Ink.STOP : Ink.UNSURE));
        }
        String met = gate.points().stream().filter(p -> p.state() == GatePoint.State.MET).map(GatePoint::title).collect(Collectors.joining(", "));
        if (!met.isEmpty()) {
            blocks.add(Block.strong("\u2713 met: " + met, Ink.IN));
        }
        gate.against().forEach(p -> blocks.add(Block.text(p.title() + ": " + p.sentence().text())));
        gate.points().stream().filter(p -> p.state() == GatePoint.State.MET).forEach(p -> blocks.add(Block.quiet("\u2713 " + p.sentence().text())));
    }

    private static void cautions(List<BenchCaution> cautions, List<Block> blocks) {
        for (BenchCaution caution : cautions) {
            String shape = caution.acknowledged() ? "\u2713 " : "\u25b2 ";
            blocks.add(Block.strong(shape + caution.hazard(), caution.acknowledged() ? Ink.INK : Ink.CAUTION));
            blocks.add(Block.text(caution.controls() + " (" + caution.source() + ")"));
        }
    }

    /** The mark that matters most now: what calls, the worst first, else what comes next. */
    static Optional<BenchMark> foremost(List<BenchMark> marks) {
        return marks.stream().filter(m -> m.state() != BenchMark.State.DONE).max((a, b) -> {
            int urgent = Integer.compare(urgency(a), urgency(b));
            return urgent != 0 ? urgent : b.low().compareTo(a.low());
        });
    }

    private static int urgency(BenchMark mark) {
        return switch (mark.state()) {
            case OVER -> 4;
            case DUE -> 3;
            case WITHIN -> 2;
            case SOON -> 1;
            case COMING, DONE -> 0;
        };
    }

    /** Colour of a mark's state; shape and word say the same. */
    static Ink ink(BenchMark.State state) {
        return switch (state) {
            case COMING -> Ink.INK;
            case SOON, WITHIN, DUE -> Ink.CAUTION;
            case OVER -> Ink.STOP;
            case DONE -> Ink.QUIET;
        };
    }

    /** A mark in a line: shape, label, how long. */
    static String line(BenchMark mark) {
        return mark.shape() + " " + brief(mark) + ": " + (mark.state() == BenchMark.State.COMING || mark.state() == BenchMark.State.SOON ? "in " + left(mark.until())
                : mark.state() == BenchMark.State.OVER ? mark.word() + " for " + left(mark.until()) : mark.word());
    }

    /** The name of a mark without what it means, which no line at the bench has room for: {@code End of working time: its viscosity has doubled}. */
    private static String brief(BenchMark mark) {
        int means = mark.label().indexOf(": ");
        return means < 0 ? mark.label() : mark.label().substring(0, means);
    }

    /** A length as it is read aloud: {@code 1:12}, {@code 16 h}. */
    static String left(Duration length) {
        return length == null ? "" : org.flexwright.core.view.TimeLine.clock(Math.abs(length.toMillis()) / 60_000.0);
    }

    /** Moments on the line of a cup whose contact is known. */
    static List<MarksBar.Moment> moments(List<BenchMark> marks, Instant contact) {
        return marks.stream().map(m -> new MarksBar.Moment(brief(m).toLowerCase(Locale.ROOT), minutes(contact, m.low()), minutes(contact, m.likely()),
                minutes(contact, m.high()), m.state() == BenchMark.State.DONE, m.key().equals("working"))).toList();
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }

    /** A cup as its tap shows it. */
    static CupStrip.Cup cup(BenchCup cup) {
        String brief = cup.cup() + "  " + cup.clock().text();
        String shape = cup.nextDue() == null ? "" : cup.nextDue().shape();
        String due = cup.nextDue() == null ? cup.doing() : brief(cup.nextDue());
        return new CupStrip.Cup(cup.trial().getId(), brief, shape, due, "Cup " + brief + ", " + cup.doing() + (cup.nextDue() == null ? "" : ", " + line(cup.nextDue())));
    }
}
