package org.flexwright.safety.gauge;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.safety.gauge.SmallPartGauge.Fit;
import org.junit.jupiter.api.Test;

class GaugeChecksTest {
    private static final String CFR = SmallPartGauge.SOURCE.display();

    @Test
    void sizes() {
        expect("safety/9 gauge.1", SmallPartGauge.volume(), CFR);
        expect("safety/9 gauge.2", SmallPartGauge.longestRod(), CFR);
        expect("safety/9 gauge.3", SmallPartGauge.DEEP, CFR);
        expect("safety/9 gauge.4", SmallPartGauge.DIAMETER, CFR);
        expect("safety/9 floor slope (45 deg: rise = dia)", SmallPartGauge.floorSlope(), CFR);
        expect("safety/9 inch.1", SmallPartGauge.DIAMETER, CFR);
        expect("safety/9 inch.2", SmallPartGauge.SHALLOW, CFR);
        expect("safety/9 inch.3", SmallPartGauge.DEEP, CFR);
        expect("safety/9 inch.4", SmallPartGauge.BALL_HOLE, CFR);
    }

    @Test
    void partsInTheDrawing() {
        assertEquals(Fit.FITS, SmallPartGauge.ball(31.75));
        assertEquals(Fit.DOES_NOT_FIT, SmallPartGauge.ball(31.8));
        assertEquals(Fit.FITS, SmallPartGauge.box(20, 10, 10, null));
        assertEquals(Fit.DOES_NOT_FIT, SmallPartGauge.box(70, 5, 5, null));
        assertEquals(Fit.CANNOT_TELL, SmallPartGauge.box(60, 5, 5, null));
        assertEquals(Fit.DOES_NOT_FIT, SmallPartGauge.box(50, 40, 40, 33.0));
        assertTrue(SmallPartGauge.uprightRodFits(10, 47.15));
        assertFalse(SmallPartGauge.uprightRodFits(10, 47.2));
        assertTrue(SmallPartGauge.ballDrops(44.4));
        assertFalse(SmallPartGauge.ballDrops(44.45));
    }
}
