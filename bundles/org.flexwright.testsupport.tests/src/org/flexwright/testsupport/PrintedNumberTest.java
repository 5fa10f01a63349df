package org.flexwright.testsupport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintedNumberTest {

	@ParameterizedTest
	@CsvSource({ "0.550, 0.55, 0.0005", ".970, 0.97, 0.0005", "-1.85411e-3, -0.00185411, 5e-9", "75, 75, 0.5", "22.2, 22.2, 0.05" })
	void showsThePrecisionOfItsLastDigit(String text, double value, double halfUnit) {
		PrintedNumber number = PrintedNumber.read(text).orElseThrow();
		assertEquals(value, number.value());
		assertEquals(halfUnit, number.halfUnit(), 1e-12 * halfUnit);
	}

	@ParameterizedTest
	@ValueSource(strings = { "9 points", "5 x 5", "1/3", "", "NaN", "1,5" })
	void aTextIsNoNumber(String text) {
		assertTrue(PrintedNumber.read(text).isEmpty());
	}

	@Test
	void agreesUpToHalfAUnitAndNoFurther() {
		PrintedNumber number = PrintedNumber.read("2.5").orElseThrow();
		assertTrue(number.agreesWith(2.45));
		assertTrue(number.agreesWith(2.55));
		assertFalse(number.agreesWith(2.4499));
		assertFalse(number.agreesWith(2.5501));
		assertFalse(number.agreesWith(Double.NaN));
		assertFalse(number.agreesWith(Double.POSITIVE_INFINITY));
	}
}
