package org.flexwright.workbench.pages.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swtchart.Chart;
import org.flexwright.core.find.Finding;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Recording;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.ChartWindow;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker with a force gauge: takes files in, looks at the curves, sets a mark right and keeps what they say. */
class RecordingsPageTest {

    @TempDir
    Path folder;

    private Trial trial;

    @BeforeEach
    void three() {
        Projects.small(folder);
        Pages.session().execute("plan", edit -> {
            trial = ModelFactory.eINSTANCE.createTrial();
            trial.setCode("T01");
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
            for (int i = 0; i < 3; i++) {
                Trials.addPart(edit, trial, null, PieceKind.PART, null, null);
            }
        });
        Ui.pump();
    }

    @AfterEach
    void close() {
        Projects.none();
    }

    /** A dome: up to a peak, down to a trough, up again. */
    private Path press(String name, double scale, boolean comma) throws IOException {
        StringBuilder text = new StringBuilder(comma ? "Weg (mm);Kraft (N)\n" : "travel [mm],force [N]\n");
        for (int i = 0; i <= 2000; i++) {
            double travel = i / 500.0;
            double force = scale * (Math.sin(travel * 1.6) * Math.exp(-travel / 3) + 0.2 * travel);
            text.append(comma ? String.format(Locale.GERMANY, "%.4f;%.5f%n", travel, force) : String.format(Locale.ROOT, "%.4f,%.5f%n", travel, force));
        }
        return Files.writeString(folder.resolve(name), text);
    }

    private final class Context implements PageContext {
        @Override
        public Trial subject() {
            return trial;
        }

        @Override
        public ProjectSession session() {
            return Pages.session();
        }

        @Override
        public Registries registries() {
            return Ui.projects().registries();
        }

        @Override
        public Kit kit() {
            return Ui.kit();
        }

        @Override
        public ProjectService projects() {
            return Ui.projects();
        }

        @Override
        public List<Finding> findings() {
            return List.of();
        }

        @Override
        public void open(EObject other) {
            throw new AssertionError("Nothing is opened from here.");
        }

        @Override
        public void status(String line) {
            // said in the window
        }
    }

    /** Opens the dialog for a file as the page does. */
    private Dialog dialog(Path file, Part piece) {
        TakeInDialog dialog = new TakeInDialog(Ui.window().getShell(), new Context(), file, trial.getParts(), piece, (made, data) -> { });
        dialog.setBlockOnOpen(false);
        dialog.open();
        Ui.pump();
        Combo what = Ui.find(dialog.getShell(), Combo.class, "What was recorded");
        Ui.choose(what, Ui.projects().registries().findRecordingKind("testing.press").orElseThrow().title()); // a stretched strip has such columns too
        return dialog;
    }

    private static String said(Shell shell) {
        return ((Prose) Pages.named(shell, "What is to be said")).words();
    }

    private void takeIn(Path file, Part piece) {
        Dialog dialog = dialog(file, piece);
        Shell shell = dialog.getShell();
        assertEquals("", said(shell));
        Ui.click(shell, "Take in");
        Ui.await(file + " is in", shell::isDisposed);
    }

    private static Control area(ChartPane chart) {
        return ((Chart) chart.getChildren()[0]).getPlotArea().getControl();
    }

    private static double highest(PlotModel plot) {
        return plot.series().stream().flatMap(s -> s.points().stream()).mapToDouble(PlotModel.Point::y).max().orElseThrow();
    }

    @Test
    void filesAreTakenInDrawnOverEachOtherMarkedAndKept() throws IOException {
        takeIn(press("first.csv", 1, false), trial.getParts().get(0));
        takeIn(press("second.csv", 0.9, true), trial.getParts().get(1));
        Recording first = trial.getParts().get(0).getRecordings().getFirst();
        assertEquals("testing.press", first.getKind());
        assertEquals(";", trial.getParts().get(1).getRecordings().getFirst().getSeparator());

        Shell shell = Pages.open(trial, "recordings");
        Ui.await("both are drawn", () -> Ui.all(shell, ChartPane.class).stream().anyMatch(c -> c.plot() != null && c.plot().series().size() == 2));
        ChartPane chart = Ui.all(shell, ChartPane.class).getFirst();
        assertEquals("Travel, mm", chart.plot().x().title());
        assertEquals("", String.join("\n", Walker.look(shell)));
        Ui.picture(shell, "recordings-two");

        zoom(chart);
        mark(shell, chart, first);
        Ui.click((Button) Pages.named(shell, "Keep of all shown"));
        for (Part part : trial.getParts().subList(0, 2)) {
            assertFalse(part.getMeasurements().isEmpty(), "kept of " + part.getCode());
            assertTrue(part.getMeasurements().stream().allMatch(m -> m.getRecording() == part.getRecordings().getFirst() && m.getReadings().size() == 1));
        }
        Ui.await("said so", () -> Pages.hasNamed(shell, "Keep Peak force") && Ui.all(shell, Button.class).stream().anyMatch(b -> Kit.nameOf(b).endsWith("· kept")));
        files(chart);
    }

