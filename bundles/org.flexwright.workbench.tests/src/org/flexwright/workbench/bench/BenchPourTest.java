package org.flexwright.workbench.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.flexwright.core.balance.BalanceSource;
import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.GateWord;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.settings.Themes;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Touch;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;

/** A person at the bench view with nothing but a finger; and with a keyboard, and a cup that went on while the program was away. */
class BenchPourTest {

    private static final Point LARGE = new Point(1280, 800);
    private static final Point SMALL = new Point(1024, 600);
    /** Longer than a trembling finger touches twice. */
    private static final int LIFTED = 320;

    @TempDir
    Path folder;

    private final List<String> complaints = new ArrayList<>();
    private final Map<String, Rectangle> mainPlaces = new HashMap<>();
    private BenchWindow bench;
    private Touch touch;
    private int picture;

    @AfterEach
    void close() {
        if (bench != null && !shell().isDisposed()) {
            shell().close();
        }
        theme(Settings.Theme.LIGHT);
        Projects.none();
    }

    private static void theme(Settings.Theme theme) {
        boolean dark = theme == Settings.Theme.DARK;
        if (Ui.kit().palette().dark() != dark) {
            Themes.apply(PlatformUI.getWorkbench(), theme);
            Ui.await("the theme " + theme, () -> Ui.kit().palette().dark() == dark);
        }
    }

    private Trial planned() {
        Projects.small(folder);
        Ui.window().getService(Settings.class).setBenchSound(false);
        Trial trial = Pages.cast();
        Pages.session().execute("working time", edit -> {
            Pages.type(Pages.step(trial, "mixing.mix").getDetails(), "workingTime", "12 min");
            Pages.type(Pages.step(trial, "moulding.fill").getDetails(), "workingMinutes", "12 min");
        });
        return trial;
    }

    private void open(Trial trial, Point size) {
        bench = BenchWindow.open(Ui.window(), trial);
        shell().setFullScreen(false);
        touch = new Touch();
        resize(size);
    }

    /** Gives the view that room, as a whole screen of that size would. */
    private void resize(Point size) {
        Shell shell = shell();
        Rectangle whole = shell.computeTrim(0, 0, size.x, size.y);
        shell.setBounds(0, 0, whole.width, whole.height);
        Ui.await("the size " + size, () -> room().equals(size));
        touch.pause(40);
    }

    private Point room() {
        Rectangle area = shell().getClientArea();
        return new Point(area.width, area.height);
    }

    private Shell shell() {
        return bench.shell();
    }

    private BenchDesk desk() {
        return bench.desk();
    }

    private BenchLook look() {
        return bench.look();
    }

    private BenchScreen screen() {
        return desk().screen();
    }

    private Tap tap(String words) {
        return tap(words, t -> t.words().equals(words) || Kit.nameOf(t).equals(words));
    }

    private Tap tap(String what, Predicate<Tap> wanted) {
        return Ui.find(shell(), Tap.class, what, wanted);
    }

    private void touch(String words) {
        touch.at(tap(words));
        touch.pause(20);
    }

    private void main() {
        touch.pause(LIFTED); // the main tap does not take two touches of a trembling finger
        touch.at(desk().mainTap());
        touch.pause(20);
    }

    private void digits(String number) {
        for (char c : number.toCharArray()) {
            touch.at(tap(String.valueOf(c)));
        }
    }

    /** A picture in both sizes, and everything that is not as it should be. */
    private void look(String name) {
        Point now = room();
        Point other = now.equals(LARGE) ? SMALL : LARGE;
        String numbered = String.format("%02d-%s", picture++, name);
        for (Point size : List.of(now, other)) {
            resize(size);
            String at = size.x + "x" + size.y;
            Ui.picture(shell().getChildren()[0], "bench/" + at + "/" + numbered);
            BenchLooker.look(shell(), look()).forEach(complaint -> complaints.add(at + " " + numbered + ": " + complaint));
            Tap main = desk().mainTap();
            Rectangle place = main.getDisplay().map(main.getParent(), shell(), main.getBounds());
            Rectangle first = mainPlaces.putIfAbsent(at, place);
            if (first != null && !first.equals(place)) {
                complaints.add(at + " " + numbered + ": the main tap moved from " + first + " to " + place);
            }
        }
    }

    private void readCautions() {
        while (screen().place().part() == Part.CAUTIONS) {
            String before = screen().place().key();
            if (desk().mainTap().words().startsWith("Read on")) {
                main();
                continue;
            }
            boolean sheet = screen().tap("ack").orElseThrow().kind() == BenchTap.Kind.SHEET;
            main();
            if (sheet) {
                digits("202601154");
                main();
            }
            assertFalse(screen().place().key().equals(before) && sheet, "the cautions are read: " + screen().place());
        }
    }

