package org.flexwright.moulding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldingDataFactory;
import org.junit.jupiter.api.Test;

class GateFillTest {
    private static Filling filling(Double growth) {
        Filling filling = MouldingDataFactory.eINSTANCE.createFilling();
        filling.setViscosity(2.0);
        filling.setGateRadius(1.0);
        filling.setGateLength(10.0);
        filling.setPlannedPressure(100.0);
        filling.setWorkingMinutes(5.0);
        filling.setWorkingGrowth(growth);
        return filling;
    }

    /** Where the sheet does not say by how much the mix has thickened when its working time ends, it has doubled. */
    @Test
    void unsaidItHasDoubled() {
        assertEquals(2, GateFill.of(filling(null)).orElseThrow().growth());
        assertEquals(GateFill.of(filling(2.0)).orElseThrow(), GateFill.of(filling(null)).orElseThrow());
        assertTrue(GateFill.of(filling(1.0)).isEmpty(), "a mix that does not thicken has no such flow");
    }
}