    private static void zoom(ChartPane chart) {
        ChartWindow whole = chart.window();
        double peak = highest(chart.plot());
        Control area = area(chart);
        area.forceFocus();
        Event wheel = new Event();
        wheel.x = area.getSize().x / 5;
        wheel.count = 3;
        wheel.doit = true;
        area.notifyListeners(SWT.MouseVerticalWheel, wheel);
        PlotModel before = chart.plot();
        assertTrue(chart.window().right() - chart.window().left() < whole.right() - whole.left(), "nearer");
        Ui.await("it is drawn finer", () -> chart.plot() != before);
        assertEquals(peak, highest(chart.plot()), 0.01 * peak, "the peak is in sight and as high as before");
        Pages.key(area, SWT.HOME);
        assertEquals(whole, chart.window());
    }

    private void mark(Shell shell, ChartPane chart, Recording recording) {
        Ui.await("marks are there", () -> chart.marks().stream().anyMatch(m -> m.name().equals("peak")));
        Control area = area(chart);
        chart.chooseMark("peak");
        double found = place(chart);
        for (int i = 0; i < 10; i++) {
            Pages.key(area, SWT.ARROW_RIGHT);
        }
        assertTrue(Recordings.mark(recording, "peak").isEmpty(), "it is carried, and not put down yet");
        Pages.key(area, SWT.CR);
        double set = Recordings.mark(recording, "peak").orElseThrow().getPosition();
        double step = (chart.window().right() - chart.window().left()) / area.getSize().x;
        assertEquals(found + 10 * step, set, step);
        assertTrue(Recordings.mark(recording, "peak").orElseThrow().getByHand());
        Ui.await("its words say so", () -> chart.marks().stream().anyMatch(m -> m.name().equals("peak") && m.byHand()));
        Ui.click(shell, "Put back");
        assertTrue(Recordings.mark(recording, "peak").isEmpty());
        Ui.await("it lies where it was found", () -> Math.abs(place(chart) - found) < 1e-9);
    }

    private static double place(ChartPane chart) {
        return chart.marks().stream().filter(m -> m.name().equals("peak")).findFirst().orElseThrow().position();
    }

    private void files(ChartPane chart) throws IOException {
        chart.see(new ChartWindow(0.5, 1.5, chart.window().low(), chart.window().high()));
        chart.exportCsv(folder.resolve("seen.csv"));
        chart.exportSvg(folder.resolve("seen.svg"));
        chart.exportPng(folder.resolve("seen.png"));
        List<String> lines = Files.readAllLines(folder.resolve("seen.csv"));
        assertTrue(lines.size() > 10);
        for (String line : lines.subList(1, lines.size())) {
            double x = Double.parseDouble(line.split(",")[1].replace("\"", "")); // the name of a series holds no comma here
            assertTrue(x >= 0.5 - 1e-9 && x <= 1.5 + 1e-9, line);
        }
        assertTrue(Files.readString(folder.resolve("seen.svg")).contains("<polyline"));
        assertTrue(Files.size(folder.resolve("seen.png")) > 1000);
    }

    @Test
    void whatCannotBeTakenInIsSaidInOneSentenceAndChangesNothing() throws IOException {
        Path back = Files.writeString(folder.resolve("back.csv"), "time [s],travel [mm],force [N]\n0,0,0\n1,1,2\n0.5,2,3\n2,2,2\n");
        Dialog dialog = dialog(back, trial.getParts().getFirst());
        Shell shell = dialog.getShell();
        Ui.click(shell, "Take in");
        Ui.await("it is refused", () -> said(shell).contains("time runs backwards"));
        assertTrue(trial.getParts().getFirst().getRecordings().isEmpty());
        dialog.close();

        Path bytes = Files.write(folder.resolve("binary.csv"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3});
        dialog = dialog(bytes, trial.getParts().getFirst());
        assertTrue(said(dialog.getShell()).contains("is no text"), said(dialog.getShell()));
        assertFalse(Ui.find(dialog.getShell(), Button.class, "Take in").isEnabled());
        dialog.close();

        Path bare = Files.writeString(folder.resolve("bare.csv"), "a;b\n0;0\n1;2\n2;3\n");
        dialog = dialog(bare, trial.getParts().getFirst());
        assertTrue(said(dialog.getShell()).contains("travel"), said(dialog.getShell()));
        assertEquals("", String.join("\n", Walker.look(dialog.getShell())));
        Ui.picture(dialog.getShell(), "recording-dialog");
        dialog.close();
    }
}
