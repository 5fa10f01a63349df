package org.flexwright.core.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.model.ModelFactory;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

/** Costs of trials that were made. */
class PartCostTest {
    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final List<Trial> trials = new ArrayList<>();

    /** A mould of 100 EUR without a limit, with so many casts before and two trials cast and counted in it. */
    private void mould(String code, int before) {
        Mould mould = ModelFactory.eINSTANCE.createMould();
        mould.setCode(code);
        mould.setPrice(100.0);
        mould.setCastsBefore(before);
        project.getMoulds().add(mould);
        for (int i = 0; i < 2; i++) {
            Trial trial = ModelFactory.eINSTANCE.createTrial();
            trial.setCode(code + "-" + i);
            trial.setMould(mould);
            project.getTrials().add(trial);
            MouldCast cast = ModelFactory.eINSTANCE.createMouldCast();
            cast.setTrial(trial);
            mould.getCasts().add(cast);
            trials.add(trial);
        }
    }

    @Test
    void eachMouldSharesItsPriceOverItsOwnCasts() {
        mould("M1", 2);
        mould("M2", 6);
        CostShare share = PartCost.made(project, trials).shares().stream().filter(s -> s.id().equals("mould")).findFirst().orElseThrow();
        assertEquals(100.0 * 2 / 4 + 100.0 * 2 / 8, share.eur().high(), 1e-9);
        assertEquals(0, share.eur().low());
        assertEquals("M1: 2 of 4 casts seen so far; it may see more, no limit is entered. M2: 2 of 8 casts seen so far; it may see more, no limit is entered.", share.why());
    }
}
