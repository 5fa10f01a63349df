package org.flexwright.workbench.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.bench.BenchCup;
import org.flexwright.core.bench.BenchMark;
import org.flexwright.core.bench.BenchPlace;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.BenchSound;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.core.bench.ClockWatch;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;
import org.flexwright.workbench.bench.BenchLook.Size;
import org.flexwright.workbench.bench.Choices.Choice;
import org.flexwright.workbench.bench.Sounds.Signal;
import org.flexwright.workbench.bench.Story.Block;
import org.flexwright.workbench.bench.Tap.Weight;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.pages.session.ReadingPlan;

/**
 * What happens at the bench view: shows the screen the engine gives, asks for what a tap needs in the place of the story, and does it. The clock and its
 * marks stay in sight whatever is asked.
 */
final class BenchDesk {

    /** What was said stays this long, milliseconds; a refusal stays until the next touch. */
    private static final long SAID = 8_000;
    private static final int SECOND = 1000;
    private static final String BALANCES = "Which balance?";

    private final BenchLook look;
    private final BenchPane pane;
    private final BenchWork work;
    private final Sounds sounds;
    private final ClockWatch watch;
    private final BenchSettings settings;
    private final CupStrip strip;
    private final Composite stack;
    private final Story story;
    private final Choices choices;
    private final Composite answers;
    private final NumberPad pad;
    private final SidePanel side;
    private final ToolColumn tools;
    private final FootRow foot;
    private final Tap undo;
    private final BalanceDesk balance;
    private final Runnable leave;
    private final Map<String, List<BenchMark>> before = new HashMap<>();
    private BenchScreen screen;
    private BenchTap asked;
    private Runnable choosing;
    private BenchReading reading;
    private Block said;
    private long saidUntil;
    private boolean stray;

    BenchDesk(BenchPane pane, BenchLook look, BenchWork work, Sounds sounds, ClockWatch watch, BenchSettings settings, BalanceDesk balance, Runnable leave) {
        this.look = look;
        this.pane = pane;
        this.work = work;
        this.sounds = sounds;
        this.watch = watch;
        this.settings = settings;
        this.balance = balance;
        this.leave = leave;
        strip = new CupStrip(pane.cups(), look, this::cup);
        strip.way("\u25c2", "Screen before", () -> screen.before().ifPresent(this::look));
        strip.way("\u25b8", "Screen after", () -> screen.after().ifPresent(this::look));
        strip.way("Leave", "Leave the bench; the clock goes on", leave);
        stack = new Composite(pane.story(), SWT.NONE);
        look.dress(stack, Ink.INK, Ink.PAPER, Size.TEXT);
        stack.setLayout(new StackLayout());
        story = new Story(stack, look, this::foot);
        choices = new Choices(stack, look);
        answers = new Composite(pane.pad(), SWT.NONE);
        look.dress(answers, Ink.INK, Ink.PAPER, Size.TEXT);
        answers.setLayout(new StackLayout());
        pad = new NumberPad(answers, look, this::typed);
        side = new SidePanel(answers, look, this::ask, this::give, () -> choose("What happened?", "", rest()));
        tools = new ToolColumn(pane.tools(), look);
        undo = tools.add("Undo", "Undo", this::undo);
        tools.add("Note", "Keep a note; words can follow", () -> at("note", tap -> keep(tap, "Note kept; words can follow.")));
        tools.add("Photo", "Keep that a picture was taken now; the file can follow", this::picture);
        tools.add("Odd", "Keep that something was odd; words can follow", () -> at("odd", tap -> keep(tap, "Kept that something was odd; words can follow.")));
        tools.add("More", "More taps", this::more);
        foot = new FootRow(pane.foot(), look);
        top(stack, story);
        balance.listen(this::reading);
        refresh();
    }

    // --- what is shown

    /** Draws everything as it is now. */
    void refresh() {
        if (!work.alive()) {
            return;
        }
        screen = work.screen();
        if (reading != null && choosing == null) {
            showReading();
            return;
        }
        if (asked != null && screen.tap(asked.key()).isEmpty()) {
            asked = null;
        }
        BenchTap main = main();
        if (choosing == null && asked == null && main != null && main.kind() == BenchTap.Kind.NUMBER) {
            asked = main;
            askPad();
        }
        if (asked != null) {
            asked = screen.tap(asked.key()).orElse(asked); // its label may have changed
        }
        boolean number = asked != null && choosing == null;
        List<BenchTap> answerable = answerable();
        pane.padShown(choosing == null && (number || !answerable.isEmpty()));
        top(answers, number ? pad : side);
        side.show(answerable);
        tell();
        cups();
        clock();
        undo.allow(!work.undoName().isEmpty());
        foot();
    }

