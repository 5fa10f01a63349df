package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {

    @ParameterizedTest
    @CsvSource({"0, 1, 6, 0.0 0.2 0.4 0.6 0.8 1.0", "0.66, 0.93, 7, 0.70 0.75 0.80 0.85 0.90", "-3, 3, 4, -2 0 2", "38, 47, 6, 38 40 42 44 46",
        "0, 5000, 6, 0 1000 2000 3000 4000 5000"})
    void numbersAtTicksAreRound(double low, double high, int most, String labels) {
        assertEquals(List.of(labels.split(" ")), Ticks.of(low, high, most).stream().map(Tick::label).toList());
    }

    @Test
    void thereAreNeverTooManyAndTheStepIsOneTwoOrFive() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double low = random.nextGaussian() * Math.pow(10, random.nextInt(7) - 3);
            double high = low + random.nextDouble() * Math.pow(10, random.nextInt(7) - 3) + 1e-9;
            int most = 2 + random.nextInt(9);
            List<Tick> ticks = Ticks.of(low, high, most);
            assertTrue(ticks.size() <= most, low + " " + high + " " + most + " " + ticks);
            assertTrue(ticks.stream().allMatch(t -> t.value() >= low && t.value() <= high));
            if (ticks.size() > 1) {
                double step = ticks.get(1).value() - ticks.get(0).value();
                double mantissa = step / Math.pow(10, Math.floor(Math.log10(step * 1.0000001)));
                assertTrue(Math.abs(mantissa - 1) < 1e-3 || Math.abs(mantissa - 2) < 1e-3 || Math.abs(mantissa - 5) < 1e-3, step + " " + mantissa);
            }
        }
    }

    @Test
    void anAxisEndsAtRoundNumbersAndCarriesItsUnit() {
        Axis axis = Axis.over("Peak force", "N", 0.66, 0.93);
        assertEquals("Peak force, N", axis.title());
        assertEquals(0.65, axis.min(), 1e-12);
        assertEquals(0.95, axis.max(), 1e-12);
        assertArrayEquals(new double[] {-4, 4}, Ticks.rounded(-3, 3, 5), 1e-12);
        assertTrue(Axis.over("Count", "", 5, 5).min() < 5);
        assertThrows(IllegalArgumentException.class, () -> Ticks.of(1, 1, 5));
        assertThrows(IllegalArgumentException.class, () -> Ticks.of(0, Double.POSITIVE_INFINITY, 5));
    }

    @Test
    void csvQuotesAndKeepsFormulasAsText() {
        TableModel table = new TableModel(List.of(TableModel.Column.text("a, b"), TableModel.Column.number("x")),
                List.of(List.of("say \"hi\"", "-1.5"), List.of("=1+1", "+x")));
        assertEquals("\"a, b\",x\n\"say \"\"hi\"\"\",-1.5\n'=1+1,'+x\n", table.csv());
        assertThrows(IllegalArgumentException.class, () -> new TableModel(List.of(TableModel.Column.text("a")), List.of(List.of("x", "y"))));
    }
}
