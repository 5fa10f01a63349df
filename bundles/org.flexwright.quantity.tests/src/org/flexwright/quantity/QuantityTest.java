package org.flexwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

	@Test
	void convertsWithinItsKind() {
		Quantity typed = new Quantity(212, unit(QuantityKind.TEMPERATURE, "F"));
		assertEquals(100, typed.canonical());
		assertEquals(373.15, typed.in(unit(QuantityKind.TEMPERATURE, "K")).value());
		assertEquals(new Quantity(1.5, unit(QuantityKind.LENGTH, "in")), Quantity.ofCanonical(38.1, QuantityKind.LENGTH).in(unit(QuantityKind.LENGTH, "in")));
	}

	@Test
	void neverConvertsToAnotherKind() {
		Quantity mass = new Quantity(5, unit(QuantityKind.MASS, "oz"));
		QuantityException refusal = assertThrows(QuantityException.class, () -> mass.in(unit(QuantityKind.FORCE, "N")));
		assertEquals("\"5 oz\" is not a force: oz is a mass, use N, mN, kN, gf, kgf, lbf or ozf.", refusal.getMessage());
		Quantity hard = new Quantity(45, QuantityKind.SHORE_A.unit());
		assertThrows(QuantityException.class, () -> hard.in(QuantityKind.SHORE_D.unit()));
	}

	@Test
	void neverConvertsACurrency() {
		Quantity price = QuantityParser.parse("12 EUR", QuantityKind.MONEY);
		assertEquals("\"12 EUR\" is not converted to USD: amounts are kept in one currency.",
				assertThrows(QuantityException.class, () -> price.in(unit(QuantityKind.MONEY, "USD"))).getMessage());
		assertEquals(12, price.in(QuantityKind.MONEY.unit()).value());
	}

	@Test
	void refusesWhatIsNoNumberOrNoUnit() {
		Unit g = QuantityKind.MASS.unit();
		assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.NaN, g));
		assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.POSITIVE_INFINITY, g));
		assertThrows(IllegalArgumentException.class, () -> new Unit("x", QuantityKind.MASS, 0, 0, List.of()));
		assertThrows(IllegalArgumentException.class, () -> new Unit("x", QuantityKind.MASS, Double.NaN, 0, List.of()));
		assertThrows(IllegalArgumentException.class, () -> new Unit("x", QuantityKind.MASS, 1, Double.POSITIVE_INFINITY, List.of()));
	}

	@Test
	void namesTheKindsOfASpelling() {
		assertEquals(List.of(QuantityKind.PRESSURE_ABSOLUTE, QuantityKind.STRESS), Units.kindsWith("MPa"));
		assertEquals(List.of(QuantityKind.MASS), Units.kindsWith("oz"));
		assertTrue(Units.kindsWith("furlong").isEmpty());
		assertTrue(Units.kindsWith("").isEmpty());
		assertTrue(Units.find(QuantityKind.FORCE, "MN").isEmpty(), "mega is not milli");
	}

	@ParameterizedTest
	@CsvSource({ "TEMPERATURE, degC, °C", "VOLUME, cm3, cm³", "DENSITY, g/cm3, g/cm³", "VISCOSITY, mPa s, mPa·s", "LENGTH, um, µm", "TEMPERATURE_DIFFERENCE, delta degF, Δ°F",
			"IRRADIANCE, mW/cm2, mW/cm²", "DIFFUSIVITY, m2/s, m²/s", "ENERGY, N mm, N·mm", "HUMIDITY, %RH, %RH", "SHORE_00, Shore 00, Shore 00", "PRESSURE_GAUGE, kPa gauge, kPa gauge",
			"ANGLE, deg, °", "MASS_CONCENTRATION, ug/m3, µg/m³", "RATE, 1/s, 1/s", "STRESS, N/mm2, MPa" })
	void showsUnitsAsInPrint(QuantityKind kind, String symbol, String display) {
		assertEquals(display, unit(kind, symbol).display());
	}

	@ParameterizedTest
	@CsvSource({ "0, 0", "-0.0, 0", "1, 1", "100, 100", "0.1, 0.1", "1234567.25, 1234567.25", "123456789, 123456789", "1e9, 1e9", "1.5e12, 1.5e12", "0.00001, 0.00001", "0.000001, 1e-6",
			"-2.5e-9, -2.5e-9", "0.30000000000000004, 0.30000000000000004" })
	void plainKeepsEveryDigit(double value, String text) {
		assertEquals(text, QuantityFormat.plain(value));
		assertEquals(value == 0 ? 0 : value, Double.parseDouble(text));
	}

	@ParameterizedTest
	@CsvSource({ "9.525, mm, 9.525 mm", "9.525, in, 0.375 in", "0.30000000000000004, mm, 0.3 mm", "3.14159265, mm, 3.14159 mm", "1234567.4, mm, 1234567 mm", "-2, mm, -2 mm",
			"0.0001234567, mm, 0.000123457 mm", "0.000001, mm, 1e-6 mm", "0, mm, 0 mm" })
	void formatIsShort(double canonical, String unit, String text) {
		assertEquals(text, QuantityFormat.format(canonical, unit(QuantityKind.LENGTH, unit)));
	}

	@ParameterizedTest
	@CsvSource({ "60.9, 1.96, mm, 61 ± 2 mm", "61, 1.44, mm, 61.0 ± 1.4 mm", "1.23456, 0.0123, mm, 1.235 ± 0.012 mm", "1.23456, 0.0987, mm, 1.2 ± 0.1 mm", "61, 0.97, mm, 61 ± 1 mm",
			"1234, 123, mm, 1230 ± 120 mm", "61, 37, mm, 60 ± 40 mm", "25.4, 2.54, in, 1.00 ± 0.10 in", "61.25, 0, mm, 61.25 mm", "0, 0.5, mm, 0.0 ± 0.5 mm" })
	void theUncertaintyDecidesTheDigits(double value, double uncertainty, String unit, String text) {
		assertEquals(text, QuantityFormat.format(value, uncertainty, unit(QuantityKind.LENGTH, unit)));
	}

	@Test
	void anUncertaintyOfATemperatureIsADifference() {
		assertEquals("75.2 ± 0.9 °F", QuantityFormat.format(24, 0.5, unit(QuantityKind.TEMPERATURE, "F")));
	}

	@Test
	void refusesToPrintWhatIsNoNumber() {
		Unit mm = QuantityKind.LENGTH.unit();
		assertThrows(IllegalArgumentException.class, () -> QuantityFormat.plain(Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> QuantityFormat.format(Double.POSITIVE_INFINITY, mm));
		assertThrows(IllegalArgumentException.class, () -> QuantityFormat.format(1, -1, mm));
		assertThrows(IllegalArgumentException.class, () -> QuantityFormat.format(1, Double.NaN, mm));
	}

	private static Unit unit(QuantityKind kind, String text) {
		return Units.find(kind, text).orElseThrow();
	}
}
