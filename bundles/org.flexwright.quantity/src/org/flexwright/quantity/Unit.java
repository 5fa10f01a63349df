package org.flexwright.quantity;

import java.util.List;
import java.util.Objects;

/**
 * A unit of one kind: canonical value = value * factor + offset.
 *
 * @param symbol  the name in files and on the command line, plain ASCII; empty for pure numbers
 * @param kind    the kind it measures
 * @param factor  size of one unit in canonical units, above 0
 * @param offset  canonical value at zero of this unit; other than 0 for temperatures only
 * @param aliases other spellings that are read
 */
public record Unit(String symbol, QuantityKind kind, double factor, double offset, List<String> aliases) {

	/** @throws IllegalArgumentException when the factor is not a positive finite number, or the offset not finite */
	public Unit {
		Objects.requireNonNull(symbol);
		Objects.requireNonNull(kind);
		if (!(factor > 0) || Double.isInfinite(factor) || !Double.isFinite(offset)) {
			throw new IllegalArgumentException("The unit " + symbol + " needs a positive finite factor and a finite offset.");
		}
		aliases = List.copyOf(aliases);
	}

	/** The symbol as set in print: {@code °C}, {@code cm³}, {@code Pa·s}. It is read back as the same unit. */
	public String display() {
		return UnitText.display(symbol);
	}

	/** A value in this unit as a canonical value. */
	public double toCanonical(double value) {
		return factor == 1 && offset == 0 ? value : Rounding.digits15(value * factor + offset);
	}

	/** A canonical value in this unit. */
	public double fromCanonical(double canonical) {
		return factor == 1 && offset == 0 ? canonical : Rounding.digits15((canonical - offset) / factor);
	}
}