    /** Draws what the running of time changes; the whole screen when that is cheap. */
    void tick() {
        if (!work.alive()) {
            return;
        }
        watch.look().ifPresent(sentence -> say(sentence, Ink.CAUTION, Signal.SOON));
        boolean costly = screen.place().part() == BenchPlace.Part.GATE && work.now().getEpochSecond() % 5 != 0;
        if (costly) {
            cups();
            clock();
        } else if (choosing == null) {
            refresh();
        } else {
            cups();
            clock();
        }
    }

    /** Milliseconds until the clock shows another second. */
    int untilNextSecond() {
        BenchClock now = work.clockNow();
        long into = now.elapsed() == null ? work.now().toEpochMilli() % SECOND : now.elapsed().toMillis() % SECOND;
        return (int) (SECOND - into) + 5;
    }

    /** The pieces are being read: the pad stays open, the last reading stands very large. */
    private void showReading() {
        pane.padShown(!reading.yesNo());
        top(stack, story);
        top(answers, pad);
        pad.name(reading.prompt(), reading.unit());
        tell();
        cups();
        clock();
        undo.allow(!work.undoName().isEmpty());
        foot();
    }

    private void tell() {
        List<Block> blocks = new ArrayList<>();
        boolean saying = said != null && System.nanoTime() / 1_000_000 < saidUntil;
        if (reading != null) {
            if (saying && said.ink() == Ink.STOP) {
                blocks.add(said);
            }
            blocks.addAll(reading.told());
            story.show(reading.prompt(), blocks);
            return;
        }
        boolean first = saying && said.ink() != Ink.IN; // what was done comes below the figures, what was not above them
        if (first) {
            blocks.add(said);
        }
        if (asked != null && isMass(asked) && !balance.trouble().isEmpty()) {
            blocks.add(Block.strong("\u2715 " + balance.trouble(), Ink.STOP));
        }
        Block live = asked != null && isMass(asked) ? balance.shown() : null;
        if (live != null) {
            blocks.add(live);
        }
        if (asked != null && asked.kind() == BenchTap.Kind.SHEET) {
            blocks.add(Block.strong("Which data sheet was read?", Ink.INK));
            blocks.add(Block.text("Type year, month and day of the sheet, then its revision: 2026 01 15 4."));
        } else if (asked != null && asked.rank() != BenchTap.Rank.MAIN) {
            blocks.add(Block.strong(asked.label(), Ink.INK));
            if (asked.field() != null && asked.field().help() != null) {
                blocks.add(Block.text(asked.field().help()));
            }
        }
        blocks.addAll(Telling.story(screen, saying && !first ? said : null, live == null));
        story.show(Telling.title(screen), blocks);
    }

    private void cups() {
        List<BenchCup> cups = work.cups();
        for (BenchCup cup : cups) {
            List<BenchMark> marks = cup.trial() == work.trial() ? screen.marks() : cup.nextDue() == null ? List.of() : List.of(cup.nextDue());
            List<BenchMark> was = before.put(cup.trial().getId(), marks);
            if (was != null) {
                sound(BenchSound.between(was, marks));
            }
        }
        strip.show(cups.stream().limit(4).map(Telling::cup).toList(), work.trial().getId());
    }

    private void sound(BenchSound sound) {
        switch (sound) {
            case SOON -> sounds.play(Signal.SOON);
            case DUE -> sounds.play(Signal.NOW);
            case OVER -> sounds.play(Signal.OVER);
            case NONE -> {
                // quiet
            }
        }
    }

    private void clock() {
        BenchClock now = work.clockNow();
        List<BenchMark> marks = work.marks();
        boolean waiting = now.state() == BenchClock.State.WAITING;
        pane.waiting(waiting);
        pane.clock().show(waiting ? "\u2013:\u2013\u2013" : now.text(), now.state() == BenchClock.State.RUNNING ? Ink.INK : Ink.QUIET);
        pane.clockChanged();
        var foremost = Telling.foremost(marks);
        if (now.state() == BenchClock.State.RUNNING && foremost.isPresent()) {
            pane.alert().show(Telling.line(foremost.get()), Telling.ink(foremost.get().state()));
        } else {
            pane.alert().show(now.state() == BenchClock.State.RUNNING ? "since first contact" : now.sentence(), Ink.QUIET);
        }
        pane.marks().show(now.contact() == null ? List.of() : Telling.moments(marks, now.contact()),
                now.elapsed() == null ? null : now.elapsed().toMillis() / 60_000.0,
                "Marks: " + String.join("; ", marks.stream().map(m -> m.label() + " " + m.text() + " " + m.word()).toList()));
    }