    /** Answers what stands beside the step with what was planned. */
    private void asPlanned(String question) {
        touch(question);
        touch.at(tap("as planned", t -> t.words().contains("as planned")));
        touch.pause(20);
    }

    @Test
    void aWholePourByTouchesAlone() {
        Trial trial = planned();
        open(trial, LARGE);
        assertEquals("mixing.weigh", trial.getSteps().get(1).getKind());

        readCautions();
        look("prepare");
        main();
        asPlanned("Treatment done");
        asPlanned("Dried for");
        touch("Mould temperature read");
        look("number-asked");
        touch.at(tap("as planned", t -> t.words().contains("as planned")));
        main();

        readCautions();
        Step weigh = Pages.step(trial, "mixing.weigh");
        look("weigh-a");
        digits("24.88");
        look("weigh-a-typed");
        main();
        assertEquals(24.88, Weighings.actual(Pages.use(weigh, PartRole.COMPONENT_A)), 1e-9);
        assertTrue(screen().figure("target").orElseThrow().number().startsWith("23.46"), "B follows the A that is really in the cup");
        digits("21.57");
        main();
        assertNotNull(trial.getContactAt(), "the clock starts when B meets A");
        look("weigh-b-short");
        digits("1.89");
        main();
        assertEquals(23.46, Weighings.actual(Pages.use(weigh, PartRole.COMPONENT_B)), 1e-9);
        look("weigh-check");
        main();
        assertEquals(StepState.DONE, weigh.getState());

        look("cautions");
        readCautions();
        look("mix");
        main();
        touch("Walls and bottom scraped: Yes");
        look("mix-runs");
        main();

        readCautions();
        main();
        look("vacuum-runs");
        touch("Keep a note; words can follow");
        touch("Keep that something was odd; words can follow");
        touch("Keep that a picture was taken now; the file can follow");
        assertEquals(3, trial.getNotes().size());
        touch("Undo");
        assertEquals(2, trial.getNotes().size(), "a touch is taken back by a touch");
        main();

        readCautions();
        assertEquals(Part.GATE, screen().place().part());
        look("gate");
        assertTrue(screen().gate().met(), "nothing stands against pouring: " + screen().gate().against());
        main();
        look("pour");
        main();
        assertEquals(GateWord.GO, trial.getDecisions().getLast().getWord());

        readCautions();
        main();
        main();
        readCautions();
        look("demould-gate");
        touch.at(tap("leftover", t -> Kit.nameOf(t).startsWith("Leftover") && Kit.nameOf(t).endsWith("Yes")));
        touch.pause(20);
        look("demould-asked");
        assertTrue(screen().gate().met(), "the leftover is firm to the nail");
        main();
        look("demould-runs");
        main();
        assertEquals(StepState.DONE, Pages.step(trial, "curing.demould").getState());
        readCautions();
        while (screen().place().part() != Part.END) {
            main();
            readCautions();
        }
        look("end");
        main();
        assertEquals(TrialState.MADE, trial.getState());
        System.out.println("Touches for the whole pour, from mould to parts: " + touch.count());
        assertEquals("", String.join("\n", complaints));
    }

    @Test
    void whatStandsAgainstPouringIsSeenInTheDarkToo() {
        Trial trial = planned();
        theme(Settings.Theme.DARK);
        open(trial, SMALL);
        while (screen().place().part() != Part.GATE) {
            touch("Screen after");
        }
        look("gate-open-dark");
        assertFalse(screen().gate().met());
        touch("Go anyway");
        look("gate-why-dark");
        assertEquals(0, trial.getDecisions().size(), "no going on without a reason");
        touch("Own experience with this mix");
        assertEquals(GateWord.GO, trial.getDecisions().getLast().getWord());
        assertEquals("Own experience with this mix", trial.getDecisions().getLast().getReason());
        touch("More taps");
        look("more-dark");
        touch("Dump");
        touch("Spilled");
        assertEquals(TrialState.DISCARDED, trial.getState());
        look("dumped-dark");
        assertEquals("", String.join("\n", complaints));
    }

    @Test
    void aBalanceThatTypesLikeAKeyboardLandsInTheFieldAndNowhereElse() {
        Trial trial = planned();
        open(trial, SMALL);
        type("24.88\r");
        Ui.await("it is said that nothing was taken", () -> named("nothing was taken"));
        assertEquals(StepState.PLANNED, trial.getSteps().getFirst().getState(), "Enter after a stray number starts nothing");
        while (screen().place().part() != Part.USE) {
            touch("Screen after");
        }
        type("24.88\r");
        Step weigh = Pages.step(trial, "mixing.weigh");
        Ui.await("it is weighed", () -> Weighings.actual(Pages.use(weigh, PartRole.COMPONENT_A)) != null);
        assertEquals(24.88, Weighings.actual(Pages.use(weigh, PartRole.COMPONENT_A)), 1e-9);
        type("12..5\r");
        Ui.await("it is refused in a sentence", () -> named("\u2715"));
        assertEquals(1, Pages.use(weigh, PartRole.COMPONENT_A).getWeighings().size());
        assertEquals(0, Pages.use(weigh, PartRole.COMPONENT_B).getWeighings().size());
    }

