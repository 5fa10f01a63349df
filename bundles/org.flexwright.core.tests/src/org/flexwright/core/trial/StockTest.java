package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Identified;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockTest {
    private static final Instant NOW = Instant.parse("2026-03-01T09:30:00Z");

    @TempDir
    Path temp;

    private ProjectSession session;
    private final Lot resin = lot("R1", 500.0);
    private final Lot powder = lot("F1", 40.0);

    private static Lot lot(String code, Double amount) {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode(code);
        lot.setAmount(amount);
        return lot;
    }

    @BeforeEach
    void open() {
        session = new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "Ann", "1.0.0", List.of()))
                .create(temp.resolve("Dome.flexwright"), "Dome");
        session.execute("materials", edit -> {
            for (Lot lot : List.of(resin, powder)) {
                MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
                grade.setCode(lot.getCode());
                grade.setName("grade " + lot.getCode());
                grade.getLots().add(lot);
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__GRADES, grade);
            }
        });
    }

    @AfterEach
    void close() {
        session.close();
    }

    private Project project() {
        return session.project();
    }

    private static MaterialUse of(PartRole role, Lot lot) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setLot(lot);
        use.setGrade((MaterialGrade) lot.eContainer());
        return use;
    }

    private MaterialUse weighed(MaterialUse use, double grams) {
        session.execute("weigh", edit -> {
            Trial trial = ModelFactory.eINSTANCE.createTrial();
            Step step = ModelFactory.eINSTANCE.createStep();
            step.getUses().add(use);
            trial.getSteps().add(step);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
            Weighings.add(edit, use, null, null, grams, false, null);
        });
        return use;
    }

    private Premix blend(double resinGrams, double powderGrams) {
        Premix premix = ModelFactory.eINSTANCE.createPremix();
        session.execute("premix", edit -> {
            premix.getIngredients().add(Premixes.ingredient(edit, of(PartRole.COMPONENT_B, resin), resinGrams));
            premix.getIngredients().add(Premixes.ingredient(edit, of(PartRole.FILLER, powder), powderGrams));
            Premixes.add(edit, premix);
        });
        return premix;
    }

    @Test
    void everyWeighingLeavesItsLot() {
        assertEquals(500, Stock.onHand(resin, project()).orElseThrow());
        MaterialUse use = weighed(of(PartRole.COMPONENT_B, resin), 21.5);
        session.execute("mend", edit -> Weighings.add(edit, use, null, null, 1.5, true, null));
        weighed(of(PartRole.COMPONENT_B, resin), 30);
        assertEquals(447, Stock.onHand(resin, project()).orElseThrow(), 1e-9);
        session.execute("correct the amount", edit -> edit.set(resin, ModelPackage.Literals.LOT__AMOUNT, 50.0));
        assertEquals(-3, Stock.onHand(resin, project()).orElseThrow(), 1e-9, "more went out than was bought, and it says so");
        session.execute("unknown", edit -> edit.set(resin, ModelPackage.Literals.LOT__AMOUNT, null));
        assertTrue(Stock.onHand(resin, project()).isEmpty());
    }

    @Test
    void aPremixUsesUpItsIngredientsOnceAndTheBlendByItself() {
        Premix premix = blend(100, 16);
        assertEquals("X1", premix.getCode());
        assertEquals(NOW, premix.getMadeAt());
        assertEquals(400, Stock.onHand(resin, project()).orElseThrow(), 1e-9);
        assertEquals(24, Stock.onHand(powder, project()).orElseThrow(), 1e-9);
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(PartRole.PREMIX);
        use.setPremix(premix);
        weighed(use, 30);
        assertEquals(400, Stock.onHand(resin, project()).orElseThrow(), 1e-9);
        assertEquals(86, Stock.onHand(premix, project()).orElseThrow(), 1e-9);
    }

    @Test
    void whatARecipeKeepsOfItsTrialIsNotWeighedAgain() {
        weighed(of(PartRole.COMPONENT_B, resin), 20);
        session.execute("freeze", edit -> {
            Recipe recipe = ModelFactory.eINSTANCE.createRecipe();
            Trial copy = EcoreUtil.copy(edit.project().getTrials().getFirst());
            copy.setId(null);
            copy.eAllContents().forEachRemaining(content -> ((Identified) content).setId(null));
            recipe.setAsMade(copy);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__RECIPES, recipe);
        });
        assertEquals(480, Stock.onHand(resin, project()).orElseThrow(), 1e-9);
    }

    @Test
    void aLotExpiresAfterItsDayNotOnIt() {
        resin.setExpires(LocalDate.of(2026, 3, 1));
        assertFalse(Stock.expired(resin, LocalDate.of(2026, 3, 1)));
        assertTrue(Stock.expired(resin, LocalDate.of(2026, 3, 2)));
        assertFalse(Stock.expired(powder, LocalDate.MAX));
    }

    @Test
    void aPremixThatCannotBeCountedIsRefusedAndNothingStays() {
        assertEquals("The premix X1 needs at least two ingredients: a single material is weighed as what it is.", refused(of(PartRole.COMPONENT_B, resin)));
        assertEquals("The premix X1 has no weighed amount of grade F1: give the grams that went in, above 0 g.",
                refused(grams(of(PartRole.COMPONENT_B, resin), 100), of(PartRole.FILLER, powder)));
        assertEquals("The premix X1 has no weighed amount of grade F1: give the grams that went in, above 0 g.",
                refused(grams(of(PartRole.COMPONENT_B, resin), 100), grams(of(PartRole.FILLER, powder), 0)));
        MaterialUse bare = ModelFactory.eINSTANCE.createMaterialUse();
        bare.setRole(PartRole.FILLER);
        assertEquals("The premix X1 has an ingredient (filler) without a material: choose which one it is.",
                refused(grams(of(PartRole.COMPONENT_B, resin), 100), grams(bare, 3)));
        MaterialUse nested = of(PartRole.FILLER, powder);
        nested.setPremix(ModelFactory.eINSTANCE.createPremix());
        assertEquals("The premix X1 holds another premix: give the ingredients of that one instead.",
                refused(grams(nested, 3), grams(of(PartRole.COMPONENT_B, resin), 100)));
        blend(10, 1);
        Premix again = ModelFactory.eINSTANCE.createPremix();
        again.setCode("x1");
        assertEquals("There is a premix x1 already: choose another code, X2 is free.",
                assertThrows(RefusedException.class, () -> session.execute("again", edit -> Premixes.add(edit, again))).getMessage());
        assertEquals(1, project().getPremixes().size());
    }

    private static MaterialUse grams(MaterialUse use, double grams) {
        var weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setNet(grams);
        use.getWeighings().add(weighing);
        return use;
    }

    private String refused(MaterialUse... ingredients) {
        Premix premix = ModelFactory.eINSTANCE.createPremix();
        premix.getIngredients().addAll(List.of(ingredients));
        String sentence = assertThrows(RefusedException.class, () -> session.execute("premix", edit -> Premixes.add(edit, premix))).getMessage();
        assertTrue(project().getPremixes().isEmpty());
        return sentence;
    }
}
