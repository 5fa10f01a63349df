package org.flexwright.filament;

/**
 * How fast water moves in a strand.
 *
 * @param diffusivity m2/s at 23 degC, above 0
 * @param energy      activation energy in kJ/mol, 0 or more
 */
record WaterDiffusion(double diffusivity, double energy) {
    private static final double GAS_CONSTANT = 8.314462618e-3;
    private static final double ZERO_CELSIUS = 273.15;

    /** How many times faster at a temperature in degC than at 23 degC. */
    double gain(double celsius) {
        return Math.exp(energy / GAS_CONSTANT * (1 / (WaterBand.ROOM + ZERO_CELSIUS) - 1 / (celsius + ZERO_CELSIUS)));
    }

    /** Share of the water still in a round strand (diameter in mm) after a time in s at a temperature in degC, its surface kept dry. */
    double residual(double diameter, double celsius, double seconds) {
        double radius = diameter / 2e3;
        return DryingShape.CYLINDER.residual(diffusivity * gain(celsius) * seconds / (radius * radius));
    }

    /** Time in s until that share, above 0 and below 1, is left. */
    double timeTo(double residual, double diameter, double celsius) {
        double radius = diameter / 2e3;
        return DryingShape.CYLINDER.fourier(residual) * radius * radius / (diffusivity * gain(celsius));
    }
}
