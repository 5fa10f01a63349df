package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.flexwright.core.exchange.ImportOptions.Decimal;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weighings from a balance's own table: columns by name, units, doubtful numbers, all or nothing. */
class ForeignImportTest {
    @TempDir
    Path temp;

    private ProjectSession session;
    private MaterialUse use;

    @BeforeEach
    void aTrialThatUsesPartA() {
        ProjectStore store = new Demo().store();
        ProjectStore.Draft draft = store.draft();
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setCode("A");
        draft.project().getGrades().add(grade);
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode("T01");
        Step step = ModelFactory.eINSTANCE.createStep();
        use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setGrade(grade);
        step.getUses().add(use);
        trial.getSteps().add(step);
        draft.project().getTrials().add(trial);
        session = store.create(temp.resolve("Dome.flexwright"), draft);
        use = session.project().getTrials().get(0).getSteps().get(0).getUses().get(0);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private ImportPlan plan(Map<String, String> columns, Decimal decimal, String... lines) throws IOException {
        Path file = Files.writeString(temp.resolve("balance.csv"), String.join("\n", lines));
        return ForeignImport.weighings(session.project().getTrials().get(0), null, null, file, columns, decimal);
    }

    private void refused(String sentence, String... lines) throws IOException {
        ImportPlan plan = plan(Map.of("material", "Item"), Decimal.ASK, lines);
        assertTrue(plan.refusals().stream().anyMatch(r -> r.text().contains(sentence)), () -> plan.refusals().stream().map(ImportRefusal::text).toList().toString());
        assertThrows(RefusedException.class, () -> session.execute("Import", plan::apply));
        assertEquals(0, use.getWeighings().size());
    }

    @Test
    void columnsAreNamedAndUnitsCount() throws IOException {
        ImportPlan plan = plan(Map.of("material", "Item", "net", "Weight", "at", "Time"), Decimal.ASK, "Item;Weight (kg);Time;Other", "A;0,0125;2026-02-01T10:00:00Z;x",
                "", "a;7.5 g;;", "A;'=7;;".replace("'=", ""));
        assertEquals(List.of(), plan.refusals());
        assertEquals(0, use.getWeighings().size());
        session.execute("Import weighings", plan::apply);
        assertEquals(List.of(12.5, 7.5, 7000.0), use.getWeighings().stream().map(Weighing::getNet).map(d -> Math.round(d * 1e6) / 1e6).toList());
        assertEquals("2026-02-01T10:00:00Z", use.getWeighings().get(0).getAt().toString());
        session.undo();
        assertEquals(0, use.getWeighings().size());
    }

    @Test
    void whatIsDoubtfulOrWrongIsRefusedWithItsRow() throws IOException {
        refused("table balance.csv, row 3, column Item: B is not used in the trial's steps; there are [A]", "Item,net", "A,1", "B,2");
        refused("row 2, column net", "Item,net", "A,NaN");
        refused("row 2, column net", "Item,net", "A,=1+1");
        refused("row 2, column net", "Item,net [degC]", "A,12");
        refused("the comma could be a decimal sign or part thousands", "Item;net", "A;1,250");
        refused("row 2", "Item,gross,tare", "A,5,9");
        refused("row 2", "Item,net", "A,");
        assertEquals(0, plan(Map.of("material", "Item"), Decimal.COMMA, "Item;net", "A;1,250").refused());
        assertEquals(1, plan(Map.of("material", "Item"), Decimal.COMMA, "Item;net", "A;1.250").refused());
        assertEquals(1, plan(Map.of("material", "Item"), Decimal.COMMA, "Item;net", "A;1.234,5").refused());
        refused("row 2, column net", "Item;net", "A;1.234,5");
        assertThrows(RefusedException.class, () -> plan(Map.of("material", "Thing"), Decimal.ASK, "Item,net", "A,1"));
        assertThrows(RefusedException.class, () -> plan(Map.of("weight", "net"), Decimal.ASK, "Item,net", "A,1"));
    }

    /** As on the bench: a premix by its code or title, a component by its letter where no material is called so. */
    @Test
    void aPremixAndARoleAreNamesToo() throws IOException {
        session.execute("Premix", edit -> {
            Premix premix = ModelFactory.eINSTANCE.createPremix();
            premix.setCode("X1");
            premix.setTitle("powder in B");
            edit.add(session.project(), ModelPackage.Literals.PROJECT__PREMIXES, premix);
            MaterialUse blend = ModelFactory.eINSTANCE.createMaterialUse();
            blend.setRole(PartRole.PREMIX);
            blend.setPremix(premix);
            edit.add(session.project().getTrials().get(0).getSteps().get(0), ModelPackage.Literals.STEP__USES, blend);
            edit.set(use, ModelPackage.Literals.MATERIAL_USE__ROLE, PartRole.COMPONENT_B);
        });
        ImportPlan plan = plan(Map.of("material", "Item"), Decimal.ASK, "Item;net", "x1;12,5", "Powder in B;1", "part B;2", "B;3", "A;4", "Premix;5");
        assertEquals(List.of(), plan.refusals());
        session.execute("Import weighings", plan::apply);
        assertEquals(List.of(2.0, 3.0, 4.0), use.getWeighings().stream().map(Weighing::getNet).toList());
        assertEquals(List.of(12.5, 1.0, 5.0), session.project().getTrials().get(0).getSteps().get(0).getUses().get(1).getWeighings().stream().map(Weighing::getNet).toList());
        assertEquals(1, plan(Map.of("material", "Item"), Decimal.ASK, "Item;net", "filler;1").refused());
    }
}