    private BenchTap main() {
        return screen.taps().stream().filter(t -> t.rank() == BenchTap.Rank.MAIN).findFirst().orElse(null);
    }

    private List<BenchTap> beside() {
        return screen.taps().stream().filter(t -> t.rank() == BenchTap.Rank.SIDE || t.rank() == BenchTap.Rank.MAIN && t != main()).toList();
    }

    private static boolean answers(BenchTap tap) {
        return tap.kind() == BenchTap.Kind.NUMBER || tap.kind() == BenchTap.Kind.CHOICE || tap.kind() == BenchTap.Kind.WORDS;
    }

    /** All points of a gate are seen at one glance: more than two answers wait behind a tap. */
    private boolean manyAtGate(List<BenchTap> answers) {
        return screen.place().part() == BenchPlace.Part.GATE && answers.size() > 2;
    }

    /** What can be answered now; what happened in a step is asked once it has begun. */
    private List<BenchTap> answerable() {
        boolean ahead = screen.place().part() == BenchPlace.Part.WORK && screen.state() == StepState.PLANNED;
        List<BenchTap> all = beside().stream().filter(BenchDesk::answers).toList();
        return ahead || manyAtGate(all) ? List.of() : all;
    }

    /**
     * Deeds beside the main one. What was as planned or as the clock says is offered where its number or choice is asked for; contact said by hand is
     * for the rare cup that was not weighed here, so that no stray touch starts the clock.
     */
    private List<BenchTap> deeds() {
        return beside().stream().filter(t -> !answers(t) && !t.key().startsWith("asPlanned/") && !t.key().startsWith("asTimed/") && !t.key().equals("contact")).toList();
    }

    // --- the foot

    private void foot() {
        if (screen == null || choosing != null) {
            return;
        }
        if (reading != null) {
            footOfReading();
            return;
        }
        if (asked != null) {
            footOfNumber();
            return;
        }
        List<Choice> sides = new ArrayList<>();
        deeds().forEach(t -> sides.add(choice(t)));
        if (work.reads(screen)) {
            sides.add(0, new Choice("Read pieces", this::chooseReading));
        }
        if (screen.place().part() == BenchPlace.Part.GATE) {
            if (answerable().isEmpty() && !rest().isEmpty()) {
                sides.add(0, new Choice("Answer", () -> choose("What is so?", "", rest())));
            }
            screen.tap("dump").filter(t -> !work.elsewhere()).ifPresent(t -> sides.add(new Choice(t.label(), Weight.STOP, () -> ask(t))));
        }
        BenchTap main = main();
        if (screen.place().part() == BenchPlace.Part.CAUTIONS && !story.last()) {
            foot.show("Read on, " + story.page() + " of " + story.count(), true, story::turn, sides, () -> { });
        } else if (work.elsewhere()) {
            sides.addAll(0, main == null ? List.of() : List.of(choice(main)));
            foot.show("\u25b8 To what is to do now", true, this::back, sides, () -> choose(screen.title(), "", sides));
        } else if (main == null) {
            foot.show("Leave the bench", true, leave, sides, () -> choose(screen.title(), "", sides));
        } else {
            foot.show(main.label(), true, () -> ask(main), sides, () -> choose(screen.title(), "", sides));
        }
    }

    private void footOfNumber() {
        List<Choice> sides = new ArrayList<>();
        if (!asked.offered().isEmpty()) {
            BenchTap offering = asked;
            sides.add(new Choice(asked.said(), () -> give(offering, offering.offered())));
        }
        if (asked != main()) {
            sides.add(new Choice("Back", this::back));
        } else {
            deeds().forEach(t -> sides.add(choice(t)));
            if (isMass(asked)) {
                sides.add(new Choice(balance.connected() ? "Balance" : "Connect a balance", this::chooseBalance));
            }
        }
        boolean typed = !pad.typed().isEmpty();
        String live = typed || !isMass(asked) ? "" : balance.steady();
        String label = typed ? asked.label() + ": " + shown() : live.isEmpty() ? asked.label() : "Take " + live;
        foot.show(label, typed || !live.isEmpty(), typed ? this::take : () -> take(live), sides, () -> choose(asked.label(), "", sides));
    }

