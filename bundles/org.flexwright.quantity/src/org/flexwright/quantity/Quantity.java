package org.flexwright.quantity;

import java.util.Objects;

/**
 * A value with its unit, as it was typed or is to be shown.
 *
 * @param value the number, finite
 * @param unit  its unit
 */
public record Quantity(double value, Unit unit) {

	/** @throws IllegalArgumentException when the value is not finite */
	public Quantity {
		Objects.requireNonNull(unit);
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException("A quantity needs a finite number, not " + value + ".");
		}
	}

	/** A value in the canonical unit of a kind. */
	public static Quantity ofCanonical(double canonical, QuantityKind kind) {
		return new Quantity(canonical, kind.unit());
	}

	/** What it measures. */
	public QuantityKind kind() {
		return unit.kind();
	}

	/** The value in the canonical unit of its kind. */
	public double canonical() {
		return unit.toCanonical(value);
	}

	/**
	 * The same quantity in another unit of its kind.
	 *
	 * @throws QuantityException when the unit is of another kind, or both name a currency and not the same
	 */
	public Quantity in(Unit other) {
		if (other.kind() != kind()) {
			throw QuantityProblem.WRONG_KIND.with(QuantityFormat.format(this), unit.symbol(), kind().withArticle(), other.kind().withArticle(),
					UnitList.of(other.kind()));
		}
		if (kind() == QuantityKind.MONEY && !unit.symbol().isEmpty() && !other.symbol().isEmpty() && !unit.symbol().equals(other.symbol())) {
			throw QuantityProblem.CURRENCY.with(QuantityFormat.format(this), other.symbol());
		}
		return unit.equals(other) ? this : new Quantity(other.fromCanonical(canonical()), other);
	}
}
