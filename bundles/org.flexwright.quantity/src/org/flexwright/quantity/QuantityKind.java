package org.flexwright.quantity;

/**
 * What a number measures. Values of one kind are kept in its canonical unit ({@link #unit()}) and are never mixed with
 * values of another kind: a temperature is no temperature difference, a gauge pressure is no absolute pressure, Shore
 * scales are kinds of their own and never convert.
 */
public enum QuantityKind {
	/** A pure number, canonical unit none. */
	NUMBER("number"),
	/** Whole number of things, from 0 up, canonical unit none. */
	COUNT("count", 0),
	/** A share in per cent; the field that holds it says of what. */
	FRACTION("share in per cent"),
	/** Mass, g. */
	MASS("mass"),
	/** Length, mm. */
	LENGTH("length"),
	/** Area, mm2. */
	AREA("area"),
	/** Volume, cm3. */
	VOLUME("volume"),
	/** Density, g/cm3. */
	DENSITY("density"),
	/** Duration, s. */
	DURATION("duration"),
	/** A point on the temperature scale, degC. */
	TEMPERATURE("temperature", -273.15),
	/** A step between two temperatures, K. */
	TEMPERATURE_DIFFERENCE("temperature difference"),
	/** Pressure above vacuum, kPa. */
	PRESSURE_ABSOLUTE("absolute pressure", 0),
	/** Pressure above the surrounding air, kPa gauge; negative is a vacuum. */
	PRESSURE_GAUGE("gauge pressure"),
	/** Stress or modulus, MPa. */
	STRESS("stress"),
	/** Force, N. */
	FORCE("force"),
	/** Energy, J. */
	ENERGY("energy"),
	/** Energy of a mole, kJ/mol. */
	MOLAR_ENERGY("molar energy"),
	/** Dynamic viscosity, Pa s. */
	VISCOSITY("viscosity"),
	/** Speed, mm/s. */
	SPEED("speed"),
	/** Volume flow, mm3/s. */
	FLOW("volume flow"),
	/** Angle, deg. */
	ANGLE("angle"),
	/** Light power on an area, mW/cm2. */
	IRRADIANCE("irradiance"),
	/** Light energy on an area, mJ/cm2. */
	DOSE("light dose"),
	/** Share of a gas in air by volume, ppm. */
	CONCENTRATION("concentration by volume"),
	/** Mass of a substance in a volume of air, mg/m3. */
	MASS_CONCENTRATION("mass concentration"),
	/** Relative humidity, %RH. */
	HUMIDITY("relative humidity"),
	/** Hardness, points Shore A. */
	SHORE_A("Shore A hardness"),
	/** Hardness, points Shore D. */
	SHORE_D("Shore D hardness"),
	/** Hardness, points Shore 00. */
	SHORE_00("Shore 00 hardness"),
	/** Hardness, points Shore AM (thin pieces; type M). */
	SHORE_AM("Shore AM hardness"),
	/** Hardness, points Shore B. */
	SHORE_B("Shore B hardness"),
	/** Hardness, points Shore C. */
	SHORE_C("Shore C hardness"),
	/** Hardness, points Shore DO. */
	SHORE_DO("Shore DO hardness"),
	/** Hardness, points Shore E. */
	SHORE_E("Shore E hardness"),
	/** Hardness, points Shore O. */
	SHORE_O("Shore O hardness"),
	/** Hardness, points Shore 000. */
	SHORE_000("Shore 000 hardness"),
	/** Hardness, points Shore AO. */
	SHORE_AO("Shore AO hardness"),
	/** Rate of change or of a reaction, 1/s. */
	RATE("rate"),
	/** Molar mass, g/mol. */
	MOLAR_MASS("molar mass"),
	/** Heat capacity of a mass, J/kg/K. */
	SPECIFIC_HEAT("specific heat"),
	/** Thermal conductivity, W/m/K. */
	THERMAL_CONDUCTIVITY("thermal conductivity"),
	/** Diffusivity of heat or of a substance, m2/s. */
	DIFFUSIVITY("diffusivity"),
	/** Frequency, Hz; also pictures in a second. */
	FREQUENCY("frequency"),
	/** An amount of money in the project's one currency; currencies never convert. */
	MONEY("amount of money"),
	/** Tear strength, kN/m. */
	TEAR_STRENGTH("tear strength"),
	/** Parts per hundred of rubber or resin by mass, phr. */
	PARTS("amount in parts per hundred");

	private final String humanName;
	private final double lowest;

	QuantityKind(String humanName) {
		this(humanName, Double.NEGATIVE_INFINITY);
	}

	QuantityKind(String humanName, double lowest) {
		this.humanName = humanName;
		this.lowest = lowest;
	}

	/** The name in a sentence, without article: {@code temperature difference}. */
	public String humanName() {
		return humanName;
	}

	/** The name with its article: {@code an angle}, {@code a mass}. */
	public String withArticle() {
		return ("aeiou".indexOf(humanName.charAt(0)) >= 0 ? "an " : "a ") + humanName;
	}

	/** The canonical unit: values of this kind are stored in it. */
	public Unit unit() {
		return Units.of(this).get(0);
	}

	/** The lowest value that can exist, in the canonical unit; negative infinity when there is no such limit. */
	public double lowest() {
		return lowest;
	}

	/** Whether it is a durometer's scale, which reads from 0 to 100 and converts into no other. */
	public boolean shore() {
		return name().startsWith("SHORE_");
	}

	/** Whether only whole numbers make sense. */
	public boolean whole() {
		return this == COUNT;
	}
}
