package org.flexwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties that hold for every unit, tried with random values; the seed stands in the message of a failure. */
class RoundTripTest {
	private static final long SEED = 20_260_101;
	private static final int TRIES = 300;

	static Stream<Unit> units() {
		return Stream.of(QuantityKind.values()).flatMap(kind -> Units.of(kind).stream());
	}

	@ParameterizedTest
	@MethodSource("units")
	void toTheCanonicalUnitAndBack(Unit unit) {
		Random random = new Random(SEED);
		for (int i = 0; i < TRIES; i++) {
			double value = value(random, unit.kind());
			double back = unit.fromCanonical(unit.toCanonical(value));
			double lost = 1e-14 * (Math.abs(value) + Math.abs(unit.offset() / unit.factor())); // a temperature loses the digits of the shift
			assertEquals(value, back, lost, () -> unit.symbol() + ", seed " + SEED);
		}
	}

	@ParameterizedTest
	@MethodSource("units")
	void whatIsPrintedInFullIsReadAsTheSameNumber(Unit unit) {
		Random random = new Random(SEED);
		for (int i = 0; i < TRIES; i++) {
			double value = value(random, unit.kind());
			String text = QuantityFormat.plain(value) + " " + unit.symbol();
			Quantity read = QuantityParser.parse(text, unit.kind());
			assertEquals(value, read.value(), () -> text + ", seed " + SEED);
			assertEquals(unit.symbol(), read.unit().symbol());
		}
	}

	@ParameterizedTest
	@MethodSource("units")
	void whatIsShownIsReadToSixDigits(Unit unit) {
		Random random = new Random(SEED);
		for (int i = 0; i < TRIES; i++) {
			Quantity quantity = new Quantity(value(random, unit.kind()), unit);
			String text = QuantityFormat.format(quantity);
			Quantity read = QuantityParser.parse(text, unit.kind());
			assertEquals(unit.symbol(), read.unit().symbol(), text);
			assertEquals(quantity.value(), read.value(), 5e-6 * Math.abs(quantity.value()), () -> text + ", seed " + SEED);
		}
	}

	@ParameterizedTest
	@MethodSource("units")
	void everySpellingFindsItsUnit(Unit unit) {
		for (String spelling : Stream.concat(Stream.of(unit.symbol(), unit.display()), unit.aliases().stream()).toList()) {
			assertEquals(unit, Units.find(unit.kind(), spelling).orElseThrow(() -> new AssertionError(unit.kind() + ": " + spelling)), spelling);
		}
	}

	@ParameterizedTest
	@EnumSource(QuantityKind.class)
	void theCanonicalUnitComesFirstAndChangesNothing(QuantityKind kind) {
		Unit canonical = kind.unit();
		assertEquals(1, canonical.factor());
		assertEquals(0, canonical.offset());
		assertEquals(kind, canonical.kind());
		assertEquals(List.of(canonical), Units.of(kind).stream().filter(u -> u.symbol().equals(canonical.symbol())).toList());
	}

	@Test
	void theLanguageOfTheMachineChangesNothing() {
		Locale before = Locale.getDefault();
		try {
			for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG"), Locale.forLanguageTag("hi-IN-u-nu-deva"), Locale.forLanguageTag("tr-TR"))) {
				Locale.setDefault(locale);
				assertEquals("1234.5 mm", QuantityFormat.format(1234.5, QuantityKind.LENGTH.unit()));
				assertEquals("1234.5", QuantityFormat.plain(1234.5));
				assertEquals("61 ± 2", QuantityFormat.format(61.2, 1.96, QuantityKind.NUMBER.unit()));
				assertEquals(25.4, QuantityParser.parse("1 IN", QuantityKind.LENGTH).canonical());
			}
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void randomTextIsReadOrRefusedButNeverBreaks() {
		String alphabet = "0123456789.,/ -+eE½'\"°%µ²gmkinozlbCFKPashr()[]{}\\$\t\u2212∞N";
		Random random = new Random(SEED);
		int read = 0;
		for (int i = 0; i < 30_000; i++) {
			String text = IntStream.range(0, 1 + random.nextInt(7)).mapToObj(k -> alphabet.charAt(random.nextInt(alphabet.length()))).map(String::valueOf)
					.reduce(random.nextBoolean() ? "" : String.valueOf(random.nextInt(100)), String::concat);
			QuantityKind kind = QuantityKind.values()[random.nextInt(QuantityKind.values().length)];
			try {
				assertTrue(Double.isFinite(QuantityParser.parse(text, kind).canonical()), text);
				read++;
			} catch (QuantityException refusal) {
				assertTrue(refusal.getMessage().endsWith("."), () -> text + ": " + refusal.getMessage());
			}
		}
		assertTrue(read > 100, "too few texts were read to say anything: " + read);
	}

	private static double value(Random random, QuantityKind kind) {
		if (kind == QuantityKind.COUNT) {
			return random.nextInt(1_000_000);
		}
		double size = random.nextDouble() * Math.pow(10, random.nextInt(9) - 4);
		return kind.lowest() == Double.NEGATIVE_INFINITY && random.nextBoolean() ? -size : size;
	}
}
