package org.flexwright.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The catalogue of units. Factors: SI and the exact definitions of the international yard and pound (1959), the US fluid
 * ounce of 231/128 cubic inch, standard gravity 9.80665 m/s2, standard atmosphere 101.325 kPa, thermochemical calorie
 * 4.184 J; mmHg and inHg as conventional values (BIPM and ISO 80000-4 style tables, from memory, unconfirmed).
 * <p>
 * Settled points: degC and degF are points on the scale; a step is K, delta degC or delta degF. A plain pressure unit is
 * absolute; gauge pressures say so (kPa gauge, barg, psig). oz is a mass, fl oz (US) a volume, ozf a force.
 */
public final class Units {
	private static final Map<QuantityKind, List<Unit>> CATALOGUE = UnitCatalogue.all();

	private Units() {
	}

	/** All units of a kind, the canonical one first. */
	public static List<Unit> of(QuantityKind kind) {
		return CATALOGUE.get(kind);
	}

	/**
	 * The unit of that kind with this symbol or spelling. Upper and lower case count where they tell milli from mega; else a
	 * spelling in the wrong case is read when it can mean one unit only.
	 *
	 * @return empty when this kind has no such unit
	 */
	public static Optional<Unit> find(QuantityKind kind, String text) {
		String wanted = UnitText.normal(text);
		if (kind == QuantityKind.MONEY) {
			return UnitCatalogue.currency(wanted);
		}
		return match(kind, wanted, false).or(() -> match(kind, wanted, true));
	}

	/** The kinds that have a unit of this spelling; empty when there is no such unit at all. */
	public static List<QuantityKind> kindsWith(String text) {
		List<QuantityKind> kinds = new ArrayList<>();
		for (QuantityKind kind : QuantityKind.values()) {
			if (!UnitText.normal(text).isEmpty() && find(kind, text).isPresent()) {
				kinds.add(kind);
			}
		}
		return kinds;
	}

	private static Optional<Unit> match(QuantityKind kind, String wanted, boolean anyCase) {
		List<Unit> found = of(kind).stream().filter(u -> spelled(u.symbol(), wanted, anyCase) || u.aliases().stream().anyMatch(a -> spelled(a, wanted, anyCase)))
				.toList();
		return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
	}

	private static boolean spelled(String spelling, String wanted, boolean anyCase) {
		String normal = UnitText.normal(spelling);
		if (!anyCase) {
			return normal.equals(wanted);
		}
		boolean milliOrMega = !normal.isEmpty() && !wanted.isEmpty() && normal.charAt(0) != wanted.charAt(0) && "mM".indexOf(normal.charAt(0)) >= 0;
		return normal.equalsIgnoreCase(wanted) && !milliOrMega;
	}

	static Map<QuantityKind, List<Unit>> immutable(EnumMap<QuantityKind, List<Unit>> units) {
		units.replaceAll((kind, list) -> List.copyOf(list));
		return Collections.unmodifiableMap(units);
	}
}
