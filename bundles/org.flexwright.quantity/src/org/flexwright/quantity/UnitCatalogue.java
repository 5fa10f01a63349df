package org.flexwright.quantity;

import static org.flexwright.quantity.QuantityKind.*;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Builds the unit list. The first unit of a kind is its canonical one. */
final class UnitCatalogue {
	private static final double INCH = 25.4;
	private static final double FOOT = 304.8;
	private static final double POUND = 453.59237;
	private static final double CUBIC_INCH = 16.387064;
	private static final double GRAVITY = 9.80665;
	private static final double POUND_FORCE = POUND / 1000 * GRAVITY;
	private static final double PSI = POUND_FORCE / (INCH * INCH) * 1000;
	private static final double FAHRENHEIT = 5.0 / 9.0;
	private static final double MINUTE = 60;
	private static final double HOUR = 3600;
	private static final Set<String> CURRENCY_CODES = Currency.getAvailableCurrencies().stream().map(Currency::getCurrencyCode)
			.collect(Collectors.toUnmodifiableSet());

	private final EnumMap<QuantityKind, List<Unit>> units = new EnumMap<>(QuantityKind.class);

	private UnitCatalogue() {
		numbers();
		sizes();
		temperatures();
		pressures();
		mechanics();
		motion();
		light();
		air();
		hardness();
		matter();
	}

	static Map<QuantityKind, List<Unit>> all() {
		EnumMap<QuantityKind, List<Unit>> units = new UnitCatalogue().units;
		units.replaceAll((kind, list) -> List.copyOf(list));
		return Collections.unmodifiableMap(units);
	}

	/** A currency is an ISO 4217 code or a common sign; an amount may go without. */
	static Optional<Unit> currency(String text) {
		return text.isEmpty() || text.matches("[€$£]") || CURRENCY_CODES.contains(text) ? Optional.of(new Unit(text, MONEY, 1, 0, List.of())) : Optional.empty();
	}

	private void add(QuantityKind kind, String symbol, double factor, String... aliases) {
		addScale(kind, symbol, factor, 0, aliases);
	}

	private void addScale(QuantityKind kind, String symbol, double factor, double offset, String... aliases) {
		units.computeIfAbsent(kind, k -> new ArrayList<>()).add(new Unit(symbol, kind, factor, offset, List.of(aliases)));
	}

	private void numbers() {
		add(NUMBER, "", 1);
		add(COUNT, "", 1, "pcs", "pieces", "piece");
		add(FRACTION, "%", 1, "per cent", "percent", "pct");
		add(FRACTION, "fraction", 100, "1");
		add(FRACTION, "permille", 0.1, "‰", "per mille");
		add(PARTS, "phr", 1, "pph", "parts per hundred");
		add(MONEY, "", 1);
	}

	private void sizes() {
		add(MASS, "g", 1, "gram", "grams", "gm");
		add(MASS, "kg", 1000, "kilogram", "kilograms");
		add(MASS, "mg", 1e-3, "milligram", "milligrams");
		add(MASS, "oz", POUND / 16, "ounce", "ounces");
		add(MASS, "lb", POUND, "lbs", "pound", "pounds");

		add(LENGTH, "mm", 1, "MM", "millimetre", "millimetres", "millimeter", "millimeters");
		add(LENGTH, "um", 1e-3, "micron", "microns", "micrometre", "micrometer");
		add(LENGTH, "cm", 10, "centimetre", "centimetres", "centimeter", "centimeters");
		add(LENGTH, "m", 1000, "metre", "metres", "meter", "meters");
		add(LENGTH, "in", INCH, "\"", "''", "inch", "inches");
		add(LENGTH, "ft", FOOT, "'", "foot", "feet");
		add(LENGTH, "mil", INCH / 1000, "mils", "thou");

		add(AREA, "mm2", 1, "sq mm");
		add(AREA, "cm2", 100, "sq cm");
		add(AREA, "m2", 1e6, "sq m");
		add(AREA, "in2", INCH * INCH, "sq in");

		add(VOLUME, "cm3", 1, "cc", "ccm", "cu cm");
		add(VOLUME, "ml", 1, "mL", "ML", "millilitre", "millilitres", "milliliter", "milliliters");
		add(VOLUME, "mm3", 1e-3, "ul", "uL");
		add(VOLUME, "l", 1000, "L", "litre", "litres", "liter", "liters");
		add(VOLUME, "m3", 1e6, "cu m");
		add(VOLUME, "ft3", CUBIC_INCH * 1728, "cu ft");
		add(VOLUME, "in3", CUBIC_INCH, "cu in");
		add(VOLUME, "floz", CUBIC_INCH * 231 / 128, "fl oz", "US fl oz", "fluid ounce", "fluid ounces");

		add(DENSITY, "g/cm3", 1, "g/cc");
		add(DENSITY, "g/ml", 1, "g/mL");
		add(DENSITY, "kg/m3", 1e-3);
		add(DENSITY, "kg/l", 1, "kg/L");
		add(DENSITY, "lb/ft3", POUND / (FOOT * FOOT * FOOT / 1000), "lb/cu ft");

		add(DURATION, "s", 1, "sec", "secs", "second", "seconds");
		add(DURATION, "min", MINUTE, "mins", "Min", "MIN", "minute", "minutes");
		add(DURATION, "h", HOUR, "hr", "hrs", "hour", "hours");
		add(DURATION, "d", 24 * HOUR, "day", "days");
		add(DURATION, "a", 365.25 * 24 * HOUR, "year", "years", "yr", "yrs");
		add(DURATION, "ms", 1e-3);

		add(ANGLE, "deg", 1, "°", "degree", "degrees");
		add(ANGLE, "rad", 180 / Math.PI, "radian", "radians");
	}

