package org.flexwright.quantity;

import java.util.List;
import java.util.regex.Pattern;
import java.util.Optional;

/**
 * Reads what people type: {@code 3/8 in}, {@code 1 1/2"}, {@code 12.5cm3}, {@code 2,5 g}, {@code ½ oz}, {@code 75 F},
 * {@code 1e-3 m}.
 * <p>
 * Decimals: point and comma both mean the decimal mark; there are no thousands marks. A number with both, or with more
 * than one, is refused. {@code 1,234} (one to three digits, comma, three digits) is refused because it is read as 1234 in
 * some countries and as 1.234 in others; {@code 1.234} is always 1.234, as in the project's files; {@code 0,125} and
 * {@code 2,5} leave no doubt. Fractions are whole numbers over whole numbers, with a space or hyphen after the ones.
 * Units: see {@link Units}. A kind without a unit ({@link QuantityKind#NUMBER}) needs none.
 */
public final class QuantityParser {
	private static final Pattern SPACES = Pattern.compile("[\\p{Cntrl}\\p{Zs}]+");
	private static final Pattern INVISIBLE = Pattern.compile("\\p{Cf}+");
	private static final int LONGEST_QUOTED = 40;
	private static final int LONGEST_READ = 100;

	private QuantityParser() {
	}

	/**
	 * Reads a quantity whose unit must be typed.
	 *
	 * @throws QuantityException with one sentence to show when the text is no quantity of that kind
	 */
	public static Quantity parse(String text, QuantityKind kind) {
		return read(text, kind, null);
	}

	/**
	 * Reads a quantity; a number without a unit is meant in the default unit.
	 *
	 * @throws QuantityException        with one sentence to show when the text is no quantity of that kind
	 * @throws IllegalArgumentException when the default unit is of another kind
	 */
	public static Quantity parse(String text, QuantityKind kind, Unit defaultUnit) {
		if (defaultUnit.kind() != kind) {
			throw new IllegalArgumentException("The default unit " + defaultUnit.symbol() + " is no unit of " + kind.humanName() + ".");
		}
		return read(text, kind, defaultUnit);
	}

	private static Quantity read(String text, QuantityKind kind, Unit defaultUnit) {
		String plain = plain(text);
		if (plain.isEmpty()) {
			throw QuantityProblem.BLANK.with(kind.withArticle(), UnitList.example(kind));
		}
		String typed = shortened(plain);
		if (plain.length() > LONGEST_READ) {
			throw QuantityProblem.TOO_LONG.with(typed, String.valueOf(LONGEST_READ), UnitList.example(kind));
		}
		NumberText number = NumberText.read(typed, plain, kind);
		Unit unit = unit(typed, number.rest(), kind, defaultUnit);
		Quantity quantity = new Quantity(number.value(), unit);
		refuseImpossible(typed, quantity);
		return quantity;
	}

	/** One line without control characters, with plain spaces and minus signs. */
	private static String plain(String text) {
		return INVISIBLE.matcher(SPACES.matcher(text).replaceAll(" ")).replaceAll("").replace('−', '-').replace('–', '-').strip();
	}

	private static Unit unit(String typed, String text, QuantityKind kind, Unit defaultUnit) {
		if (text.isEmpty()) {
			if (defaultUnit != null) {
				return defaultUnit;
			}
			if (kind.unit().symbol().isEmpty()) {
				return kind.unit();
			}
			throw QuantityProblem.NO_UNIT.with(typed, kind.withArticle(), typed + " " + kind.unit().symbol(), UnitList.of(kind));
		}
		return Units.find(kind, text).orElseThrow(() -> wrongUnit(typed, text, kind));
	}

	private static QuantityException wrongUnit(String typed, String text, QuantityKind kind) {
		List<QuantityKind> others = Units.kindsWith(text);
		if (others.isEmpty()) {
			return QuantityProblem.UNKNOWN_UNIT.with(typed, shortened(text), kind.withArticle(), UnitList.of(kind));
		}
		Optional<QuantityKind> otherScale = others.stream().filter(QuantityKind::shore).findFirst();
		if (kind.shore() && otherScale.isPresent()) {
			return QuantityProblem.OTHER_SCALE.with(typed, otherScale.get().withArticle(), kind.withArticle());
		}
		String found = UnitList.join(others.stream().map(QuantityKind::withArticle).toList());
		return QuantityProblem.WRONG_KIND.with(typed, text, found, kind.withArticle(), UnitList.of(kind));
	}

	private static String shortened(String text) {
		return text.length() <= LONGEST_QUOTED ? text : text.substring(0, LONGEST_QUOTED) + "…";
	}

	private static void refuseImpossible(String typed, Quantity quantity) {
		QuantityKind kind = quantity.kind();
		double canonical = quantity.canonical();
		if (!Double.isFinite(canonical)) {
			throw QuantityProblem.NOT_FINITE.with(typed);
		}
		if (kind.whole() && (canonical != Math.rint(canonical) || canonical < 0)) {
			throw QuantityProblem.NOT_WHOLE.with(typed, kind.withArticle());
		}
		if (canonical < kind.lowest()) {
			throw QuantityProblem.TOO_LOW.with(typed, QuantityFormat.format(kind.lowest(), quantity.unit()));
		}
	}
}
