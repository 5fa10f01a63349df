package org.flexwright.quantity;

import java.util.List;

/** The units of a kind as words in a sentence. */
final class UnitList {
	private UnitList() {
	}

	/** {@code g, kg, mg, oz or lb}. */
	static String of(QuantityKind kind) {
		List<String> symbols = Units.of(kind).stream().map(Unit::symbol).filter(s -> !s.isEmpty()).toList();
		return symbols.isEmpty() ? "a number without a unit" : join(symbols);
	}

	/** {@code a, b or c}. */
	static String join(List<String> words) {
		int last = words.size() - 1;
		return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
	}

	/** A text that would be read: {@code 12.5 g}. */
	static String example(QuantityKind kind) {
		return ((kind.whole() ? "12" : "12.5") + " " + kind.unit().symbol()).strip();
	}
}
