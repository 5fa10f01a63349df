package org.flexwright.core.session;

import static org.flexwright.core.session.SessionPropertyTest.assertSameText;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionTest {
    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private Path folder;
    private ProjectSession session;

    @BeforeEach
    void create() {
        folder = Demo.folder(temp);
        session = demo.store().create(folder, "Dome");
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void reopen() {
        session.close();
        session = demo.store().open(folder);
    }

    private void reopenWithoutPlugin() {
        session.close();
        session = demo.storeWithoutPlugin().open(folder);
    }

    private void title(String text) {
        session.merge("Title", "title", e -> e.set(e.project(), ModelPackage.Literals.PROJECT__TITLE, text));
    }

    /** A trial with a poured step that uses a lot, and a second trial based on it. */
    private void bench() {
        session.execute("Set up", e -> {
            MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
            grade.setCode("A");
            Lot lot = ModelFactory.eINSTANCE.createLot();
            lot.setCode("L1");
            grade.getLots().add(lot);
            e.add(e.project(), ModelPackage.Literals.PROJECT__GRADES, grade);
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setCode("T01");
            Step step = ModelFactory.eINSTANCE.createStep();
            step.setKind("demo.pour");
            EObject pour = demo.newPour();
            pour.eSet(demo.feature("planned"), 12.5);
            pour.eSet(demo.feature("grade"), grade);
            EObject row = EcoreUtil.create(demo.special);
            row.eSet(demo.special.getEStructuralFeature("why"), "last & least");
            @SuppressWarnings("unchecked")
            List<EObject> rows = (List<EObject>) pour.eGet(demo.feature("rows"));
            rows.add(row);
            @SuppressWarnings("unchecked")
            List<String> tags = (List<String>) pour.eGet(demo.feature("tags"));
            tags.add(" two words ");
            step.setDetails(pour);
            MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
            use.setGrade(grade);
            use.setLot(lot);
            step.getUses().add(use);
            t.getSteps().add(step);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
            Trial next = ModelFactory.eINSTANCE.createTrial();
            next.setCode("T02");
            next.setBasedOn(t);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, next);
        });
    }

    private Trial trial(int i) {
        return session.project().getTrials().get(i);
    }

    @Test
    void stepsHaveNamesAndCanBeUndoneAndRedone() {
        assertFalse(session.canUndo());
        assertEquals("", session.undoName());
        bench();
        title("Cap");
        assertEquals("Title", session.undoName());
        session.undo();
        assertEquals("Dome", session.project().getTitle());
        assertEquals("Title", session.redoName());
        assertEquals("Set up", session.undoName());
        session.redo();
        assertEquals("Cap", session.project().getTitle());
        session.undo();
        bench();
        assertFalse(session.canRedo(), "a new step ends what could be redone");
    }

    @Test
    void typingInOneFieldIsOneStep() {
        title("C");
        title("Ca");
        title("Cap");
        session.undo();
        assertEquals("Dome", session.project().getTitle());
        assertFalse(session.canUndo());
        session.redo();
        assertEquals("Cap", session.project().getTitle());
        session.merge("Job", "job", e -> e.set(e.project(), ModelPackage.Literals.PROJECT__JOB, "x"));
        title("Caps");
        session.undo();
        assertEquals("Cap", session.project().getTitle(), "typing elsewhere in between begins a new step");
        title("Dome");
    }

    @Test
    void typingBackToTheStartLeavesNoStep() {
        title("Cap");
        title("Dome");
        assertFalse(session.canUndo());
    }

    @Test
    void anEditThatChangesNothingIsNoStep() {
        session.execute("Nothing", e -> e.set(e.project(), ModelPackage.Literals.PROJECT__TITLE, "Dome"));
        assertFalse(session.canUndo());
        assertFalse(session.dirty());
    }

    @Test
    void listenersHearWhatWasTouched() {
        List<Set<EObject>> heard = new ArrayList<>();
        int[] saved = new int[1];
        SessionListener listener = new SessionListener() {
            @Override
            public void changed(Set<EObject> touched) {
                heard.add(touched);
            }

            @Override
            public void saved() {
                saved[0]++;
            }
        };
        session.addListener(listener);
        bench();
        assertTrue(heard.getFirst().containsAll(List.of(session.project(), trial(0), trial(1))));
        Trial first = trial(0);
        session.execute("Remove", e -> e.remove(first));
        assertTrue(heard.get(1).containsAll(List.of(session.project(), first, trial(0))), "who referred to it is touched too");
        session.undo();
        assertEquals(3, heard.size());
        session.save();
        assertEquals(1, saved[0]);
        session.removeListener(listener);
        session.redo();
        assertEquals(3, heard.size());
    }

    @Test
    void removingAnObjectEmptiesReferencesAndUndoBringsThemBack() {
        bench();
        byte[] before = session.bytes();
        Lot lot = session.project().getGrades().getFirst().getLots().getFirst();
        session.execute("Remove grade", e -> e.remove(session.project().getGrades().getFirst()));
        MaterialUse use = trial(0).getSteps().getFirst().getUses().getFirst();
        assertNull(use.getGrade());
        assertNull(use.getLot(), "it went with the grade that held it");
        assertNull(trial(0).getSteps().getFirst().getDetails().eGet(demo.feature("grade")), "plugin data too");
        assertTrue(session.find(ModelIndex.id(lot)).isEmpty());
        byte[] without = session.bytes();
        session.undo();
        assertSameText(before, session.bytes(), "");
        assertSame(lot, use.getLot());
        assertSame(lot, session.find(ModelIndex.id(lot)).orElseThrow());
        reopen();
        assertSameText(before, session.bytes(), "");
        session.execute("Remove grade", e -> e.remove(session.project().getGrades().getFirst()));
        assertSameText(without, session.bytes(), "");
    }

    @Test
    void detailsOfAnAbsentPluginSurviveRemovalAndUndo() throws IOException {
        bench();
        session.save();
        byte[] whole = session.bytes();
        reopenWithoutPlugin();
        assertTrue(trial(0).getSteps().getFirst().getDetails() instanceof AnyType);
        assertEquals(List.of(new MissingPlugin(Demo.NS, "org.flexwright.demo", "1.2.3")), session.missingPlugins());
        assertTrue(session.notices().getFirst().text().contains("org.flexwright.demo 1.2.3"), session.notices().toString());
        session.execute("Remove step", e -> e.remove(trial(0).getSteps().getFirst()));
        byte[] removed = session.bytes();
        session.undo();
        assertSameText(whole, session.bytes(), "");
        reopenWithoutPlugin();
        // the journal alone brings the unknown details back
        assertEquals(List.of("journal.back", "open.missing"), session.notices().stream().map(m -> m.key()).toList());
        assertSameText(whole, session.bytes(), "");
        session.execute("Remove step", e -> e.remove(trial(0).getSteps().getFirst()));
        assertSameText(removed, session.bytes(), "");
        session.undo();
        session.save();
        reopen();
        assertTrue(session.missingPlugins().isEmpty());
        EObject pour = trial(0).getSteps().getFirst().getDetails();
        assertSame(demo.pour, pour.eClass());
        assertEquals(12.5, pour.eGet(demo.feature("planned")));
        assertEquals(List.of(" two words "), pour.eGet(demo.feature("tags")));
    }

    @Test
    void aJournalThatNeedsAnAbsentPluginWaitsForIt() throws IOException {
        bench();
        session.save();
        EObject pour = trial(0).getSteps().getFirst().getDetails();
        session.execute("Note", e -> e.set(e.project(), ModelPackage.Literals.ENTRY__NOTE, "first"));
        session.execute("Actual", e -> e.set(pour, demo.feature("actual"), 12.7));
        byte[] edited = session.bytes();
        byte[] journal = SessionPropertyTest.journal(folder);
        reopenWithoutPlugin();
        assertTrue(session.readOnly());
        assertTrue(session.readOnlyReason().contains(Demo.NS), session.readOnlyReason());
        assertEquals("first", session.project().getNote());
        assertArrayEquals(journal, SessionPropertyTest.journal(folder));
        reopen();
        assertFalse(session.readOnly());
        assertSameText(edited, session.bytes(), "");
    }

    @Test
    void entriesOfANewerPluginAreKept() throws IOException {
        bench();
        session.save();
        session.close();
        Path main = folder.resolve("project.xmi");
        String newer = Files.readString(main).replace("planned=\"12.5\"", "planned=\"12.5\" glow=\"blue\"").replace("</details>",
                "<ramp minutes=\"5\"><hold/></ramp></details>");
        Files.writeString(main, newer);
        session = demo.store().open(folder);
        assertEquals(List.of("open.unknownFeatures"), session.notices().stream().map(m -> m.key()).toList());
        byte[] read = session.bytes();
        assertTrue(new String(read, java.nio.charset.StandardCharsets.UTF_8).contains("glow=\"blue\""));
        session.execute("Remove step", e -> e.remove(trial(0).getSteps().getFirst()));
        session.undo();
        assertSameText(read, session.bytes(), "");
        session.save();
        reopen();
        String saved = Files.readString(main);
        assertTrue(saved.contains("glow=\"blue\"") && saved.contains("minutes=\"5\"") && saved.contains("<hold/>"), saved);
    }

    @Test
    void pluginsThatWroteDetailsAreNoted() {
        bench();
        assertEquals(1, session.project().getPlugins().size());
        assertEquals("1.2.3", session.project().getPlugins().getFirst().getVersion());
        session.undo();
        assertTrue(session.project().getPlugins().isEmpty());
    }

    @Test
    void everyNewObjectThatNeedsOneGetsAnId() {
        bench();
        List<String> ids = new ArrayList<>();
        ModelIndex.each(session.project(), o -> {
            if (o.eClass().getEIDAttribute() != null) {
                ids.add(ModelIndex.id(o));
            }
        });
        assertFalse(ids.contains(null));
        assertEquals(ids.size(), Set.copyOf(ids).size());
        String taken = trial(0).getId();
        assertThrows(IllegalArgumentException.class, () -> session.execute("Again", e -> {
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setId(taken);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
        }));
        assertEquals(2, session.project().getTrials().size());
    }

    @Test
    void addressesLeadBack() {
        bench();
        ModelIndex.each(session.project(), o -> {
            String address = session.address(o);
            assertSame(o, session.find(address).orElseThrow(), address);
        });
        assertTrue(session.find("nowhere").isEmpty());
        assertTrue(session.find("/trials.7").isEmpty());
        assertTrue(session.find("/trials.x").isEmpty());
        assertTrue(session.find("/title").isEmpty());
    }

    @Test
    void aTextNoFileCanHoldIsRefusedWhereverItComesFrom() {
        byte[] before = session.bytes();
        RefusedException e = assertThrows(RefusedException.class, () -> title("a\u0000b"));
        assertTrue(e.getMessage().contains("U+0000") && e.getMessage().contains("place 2"), e.getMessage());
        assertThrows(RefusedException.class, () -> session.execute("Add", edit -> {
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setTitle("\uD800");
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
        }));
        assertSameText(before, session.bytes(), "");
    }

    @Test
    void aNumberThatIsNoneIsRefusedWhereverItComesFrom() {
        bench();
        byte[] before = session.bytes();
        assertThrows(IllegalArgumentException.class,
                () -> session.execute("Cost", e -> e.set(trial(0), ModelPackage.Literals.TRIAL__COST, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> session.execute("Add", e -> {
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setCost(Double.POSITIVE_INFINITY);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
        }));
        assertSameText(before, session.bytes(), "");
    }

    @Test
    void onlyWhatIsInTheProjectCanBeReferredTo() {
        bench();
        byte[] before = session.bytes();
        Trial outside = ModelFactory.eINSTANCE.createTrial();
        assertThrows(IllegalArgumentException.class,
                () -> session.execute("Base", e -> e.set(trial(0), ModelPackage.Literals.TRIAL__BASED_ON, outside)));
        assertThrows(IllegalArgumentException.class, () -> session.execute("Add", e -> {
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setBasedOn(outside);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
        }));
        assertThrows(IllegalArgumentException.class,
                () -> session.execute("Wrong", e -> e.set(trial(0), ModelPackage.Literals.TRIAL__BASED_ON, session.project())));
        assertThrows(IllegalArgumentException.class,
                () -> session.execute("Twice", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, trial(0))));
        assertSameText(before, session.bytes(), "");
    }

    @Test
    void anEditEndsWithItsWorkAndDoesNotNest() {
        Edit[] kept = new Edit[1];
        session.execute("Keep", e -> kept[0] = e);
        assertThrows(IllegalStateException.class, () -> kept[0].set(session.project(), ModelPackage.Literals.PROJECT__TITLE, "late"));
        assertThrows(IllegalStateException.class, () -> session.execute("Outer", e -> {
            e.set(e.project(), ModelPackage.Literals.PROJECT__TITLE, "outer");
            session.execute("Inner", inner -> inner.set(inner.project(), ModelPackage.Literals.PROJECT__JOB, "inner"));
        }));
        assertEquals("Dome", session.project().getTitle());
    }

    @Test
    void anotherThreadMayNotEdit() throws InterruptedException {
        Throwable[] thrown = new Throwable[1];
        Thread other = new Thread(() -> title("elsewhere"));
        other.setUncaughtExceptionHandler((t, e) -> thrown[0] = e);
        other.start();
        other.join();
        assertTrue(thrown[0] instanceof IllegalStateException);
        assertEquals("Dome", session.project().getTitle());
    }

    @Test
    void whatIsFrozenCannotBeEditedOrRemovedButTheFreezingCanBeUndone() {
        bench();
        session.execute("Targets", e -> {
            TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
            sheet.setVersion(1);
            sheet.getTargets().add(ModelFactory.eINSTANCE.createTarget());
            e.add(e.project(), ModelPackage.Literals.PROJECT__TARGET_SHEETS, sheet);
        });
        TargetSheet sheet = session.project().getTargetSheets().getFirst();
        Target target = sheet.getTargets().getFirst();
        session.execute("Low", e -> e.set(target, ModelPackage.Literals.TARGET__LOW, 1.0));
        session.execute("Freeze", e -> e.set(sheet, ModelPackage.Literals.TARGET_SHEET__FROZEN_AT, e.now()));
        byte[] frozen = session.bytes();
        List<Runnable> forbidden = List.of(
                () -> session.execute("Low", e -> e.set(target, ModelPackage.Literals.TARGET__LOW, 2.0)),
                () -> session.execute("Thaw", e -> e.set(sheet, ModelPackage.Literals.TARGET_SHEET__FROZEN_AT, null)),
                () -> session.execute("Remove", e -> e.remove(target)),
                () -> session.execute("Remove", e -> e.remove(sheet)));
        for (Runnable r : forbidden) {
            assertTrue(assertThrows(RefusedException.class, r::run).getMessage().contains("v1 is frozen"));
            assertSameText(frozen, session.bytes(), "");
        }
        session.undo();
        session.execute("Low", e -> e.set(target, ModelPackage.Literals.TARGET__LOW, 2.0));
        assertEquals(2.0, target.getLow());
        session.execute("Recipe", e -> {
            Recipe r = ModelFactory.eINSTANCE.createRecipe();
            r.setCode("R1");
            r.setVersion(1);
            r.setFrozenAt(e.now());
            r.setFrom(trial(0));
            e.add(e.project(), ModelPackage.Literals.PROJECT__RECIPES, r);
        });
        assertThrows(RefusedException.class, () -> session.execute("Remove", e -> e.remove(trial(0))), "the recipe rests on it");
    }

    @Test
    void emfReadsTheFileWithTheSameResult() throws IOException {
        RandomEdits edits = new RandomEdits(7, demo);
        for (int i = 0; i < 200; i++) {
            session.execute("edit", edits::some);
        }
        session.save();
        ResourceSet set = new ResourceSetImpl();
        set.getPackageRegistry().put(ModelPackage.eNS_URI, ModelPackage.eINSTANCE);
        set.getPackageRegistry().put(Demo.NS, demo.ePackage);
        XMIResourceImpl resource = new XMIResourceImpl(URI.createURI("memory:/project.xmi"));
        set.getResources().add(resource);
        resource.load(new ByteArrayInputStream(Files.readAllBytes(folder.resolve("project.xmi"))), Map.of());
        assertTrue(resource.getErrors().isEmpty(), resource.getErrors().toString());
        EObject other = resource.getContents().getFirst();
        assertTrue(EcoreUtil.equals(session.project(), other));
        assertNotNull(other);
    }

    @Test
    void closingTwiceDoesNoHarmAndAClosedSessionDoesNothing() {
        session.close();
        session.close();
        assertThrows(IllegalStateException.class, () -> title("late"));
    }
}
