package org.flexwright.curing.formula;

/**
 * A rate that grows with temperature: k = A exp(-Ea/RT).
 *
 * @param preExponential   A, in the unit of the rate
 * @param activationEnergy Ea in kJ/mol, positive
 */
public record Arrhenius(double preExponential, double activationEnergy) {

    /** Gas constant, J/mol/K. */
    public static final double GAS_CONSTANT = 8.314462618;
    /** 0 degC in K. */
    public static final double ZERO_CELSIUS = 273.15;

    /** The rate at a temperature in degC. */
    public double at(double celsius) {
        return atKelvin(celsius + ZERO_CELSIUS);
    }

    /** The rate at a temperature in K. */
    public double atKelvin(double kelvin) {
        return preExponential * Math.exp(-1000 * activationEnergy / (GAS_CONSTANT * kelvin));
    }

    /** How many times faster it runs at one temperature in degC than at another: k(celsius)/k(reference). */
    public static double speed(double activationEnergy, double celsius, double reference) {
        return Math.exp(-1000 * activationEnergy / GAS_CONSTANT * (1 / (celsius + ZERO_CELSIUS) - 1 / (reference + ZERO_CELSIUS)));
    }
}