    private void footOfReading() {
        if (reading.complete()) {
            foot.show("Done: every piece has its readings", true, this::back, List.of(new Choice("Read something else", this::chooseReading)), () -> { });
            return;
        }
        List<Choice> sides = new ArrayList<>();
        if (reading.yesNo()) {
            sides.add(new Choice("No", () -> takeReading("no")));
        }
        sides.add(new Choice("Next piece", () -> {
            reading.next();
            refresh();
        }));
        sides.add(new Choice("Stop reading", this::back));
        boolean typed = reading.yesNo() || !pad.typed().isEmpty();
        String words = reading.yesNo() ? "Yes" : typed ? "Write down: " + pad.typed().text() + " " + reading.unit() : reading.prompt();
        foot.show(words, typed, () -> takeReading(reading.yesNo() ? "yes" : pad.typed().text()), sides, () -> { });
    }

    private void chooseReading() {
        List<Choice> whats = work.whats().stream().map(what -> new Choice(what.words(), () -> beginReading(what))).toList();
        choose(whats.isEmpty() ? "There is no piece to read yet: add parts to the trial first." : "What is read?", "", whats);
    }

    private void beginReading(ReadingPlan.What what) {
        closeChoices();
        String refusal = work.read(what, begun -> reading = begun);
        if (refusal.isEmpty()) {
            said = null;
            pad.ask(reading.prompt(), reading.unit());
        } else {
            say("\u2715 " + refusal, Ink.STOP, Signal.REFUSED);
        }
        story.rewind();
        refresh();
    }

    private void takeReading(String text) {
        String refusal = reading.take(text);
        if (refusal.isEmpty()) {
            pad.clear();
            said = null;
            sounds.play(Signal.KEPT);
        } else {
            say("\u2715 " + refusal, Ink.STOP, Signal.REFUSED);
        }
        story.rewind();
        refresh();
    }

    private String shown() {
        String text = asked.kind() == BenchTap.Kind.SHEET ? SheetText.of(pad.typed().text()) : pad.typed().text();
        boolean unit = text.chars().anyMatch(Character::isLetter);
        return unit || unit(asked).isEmpty() ? text : text + " " + unit(asked);
    }

    private Choice choice(BenchTap tap) {
        return new Choice(tap.label(), tap.key().equals("dump") ? Weight.STOP : Weight.PLAIN, () -> ask(tap));
    }

    private List<Choice> rest() {
        return beside().stream().filter(BenchDesk::answers).map(this::choice).toList();
    }

    private static boolean isMass(BenchTap tap) {
        return tap.field() != null && tap.field().kind() == QuantityKind.MASS;
    }

    private static String unit(BenchTap tap) {
        return tap.field() == null || tap.field().unit() == null || tap.field().kind() == null ? ""
                : Units.find(tap.field().kind(), tap.field().unit()).map(Unit::display).orElse("");
    }

    // --- asking and doing

    private void ask(BenchTap tap) {
        switch (tap.kind()) {
            case TOUCH -> give(tap, "");
            case NUMBER -> {
                closeChoices();
                story.rewind();
                said = null;
                asked = tap;
                askPad();
                refresh();
            }
            case SHEET -> {
                closeChoices();
                story.rewind();
                said = null;
                asked = tap;
                pad.ask("Date and revision of the data sheet", "");
                refresh();
            }
            case CHOICE -> choose(tap.label(), help(tap), choicesOf(tap));
            case REASON -> {
                List<Choice> reasons = new ArrayList<>(choicesOf(tap));
                reasons.add(new Choice("Own words, by keyboard", () -> write(tap, tap.label() + ": why?")));
                choose(tap.label() + ": why?", "", reasons);
            }
            case WORDS -> write(tap, tap.label());
            case PHOTO -> picture();
        }
    }

    private List<Choice> choicesOf(BenchTap tap) {
        return tap.choices().stream().map(c -> {
            boolean offered = !tap.offered().isEmpty() && (c.value().equals(tap.offered()) || c.label().equals(tap.offered()));
            return new Choice(offered ? c.label() + ", as planned" : c.label(), offered ? Weight.CHOSEN : Weight.PLAIN, () -> give(tap, c.value()));
        }).toList();
    }

    private static String help(BenchTap tap) {
        return tap.field() == null || tap.field().help() == null ? "" : tap.field().help();
    }

