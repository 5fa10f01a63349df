package org.flexwright.core.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;

import org.flexwright.model.Batch;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** A label finds its thing again, and says so when it cannot. */
class LabelCodeTest {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;
    private final Project project = project("p1");
    private final Trial trial = trial(project, "T08");

    private static Project project(String id) {
        Project project = MODEL.createProject();
        project.setId(id);
        return project;
    }

    private static Trial trial(Project project, String code) {
        Trial trial = MODEL.createTrial();
        trial.setCode(code);
        project.getTrials().add(trial);
        return trial;
    }

    private Entry found(Entry thing) {
        return LabelCode.parse(LabelCode.of(project, thing).text()).find(project);
    }

    private static LabelException.Why refused(Runnable work) {
        return assertThrows(LabelException.class, work::run).why();
    }

    @Test
    void everyKindIsFoundAgain() {
        trial(project, "T8");
        Part part = MODEL.createPart();
        part.setCode("P-2");
        trial.getParts().add(part);
        MaterialGrade grade = MODEL.createMaterialGrade();
        grade.setCode("pu 40/a");
        project.getGrades().add(grade);
        Lot lot = MODEL.createLot();
        lot.setCode("Größe 100% “7”");
        grade.getLots().add(lot);
        Batch batch = MODEL.createBatch();
        batch.setCode("B1");
        project.getBatches().add(batch);
        Recipe first = MODEL.createRecipe();
        first.setCode("R1");
        first.setVersion(1);
        Recipe second = MODEL.createRecipe();
        second.setCode("R1");
        second.setVersion(2);
        project.getRecipes().add(first);
        project.getRecipes().add(second);
        for (Entry thing : new Entry[] { trial, part, lot, batch, first, second }) {
            assertSame(thing, found(thing));
        }
        assertEquals(Optional.of(trial), LabelCode.of(project, part).trial(project));
        assertEquals(Optional.empty(), LabelCode.of(project, lot).trial(project));
        assertSame(trial, LabelCode.parse(" " + LabelCode.of(project, trial).text().toLowerCase() + "\n").find(project));
    }

    @Test
    void oneWrongSignOrTwoThatChangedPlacesAreNoticed() {
        String text = LabelCode.of(project, trial).text();
        for (int i = 0; i < text.length(); i++) {
            for (char sign : CheckSign.SIGNS.toCharArray()) {
                if (sign != text.charAt(i)) {
                    String wrong = text.substring(0, i) + sign + text.substring(i + 1);
                    assertThrows(LabelException.class, () -> LabelCode.parse(wrong), wrong);
                }
            }
            if (i + 1 < text.length() && text.charAt(i) != text.charAt(i + 1)) {
                String swapped = text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2);
                assertThrows(LabelException.class, () -> LabelCode.parse(swapped), swapped);
            }
        }
        assertEquals(LabelException.Why.DAMAGED, refused(() -> LabelCode.parse(text.replace("T08", "T03"))));
    }

    @Test
    void whatIsNoCodeIsRefused() {
        for (String text : new String[] { null, "", "T08", "https://example.org/x", "K7QM4-T--X", "\u0000\u0000\u0000\u0000\u0000-T-T08-X", "x".repeat(5000) }) {
            assertEquals(LabelException.Why.NO_CODE, refused(() -> LabelCode.parse(text)), text);
        }
        Random random = new Random(11);
        for (int n = 0; n < 20_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(30); i >= 0; i--) {
                text.append(CheckSign.SIGNS.charAt(random.nextInt(CheckSign.SIGNS.length())));
            }
            try {
                LabelCode code = LabelCode.parse(text.toString());
                assertTrue(text.toString().startsWith(code.project()));
            } catch (LabelException e) {
                assertTrue(e.getMessage().length() < 300);
            }
        }
    }

    @Test
    void anotherProjectAndWhatIsGoneAreRefused() {
        LabelCode code = LabelCode.of(project, trial);
        Project other = project("p2");
        trial(other, "T08");
        assertNotEquals(LabelCode.of(project), LabelCode.of(other));
        assertEquals(LabelException.Why.OTHER_PROJECT, refused(() -> code.find(other)));
        project.getTrials().clear();
        assertEquals(LabelException.Why.GONE, refused(() -> code.find(project)));
    }

    @Test
    void withoutACodeThereIsNoLabel() {
        trial.setCode(" ");
        assertEquals(LabelException.Why.NOT_LABELLED, refused(() -> LabelCode.of(project, trial)));
        trial.setCode("T".repeat(61));
        assertEquals(LabelException.Why.NOT_LABELLED, refused(() -> LabelCode.of(project, trial)));
    }
}
