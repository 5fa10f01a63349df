package org.flexwright.workbench.pages.spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.SpotMaps;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.SpotMap;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpotMapTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    /** The steps of the hue differ in grey, and words on them can be read: both themes. */
    @Test
    void theHueIsReadInGrey() {
        grey(new RGB(0xFF, 0xFF, 0xFF), new RGB(0x00, 0x5A, 0x91), new RGB(0x1B, 0x21, 0x26));
        grey(new RGB(0x1E, 0x22, 0x26), new RGB(0x6E, 0xBB, 0xEA), new RGB(0xEC, 0xEF, 0xF1));
    }

    private static void grey(RGB paper, RGB accent, RGB ink) {
        for (int step = 0; step < Palette.SHADES; step++) {
            RGB ground = Palette.shade(paper, accent, ink, step);
            assertTrue(Palette.contrast(ground, Palette.onShade(step) == Palette.Ink.INK ? ink : paper) >= 4.5, "words on step " + step);
            if (step > 0) {
                assertTrue(Palette.contrast(ground, Palette.shade(paper, accent, ink, step - 1)) >= 1.3, "steps " + step + " and before");
            }
        }
    }

    @Test
    void spotsArePlacedByClickAndKeysAndShowWhatWasRead() {
        Projects.small(folder);
        Trial trial = Pages.cast();
        SpotMap[] map = new SpotMap[1];
        Part[] part = new Part[1];
        Pages.session().execute("map", edit -> {
            map[0] = SpotMaps.add(edit, "hard spots", null);
            SpotMaps.put(edit, map[0], "crown", 0.5, 0.5);
            part[0] = Trials.addPart(edit, trial, "P1", PieceKind.PART, 6.5, null);
            read(edit, part[0], "crown", 45, 46, 44, 45, 45);
            read(edit, part[0], "flange", 58, 57, 58);
            read(edit, part[0], "wall", 41, 42, 41);
        });
        Shell shell = Pages.open(map[0], "spot.map");
        Control canvas = Pages.named(shell, "Spot map of");
        assertTrue(Kit.nameOf(canvas).contains("crown: 45 Shore A on one piece"), Kit.nameOf(canvas));
        mouse(canvas, SWT.MouseDown, 60, 60);
        mouse(canvas, SWT.MouseUp, 60, 60);
        assertEquals(2, map[0].getPlaces().size(), "a click on free ground adds a spot");
        Ui.type(Ui.find(shell, Text.class, "Spot"), "wall");
        assertTrue(Kit.nameOf(canvas).contains("wall: 41 Shore A"), Kit.nameOf(canvas));
        Pages.key(canvas, SWT.INSERT);
        assertEquals(3, map[0].getPlaces().size());
        Ui.type(Ui.find(shell, Text.class, "Spot"), "flange");
        for (int i = 0; i < 6; i++) {
            Pages.key(canvas, SWT.ARROW_RIGHT);
            Pages.key(canvas, SWT.ARROW_DOWN);
        }
        assertEquals(0.56, map[0].getPlaces().get(2).getAcross(), 1e-9);
        assertTrue(Kit.nameOf(canvas).contains("flange: 58 Shore A"), Kit.nameOf(canvas));
        Pages.key(canvas, SWT.PAGE_DOWN);
        Pages.key(canvas, SWT.INSERT);
        Pages.key(canvas, SWT.DEL);
        assertEquals(3, map[0].getPlaces().size());
        sized(shell, "spot-map");
        Shell parts = Pages.open(trial, "trial.parts");
        Ui.click(parts, "How it was read…");
        Ui.type(Ui.find(parts, Text.class, "Distance to edge, mm"), "9 mm");
        Ui.await("the protocol speaks", () -> Ui.shows(parts, "9 mm to the edge"));
        Ui.click(parts, "About on other scales");
        assertTrue(Ui.shows(parts, "≈ 88 ± 5 Shore 00"), "a guide, on request");
        sized(parts, "how-read");
    }

    private static void read(org.flexwright.core.session.Edit edit, Part part, String spot, double... values) {
        PropertyDef shore = Ui.projects().registries().findProperty("testing.shore-a").orElseThrow();
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(shore.id());
        key.setPieceKind(PieceKind.PART);
        key.setSpot(spot);
        key.setDwell(3.0);
        Measurement measurement = Measurements.add(edit, part, key, java.util.Arrays.stream(values).mapToObj(SpotMapTest::reading).toList(), null, null, edit.now());
        assertEquals(part, measurement.eContainer());
    }

    private static Reading reading(double value) {
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(value);
        reading.setCensoring(Censoring.NONE);
        return reading;
    }

    private static void mouse(Control control, int type, int x, int y) {
        Event event = new Event();
        event.button = 1;
        event.x = x;
        event.y = y;
        control.notifyListeners(type, event);
        Ui.pump();
    }

    private static void sized(Shell shell, String name) {
        for (int[] size : new int[][] {{1280, 800}, {1920, 1080}}) {
            shell.setSize(size[0], size[1]);
            Ui.rest();
            Ui.picture(shell, name + "-" + size[0]);
        }
    }
}
