package org.flexwright.core.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Lot;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The two parts that tell whether a new lot is alike. */
class BridgeTest {
    private static final Source OWN = Source.ownRecord("test");

    @TempDir
    Path temp;

    private static BatchPlan plan(Recipe recipe, List<Integer> parts, List<MaterialNeed> needs) {
        List<BatchRun> runs = IntStream.range(0, parts.size()).mapToObj(i -> new BatchRun(i + 1, parts.get(i), List.of(), null, null, Demo.NOW, null, null, null)).toList();
        return new BatchPlan(recipe, BatchWish.of(2, Demo.NOW, ZoneId.of("UTC")), new Spares(0, 0, null, 0, -1), 2, 1, runs, true, "", new Schedule(List.of()), Estimate.exact(0, OWN), needs,
                new CostSheet(List.of(), 2, null, List.of()), List.of());
    }

    /** Codes, titles and parts of the trials made. */
    private List<String> bridged(Integer... parts) throws IOException {
        List<String> made = new ArrayList<>();
        try (ProjectSession session = new Demo().store().create(temp.resolve("Dome" + parts.length + ".flexwright"), "Dome")) {
            session.execute("Bridge", edit -> {
                Recipe recipe = ModelFactory.eINSTANCE.createRecipe();
                recipe.setCode("R1");
                recipe.setVersion(1);
                recipe.setPlan(ModelFactory.eINSTANCE.createTrial());
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__RECIPES, recipe);
                Lot lot = ModelFactory.eINSTANCE.createLot();
                lot.setCode("L2");
                MaterialNeed need = new MaterialNeed(null, null, "A", 1, List.of(new LotPick(1, 0, 0, lot, 1)), 0, null, null, List.of(), 0, List.of(), List.of("L1"));
                for (Trial trial : Batches.bridge(edit, plan(recipe, List.of(parts), List.of(need)), plan(recipe, List.of(10), List.of(need)), StepKinds.NONE)) {
                    made.add(trial.getCode() + " " + trial.getTitle() + ": " + trial.getPartsWanted());
                }
            });
        }
        return made;
    }

    @Test
    void aMouldForOneTakesTwoCastsAndBothAreMade() throws IOException {
        assertEquals(List.of("T01 Bridge to lot L2, 2 parts: 2"), bridged(2));
        assertEquals(List.of("T01 Bridge to lot L2, 2 parts, 1 of 2: 1", "T02 Bridge to lot L2, 2 parts, 2 of 2: 1"), bridged(1, 1));
    }
}
