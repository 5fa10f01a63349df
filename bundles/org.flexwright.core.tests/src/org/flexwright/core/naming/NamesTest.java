package org.flexwright.core.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.model.Identified;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class NamesTest {
    private static final ModelFactory MAKE = ModelFactory.eINSTANCE;
    private final Project project = MAKE.createProject();

    private Trial trial(String code) {
        Trial trial = MAKE.createTrial();
        trial.setCode(code);
        project.getTrials().add(trial);
        Part part = MAKE.createPart();
        part.setCode("P1");
        trial.getParts().add(part);
        return trial;
    }

    private Lot lot(String grade, String code) {
        MaterialGrade owner = MAKE.createMaterialGrade();
        owner.setCode(grade);
        Lot lot = MAKE.createLot();
        lot.setCode(code);
        owner.getLots().add(lot);
        project.getGrades().add(owner);
        return lot;
    }

    private Recipe recipe(String code, int version) {
        Recipe recipe = MAKE.createRecipe();
        recipe.setCode(code);
        recipe.setVersion(version);
        project.getRecipes().add(recipe);
        return recipe;
    }

    @Test
    void everyClassOfTheModelHasAName() {
        for (EClassifier type : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (type instanceof EClass thing && !thing.isAbstract()) {
                assertFalse(Names.of(EcoreUtil.create(thing)).isBlank(), thing.getName());
                assertFalse(Names.path(EcoreUtil.create(thing)).contains("null,"), thing.getName());
            }
        }
    }

    @Test
    void aPathSaysWhoseItIs() {
        assertEquals("T07, piece P1", Names.path(trial("T07").getParts().get(0)));
        assertEquals("GA, lot L7", Names.path(lot("GA", "L7")));
        assertEquals("project", Names.path(null));
        assertEquals("project", Names.path(project));
        Mould mould = MAKE.createMould();
        mould.setCode("M1");
        MouldCast cast = MAKE.createMouldCast();
        cast.setTrial(trial("T08"));
        mould.getCasts().add(cast);
        assertEquals("mould M1, cast of T08", Names.path(cast));
        assertEquals("Cast of T08", Names.of(cast));
    }

    @Test
    void whatIsTypedFindsTheThing() {
        Trial trial = trial("T07");
        Lot lot = lot("GA", "L-7");
        Recipe first = recipe("R1", 1);
        Recipe second = recipe("R1", 2);
        assertEquals(List.<Identified>of(trial), Find.called(project, " t07 "));
        for (String typed : List.of("T07 P1", "t07/p1", "T07.P1", "T07-P1")) {
            assertEquals(List.<Identified>of(trial.getParts().get(0)), Find.called(project, typed), typed);
        }
        assertEquals(List.<Identified>of(lot), Find.called(project, "l-7"));
        assertEquals(List.<Identified>of(lot), Find.called(project, "GA/L-7"));
        assertEquals(List.of(), Find.called(project, "T0"));
        assertEquals(first, Find.recipe(project, "r1  V1"));
        assertEquals(second, Find.recipe(project, "R1"));
    }

    @Test
    void aLotOfTwoGradesIsNotGuessed() {
        lot("GA", "L7");
        lot("GB", "L7");
        assertTrue(assertThrows(UnknownNameException.class, () -> Find.lot(project, "L7")).getMessage().contains("GA/L7, GB/L7"));
        assertEquals("GB", ((MaterialGrade) Find.lot(project, "gb/l7").eContainer()).getCode());
    }

    @Test
    void aNearMissIsOffered() {
        for (int n = 1; n <= 20; n++) {
            trial(String.format("T%02d", n));
        }
        assertTrue(assertThrows(UnknownNameException.class, () -> Find.trial(project, "T070")).getMessage().contains("did you mean T07"));
        assertEquals("There is no mould \"M1\"; there is none yet.", assertThrows(UnknownNameException.class, () -> Find.mould(project, "M1")).getMessage());
    }
}
