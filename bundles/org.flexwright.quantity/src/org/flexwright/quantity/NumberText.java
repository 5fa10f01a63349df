package org.flexwright.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number at the start of a typed text.
 *
 * @param value its value
 * @param rest  what follows it, stripped
 */
record NumberText(double value, String rest) {
	private static final Map<Character, Double> VULGAR = Map.ofEntries(Map.entry('½', 1 / 2.0), Map.entry('⅓', 1 / 3.0), Map.entry('⅔', 2 / 3.0),
			Map.entry('¼', 1 / 4.0), Map.entry('¾', 3 / 4.0), Map.entry('⅕', 1 / 5.0), Map.entry('⅖', 2 / 5.0), Map.entry('⅗', 3 / 5.0), Map.entry('⅘', 4 / 5.0),
			Map.entry('⅙', 1 / 6.0), Map.entry('⅚', 5 / 6.0), Map.entry('⅛', 1 / 8.0), Map.entry('⅜', 3 / 8.0), Map.entry('⅝', 5 / 8.0), Map.entry('⅞', 7 / 8.0));
	private static final String SIGN = "([+-]?)\\s*";
	private static final Pattern VULGAR_NUMBER = Pattern.compile(SIGN + "(\\d*)\\s*([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])(.*)");
	private static final Pattern FRACTION = Pattern.compile(SIGN + "(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)\\s*[/\u2044]\\s*(\\d+)(?![\\d.,])(.*)");
	private static final Pattern DECIMAL = Pattern.compile(SIGN + "((?:\\d|[.,'](?=\\d))*\\d[.,]?|\\d)([eE][+-]?\\d+)?(.*)");
	private static final Pattern GROUPED = Pattern.compile(".*[.,'].*[.,'].*|.*'.*");
	private static final Pattern COMMA_AND_THREE = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
	private static final Pattern WORD_FOR_NO_NUMBER = Pattern.compile("[+-]?\\s*(nan|inf(inity)?|∞)\\b.*|[+-]?\\s*∞.*", Pattern.CASE_INSENSITIVE);

	/**
	 * Reads the number.
	 *
	 * @param typed the whole text as it is to be named in a message
	 * @param text  the same with signs and spaces made plain
	 */
	static NumberText read(String typed, String text, QuantityKind kind) {
		if (WORD_FOR_NO_NUMBER.matcher(text).matches()) {
			throw QuantityProblem.NOT_FINITE.with(typed);
		}
		Matcher vulgar = VULGAR_NUMBER.matcher(text);
		if (vulgar.matches()) {
			double whole = vulgar.group(2).isEmpty() ? 0 : Double.parseDouble(vulgar.group(2));
			return of(typed, vulgar.group(1), whole + VULGAR.get(vulgar.group(3).charAt(0)), vulgar.group(4));
		}
		Matcher fraction = FRACTION.matcher(text);
		if (fraction.matches()) {
			double denominator = Double.parseDouble(fraction.group(4));
			if (denominator == 0) {
				throw QuantityProblem.ZERO_DENOMINATOR.with(typed);
			}
			double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
			return of(typed, fraction.group(1), whole + Double.parseDouble(fraction.group(3)) / denominator, fraction.group(5));
		}
		Matcher decimal = DECIMAL.matcher(text);
		if (!decimal.matches()) {
			throw QuantityProblem.NO_NUMBER.with(typed, kind.withArticle(), UnitList.example(kind));
		}
		String digits = decimal.group(2);
		refuseGrouping(typed, digits, decimal.group(4));
		String exponent = decimal.group(3) == null ? "" : decimal.group(3);
		return of(typed, decimal.group(1), Double.parseDouble(digits.replace(',', '.') + exponent), decimal.group(4));
	}

	private static void refuseGrouping(String typed, String digits, String rest) {
		if (GROUPED.matcher(digits).matches() || rest.matches("[\\s_]+\\d{3}([\\s.,].*|\\D.*)?") || rest.matches("[.,].*|'\\d.*")) {
			throw QuantityProblem.GROUPED_DIGITS.with(typed);
		}
		if (COMMA_AND_THREE.matcher(digits).matches()) {
			throw QuantityProblem.AMBIGUOUS_COMMA.with(typed, digits.replace(",", ""), digits.replace(',', '.'));
		}
	}

	private static NumberText of(String typed, String sign, double size, String rest) {
		if (!Double.isFinite(size)) {
			throw QuantityProblem.NOT_FINITE.with(typed);
		}
		return new NumberText(sign.equals("-") && size != 0 ? -size : size, rest.strip());
	}
}
