package org.flexwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = { "3/8 in | LENGTH | 9.525", "1 1/2 in | LENGTH | 38.1", "1-1/2\" | LENGTH | 38.1", "½ in | LENGTH | 12.7",
			"1½ in | LENGTH | 38.1", "1 ½ in | LENGTH | 38.1", "-3/8in | LENGTH | -9.525", "1\u20442 in | LENGTH | 12.7", "12 in. | LENGTH | 304.8", "2' | LENGTH | 609.6",
			"250µm | LENGTH | 0.25", "250 μm | LENGTH | 0.25", "10 thou | LENGTH | 0.254", "1e-3 m | LENGTH | 1", "1E3 mm | LENGTH | 1000", "5 MM | LENGTH | 5", ".5 mm | LENGTH | 0.5",
			"5. mm | LENGTH | 5", "0,125 mm | LENGTH | 0.125", "1.234 mm | LENGTH | 1.234", "+2 mm | LENGTH | 2", "\u22122,5 mm | LENGTH | -2.5", "- 2 mm | LENGTH | -2",
			"2\u00a0mm | LENGTH | 2", "2\u202fmm | LENGTH | 2", "\t2  mm  | LENGTH | 2", "12345,678 mm | LENGTH | 12345.678",
			"1 oz | MASS | 28.349523125", "1 lb | MASS | 453.59237", "2,5 g | MASS | 2.5", "2.5 G | MASS | 2.5", "2 kilograms | MASS | 2000", "12.5cm3 | VOLUME | 12.5",
			"12.5 cm³ | VOLUME | 12.5", "12.5 cm^3 | VOLUME | 12.5", "1 fl oz | VOLUME | 29.5735295625", "1 fl. oz. | VOLUME | 29.5735295625", "3 cc | VOLUME | 3", "1 L | VOLUME | 1000",
			"1 in³ | VOLUME | 16.387064", "1.05 g/mL | DENSITY | 1.05", "1100 kg/m³ | DENSITY | 1.1", "62.4 lb/ft3 | DENSITY | 0.99955211453511", "3 min | DURATION | 180",
			"1 1/2 h | DURATION | 5400", "2 days | DURATION | 172800", "75 F | TEMPERATURE | 23.888888888888889", "212 °F | TEMPERATURE | 100", "-40 degF | TEMPERATURE | -40",
			"300 K | TEMPERATURE | 26.85", "23 °C | TEMPERATURE | 23", "23 ℃ | TEMPERATURE | 23", "23 c | TEMPERATURE | 23", "-459.67 F | TEMPERATURE | -273.15",
			"10 K | TEMPERATURE_DIFFERENCE | 10", "18 Δ°F | TEMPERATURE_DIFFERENCE | 10", "10 delta degC | TEMPERATURE_DIFFERENCE | 10", "1 atm | PRESSURE_ABSOLUTE | 101.325",
			"29 mbar | PRESSURE_ABSOLUTE | 2.9", "14.695948775513 psi | PRESSURE_ABSOLUTE | 101.325", "760 torr | PRESSURE_ABSOLUTE | 101.325", "2 bara | PRESSURE_ABSOLUTE | 200",
			"-0.9 bar gauge | PRESSURE_GAUGE | -90", "3 barg | PRESSURE_GAUGE | 300", "300 kPa_g | PRESSURE_GAUGE | 300", "40 psig | PRESSURE_GAUGE | 275.79029172673",
			"2 N/mm² | STRESS | 2", "145.03773773020923 psi | STRESS | 1", "500 gf | FORCE | 4.903325", "1 ozf | FORCE | 0.27801385095378", "5 mN | FORCE | 0.005", "6.2 N·mm | ENERGY | 0.0062",
			"20 kcal/mol | MOLAR_ENERGY | 83.68", "800 cP | VISCOSITY | 0.8", "0.8 Pa·s | VISCOSITY | 0.8", "800 mPa.s | VISCOSITY | 0.8", "8 P | VISCOSITY | 0.8",
			"500 mm/min | SPEED | 8.3333333333333333", "6 ml/min | FLOW | 100", "180 ° | ANGLE | 180", "3.14159265358979 rad | ANGLE | 180", "1 W/m2 | IRRADIANCE | 0.1",
			"1 J/cm² | DOSE | 1000", "2 vol% | CONCENTRATION | 20000", "50 µg/m³ | MASS_CONCENTRATION | 0.05", "45 % | HUMIDITY | 45", "45%RH | HUMIDITY | 45", "9,1 % | FRACTION | 9.1",
			"0.091 fraction | FRACTION | 9.1", "45 A | SHORE_A | 45", "45 Shore A | SHORE_A | 45", "45A | SHORE_A | 45", "30 00 | SHORE_00 | 30", "60 Shore OO | SHORE_00 | 60", "5 1/s | RATE | 5",
			"3 1/min | RATE | 0.05", "250.3 g/mol | MOLAR_MASS | 250.3", "1.8 kJ/(kg K) | SPECIFIC_HEAT | 1800", "0.2 W/(m·K) | THERMAL_CONDUCTIVITY | 0.2", "0.1 mm²/s | DIFFUSIVITY | 1e-7",
			"240 fps | FREQUENCY | 240", "12.50 EUR | MONEY | 12.5", "12,5 € | MONEY | 12.5", "12.5 | MONEY | 12.5", "20 N/mm | TEAR_STRENGTH | 20", "10 phr | PARTS | 10",
			"3 | COUNT | 3", "5 pcs | COUNT | 5", "0.25 | NUMBER | 0.25", "1/3 | NUMBER | 0.33333333333333333" })
	void readsWhatPeopleType(String text, QuantityKind kind, double expected) {
		assertEquals(expected, QuantityParser.parse(text, kind).canonical(), 1e-12 * Math.abs(expected));
	}

	@Test
	void keepsTheUnitThatWasTyped() {
		Quantity quantity = QuantityParser.parse("3/8 in", QuantityKind.LENGTH);
		assertEquals(0.375, quantity.value());
		assertEquals("in", quantity.unit().symbol());
		assertEquals("0.375 in", QuantityFormat.format(quantity));
		assertEquals(9.525, quantity.canonical());
	}

	@Test
	void aMissingUnitIsTheDefaultOne() {
		Unit inch = Units.find(QuantityKind.LENGTH, "in").orElseThrow();
		assertEquals(12.7, QuantityParser.parse("½", QuantityKind.LENGTH, inch).canonical());
		assertEquals(5, QuantityParser.parse("5 mm", QuantityKind.LENGTH, inch).canonical());
		Unit gram = QuantityKind.MASS.unit();
		assertThrows(IllegalArgumentException.class, () -> QuantityParser.parse("5", QuantityKind.LENGTH, gram));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^', value = { "^^ | MASS | BLANK", "^ \t ^ | MASS | BLANK", "abc | MASS | NO_NUMBER", "€ | MONEY | NO_NUMBER", "g 5 | MASS | NO_NUMBER", "- | MASS | NO_NUMBER",
			", | MASS | NO_NUMBER", ">12 N | FORCE | NO_NUMBER", "~5 g | MASS | NO_NUMBER", "NaN g | MASS | NOT_FINITE", "nan | NUMBER | NOT_FINITE", "Infinity g | MASS | NOT_FINITE", "-∞ g | MASS | NOT_FINITE",
			"1e999 g | MASS | NOT_FINITE", "1e308 kg | MASS | NOT_FINITE", "1/0 in | LENGTH | ZERO_DENOMINATOR", "1,234.5 g | MASS | GROUPED_DIGITS", "1.234,5 g | MASS | GROUPED_DIGITS",
			"1,234,567 g | MASS | GROUPED_DIGITS", "1.234.567 g | MASS | GROUPED_DIGITS", "1 234 g | MASS | GROUPED_DIGITS", "1'234 g | MASS | GROUPED_DIGITS", "1..2 g | MASS | GROUPED_DIGITS",
			"1_234 g | MASS | GROUPED_DIGITS", "1,234 g | MASS | AMBIGUOUS_COMMA", "12,345 g | MASS | AMBIGUOUS_COMMA", "5 | MASS | NO_UNIT", "5 | TEMPERATURE | NO_UNIT", "3 lbs/ft | MASS | UNKNOWN_UNIT",
			"3 g g | MASS | UNKNOWN_UNIT", "1/2/3 in | LENGTH | UNKNOWN_UNIT", "5 ABC | MASS | UNKNOWN_UNIT", "5 oz | VOLUME | WRONG_KIND", "5 fl oz | MASS | WRONG_KIND", "5 kg | FORCE | WRONG_KIND",
			"2 bar gauge | PRESSURE_ABSOLUTE | WRONG_KIND", "2 barg | PRESSURE_ABSOLUTE | WRONG_KIND", "200 kPa | PRESSURE_GAUGE | WRONG_KIND", "10 °C | TEMPERATURE_DIFFERENCE | WRONG_KIND",
			"10 F | TEMPERATURE_DIFFERENCE | WRONG_KIND", "10 delta degC | TEMPERATURE | WRONG_KIND", "5 % | PARTS | WRONG_KIND", "5 ppm | MASS_CONCENTRATION | WRONG_KIND", "5 mg/m3 | CONCENTRATION | WRONG_KIND",
			"5 EUR | MASS | WRONG_KIND", "45 D | SHORE_A | OTHER_SCALE", "45 A | SHORE_00 | OTHER_SCALE", "45 Shore 00 | SHORE_A | OTHER_SCALE", "45 AM | SHORE_A | OTHER_SCALE", "2.5 | COUNT | NOT_WHOLE",
			"-1 | COUNT | NOT_WHOLE", "-300 °C | TEMPERATURE | TOO_LOW", "-1 K | TEMPERATURE | TOO_LOW", "-1 kPa | PRESSURE_ABSOLUTE | TOO_LOW", "2 Mpascal | STRESS | UNKNOWN_UNIT", "2 mpa | STRESS | UNKNOWN_UNIT",
			"2 MN | FORCE | UNKNOWN_UNIT", "5 m | DURATION | WRONG_KIND", "5 g | NUMBER | WRONG_KIND" })
	void refuses(String text, QuantityKind kind, QuantityProblem problem) {
		QuantityException refusal = refused(text, kind);
		assertEquals(problem, refusal.problem(), refusal.getMessage());
		assertOneSentence(refusal);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
			"3 lbs/ft | MASS | \"3 lbs/ft\" has the unknown unit \"lbs/ft\": a mass can be given in g, kg, mg, oz or lb.",
			"5 oz | VOLUME | \"5 oz\" is not a volume: oz is a mass, use cm3, ml, mm3, l, m3, ft3, in3 or floz.",
			"2 bar gauge | PRESSURE_ABSOLUTE | \"2 bar gauge\" is not an absolute pressure: bar gauge is a gauge pressure, use kPa, Pa, MPa, bar, mbar, psi, atm, mmHg or torr.",
			"200 kPa | MASS | \"200 kPa\" is not a mass: kPa is an absolute pressure or a stress, use g, kg, mg, oz or lb.",
			"1,234 g | MASS | \"1,234 g\" can be read in two ways: write 1234 or 1.234.",
			"12 | MASS | \"12\" has no unit: a mass is needed, for example 12 g (units: g, kg, mg, oz or lb).",
			"45 D | SHORE_A | \"45 D\" is a Shore D hardness, not a Shore A hardness: hardness scales are never converted, so read it on the other scale.",
			"-300 °C | TEMPERATURE | \"-300 °C\" is lower than anything can be: the lowest is -273.15 °C.",
			"2.5 | COUNT | \"2.5\" is not a count: type a whole number from 0 up." })
	void saysWhatWasTypedWhatIsWrongAndWhatIsAllowed(String text, QuantityKind kind, String sentence) {
		assertEquals(sentence, refused(text, kind).getMessage());
	}

	@ParameterizedTest
	@ValueSource(strings = { "x\ny", "5 \u0007g\u0000\u0000", "5 mmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmm", "5 {1}", "5 $1\\", "\u202e5 q" })
	void aHostileTextGivesOneShortLine(String text) {
		assertOneSentence(refused(text, QuantityKind.DENSITY));
	}

	@Test
	void aVeryLongTextIsRefused() {
		for (String text : new String[] { "9".repeat(100_000) + " q", "1 ".repeat(50_000) + "g", "1/".repeat(50_000), "1" + " ".repeat(100_000) + "1" + "\n".repeat(100_000) + "g" }) {
			assertOneSentence(refused(text, QuantityKind.MASS));
		}
	}

	private static QuantityException refused(String text, QuantityKind kind) {
		return assertThrows(QuantityException.class, () -> QuantityParser.parse(text, kind), text);
	}

	private static void assertOneSentence(QuantityException refusal) {
		String message = refusal.getMessage();
		assertTrue(message.endsWith(".") && message.length() < 260 && message.indexOf('\n') < 0, message);
		assertTrue(message.chars().noneMatch(Character::isISOControl), message);
	}
}
