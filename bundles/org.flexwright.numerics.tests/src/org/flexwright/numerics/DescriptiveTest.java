package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;

class DescriptiveTest {
	private static final long SEED = 7;

	@Test
	void describes() {
		double[] x = { 3, 1, 4, 1, 5 };
		assertEquals(2.8, Descriptive.mean(x), 1e-15);
		assertEquals(3, Descriptive.median(x));
		assertEquals(1, Descriptive.min(x));
		assertEquals(5, Descriptive.max(x));
		assertEquals(4, Descriptive.range(x));
		assertEquals(2, Descriptive.mad(x)); // distances 0 2 1 2 2
		assertEquals(Math.sqrt(3.2), Descriptive.standardDeviation(x).orElseThrow(), 1e-15);
		assertEquals(2.5, Descriptive.median(4, 1, 2, 3));
		assertEquals(3, x[0], "the caller's values stay in their order");
	}

	@Test
	void theMeanDoesNotOverflow() {
		assertEquals(1.5e308, Descriptive.mean(1.5e308, 1.5e308, 1.5e308), 1e294);
		assertEquals(1.5e308, Descriptive.median(1.5e308, 1.5e308));
	}

	@Test
	void aShiftMovesTheMeanAndLeavesTheSpread() {
		Random random = new Random(SEED);
		for (int run = 0; run < 200; run++) {
			double[] x = random.doubles(3 + random.nextInt(20), 0, 10).map(v -> Math.rint(v * 64) / 64).toArray(); // exact in binary also after the shift
			double[] shifted = Arrays.stream(x).map(v -> v + 1_048_576).toArray();
			assertEquals(Descriptive.mean(x) + 1_048_576, Descriptive.mean(shifted), 1e-9, "seed " + SEED);
			assertEquals(Descriptive.standardDeviation(x).orElseThrow(), Descriptive.standardDeviation(shifted).orElseThrow(), 1e-9, "seed " + SEED);
			assertEquals(Descriptive.median(x) + 1_048_576, Descriptive.median(shifted), "seed " + SEED);
		}
	}

	@Test
	void tooFewOrNoNumbers() {
		assertTrue(Descriptive.standardDeviation(5).isEmpty());
		assertThrows(IllegalArgumentException.class, () -> Descriptive.mean());
		assertThrows(IllegalArgumentException.class, () -> Descriptive.median());
		String message = assertThrows(IllegalArgumentException.class, () -> Descriptive.mean(1, Double.NaN)).getMessage();
		assertEquals("Number 2 of the values must be finite, not NaN.", message);
		assertThrows(IllegalArgumentException.class, () -> Descriptive.max(Double.POSITIVE_INFINITY));
	}
}
