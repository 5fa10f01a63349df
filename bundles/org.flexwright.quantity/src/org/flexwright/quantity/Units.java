package org.flexwright.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
	private static final Map<QuantityKind, Map<String, Unit>> SPELLINGS = CATALOGUE.entrySet().stream()
			.collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> spellings(e.getValue())));

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
		return Optional.ofNullable(SPELLINGS.get(kind).get(wanted)).or(() -> inAnyCase(kind, wanted));
	}

	/** The kinds that have a unit of this spelling; empty when there is no such unit at all. */
	public static List<QuantityKind> kindsWith(String text) {
		List<QuantityKind> kinds = new ArrayList<>();
		boolean blank = UnitText.normal(text).isEmpty();
		for (QuantityKind kind : QuantityKind.values()) {
			if (!blank && find(kind, text).isPresent()) {
				kinds.add(kind);
			}
		}
		return kinds;
	}

	private static Optional<Unit> inAnyCase(QuantityKind kind, String wanted) {
		List<Unit> found = SPELLINGS.get(kind).entrySet().stream().filter(e -> sameButForCase(e.getKey(), wanted)).map(Map.Entry::getValue).distinct().toList();
		return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
	}

	private static boolean sameButForCase(String spelling, String wanted) {
		boolean milliOrMega = !spelling.isEmpty() && !wanted.isEmpty() && spelling.charAt(0) != wanted.charAt(0) && "mM".indexOf(spelling.charAt(0)) >= 0;
		return spelling.equalsIgnoreCase(wanted) && !milliOrMega;
	}

	/** Normal spelling to unit. Two units of one kind with one spelling are a mistake in the catalogue. */
	private static Map<String, Unit> spellings(List<Unit> units) {
		Map<String, Unit> map = new HashMap<>();
		for (Unit unit : units) {
			for (String spelling : Stream.concat(Stream.of(unit.symbol()), unit.aliases().stream()).map(UnitText::normal).distinct().toList()) {
				if (map.put(spelling, unit) != null) {
					throw new IllegalStateException(unit.kind() + " has two units spelled \"" + spelling + "\"");
				}
			}
		}
		return Map.copyOf(map);
	}
}
