package org.flexwright.moulding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldingDataFactory;
import org.junit.jupiter.api.Test;

class GateFillTest {
    private static WorkingTime working(Double factor) {
        return WorkingTime.stated(Estimate.exact(5, Source.sheet("test")), "", factor, null, null, null);
    }

    private static Filling filling(Double growth) {
        Filling filling = MouldingDataFactory.eINSTANCE.createFilling();
        filling.setViscosity(2.0);
        filling.setGateRadius(1.0);
        filling.setGateLength(10.0);
        filling.setPlannedPressure(100.0);
        filling.setWorkingGrowth(growth);
        return filling;
    }

    /** Where the sheet does not say by how much the mix has thickened when its working time ends, it has doubled. */
    @Test
    void unsaidItHasDoubled() {
        assertEquals(2, GateFill.of(filling(null), working(null)).orElseThrow().growth());
        assertEquals(GateFill.of(filling(2.0), working(null)).orElseThrow(), GateFill.of(filling(null), working(null)).orElseThrow());
        assertTrue(GateFill.of(filling(1.0), working(null)).isEmpty(), "a mix that does not thicken has no such flow");
        assertTrue(GateFill.of(filling(2.0), null).isEmpty(), "without a working time nothing says how fast it thickens");
    }

    /** The definition that comes with the working time counts before what the filling step says. */
    @Test
    void whatEndsTheWorkingTimeComesWithIt() {
        assertEquals(4, GateFill.of(filling(2.0), working(4.0)).orElseThrow().growth());
    }
}
