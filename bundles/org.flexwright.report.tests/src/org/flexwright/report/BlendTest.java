package org.flexwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Weighing;
import org.junit.jupiter.api.Test;

/** A blend in print: what went in, as far as anybody wrote it down. */
class BlendTest {
    private final Premix premix = ModelFactory.eINSTANCE.createPremix();

    private MaterialUse ingredient(PartRole role) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        premix.getIngredients().add(use);
        return use;
    }

    private static void weighed(MaterialUse use, double grams) {
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setNet(grams);
        use.getWeighings().add(weighing);
    }

    @Test
    void whatWasWeighedIsPrintedElseWhatWasPlanned() {
        premix.setCode("X1");
        weighed(ingredient(PartRole.COMPONENT_B), 90);
        MaterialUse filler = ingredient(PartRole.FILLER);
        filler.setPlanned(12.0);
        weighed(filler, 10.5);
        ingredient(PartRole.PIGMENT).setPlanned(0.5);
        premix.setDriedHours(4.0);
        assertEquals("Blend X1: part B 90 g; filler 10.5 g; pigment 0.5 g planned. Dried 4 h.", RecordSections.premix(premix));
    }
}
