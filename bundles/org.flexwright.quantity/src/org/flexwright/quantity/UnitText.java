package org.flexwright.quantity;

import java.util.regex.Pattern;

/** Spelling of units: one normal form to compare by, one form to print. */
final class UnitText {
	private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
	private static final String PLAIN_DIGITS = "0123456789-";
	private static final Pattern SPACES = Pattern.compile("\\s+");
	private static final Pattern AROUND_SLASH = Pattern.compile(" ?/ ?");

	private UnitText() {
	}

	/**
	 * The form in which spellings are compared: superscripts as digits, micro as u, degree sign, dots and stars between
	 * letters as one space, no space around a slash.
	 */
	static String normal(String text) {
		StringBuilder b = new StringBuilder(text.length());
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			int superscript = SUPERSCRIPTS.indexOf(c);
			b.append(superscript >= 0 ? PLAIN_DIGITS.substring(superscript, superscript + 1) : plain(c));
		}
		return AROUND_SLASH.matcher(SPACES.matcher(b).replaceAll(" ")).replaceAll("/").strip();
	}

	private static String plain(char c) {
		return switch (c) {
		case 'µ', 'μ' -> "u";
		case 'º' -> "°";
		case '℃' -> "°C";
		case '℉' -> "°F";
		case '″', '”', '“' -> "\"";
		case '′', '’', '‘' -> "'";
		case '·', '⋅', '∙', '*', '.', '\u00a0', '\u2009', '\u202f' -> " ";
		case '^' -> "";
		case '−' -> "-";
		default -> String.valueOf(c);
		};
	}

	/** The symbol with superscripts, micro and degree signs and the multiplication dot. */
	static String display(String symbol) {
		return symbol.replaceAll("\\bdeg(?=[CF]\\b)", "°").replaceAll("^deg$", "°").replaceAll("^delta ", "Δ").replaceAll("^u(?=[a-zA-Z])", "µ")
				.replaceAll("(?<=[a-zA-Z])2\\b", "²").replaceAll("(?<=[a-zA-Z])3\\b", "³").replaceAll("(?<=Pa) s$", "·s")
				.replaceAll("(?<=^N) mm$", "·mm");
	}
}