	private void temperatures() {
		add(TEMPERATURE, "degC", 1, "°C", "C", "deg C", "° C", "celsius", "degrees C");
		addScale(TEMPERATURE, "degF", FAHRENHEIT, -32 * FAHRENHEIT, "°F", "F", "deg F", "° F", "fahrenheit", "degrees F");
		addScale(TEMPERATURE, "K", 1, -273.15, "kelvin");
		add(TEMPERATURE_DIFFERENCE, "K", 1, "kelvin");
		add(TEMPERATURE_DIFFERENCE, "delta degC", 1, "Δ°C", "delta °C", "delta C", "ΔC", "ΔdegC");
		add(TEMPERATURE_DIFFERENCE, "delta degF", FAHRENHEIT, "Δ°F", "delta °F", "delta F", "ΔF", "ΔdegF");
	}

	private void pressures() {
		addPressure("kPa", 1);
		addPressure("Pa", 1e-3);
		addPressure("MPa", 1000);
		addPressure("bar", 100);
		addPressure("mbar", 0.1);
		add(PRESSURE_ABSOLUTE, "psi", PSI, "psia", "psi abs", "psi absolute", "lbf/in2");
		add(PRESSURE_GAUGE, "psi gauge", PSI, "psig", "psi_g", "psi(g)", "psi (g)", "psi g");
		add(PRESSURE_ABSOLUTE, "atm", 101.325);
		add(PRESSURE_ABSOLUTE, "mmHg", 0.133322387415, "mm Hg");
		add(PRESSURE_ABSOLUTE, "torr", 101.325 / 760);
		add(PRESSURE_GAUGE, "inHg gauge", 3.386388640341, "inHg vacuum gauge", "in Hg gauge");
	}

	private void addPressure(String symbol, double factor) {
		add(PRESSURE_ABSOLUTE, symbol, factor, symbol + " abs", symbol + " absolute", symbol + "a", symbol + "(a)", symbol + "_a");
		add(PRESSURE_GAUGE, symbol + " gauge", factor, symbol + "g", symbol + "_g", symbol + "(g)", symbol + " (g)", symbol + " g");
	}

	private void mechanics() {
		add(STRESS, "MPa", 1, "N/mm2");
		add(STRESS, "kPa", 1e-3);
		add(STRESS, "Pa", 1e-6);
		add(STRESS, "GPa", 1000);
		add(STRESS, "psi", PSI / 1000, "lbf/in2");
		add(STRESS, "kgf/cm2", GRAVITY / 100);

		add(FORCE, "N", 1, "newton", "newtons");
		add(FORCE, "mN", 1e-3);
		add(FORCE, "kN", 1000);
		add(FORCE, "gf", GRAVITY / 1000);
		add(FORCE, "kgf", GRAVITY);
		add(FORCE, "lbf", POUND_FORCE);
		add(FORCE, "ozf", POUND_FORCE / 16);

		add(ENERGY, "J", 1, "joule", "joules");
		add(ENERGY, "mJ", 1e-3);
		add(ENERGY, "kJ", 1000);
		add(ENERGY, "N mm", 1e-3);
		add(MOLAR_ENERGY, "kJ/mol", 1);
		add(MOLAR_ENERGY, "J/mol", 1e-3);
		add(MOLAR_ENERGY, "kcal/mol", 4.184);

		add(TEAR_STRENGTH, "kN/m", 1);
		add(TEAR_STRENGTH, "N/mm", 1);
		add(TEAR_STRENGTH, "lbf/in", POUND_FORCE / INCH, "pli");

		add(VISCOSITY, "Pa s", 1, "Pas", "Pa-s");
		add(VISCOSITY, "mPa s", 1e-3, "mPas", "mPa-s");
		add(VISCOSITY, "cP", 1e-3, "cps", "centipoise");
		add(VISCOSITY, "P", 0.1, "poise");
	}