    private void write(BenchTap tap, String title) {
        choose(title, help(tap), List.of());
        choices.write(title, help(tap));
        choosing = () -> foot.show("Keep these words", !choices.written().isEmpty(), () -> give(tap, choices.written()), List.of(new Choice("Back", this::back)),
                () -> { });
        choices.field().addListener(SWT.Modify, event -> choosing.run());
        choices.field().addListener(SWT.DefaultSelection, event -> {
            if (!choices.written().isEmpty()) {
                give(tap, choices.written());
            }
        });
        choosing.run();
    }

    private void askPad() {
        pad.ask(asked.label(), unit(asked));
    }

    private void choose(String title, String words, List<Choice> given) {
        choosing = () -> foot.show("Back", true, this::back, List.of(), () -> { });
        asked = null;
        pane.padShown(false);
        top(stack, choices);
        stack.layout(true, true);
        choices.show(title, words, given);
        choosing.run();
    }

    private void closeChoices() {
        if (choosing != null) {
            choosing = null;
            top(stack, story);
        }
    }

    /** Out of whatever is asked; when nothing is, to the screen that is to do now. */
    void back() {
        boolean open = choosing != null || reading != null || asked != null && asked != main();
        if (choosing == null) {
            reading = null;
        }
        closeChoices();
        asked = null;
        pad.clear();
        if (!open) {
            work.look(null);
        }
        said = null;
        refresh();
    }

    private void look(BenchPlace place) {
        closeChoices();
        reading = null;
        asked = null;
        said = null;
        work.look(place.standing() == BenchPlace.Standing.HERE ? null : place.key());
        refresh();
    }

    private void cup(String id) {
        work.find(id).ifPresent(this::go);
    }

    private void go(Trial trial) {
        closeChoices();
        reading = null;
        asked = null;
        pad.clear();
        said = null;
        work.go(trial);
        refresh();
    }

    private void give(BenchTap tap, String given) {
        settle(work.tap(tap, given), done(tap, given), tap);
    }

    /** What was answered, with the answer: a tick beside the bare question would read as a yes. */
    private static String done(BenchTap tap, String given) {
        return tap.choices().stream().filter(c -> c.value().equals(given)).map(c -> tap.label() + ": " + c.label()).findFirst().orElse(tap.label());
    }

    private void settle(String refusal, String done, BenchTap tap) {
        if (refusal.isEmpty()) {
            closeChoices();
            asked = null;
            pad.clear();
            story.rewind();
            say("\u2713 " + done, Ink.IN, Signal.KEPT);
        } else {
            say("\u2715 " + refusal, Ink.STOP, Signal.REFUSED);
        }
        refresh();
    }

    private void say(String sentence, Ink ink, Signal signal) {
        said = Block.strong(sentence, ink);
        saidUntil = ink == Ink.STOP ? Long.MAX_VALUE : System.nanoTime() / 1_000_000 + SAID;
        sounds.play(signal);
    }

    private void at(String key, Consumer<BenchTap> with) {
        screen.tap(key).ifPresent(with);
    }

    private void keep(BenchTap tap, String sentence) {
        settle(work.tap(tap, ""), sentence, tap);
    }

    private void picture() {
        settle(work.picture(screen), "Picture noted; the file can follow.", null);
    }

    private void undo() {
        if (reading != null) {
            String refusal = reading.undo();
            say(refusal.isEmpty() ? "\u2713 Taken back." : "\u2715 " + refusal, refusal.isEmpty() ? Ink.IN : Ink.STOP, refusal.isEmpty() ? Signal.KEPT : Signal.REFUSED);
            refresh();
            return;
        }
        String name = work.undoName();
        at("undo", tap -> settle(work.tap(tap, ""), "Taken back: " + name, tap));
    }

    private void more() {
        List<Choice> all = new ArrayList<>();
        screen.taps().stream().filter(t -> t.rank() == BenchTap.Rank.QUIET || t.key().equals("contact")).filter(t -> !List.of("undo", "note", "photo", "odd").contains(t.key()))
                .forEach(t -> all.add(choice(t)));
        all.add(new Choice(settings.sound() ? "\u266a Sound is on: turn off" : "\u266a Sound is off: turn on", this::turnSound));
        all.add(new Choice("Balance: " + balance.name(), this::chooseBalance));
        choose("More", "", all);
    }

    private void turnSound() {
        settings.setSound(!settings.sound());
        back();
        say(settings.sound() ? "Sound is on." : "Sound is off.", Ink.INK, Signal.KEPT);
        refresh();
    }

    // --- numbers

