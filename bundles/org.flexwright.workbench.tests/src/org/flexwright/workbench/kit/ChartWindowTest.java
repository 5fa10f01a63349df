package org.flexwright.workbench.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

class ChartWindowTest {

    private static final ChartWindow WHOLE = new ChartWindow(0, 10, -1, 1);

    @Test
    void thePlaceUnderTheHandStaysWhereItIs() {
        ChartWindow nearer = WHOLE.widened(2, 4);
        assertEquals(new ChartWindow(2, 7, -1, 1), nearer);
        assertEquals((4 - WHOLE.left()) / 10, (4 - nearer.left()) / 5, 1e-12);
    }

    @Test
    void furtherOffThanTheWholeIsTheWhole() {
        assertEquals(WHOLE, WHOLE.widened(0.3, 2).within(WHOLE));
    }

    @Test
    void shiftedOverTheEdgeItStopsThereAndKeepsItsWidth() {
        assertEquals(new ChartWindow(5, 10, -1, 1), new ChartWindow(4, 9, -1, 1).moved(3, 0).within(WHOLE));
    }

    @Test
    void aWindowWithoutRoomIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new ChartWindow(1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new ChartWindow(0, 1, 1, Double.NaN));
    }

    @Test
    void whateverAHandDoesTheWindowLiesWithinTheWholeAndHasRoom() {
        Random random = new Random(9);
        ChartWindow at = WHOLE;
        for (int n = 0; n < 20_000; n++) {
            ChartWindow next = switch (random.nextInt(3)) {
                case 0 -> at.widened(Math.pow(1.25, random.nextInt(-9, 12)), random.nextDouble(at.left(), at.right()));
                case 1 -> at.heightened(Math.pow(1.25, random.nextInt(-9, 12)), random.nextDouble(at.low(), at.high()));
                default -> at.moved(random.nextDouble(-2, 2), random.nextDouble(-2, 2));
            };
            at = next.within(WHOLE);
            assertTrue(at.left() >= 0 && at.right() <= 10 + 1e-12 && at.low() >= -1 && at.high() <= 1 + 1e-12, at.toString());
        }
    }
}