	private void motion() {
		add(SPEED, "mm/s", 1, "mm/sec");
		add(SPEED, "mm/min", 1 / MINUTE);
		add(SPEED, "m/s", 1000);
		add(SPEED, "m/min", 1000 / MINUTE);
		add(SPEED, "in/min", INCH / MINUTE, "ipm");
		add(FLOW, "mm3/s", 1);
		add(FLOW, "cm3/s", 1000, "ml/s", "mL/s", "cc/s");
		add(FLOW, "cm3/min", 1000 / MINUTE, "cc/min");
		add(FLOW, "m3/h", 1e9 / HOUR);
		add(FLOW, "cfm", CUBIC_INCH * 1728 * 1000 / MINUTE, "ft3/min");
		add(FLOW, "ml/min", 1000 / MINUTE, "mL/min");
		add(RATE, "1/s", 1, "/s", "s-1", "per second");
		add(RATE, "1/min", 1 / MINUTE, "/min", "min-1", "per minute");
		add(RATE, "1/h", 1 / HOUR, "/h", "h-1", "per hour");
		add(FREQUENCY, "Hz", 1, "fps", "hertz");
		add(FREQUENCY, "kHz", 1000);
		add(FREQUENCY, "rpm", 1 / MINUTE, "r/min");
	}

	private void light() {
		add(IRRADIANCE, "mW/cm2", 1);
		add(IRRADIANCE, "uW/cm2", 1e-3);
		add(IRRADIANCE, "W/cm2", 1000);
		add(IRRADIANCE, "W/m2", 0.1);
		add(DOSE, "mJ/cm2", 1);
		add(DOSE, "J/cm2", 1000);
		add(DOSE, "J/m2", 0.1);
	}

	private void air() {
		add(CONCENTRATION, "ppm", 1, "ml/m3", "mL/m3");
		add(CONCENTRATION, "ppb", 1e-3);
		add(CONCENTRATION, "vol%", 1e4, "vol %", "vol-%", "% by volume", "% v/v");
		add(MASS_CONCENTRATION, "mg/m3", 1);
		add(MASS_CONCENTRATION, "ug/m3", 1e-3);
		add(MASS_CONCENTRATION, "g/m3", 1000);
		add(HUMIDITY, "%RH", 1, "% RH", "% rh", "%rh", "RH", "%", "% r.h.");
	}

	private void hardness() {
		add(SHORE_A, "Shore A", 1, "A", "HA", "ShA", "Sh A");
		add(SHORE_D, "Shore D", 1, "D", "HD", "ShD", "Sh D");
		add(SHORE_00, "Shore 00", 1, "00", "OO", "Shore OO", "Sh 00", "Sh OO");
		add(SHORE_AM, "Shore AM", 1, "AM", "Shore M", "Sh AM");
		add(SHORE_B, "Shore B", 1, "HB", "Sh B");
		add(SHORE_C, "Shore C", 1, "HC", "Sh C");
		add(SHORE_DO, "Shore DO", 1, "DO", "HDO", "Sh DO");
		add(SHORE_E, "Shore E", 1, "HE", "Sh E");
		add(SHORE_O, "Shore O", 1, "HO", "Sh O");
		add(SHORE_000, "Shore 000", 1, "000", "OOO", "Shore OOO", "Sh 000", "Sh OOO");
		add(SHORE_AO, "Shore AO", 1, "AO", "HAO", "Sh AO");
	}

	private void matter() {
		add(MOLAR_MASS, "g/mol", 1);
		add(MOLAR_MASS, "kg/mol", 1000);
		add(SPECIFIC_HEAT, "J/kg/K", 1, "J/(kg K)", "J/kgK", "J/kg K");
		add(SPECIFIC_HEAT, "kJ/kg/K", 1000, "kJ/(kg K)", "kJ/kgK", "kJ/kg K", "J/g/K", "J/(g K)");
		add(THERMAL_CONDUCTIVITY, "W/m/K", 1, "W/(m K)", "W/mK", "W/m K");
		add(DIFFUSIVITY, "m2/s", 1);
		add(DIFFUSIVITY, "mm2/s", 1e-6);
		add(DIFFUSIVITY, "cm2/s", 1e-4);
	}
}