    private void typed() {
        if (said != null && said.ink() == Ink.STOP) {
            said = null;
            tell();
        }
        foot();
    }

    private void take() {
        take(pad.typed().tooMuch() ? pad.typed().text() + "\u2026" : pad.typed().text());
    }

    private void take(String text) {
        BenchTap tap = asked;
        if (tap.kind() == BenchTap.Kind.SHEET) {
            give(tap, SheetText.of(text));
            return;
        }
        String value = isMass(tap) ? balance.read(text) : text;
        if (value.isEmpty()) {
            settle(balance.refusal(), "", tap);
        } else {
            settle(work.tap(tap, value), tap.label() + ": " + value, tap);
        }
    }

    private void reading() {
        if (pane.root().isDisposed()) {
            return;
        }
        tell();
        if (asked != null && isMass(asked) && choosing == null) {
            pad.ghost(balance.live());
            foot();
        } else {
            pad.ghost("");
        }
    }

    private void chooseBalance() {
        balance.lookAgain();
        showBalances();
    }

    private void showBalances() {
        choose(BALANCES, "Its readings appear in the number field; nothing is taken before you touch.", balance.offered(this::back, () -> {
            if (choosing != null && choices.title().equals(BALANCES)) {
                showBalances();
            }
        }));
    }

    // --- keyboard

    /** A key that no field took. True when it was used. */
    boolean key(char character, int code, int mask) {
        if ((mask & (SWT.CTRL | SWT.COMMAND)) != 0) {
            if (Character.toLowerCase((char) code) == 'z') {
                undo();
                return true;
            }
            return false;
        }
        if (code == SWT.ESC) {
            back();
            return true;
        }
        if (choosing == null && (code == SWT.PAGE_DOWN || code == SWT.ARROW_LEFT || code == SWT.ARROW_RIGHT)) {
            walk(code);
            return true;
        }
        boolean enter = code == SWT.CR || code == SWT.KEYPAD_CR || code == SWT.LF;
        if (reading != null && choosing == null) {
            return readingKey(character, code, enter);
        }
        if (asked != null && choosing == null) {
            if (enter) {
                return enterOnPad();
            }
            return !(character == ' ' && pad.typed().isEmpty()) && pad.key(character, code);
        }
        if (enter && stray) {
            stray = false;
            return true;
        }
        boolean printed = character > ' ' && character != SWT.DEL;
        if (printed && !stray) {
            stray = true;
            say("? Something was typed while no number is asked for; nothing was taken.", Ink.UNSURE, Signal.REFUSED);
            refresh();
        }
        return printed;
    }

    private boolean readingKey(char character, int code, boolean enter) {
        char letter = Character.toLowerCase(character);
        if (reading.yesNo() && (letter == 'y' || letter == 'n')) {
            takeReading(letter == 'y' ? "yes" : "no");
        } else if (enter && !reading.yesNo() && !pad.typed().isEmpty()) {
            takeReading(pad.typed().text());
        } else if (code == SWT.BS && pad.typed().isEmpty()) {
            undo();
        } else if (!enter && !reading.yesNo() && !(character == ' ' && pad.typed().isEmpty())) {
            return pad.key(character, code);
        }
        return true;
    }

    private void walk(int code) {
        switch (code) {
            case SWT.ARROW_LEFT -> screen.before().ifPresent(this::look);
            case SWT.ARROW_RIGHT -> screen.after().ifPresent(this::look);
            default -> story.turn();
        }
    }

    /** Enter takes what was typed and nothing else: a balance that sends an empty line must not press the tap that happens to have the focus. */
    private boolean enterOnPad() {
        if (!pad.typed().isEmpty()) {
            take();
        }
        return true;
    }

    /** Says something that is no answer to a touch. */
    void tell(String sentence) {
        say("\u2715 " + sentence, Ink.STOP, Signal.REFUSED);
        tell();
    }

    /** Another trial, or the same again. */
    void show(Trial trial) {
        if (trial != work.trial()) {
            go(trial);
        }
    }

    /** Takes the sizes of the look again. */
    void resized() {
        pad.space();
    }

    /** Lets the balance go. */
    void close() {
        balance.close();
    }

    // --- for tests

    BenchScreen screen() {
        return screen;
    }

    Tap mainTap() {
        return foot.main();
    }

    private static void top(Composite parent, Control control) {
        StackLayout layout = (StackLayout) parent.getLayout();
        if (layout.topControl != control) {
            layout.topControl = control;
            parent.layout(true, true);
        }
    }
}
