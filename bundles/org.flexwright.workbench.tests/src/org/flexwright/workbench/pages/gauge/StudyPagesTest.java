package org.flexwright.workbench.pages.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.gauge.GaugeTable;
import org.flexwright.core.naming.Names;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Ranking;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyPagesTest {
    private static final double[][][] READINGS = { { { 40, 40.5, 40 }, { 41, 41.5, 41 } }, { { 45, 45.5, 46 }, { 46.5, 46, 46 } }, { { 50, 51, 50.5 }, { 51.5, 51, 51 } },
            { { 55, 55, 55.5 }, { 55.5, 56.5, 56 } } };

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    @Test
    void aGaugeStudyIsTypedByKeysAndItsSpreadKept() {
        Projects.example(folder);
        Instrument gauge = Pages.project().getInstruments().stream().filter(i -> i.getUnit() != null && i.getUnit().contains("Shore")).findFirst().orElse(Pages.project().getInstruments().getFirst());
        GaugeStudy study = study(gauge);
        Shell shell = Pages.open(study, "gauge.study");
        assertTrue(Ui.shows(shell, "has no readings yet"));
        for (int w = 0; w < 2; w++) {
            for (int p = 0; p < READINGS.length; p++) {
                Text field = field(shell, "W" + w, "P" + p);
                assertTrue(p == 0 && w == 0 || field.getDisplay().getFocusControl() == null || field.isFocusControl(), "Enter goes on to " + Kit.nameOf(field));
                String words = String.join("; ", java.util.Arrays.stream(READINGS[p][w]).mapToObj(String::valueOf).toList());
                Ui.type(field, words);
                enter(field);
            }
        }
        assertEquals(24, GaugeTable.of(study).count());
        assertTrue(Ui.shows(shell, "One reading by one person scatters by"));
        Text first = field(shell, "W0", "P0");
        first.setFocus();
        Ui.type(first, "abc");
        enter(first);
        assertTrue(Kit.descriptionOf(first).contains("abc"), "one sentence beside the field");
        Ui.type(first, "40; 40.5; 40");
        enter(first);
        assertEquals(24, GaugeTable.of(study).count());
        Button keep = Ui.find(shell, Button.class, "Keep as own spread of the gauge");
        assertTrue(keep.getEnabled());
        Ui.click(keep);
        assertTrue(gauge.getStudy() == study && gauge.getSpread() > 0.3 && gauge.getSpread() < 0.6, String.valueOf(gauge.getSpread()));
        assertFalse(keep.getEnabled());
        Ui.picture(shell, "gauge-study");
    }

    @Test
    void severalPeopleAreRankedAndATrialSaysHowSureItIs() {
        Projects.example(folder);
        Ranking ranking = ModelFactory.eINSTANCE.createRanking();
        ranking.setQuestion("which feels liveliest?");
        Pages.session().execute("test", edit -> Rankings.add(edit, ranking));
        Shell shell = Pages.open(ranking, "ranking.orders");
        List<String> names = Rankings.pieces(Pages.project()).stream().map(Names::piece).limit(4).toList();
        for (String who : List.of("Ana", "Ben", "Cy")) {
            Ui.type(Ui.find(shell, Text.class, "Who"), who);
            Text order = Ui.find(shell, Text.class, "Order, first to last");
            Ui.type(order, String.join(who.equals("Cy") ? " = " : " > ", names));
            enter(order);
        }
        assertEquals(3, ranking.getLists().size());
        assertTrue(Ui.shows(shell, "3 people"));
        look(shell, "ranking");
        Pages.open(Pages.trial("T06"), "trial.sure");
        assertTrue(Pages.hasNamed(shell, "What makes "), "bars of a part");
        look(shell, "how-sure");
    }

    private static GaugeStudy study(Instrument gauge) {
        GaugeStudy study = ModelFactory.eINSTANCE.createGaugeStudy();
        study.setTitle("hand durometer, two people");
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty("testing.shore-a");
        study.setKey(key);
        study.setInstrument(gauge);
        study.setTolerance(6.0);
        Pages.session().execute("test", edit -> {
            GaugeStudies.add(edit, study);
            GaugeStudies.addPerson(edit, study, "W0");
            GaugeStudies.addPerson(edit, study, "W1");
            for (int p = 0; p < READINGS.length; p++) {
                GaugeStudies.addPiece(edit, study, "P" + p);
            }
        });
        return study;
    }

    private static Text field(Shell shell, String who, String piece) {
        return Ui.find(shell, Text.class, "Readings of " + who + " on " + piece);
    }

    private static void enter(Text field) {
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Ui.pump();
    }

    private static void look(Shell shell, String name) {
        var was = shell.getSize();
        for (int[] size : new int[][] { { 1280, 800 }, { 1920, 1080 } }) {
            shell.setMaximized(false);
            shell.setSize(size[0], size[1]);
            Ui.pump();
            Ui.picture(shell, name + "-" + size[0]);
            assertEquals(List.of(), Walker.look(shell), name);
        }
        shell.setSize(was);
    }
}