    private boolean named(String words) {
        return Ui.all(shell(), BenchPart.class).stream().anyMatch(part -> Kit.nameOf(part).contains(words));
    }

    private void type(String keys) {
        for (char c : keys.toCharArray()) {
            Touch.key(desk().mainTap(), c);
        }
    }

    @Test
    void aBalanceIsHeardWithoutWaitingAndWhatItSaysWrongIsNotTaken() {
        SimulatedBalance device = new SimulatedBalance();
        var registered = FrameworkUtil.getBundle(BenchWindow.class).getBundleContext().registerService(BalanceSource.class, device, null);
        try {
            Trial trial = planned();
            MaterialUse a = Pages.use(Pages.step(trial, "mixing.weigh"), PartRole.COMPONENT_A);
            open(trial, SMALL);
            while (screen().place().part() != Part.USE) {
                touch("Screen after");
            }
            touch("Connect a balance");
            Ui.await("the balance is offered", () -> Ui.all(shell(), Tap.class).stream().anyMatch(t -> t.words().equals(SimulatedBalance.TITLE)));
            look("balances");
            touch(SimulatedBalance.TITLE);
            device.says("ST,GS,+  24.88 g");
            Ui.await("the steady reading can be taken", () -> desk().mainTap().words().equals("Take 24.88 g"));
            look("balance-live");
            for (String wrong : List.of("NaN g", "24.88 g 24.91 g", "24.88 oz")) {
                device.says("ST,GS,+  24.88 g");
                Ui.await("a good reading again", () -> desk().mainTap().words().equals("Take 24.88 g"));
                device.says(wrong);
                Ui.await("what is wrong with " + wrong + " is said", () -> named("\u2715"));
                assertFalse(desk().mainTap().isEnabled(), "nothing can be taken from " + wrong);
            }
            device.says("US,GS,+  24.9 g");
            Ui.await("a moving value is only shown", () -> named("still moving") && !desk().mainTap().isEnabled());
            look("balance-moving");
            assertEquals(0, a.getWeighings().size(), "nothing was taken");
            device.chatters(20_000, "ST,GS,+  24.88 g");
            Ui.await("the last word of a talkative balance", () -> desk().mainTap().words().equals("Take 24.88 g"));
            main();
            assertEquals(24.88, Weighings.actual(a), 1e-9);
            assertEquals("", String.join("\n", complaints));
        } finally {
            registered.unregister();
        }
    }

    @Test
    void severalCupsEachHaveTheirClock() {
        Trial first = planned();
        Trial second = Pages.cast();
        Pages.session().execute("contact", edit -> {
            BenchTaps.contactAgo(edit, first, 3);
            BenchTaps.contactAgo(edit, second, 11);
            edit.set(second, ModelPackage.Literals.TRIAL__CUP_LABEL, "red cup");
        });
        open(first, SMALL);
        assertTrue(named("Time since first contact: 3:0"), "the clock of the cup that is shown");
        touch.at(tap("the other cup", t -> t.words().startsWith("red cup  11:0")));
        touch.pause(20);
        assertTrue(named("Time since first contact: 11:0"));
        look("two-cups");
        assertEquals("", String.join("\n", complaints));
    }

    @Test
    void theClockIsTheWallsAndTheStartPageLeadsBack() {
        Trial trial = planned();
        String id = trial.getId();
        Pages.session().execute("contact", edit -> BenchTaps.contactAgo(edit, trial, 5));
        Path where = Pages.session().folder();
        Projects.none();
        Ui.await("the running cup on the start page", () -> Ui.shows(Ui.window().getShell(), " is running: 5:"));
        Ui.picture(Ui.window().getShell(), "bench/start-running");
        Ui.click(Ui.find(Ui.window().getShell(), org.eclipse.swt.widgets.Button.class, "Back to the bench", b -> Kit.nameOf(b).startsWith("Back to the bench")));
        bench = BenchWindow.of(Ui.window());
        assertNotNull(bench, "one touch leads back");
        assertEquals(where, Pages.session().folder());
        assertEquals(id, Pages.project().getTrials().getFirst().getId());
        assertTrue(named("Time since first contact: 5:"), "the clock shows wall time");
    }
}
