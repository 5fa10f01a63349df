package org.flexwright.safety.light;

import java.util.OptionalDouble;

import org.flexwright.core.Source;

/**
 * Seconds until a narrow lamp reaches the workers' limits of EU Directive 2006/25/EC for a day of 8 h. Irradiance in W/m2 at the eye or
 * skin (10 W/m2 are 1 mW/cm2), wavelength in nm. Real lamps are 10 to 20 nm wide: count the part of a 405 nm lamp below 400 nm as UVA.
 */
public final class UvDose {
    /** Weighted dose on eye and skin, J/m2, 180 to 400 nm. */
    public static final double WEIGHTED_DOSE = 30;
    /** Unweighted dose on the lens of the eye, J/m2, 315 to 400 nm. */
    public static final double LENS_DOSE = 1e4;
    /** Blue-light dose of a small source, J/m2, up to 10 000 s. */
    public static final double BLUE_DOSE = 100;
    /** Where the limits come from. */
    public static final Source SOURCE = Source.published("EU Directive 2006/25/EC, Annex I, Table 1.1 (row a read there, others in a reproduction)");
    /** Where the weighting comes from. */
    public static final Source WEIGHTING_SOURCE = Source.published("ICNIRP 2004, eq. 2c, as cited in open photobiology code");

    private static final double UV_END = 400;
    private static final double LENS_START = 315;
    private static final double WEIGHTING_START = 300;
    private static final double[] BLUE_NM = {300, 380, 385, 395, 400, 405};
    private static final double[] BLUE_WEIGHT = {0.01, 0.01, 0.013, 0.05, 0.1, 0.2};

    private UvDose() {
    }

    /** Weight S of a wavelength between 300 and 400 nm; 0 above 400, empty below 300 where this formula does not hold. */
    public static OptionalDouble weight(double nanometres) {
        if (nanometres < WEIGHTING_START) {
            return OptionalDouble.empty();
        }
        if (nanometres > UV_END) {
            return OptionalDouble.of(0);
        }
        return OptionalDouble.of(0.3 * Math.pow(0.736, nanometres - 300) + Math.pow(10, 2 - 0.0163 * nanometres));
    }

    /** Weight B of the blue-light hazard, straight lines between the tabulated wavelengths; empty outside 300 to 405 nm. */
    public static OptionalDouble blueWeight(double nanometres) {
        for (int i = 0; i + 1 < BLUE_NM.length; i++) {
            if (nanometres >= BLUE_NM[i] && nanometres <= BLUE_NM[i + 1]) {
                double share = (nanometres - BLUE_NM[i]) / (BLUE_NM[i + 1] - BLUE_NM[i]);
                return OptionalDouble.of(BLUE_WEIGHT[i] + share * (BLUE_WEIGHT[i + 1] - BLUE_WEIGHT[i]));
            }
        }
        return OptionalDouble.empty();
    }

    /** Unweighted dose in J/m2 that makes up the weighted limit; empty where the weight is 0 or unknown. */
    public static OptionalDouble skinDose(double nanometres) {
        OptionalDouble weight = weight(nanometres);
        return weight.isPresent() && weight.getAsDouble() > 0 ? OptionalDouble.of(WEIGHTED_DOSE / weight.getAsDouble()) : OptionalDouble.empty();
    }

    /** Seconds to the weighted limit on eye and skin. */
    public static OptionalDouble skinSeconds(double nanometres, double irradiance) {
        OptionalDouble dose = skinDose(nanometres);
        return dose.isPresent() ? OptionalDouble.of(dose.getAsDouble() / irradiance) : OptionalDouble.empty();
    }

    /** Seconds to the limit on the lens of the eye; empty outside 315 to 400 nm. */
    public static OptionalDouble lensSeconds(double nanometres, double irradiance) {
        return nanometres >= LENS_START && nanometres <= UV_END ? OptionalDouble.of(LENS_DOSE / irradiance) : OptionalDouble.empty();
    }

    /** Seconds to the blue-light limit of a source smaller than 11 mrad. */
    public static OptionalDouble blueSeconds(double nanometres, double irradiance) {
        OptionalDouble weight = blueWeight(nanometres);
        return weight.isPresent() ? OptionalDouble.of(BLUE_DOSE / (weight.getAsDouble() * irradiance)) : OptionalDouble.empty();
    }
}
